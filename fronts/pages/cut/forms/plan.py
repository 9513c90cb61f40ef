"""The form that says what a cutting plan is made from: the saw, and the stock of each material."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.forms import BoundField

from fronts.cutting.cut_units import misfits
from fronts.cutting.model import Request, StockSize
from fronts.facts.size_form_fields import Size
from fronts.pages.cut.forms.offcuts import offcuts_field, stock_of
from fronts.rules.cutting_groups import CuttingGroup
from fronts.rules.lengths import INCH, Mm, show_with_unit
from fronts.rules.offcuts import MOST_OFFERED, OffcutAt, fitting
from fronts.rules.usual_stock import Saw
from fronts.selectors.plans import money
from fronts.services.cutting import Asked
from fronts.services.cutting_requests import (
    ROWS,
    SHEETS,
    STICKS,
    default_saw,
    default_stock,
    request_for,
)
from shopjobs.forms.house import HouseForm, in_house_words

WIDEST_KERF = INCH
SECONDS = ((5, "5 seconds a material"), (20, "20 seconds a material"), (60, "a minute a material"))
GRAINS = (("length", "along its length"), ("width", "along its width"), ("", "none"))
KINDS = ((STICKS, "sticks, ripped to width already"), (SHEETS, "sheets or wide boards"))


@dataclass(frozen=True, slots=True)
class StockFields:
    """The inputs of one size; the first is always wanted."""

    fields: tuple[BoundField, ...]

    @property
    def is_filled(self) -> bool:
        """Whether anything stands or is wrong in the row."""
        return any(field.errors or field.value() for field in self.fields[:2])


@dataclass(frozen=True, slots=True)
class GroupFields:
    """A material's inputs; `offcuts_left` more could be used than are offered."""

    name: str
    offcuts: BoundField | None
    offcuts_left: int
    kind: BoundField | None
    first: StockFields
    more: tuple[StockFields, ...]

    @property
    def has_more(self) -> bool:
        """Whether one of the further sizes is in use."""
        return any(row.is_filled for row in self.more)


class CutPlanForm(HouseForm):
    """Kerf and trims once, then for each material up to `ROWS` sizes of stock.

    `kept` is what the last plan was asked, by the groups' keys: it is offered again.
    """

    seconds = forms.TypedChoiceField(label="Search for", choices=SECONDS, coerce=int, initial=5)

    def __init__(
        self,
        *args: Any,
        groups: Sequence[CuttingGroup],
        names: Mapping[str, str],
        unit: str,
        kept: Mapping[str, Request],
        offcuts: Sequence[OffcutAt] = (),
        **kwargs: Any,
    ) -> None:
        super().__init__(*args, **kwargs)
        self.offcuts: dict[str, list[OffcutAt]] = {}
        self.unit, self.groups, self.names = unit, list(groups), names
        saw = default_saw(unit, kept)
        self._length("kerf", "Saw kerf", saw.kerf, zero=True)
        self._length("trim", "Trim off each edge of a sheet", saw.trim, zero=True)
        self._length("ends", "Trim off each end of a stick", saw.ends, zero=True)
        self._length("safe", "Nothing narrower is held by hand", saw.safe, zero=True)
        if any(part.stack for group in groups for part in group.parts):
            self.fields["upright"] = forms.BooleanField(
                label="Cut each drawer stack as one block, grain running up through it",
                required=False,
                initial=any(part.block for each in kept.values() for part in each.parts),
            )
        for group in groups:
            self._add_group(group, kept.get(group.key), offcuts)
        for field in self.fields.values():
            in_house_words(field)

    def _length(
        self,
        name: str,
        label: str,
        initial: Mm | None,
        *,
        zero: bool = False,
        required: bool = True,
    ) -> None:
        field = Size(label=label, zero=zero, small=zero, initial=initial, required=required)
        field.speak(self.unit)
        field.error_messages["required"] = f"Enter a length for “{label.lower()}”."
        self.fields[name] = field

    def _add_group(
        self, group: CuttingGroup, kept: Request | None, offcuts: Sequence[OffcutAt]
    ) -> None:
        key, sticks = group.key, group.sticks if kept is None else kept.sticks
        of_kind = [each for each in offcuts if each.facts.is_stick == sticks]
        self.offcuts[key] = found = fitting(of_kind, group)
        if found:
            self.fields[f"{key}-offcuts"] = offcuts_field(found[:MOST_OFFERED], self.unit)
        if group.sticks:
            self.fields[f"{key}-kind"] = forms.ChoiceField(
                label="Cut from", choices=KINDS, initial=STICKS if sticks else SHEETS
            )
        stock = default_stock(group, self.unit)
        if kept is not None:
            stock = tuple(each for each in kept.stock if not each.own)
        for number in range(ROWS):
            self._add_stock(f"{key}-{number}", stock[number] if number < len(stock) else None)

    def _add_stock(self, name: str, stock: StockSize | None) -> None:
        first = name.endswith("-0")
        self._length(f"{name}-length", "Length", stock.length if stock else None, required=first)
        self._length(f"{name}-width", "Width", stock.width if stock else None, required=False)
        self.fields[f"{name}-count"] = forms.IntegerField(
            label="How many", min_value=1, max_value=10_000, required=False,
            initial=stock.count if stock else None,
            error_messages={"invalid": "Enter a whole number, or leave it empty."},
            widget=forms.TextInput(attrs={"inputmode": "numeric", "placeholder": "as needed"}),
        )  # fmt: skip
        self.fields[f"{name}-grain"] = forms.ChoiceField(
            label="Grain", choices=GRAINS, required=False, initial=(stock and stock.grain) or ""
        )
        price = None if stock is None or stock.price is None else money(stock.price)
        self.fields[f"{name}-price"] = forms.DecimalField(
            label="Price each", min_value=0, max_digits=11, decimal_places=2, required=False,
            initial=price,
            widget=forms.TextInput(attrs={"inputmode": "decimal"}),
        )  # fmt: skip

    def group_fields(self) -> Iterator[GroupFields]:
        """The inputs in the order of the page."""
        for group in self.groups:
            rows = tuple(self._row(group, number) for number in range(ROWS))
            kind = self[f"{group.key}-kind"] if group.sticks else None
            name = f"{group.key}-offcuts"
            offcuts = self[name] if name in self.fields else None
            left = max(0, len(self.offcuts[group.key]) - MOST_OFFERED)
            yield GroupFields(self.names[group.key], offcuts, left, kind, rows[0], rows[1:])

    def _row(self, group: CuttingGroup, number: int) -> StockFields:
        names = ("length", "width", "count", "grain", "price")
        return StockFields(tuple(self[f"{group.key}-{number}-{name}"] for name in names))

    def clean_kerf(self) -> Mm:
        """Refuse what no saw cuts."""
        kerf: Mm = self.cleaned_data["kerf"]
        if kerf > WIDEST_KERF:
            widest = show_with_unit(WIDEST_KERF, self.unit)
            raise ValidationError(f"No blade is that wide; enter at most {widest}.")
        return kerf

    def clean(self) -> dict[str, Any]:
        """Check each material's stock as a whole, and that every part fits some of it."""
        cleaned: dict[str, Any] = super().clean() or self.cleaned_data
        if not self.groups:
            self.add_error(None, "There is nothing to cut yet.")
        if self.errors:
            return cleaned
        saw = Saw(cleaned["kerf"], cleaned["trim"], cleaned["ends"], cleaned["safe"])
        asked = [self._asked(group, saw) for group in self.groups]
        cleaned["asked"] = [each for each in asked if each is not None]
        return cleaned

    def _asked(self, group: CuttingGroup, saw: Saw) -> Asked | None:
        """What one material is planned from, or None where a message says what is wrong."""
        sticks = self.cleaned_data.get(f"{group.key}-kind") == STICKS
        stock = list(self._stock(group, sticks=sticks))
        stock += self._own(group, grained=any(each.grain for each in stock), sticks=sticks)
        if any(name.startswith(group.key) for name in self.errors):
            return None
        upright = bool(self.cleaned_data.get("upright"))
        request = request_for(group, saw, stock, sticks=sticks, upright=upright)
        self._check(group, request)
        return Asked(group.key, self.names[group.key], request, group)

    def _own(self, group: CuttingGroup, *, grained: bool, sticks: bool) -> Iterator[StockSize]:
        """The offcuts that are ticked; those of the other kind are of no use here."""
        ticked = self.cleaned_data.get(f"{group.key}-offcuts", ())
        for each in self.offcuts[group.key]:
            if each.label in ticked and each.facts.is_stick == sticks:
                yield stock_of(each, grained=grained)

    def _stock(self, group: CuttingGroup, *, sticks: bool) -> Iterator[StockSize]:
        rows = [self._given(group, number) for number in range(ROWS)]
        used = [row for row in rows if row["length"] is not None or row["width"] is not None]
        priced = [row["price"] is not None for row in used]
        for row in used:
            number = row["number"]
            if row["length"] is None:
                self.add_error(f"{number}-length", "Enter the length too.")
            elif row["width"] is None and not sticks:
                self.add_error(f"{number}-width", "Enter the sheet's width.")
            elif any(priced) and row["price"] is None:
                self.add_error(f"{number}-price", "Give every size a price, or none.")
            else:
                yield StockSize(
                    label=str(number), length=row["length"],
                    width=None if sticks else row["width"], count=row["count"],
                    grain=None if sticks else row["grain"] or None,
                    price=None if row["price"] is None else Mm(row["price"]),
                )  # fmt: skip

    def _given(self, group: CuttingGroup, number: int) -> dict[str, Any]:
        name = f"{group.key}-{number}"
        fields = ("length", "width", "count", "grain", "price")
        return {"number": name} | {each: self.cleaned_data.get(f"{name}-{each}") for each in fields}

    def _check(self, group: CuttingGroup, request: Request) -> None:
        field = f"{group.key}-0-length"
        if any(_used_up(each, request.trim_of(each)) for each in request.stock):
            self.add_error(
                field, "The trim takes all of it; enter a larger size or a smaller trim."
            )
            return
        large = misfits(request)
        if large:
            labels = ", ".join(dict.fromkeys(request.parts[i].label for i in large[0].parts))
            size = show_with_unit(large[0].length, self.unit)
            if not request.sticks:
                size = f"{show_with_unit(large[0].width, self.unit)} × {size}"
            self.add_error(field, f"{labels} ({size}) is larger than every size given here.")


def _used_up(stock: StockSize, trim: Mm) -> bool:
    sizes = [stock.length] if stock.width is None else [stock.length, stock.width]
    return any(size <= 2 * trim for size in sizes)

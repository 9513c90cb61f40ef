"""The form of a short page: some of the shop's standard, numbers, tables and box stock."""

from collections import ChainMap
from collections.abc import Mapping
from typing import Any

from django import forms

from fronts.drawings.standard.figure import Figure
from fronts.facts.rows import columns_of, from_values
from fronts.pages.shared.kitchen_form import Group, When
from fronts.pages.shared.list_hints import list_hint
from fronts.pages.shared.standard_form import StandardForm
from fronts.pages.standard.forms.figure_words import said_as
from fronts.pages.standard.forms.held import BOXES, Held
from fronts.pages.standard.forms.number_fields import Number, NumberSize, SolidField
from fronts.pages.standard.forms.number_words import number_label, sourced
from fronts.pages.standard.forms.short_pages import ShortPage
from fronts.pages.standard.forms.table_fields import table_fields
from fronts.rules.box_facts import BoxesMadeOf
from fronts.rules.practice import NUMBERS, PLAIN, POSITIVE, PRACTICE, TABLES
from fronts.rules.standard_keys import Standard
from shopjobs.forms.seen import SEEN

_NUMBERS = {number.name: number.metadata for number in NUMBERS}


class WaysForm(StandardForm):
    """The fields of one short page; what is empty, common practice says."""

    groups: tuple[Group, ...] = ()
    is_merged = True
    also = ((BoxesMadeOf, BOXES, ()),)
    used_when = {f"{BOXES}joint_depth": When(f"{BOXES}joint", ("rabbet", "dado"))}

    def __init__(self, *args: Any, page: ShortPage, held: Held, **kwargs: Any) -> None:
        self.page, self.held, self.groups = page, held, page.groups
        kwargs.setdefault("initial", held.own)
        super().__init__(*args, unit=held.unit, levels=held.levels, items=held.items, **kwargs)
        every = {
            **self.fields,
            **{name: self._number(name, _NUMBERS[name]) for name in page.names if name in _NUMBERS},
            **table_fields(self.unit),
        }
        self.fields = {name: every[name] for name in (SEEN, *page.names)}
        for place, name in enumerate(page.names, start=1):
            self.fields[name].widget.attrs["data-of"] = str(place)
        self._offer_the_usual()

    def _number(self, name: str, about: Mapping[str, Any]) -> forms.Field:
        words: dict[str, Any] = {
            "label": number_label(name, about["says"], self.unit),
            "help_text": sourced(about["source"]),
            "required": False,
        }
        usual = getattr(PRACTICE, name)
        if name == "solid_panels":
            return SolidField(usual=usual, **words)
        if name in PLAIN:
            return Number(name=name, unit=self.unit, **words)
        size = NumberSize(usual=usual, zero=name not in POSITIVE, **words)
        size.speak(self.unit)
        return size

    def _offer_the_usual(self) -> None:
        """Grey what holds where a field is empty; the standard's fields offer it themselves."""
        for name, field in self.fields.items():
            if name == SEEN or name in self.held.levels:
                continue
            if not isinstance(field, forms.ChoiceField):
                usual = self.held.usual(name)
                self.offer(name, said_as(field, usual, self.unit))
        if f"{BOXES}heights" in self.fields:
            hint = list_hint("heights", self.unit)
            self.fields[f"{BOXES}heights"].help_text = f"{hint} Empty: as high as there is room."

    @property
    def entered(self) -> Standard:
        """What the shop says of the standard, here and on the other pages."""
        own = {name: held.value if held.own else None for name, held in self.held.levels.items()}
        return from_values(Standard, ChainMap(self.cleaned_data, own))

    @property
    def boxes(self) -> BoxesMadeOf:
        """How boxes are made."""
        given = self.cleaned_data
        every = {name: given[f"{BOXES}{name}"] for name in columns_of(self.held.boxes)}
        return from_values(BoxesMadeOf, every)

    def given(self, names: tuple[str, ...]) -> dict[str, Any]:
        """What was entered of these."""
        return {name: self.cleaned_data[name] for name in names if name in self.fields}

    @property
    def asks_of(self) -> frozenset[str]:
        """What the page is about: `standard`, `numbers`, `tables`, `boxes`."""
        return frozenset(kind_of(name) for name in self.page.names)

    def figures(self) -> dict[str, Figure]:
        """What the page's drawing says: what is typed and can be read, else what was saved."""
        bad = self.errors
        return {
            name: self._figure(place, name, self._said(name, is_bad=name in bad))
            for place, name in enumerate(self.page.names, start=1)
        }

    def _said(self, name: str, *, is_bad: bool) -> Any:
        if is_bad or not self.is_bound:
            return self.initial.get(name)
        return self.cleaned_data.get(name)

    def _figure(self, place: int, name: str, value: Any) -> Figure:
        usual = self.held.usual(name)
        is_said = value not in (None, "", (), [])
        own = is_said and (name != f"{BOXES}joint" or value != usual)
        in_force = value if own else usual
        text = said_as(self.fields[name], in_force, self.unit, name)
        return Figure(place, in_force, text, own, usual)


def kind_of(name: str) -> str:
    """What keeps the value of a field."""
    if name in _NUMBERS:
        return "numbers"
    if name in TABLES:
        return "tables"
    return "boxes" if name.startswith(BOXES) else "standard"

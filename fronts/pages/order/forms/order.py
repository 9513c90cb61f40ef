"""The forms that approve the list, decide on its changes, send it and say what came."""

from collections.abc import Callable, Sequence
from datetime import date
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.core.validators import MaxValueValidator, MinValueValidator

from fronts.models.order_approvals import ACCEPTED, ADDITION, DISMISSED
from fronts.pages.order.forms.ticked import TickedLines
from fronts.rules.limits import (
    LONGEST_NOTE,
    LONGEST_REFERENCE,
    LONGEST_SUPPLIER,
    MOST_NEEDED,
)
from fronts.rules.order_facts import short_name_of
from fronts.selectors.approved_items import ItemOrdered
from fronts.selectors.order_progress import Sent
from shopjobs.forms.house import DateInput, HouseForm
from shopjobs.words import one_line

_FIRST_DAY, _LAST_DAY = date(2000, 1, 1), date(2199, 12, 31)


class SeenOrderForm(HouseForm):
    """A form on something that others change too: refused once it is otherwise than seen.

    `now` names it as it is, `since` says what somebody did last.
    """

    seen = forms.CharField(required=False, max_length=32, widget=forms.HiddenInput())

    def __init__(
        self, *args: Any, now: str = "", since: Callable[[], str] = lambda: "", **kwargs: Any
    ) -> None:
        super().__init__(*args, **kwargs)
        self._now, self._since = now, since

    def clean(self) -> dict[str, Any]:
        """What somebody else did meanwhile stands."""
        given = super().clean() or {}
        if given.get("seen", "") != self._now:
            self.has_clashes = True
            raise ValidationError(
                f"The order has changed since you looked{self._since()}. Look again, then go on."
            )
        return given


class ApproveForm(SeenOrderForm):
    """The list approved as it stands, or that taken back."""

    what = forms.ChoiceField(choices=[(each, each) for each in ("approve", "take back")])


class ChangesForm(SeenOrderForm):
    """Changes since the approval, each as it was shown, and what is decided on them."""

    line = TickedLines(required=False)
    kind = forms.ChoiceField(choices=[(each, each) for each in (ADDITION, ACCEPTED, DISMISSED)])
    note = forms.CharField(
        label="Why the order stays as it is", required=False, max_length=LONGEST_NOTE,
        validators=[one_line],
    )  # fmt: skip


def _text(label: str, most: int, *, required: bool) -> forms.CharField:
    return forms.CharField(label=label, required=required, max_length=most, validators=[one_line])


def _day(label: str) -> forms.DateField:
    return forms.DateField(
        label=label,
        widget=DateInput(),
        validators=[MinValueValidator(_FIRST_DAY), MaxValueValidator(_LAST_DAY)],
        error_messages={"invalid": "Enter a date, like 2027-03-12."},
    )


def _place(item: ItemOrdered) -> str:
    """By what an item's fields are named, whatever else is on the list by then."""
    return short_name_of([item.item])


def _amount(label: str, most: int) -> forms.IntegerField:
    return forms.IntegerField(
        label=label, required=False, min_value=0, max_value=most,
        widget=forms.TextInput(attrs={"inputmode": "numeric", "size": 4}),
        error_messages={"invalid": "Enter a whole number."},
    )  # fmt: skip


class SendingForm(SeenOrderForm):
    """Where an order went, its reference, and when."""

    supplier = _text("Supplier", LONGEST_SUPPLIER, required=True)
    reference = _text("Reference", LONGEST_REFERENCE, required=False)
    sent_on = _day("Sent on")

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.fields["supplier"].widget.attrs |= {"list": "suppliers", "autocomplete": "off"}
        self.fields["supplier"].error_messages["required"] = "Enter the supplier’s name."


class SendForm(SendingForm):
    """That, with the lines that went there: a tick and an amount for each of `items`."""

    def __init__(self, *args: Any, items: Sequence[ItemOrdered] = (), **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.items = tuple(items)
        for item in self.items:
            place = _place(item)
            self.fields[f"goes-{place}"] = forms.BooleanField(
                label=item.item, required=False, initial=True
            )
            amount = _amount(f"How many of {item.item}", 2 * MOST_NEEDED)
            amount.initial = item.to_send
            self.fields[f"amount-{place}"] = amount

    @property
    def amounts(self) -> dict[str, int]:
        """How many of each item that was ticked."""
        typed = self.cleaned_data
        ticked = [item for item in self.items if typed.get(f"goes-{_place(item)}")]
        amounts = {item.item: typed.get(f"amount-{_place(item)}") for item in ticked}
        return {item: amount for item, amount in amounts.items() if amount}

    @property
    def lines(self) -> list[tuple[ItemOrdered, forms.BoundField, forms.BoundField]]:
        """Each item with its tick and its amount."""
        return [
            (item, self[f"goes-{_place(item)}"], self[f"amount-{_place(item)}"])
            for item in self.items
        ]


class ReceiveForm(SeenOrderForm):
    """What came of an order that was sent: all that was missing, or so many of each line."""

    what = forms.ChoiceField(
        choices=[(each, each) for each in ("these", "all", "take back")], required=False
    )
    confirmed = forms.BooleanField(required=False, widget=forms.HiddenInput())
    came_on = _day("Came on")
    note = _text("Note", LONGEST_NOTE, required=False)

    def __init__(self, *args: Any, sent: Sent, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.sent = sent
        for line in sent.lines:
            field = _amount(f"How many {line.row.item} came", 2 * MOST_NEEDED)
            field.initial = line.missing or None
            self.fields[f"came-{line.row.pk}"] = field

    @property
    def amounts(self) -> dict[int, int]:
        """How many came, by the keys of the lines."""
        if self.cleaned_data.get("what") == "all":
            return {line.row.pk: line.missing for line in self.sent.lines}
        return {
            line.row.pk: self.cleaned_data.get(f"came-{line.row.pk}") or 0
            for line in self.sent.lines
        }

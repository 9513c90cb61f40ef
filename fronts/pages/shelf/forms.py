"""The forms that count what is in stock, lay it by for a job, give it back and use it."""

from collections.abc import Iterable
from decimal import Decimal
from fractions import Fraction
from typing import Any, cast

from django import forms
from django.core.exceptions import ValidationError

from fronts.models.shelf import GIVEN_BACK, LAID_BY, USED
from fronts.pages.shared.row_key import LONGEST_KEY, row_key
from fronts.pages.shared.words_field import Words
from fronts.rules.limits import LONGEST_ITEM, LONGEST_NOTE, MOST_NEEDED
from fronts.rules.money import LONGEST_AMOUNT, NoAmount, decimals_of, read_amount
from fronts.rules.offers import PACK_DECIMALS
from fronts.rules.shelf import kept
from shopjobs.forms.house import HouseForm, sentence
from shopjobs.models import Job


class AmountField(forms.CharField):
    """How many, or how much by length: whole pieces, or a number with few decimals."""

    def __init__(self, *, label: str, unit: str, **kwargs: Any) -> None:
        self.unit = unit
        of = f"{label}, {unit}" if unit else label
        widget = forms.TextInput({"inputmode": "decimal" if unit else "numeric"})
        super().__init__(label=of, max_length=LONGEST_AMOUNT, widget=widget, **kwargs)

    def clean(self, value: Any) -> Fraction:
        text = super().clean(value)
        try:
            amount = read_amount(text)
        except NoAmount as fault:
            raise ValidationError(sentence(str(fault))) from fault
        if amount > MOST_NEEDED:
            raise ValidationError(f"Give {MOST_NEEDED} at most.")
        _refuse_parts(amount, self.unit)
        return Fraction(amount)


def _refuse_parts(amount: Decimal, unit: str) -> None:
    decimals = decimals_of(amount)
    if not unit and decimals:
        raise ValidationError("Pieces are counted whole.")
    if decimals > PACK_DECIMALS:
        raise ValidationError(f"Enter at most {PACK_DECIMALS} decimals.")


class CountForm(HouseForm):
    """How many there are in all, and why that is said; `seen` is what was known of it."""

    reason = Words(
        label="Why",
        max_length=LONGEST_NOTE,
        help_text="Such as: counted the shelf, two were broken.",
        error_messages={"required": "Say why, so that others understand it."},
    )
    seen = forms.CharField(required=False, max_length=LONGEST_KEY, widget=forms.HiddenInput)
    field_order = ("item", "amount", "reason")
    seen_now = ""
    """What is known of it by now, for the form as it is shown."""

    def __init__(self, *args: Any, unit: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.fields["amount"] = AmountField(label="On hand in all", unit=unit)
        self.order_fields(self.field_order)

    @property
    def last_seen(self) -> int | None:
        """The last entry that whoever counted had in view."""
        return row_key(self.cleaned_data.get("seen") or "")


class MoveForm(HouseForm):
    """So much laid by for a job, given back from it, or used for it."""

    kind = forms.ChoiceField(choices=[(kind, kind) for kind in (LAID_BY, GIVEN_BACK, USED)])
    job = forms.TypedChoiceField(
        label="Job", coerce=int, error_messages={"required": "Choose the job."}
    )

    def __init__(self, *args: Any, unit: str, jobs: Iterable[Job], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        choices = [(job.pk, f"{job.number} {job.client_name}".strip()) for job in jobs]
        cast(Any, self.fields["job"]).choices = [("", "Choose one"), *choices]
        self.fields["amount"] = AmountField(label="How many" if not unit else "How much", unit=unit)
        self.unit = unit

    @property
    def amount(self) -> int:
        """How much, as it is kept."""
        return kept(self.cleaned_data["amount"], self.unit)

    def clean(self) -> dict[str, Any]:
        """Nothing is no move."""
        given = super().clean() or {}
        if given.get("amount") == 0:
            self.add_error("amount", "Enter more than nothing.")
        return given


class NewCountForm(CountForm):
    """The same of something that is named here."""

    item = Words(
        label="Item",
        max_length=LONGEST_ITEM,
        help_text="As your list of items or an order calls it.",
        widget=forms.TextInput({"list": "items", "autocomplete": "off"}),
    )

"""The form of a supplier, and that of the usual currency."""

from typing import Any

from django import forms

from fronts.models import Supplier
from fronts.models.suppliers import CURRENCIES
from fronts.pages.shared.words_field import Words
from fronts.rules.limits import LONGEST_NOTE, LONGEST_SITE, LONGEST_SUPPLIER
from fronts.rules.offers import LONGEST_CODE, MOST_LEAD_DAYS
from shopjobs.forms.house import HouseForm
from shopjobs.forms.seen import SeenForm

FIELDS = ("name", "phone", "email", "address", "account", "lead_days", "note")


def lead_days_field(label: str, help_text: str) -> forms.IntegerField:
    """Working days until something comes; empty where nobody says."""
    return forms.IntegerField(
        label=label,
        required=False,
        min_value=0,
        max_value=MOST_LEAD_DAYS,
        help_text=help_text,
        error_messages={"invalid": "Enter whole working days, or leave it empty."},
        widget=forms.TextInput({"inputmode": "numeric"}),
    )


class SupplierForm(SeenForm):
    """A supplier; all but the name may be left empty."""

    name = Words(label="Name", max_length=LONGEST_SUPPLIER)
    phone = Words(
        label="Phone", max_length=40, required=False, widget=forms.TextInput({"type": "tel"})
    )
    email = forms.EmailField(
        label="E-mail",
        required=False,
        error_messages={"invalid": "Enter an address like office@firm.example."},
    )
    address = Words(label="Address", max_length=LONGEST_SITE, required=False)
    account = Words(
        label="Account number",
        max_length=LONGEST_CODE,
        required=False,
        help_text="Yours with them.",
    )
    lead_days = lead_days_field("Usual lead days", "Working days, until what is ordered comes.")
    note = Words(label="Note", max_length=LONGEST_NOTE, required=False)

    def __init__(self, *args: Any, row: Supplier | None = None, **kwargs: Any) -> None:
        if row is not None:
            kwargs["initial"] = {name: getattr(row, name) for name in FIELDS}
        super().__init__(*args, **kwargs)
        self.is_merged = row is not None

    @property
    def facts(self) -> dict[str, object]:
        """What was entered, by the names of the columns."""
        return {name: self.cleaned_data[name] for name in FIELDS}


class CurrencyForm(HouseForm):
    """In what the shop usually pays."""

    code = forms.ChoiceField(
        label="Usual currency",
        choices=CURRENCIES,
        help_text="Of a price that says none.",
    )

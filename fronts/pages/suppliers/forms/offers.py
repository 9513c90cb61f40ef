"""The form of an offer."""

from collections.abc import Sequence
from typing import Any, cast

from django import forms
from django.core.exceptions import ValidationError

from fronts.models import Offer, Supplier
from fronts.models.suppliers import CURRENCIES
from fronts.pages.shared.words_field import Words
from fronts.pages.suppliers.forms.suppliers import lead_days_field
from fronts.rules.limits import LONGEST_ITEM, LONGEST_NOTE, MOST_NEEDED
from fronts.rules.money import (
    LONGEST_AMOUNT,
    NoAmount,
    amount_text,
    number_text,
    read_amount,
    read_price,
)
from fronts.rules.offers import (
    BUY_UNITS,
    LONGEST_CODE,
    OfferFacts,
    offer_faults,
)
from shopjobs.forms.house import sentence
from shopjobs.forms.seen import SeenForm

_DECIMAL = {"inputmode": "decimal", "maxlength": LONGEST_AMOUNT}


class OfferForm(SeenForm):
    """What a supplier asks for an item; `item` is asked of a new one."""

    item = Words(
        label="Item",
        max_length=LONGEST_ITEM,
        help_text="As the list of items or an order calls it.",
        widget=forms.TextInput({"list": "items", "autocomplete": "off"}),
    )
    supplier = forms.TypedChoiceField(
        label="Supplier", coerce=int, error_messages={"required": "Choose the supplier."}
    )
    code = Words(label="Supplier's code", max_length=LONGEST_CODE, required=False)
    pack = forms.CharField(
        label="In a pack", max_length=LONGEST_AMOUNT, initial="1", widget=forms.TextInput(_DECIMAL)
    )
    unit = forms.ChoiceField(label="Counted in", choices=list(BUY_UNITS.items()))
    price = forms.CharField(
        label="Price of a pack", max_length=LONGEST_AMOUNT, widget=forms.TextInput(_DECIMAL)
    )
    currency = forms.ChoiceField(label="Currency", choices=CURRENCIES)
    lead_days = lead_days_field("Lead days", "Working days; empty: as usual with them.")
    least = forms.IntegerField(
        label="Least order, packs",
        min_value=1,
        max_value=MOST_NEEDED,
        initial=1,
        error_messages={"invalid": "Enter a whole number of packs."},
        widget=forms.TextInput({"inputmode": "numeric"}),
    )
    preferred = forms.BooleanField(label="Preferred: taken before others", required=False)
    note = Words(label="Note", max_length=LONGEST_NOTE, required=False)

    def __init__(
        self,
        *args: Any,
        suppliers: Sequence[Supplier],
        usual: str,
        row: Offer | None = None,
        preferred: bool = False,
        **kwargs: Any,
    ) -> None:
        known = {"currency": usual, **kwargs.pop("initial", {})}
        kwargs["initial"] = known if row is None else _held(row, preferred=preferred)
        super().__init__(*args, **kwargs)
        self.is_merged = row is not None
        self.usual = usual
        choices = [(each.pk, each.name) for each in suppliers]
        cast(Any, self.fields["supplier"]).choices = [("", "Choose one"), *choices]
        if row is not None:
            del self.fields["item"]

    def clean_pack(self) -> Any:
        """How much is in a pack, exactly."""
        try:
            return read_amount(self.cleaned_data["pack"])
        except NoAmount as fault:
            raise ValidationError(sentence(str(fault))) from fault

    def clean(self) -> dict[str, Any]:
        """The price by its currency, and what does not go together, each at its field."""
        given = super().clean()
        if not {"price", "currency"} <= given.keys():
            return given
        try:
            given["price"] = read_price(given["price"], stated=given["currency"], usual=self.usual)
        except NoAmount as fault:
            self.add_error("price", sentence(str(fault)))
        if not self.errors:
            for name, words in offer_faults(self.facts).items():
                self.add_error(name, sentence(words))
        return given

    @property
    def facts(self) -> OfferFacts:
        """The offer as it was entered."""
        names = ("price", "code", "pack", "unit", "lead_days", "least", "note")
        return OfferFacts(**{name: self.cleaned_data[name] for name in names})


def _held(row: Offer, *, preferred: bool) -> dict[str, Any]:
    return {
        "supplier": row.supplier_id, "code": row.code, "pack": number_text(row.pack),
        "unit": row.unit, "price": amount_text(row.price, row.currency), "currency": row.currency,
        "lead_days": row.lead_days, "least": row.least, "preferred": preferred, "note": row.note,
    }  # fmt: skip

"""What a job may cost, as it is typed."""

from typing import Any

from django import forms

from fronts.models.suppliers import CURRENCIES
from fronts.rules.money import LONGEST_AMOUNT, NoAmount, Price, amount_text, read_price
from shopjobs.forms.house import HouseForm, sentence


class BudgetForm(HouseForm):
    """The amount with its currency; empty, none is set."""

    amount = forms.CharField(
        label="What is bought may cost",
        required=False,
        max_length=LONGEST_AMOUNT,
        help_text="For the whole job; empty: no amount is set.",
        widget=forms.TextInput({"inputmode": "decimal", "autocomplete": "off"}),
    )
    currency = forms.ChoiceField(label="Currency", choices=CURRENCIES)

    def __init__(self, data: Any, *, budget: Price | None, usual: str) -> None:
        shown = {"currency": usual}
        if budget is not None:
            amount = amount_text(budget.amount, budget.currency)
            shown = {"amount": amount, "currency": budget.currency}
        self.usual = usual
        super().__init__(data, initial=shown, auto_id="budget-%s")

    def clean(self) -> dict[str, Any]:
        """The amount by its currency."""
        given = super().clean() or {}
        if given.get("amount") and "currency" in given:
            try:
                given["price"] = read_price(
                    given["amount"], stated=given["currency"], usual=self.usual
                )
            except NoAmount as fault:
                self.add_error("amount", sentence(str(fault)))
        return given

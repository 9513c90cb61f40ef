"""The form of the shop."""

from typing import Any

from django import forms

from shopjobs.forms.jobs import StepField, StepForm, UnitField, offer_step
from shopjobs.forms.seen import SeenForm
from shopjobs.models import Paper, Shop
from shopjobs.steps import tidy


class ShopForm(SeenForm, StepForm):
    """The shop's name and habits."""

    name = forms.CharField(
        label="Name",
        max_length=120,
        error_messages={"required": "Enter the shop's name."},
    )
    unit = UnitField(label="Unit of new jobs")
    step = StepField(label="Cutting step of new jobs")
    paper = forms.ChoiceField(label="Paper", choices=Paper, help_text="Sheets are printed on it.")

    def __init__(self, *args: Any, shop: Shop, **kwargs: Any) -> None:
        known = {"name": shop.name, "unit": shop.unit, "paper": shop.paper}
        kwargs.setdefault("initial", known | {"step": tidy(shop.step)})
        super().__init__(*args, **kwargs)
        offer_step(self, shop.step)

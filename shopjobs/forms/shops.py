"""The form of the shop."""

from typing import Any

from django import forms

from shopjobs.forms.house import HouseForm
from shopjobs.forms.jobs import StepField, offer_step
from shopjobs.models import Paper, Shop, Unit
from shopjobs.steps import tidy


class ShopForm(HouseForm):
    """The shop's name and habits."""

    name = forms.CharField(
        label="Name",
        max_length=120,
        error_messages={"required": "Enter the shop's name."},
    )
    unit = forms.ChoiceField(label="Unit of new jobs", choices=Unit)
    step = StepField(label="Cutting step of new jobs")
    paper = forms.ChoiceField(label="Paper", choices=Paper, help_text="Sheets are printed on it.")

    def __init__(self, *args: Any, shop: Shop, **kwargs: Any) -> None:
        known = {"name": shop.name, "unit": shop.unit, "paper": shop.paper}
        kwargs.setdefault("initial", known | {"step": tidy(shop.step)})
        super().__init__(*args, **kwargs)
        offer_step(self, shop.step)

"""The form in which fronts are marked as cut, or their marks taken back."""

from typing import Any

from django import forms

from fronts.rules.limits import LONGEST_FRONT_LABEL, MOST_FRONTS_IN_ALL
from shopjobs.forms.house import HouseForm

_LONGEST = LONGEST_FRONT_LABEL + 20


class CutFrontsForm(HouseForm):
    """Fronts that were ticked, each with its short name as the page showed it."""

    take_back = forms.BooleanField(required=False, widget=forms.HiddenInput)
    front = forms.Field(
        widget=forms.MultipleHiddenInput,
        error_messages={"required": "Tick the fronts that were cut."},
    )

    def clean_front(self) -> dict[str, str]:
        """Short names by labels."""
        said: list[Any] = self.cleaned_data["front"][:MOST_FRONTS_IN_ALL]
        pairs = (str(one)[:_LONGEST].rpartition(" ") for one in said)
        return {label: short for label, _, short in pairs}

"""The form in which an installer writes down how a front fitted."""

from typing import Any

from django import forms

from fronts.fields import LengthField
from fronts.rules.kitchen import SIDES
from shopjobs.forms.house import HouseForm
from shopjobs.words import one_line


class FitForm(HouseForm):
    """The gaps measured round one front, in the job's unit, and a note."""

    front = forms.CharField(max_length=100, strip=False, widget=forms.HiddenInput())

    def __init__(self, *args: Any, unit: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        for side in SIDES:
            self.fields[f"gap_{side}"] = LengthField(
                unit=unit, zero=True, required=False, label=side.capitalize()
            )
        self.fields["note"] = forms.CharField(
            label="Note",
            required=False,
            max_length=400,
            validators=[one_line],
            error_messages={"max_length": "Keep the note under 400 characters."},
        )

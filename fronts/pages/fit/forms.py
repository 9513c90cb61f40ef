"""The form in which an installer writes down how a front fitted."""

from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.facts import LengthField
from fronts.rules.kitchen import SIDES
from shopjobs.forms.house import HouseForm
from shopjobs.words import one_line

_GAPS = tuple(f"gap_{side}" for side in SIDES)


class FitForm(HouseForm):
    """The gaps measured round one front, in the job's unit, and a note.

    What is typed is kept in the browser until it is recorded.
    """

    front = forms.CharField(max_length=100, strip=False, widget=forms.HiddenInput())

    def __init__(self, *args: Any, unit: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        for side, name in zip(SIDES, _GAPS, strict=True):
            self.fields[name] = LengthField(
                unit=unit, zero=True, required=False, label=side.capitalize()
            )
        self.fields["note"] = forms.CharField(
            label="Note",
            required=False,
            max_length=400,
            validators=[one_line],
            error_messages={"max_length": "Keep the note under 400 characters."},
        )
        for name in ("note", *_GAPS):
            self.fields[name].widget.attrs["data-keep"] = True

    def clean(self) -> dict[str, Any]:
        """Something must have been measured or said."""
        given = dict(super().clean() or self.cleaned_data)
        said = any(given.get(name) not in ("", None) for name in ("note", *_GAPS))
        if not said and not self.errors:
            raise ValidationError("Enter a gap that was measured, or a note.")
        return given

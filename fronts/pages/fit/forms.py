"""The form in which an installer writes down how a front fitted."""

from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.facts.form_fields import FactsFormMeta
from fronts.facts.rows import columns_of, from_values
from fronts.facts.size_form_fields import Size
from fronts.rules.fits import FitFacts, end_names
from fronts.rules.kinds import SIDES
from fronts.rules.limits import LONGEST_FRONT_LABEL
from shopjobs.forms.house import HouseForm
from shopjobs.words import one_line


class FitForm(HouseForm, metaclass=FactsFormMeta):
    """The gaps measured round one front, in the job's unit, and a note."""

    facts = FitFacts
    without = (
        "label", "state", "planned",
        *(f"gaps.{name}" for side in SIDES for name in end_names(side)),
    )  # fmt: skip

    front = forms.CharField(max_length=LONGEST_FRONT_LABEL, strip=False, widget=forms.HiddenInput())

    def __init__(self, *args: Any, unit: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        for field in self.fields.values():
            if isinstance(field, Size):
                field.speak(unit)
        self.fields["note"].validators.append(one_line)
        self.fields["note"].error_messages["max_length"] = "Keep the note under 400 characters."

    def entered(self, label: str) -> FitFacts:
        """What was measured and said of the front that is called so."""
        unasked = columns_of(FitFacts(label))
        return from_values(FitFacts, {**unasked, **self.cleaned_data, "label": label})

    def clean(self) -> dict[str, Any]:
        """Something must have been measured or said."""
        given = dict(super().clean() or self.cleaned_data)
        if not self.errors and self.entered("").says_nothing:
            raise ValidationError("Enter a gap that was measured, or a note.")
        return given

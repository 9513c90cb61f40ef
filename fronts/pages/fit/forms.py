"""The form in which an installer says how a front stands and how it fitted."""

from collections.abc import Mapping
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.facts.form_fields import FactsFormMeta
from fronts.facts.rows import columns_of, from_values
from fronts.facts.size_form_fields import Size
from fronts.rules.fits import UPRIGHT, FitFacts, Gaps, end_names
from fronts.rules.front_states import DONE, FRONT_STATES
from fronts.rules.kinds import SIDES
from fronts.rules.lengths import Mm
from fronts.rules.limits import LONGEST_FRONT_LABEL
from shopjobs.forms.house import HouseForm
from shopjobs.words import one_line

AS_PLANNED = "as planned"
"""Pressed where every gap is as planned: the front is done."""
SURE = "sure"
"""The gaps that were asked about and are so, as they were typed."""
_STATES = [(AS_PLANNED, AS_PLANNED), *((word, one.says) for word, one in FRONT_STATES.items())]


class FitForm(HouseForm, metaclass=FactsFormMeta):
    """How one front stands, the gaps measured round it, in the job's unit, and a note."""

    facts = FitFacts
    without = (
        "label", "state", "planned", "was",
        *(f"gaps.{name}" for side in SIDES if side not in UPRIGHT for name in end_names(side)),
    )  # fmt: skip

    front = forms.CharField(max_length=LONGEST_FRONT_LABEL, strip=False, widget=forms.HiddenInput())
    state = forms.ChoiceField(
        choices=_STATES,
        widget=forms.HiddenInput,
        error_messages={
            "required": "Say how the front stands: done, to adjust, or what is wrong with it."
        },
    )

    def __init__(self, *args: Any, unit: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        for field in self.fields.values():
            if isinstance(field, Size):
                field.speak(unit)
        self.fields["note"].validators.append(one_line)
        self.fields["note"].error_messages["max_length"] = "Keep the note under 400 characters."

    @property
    def typed(self) -> str:
        """The gaps as they were typed, side by side."""
        names = [name for name in self.fields if name.startswith("gap_")]
        return "|".join(str(self[name].value() or "") for name in names)

    @property
    def is_sure(self) -> bool:
        """Whether these very gaps were asked about."""
        return self.data.get(SURE) == self.typed

    def entered(self, label: str, planned: Gaps) -> FitFacts:
        """What was measured and said of the front that is called so; as `planned` where it is."""
        unasked = columns_of(FitFacts(label))
        state, gaps = self.cleaned_data["state"], _gaps_of(self.cleaned_data)
        if state == AS_PLANNED:
            state, gaps = DONE.word, columns_of(planned)
        known = {f"gap_{name}": gap for name, gap in gaps.items()}
        note = self.cleaned_data["note"]
        return from_values(
            FitFacts, {**unasked, **known, "note": note, "label": label, "state": state}
        )

    def clean(self) -> dict[str, Any]:
        """A side is measured at one place, or at both its ends."""
        given = dict(super().clean() or self.cleaned_data)
        for side in UPRIGHT:
            names = [f"gap_{name}" for name in end_names(side)]
            said = [given.get(name) is not None for name in names]
            if any(said) and not all(said) and not self.errors:
                missing = names[said.index(False)]
                self.add_error(missing, ValidationError("Measure it at both ends, or at none."))
        return given


def _gaps_of(cleaned: Mapping[str, Any]) -> dict[str, Mm | None]:
    """The gaps by their names; where both ends of a side are said, they hold."""
    gaps = {
        name.removeprefix("gap_"): value
        for name, value in cleaned.items()
        if name.startswith("gap_")
    }
    for side in UPRIGHT:
        if gaps[end_names(side)[0]] is not None:
            gaps[side] = None
    return gaps

"""The offcuts that a plan may use, ticked one by one; and what becomes of those of a plan."""

from collections.abc import Sequence
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.cutting.model import StockSize
from fronts.figures.offcuts import offcut_size
from fronts.models import CutPlan
from fronts.rules.offcuts import OffcutAt
from shopjobs.forms.house import HouseForm

GONE = "%(value)s is not to be had any more. Look which offcuts there are now."
DEEDS = ("keep", "sawn", "unsawn")


def offcuts_field(offered: Sequence[OffcutAt], unit: str) -> forms.MultipleChoiceField:
    """The offcuts of one material to choose from, all of them ticked."""
    return forms.MultipleChoiceField(
        label="Offcuts to use first",
        choices=[(each.label, _said(each, unit)) for each in offered],
        initial=[each.label for each in offered],
        required=False,
        widget=forms.CheckboxSelectMultiple,
        error_messages={"invalid_choice": GONE},
    )


def _said(offcut: OffcutAt, unit: str) -> str:
    ours = ", laid by for this job" if offcut.is_ours else ""
    return f"{offcut.label}, {offcut_size(offcut.facts, unit)}{ours}"


def stock_of(offcut: OffcutAt, *, grained: bool) -> StockSize:
    """An offcut as a plan is told of it; `grained` where grain is minded at all."""
    facts = offcut.facts
    return StockSize(
        label=offcut.label,
        length=facts.length,
        width=None if facts.is_stick else facts.width,
        count=1,
        grain="length" if grained and facts.is_grained and not facts.is_stick else None,
        own=True,
    )


class PlanOffcutsForm(HouseForm):
    """What becomes of the offcuts of the plan that was seen."""

    plan = forms.IntegerField(widget=forms.HiddenInput)
    do = forms.ChoiceField(choices=[(deed, deed) for deed in DEEDS], widget=forms.HiddenInput)
    piece = forms.MultipleChoiceField(
        label="Pieces to keep",
        required=False,
        error_messages={"invalid_choice": "The plan has no such piece; look at it again."},
    )

    def __init__(self, *args: Any, shown: CutPlan, places: Sequence[str], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.shown = shown
        field = self.fields["piece"]
        if isinstance(field, forms.MultipleChoiceField):
            field.choices = [(place, place) for place in places]

    def clean_plan(self) -> int:
        """Refuse what was meant for another plan."""
        key: int = self.cleaned_data["plan"]
        if key != self.shown.pk:
            raise ValidationError("Another plan was made meanwhile. Look at what that one leaves.")
        return key

    def clean(self) -> dict[str, Any]:
        """Keeping nothing is nothing."""
        given: dict[str, Any] = super().clean() or self.cleaned_data
        if given.get("do") == "keep" and not given.get("piece") and "piece" not in self.errors:
            self.add_error("piece", "Tick the pieces to keep.")
        return given

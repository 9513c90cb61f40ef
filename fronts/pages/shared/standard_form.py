"""The form of one level of the house standard: what is empty, the farther level says."""

from collections.abc import Mapping
from typing import Any

from django import forms

from fronts.models.standard import STANDARD_FIELDS
from fronts.pages.shared.choice_words import MOUNTS
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.pages.shared.length_fields import Size
from fronts.rules.lengths import Mm, show
from fronts.selectors.standards import InForce

SIDES = ("left", "right", "top", "bottom")
_MOUNT_WORDS = dict(MOUNTS)


class StandardForm(KitchenForm):
    """Every key of the house standard at one level."""

    groups = (
        Group("How fronts sit", ("mount", "gap_between", "least_gap"), kind="cells wide"),
        Group(
            "Overlay: how far a front laps past its opening",
            tuple(f"overlay_{side}" for side in SIDES),
            hint="Give the overlay or the reveal, not both.",
            kind="cells wide",
        ),
        Group(
            "Reveal: how much of a member stays in sight",
            ("reveal_between", *(f"reveal_{side}" for side in SIDES)),
            hint="Between two openings of a cabinet, and at each outer side of it.",
            kind="cells wide",
        ),
        Group("Inset: gap inside the opening", tuple(f"inset_{side}" for side in SIDES),
              kind="cells wide"),
        Group(
            "Making and hanging",
            ("front_thickness", "trim_limit", "least_stile", "skin", "bite", "hinge_end"),
            kind="cells wide",
        ),
    )  # fmt: skip

    mount = forms.ChoiceField(label="Fronts are", choices=(("", ""), *MOUNTS), required=False)
    gap_between = Size(
        label="Gap between two fronts in one opening", small=True, zero=True, required=False
    )
    least_gap = Size(label="Least gap anywhere", small=True, zero=True, required=False)
    overlay_left = Size(label="Left", small=True, zero=True, required=False)
    overlay_right = Size(label="Right", small=True, zero=True, required=False)
    overlay_top = Size(label="Top", small=True, zero=True, required=False)
    overlay_bottom = Size(label="Bottom", small=True, zero=True, required=False)
    reveal_between = Size(label="Between openings", small=True, zero=True, required=False)
    reveal_left = Size(label="Left", small=True, zero=True, required=False)
    reveal_right = Size(label="Right", small=True, zero=True, required=False)
    reveal_top = Size(label="Top", small=True, zero=True, required=False)
    reveal_bottom = Size(label="Bottom", small=True, zero=True, required=False)
    inset_left = Size(label="Left", small=True, zero=True, required=False)
    inset_right = Size(label="Right", small=True, zero=True, required=False)
    inset_top = Size(label="Top", small=True, zero=True, required=False)
    inset_bottom = Size(label="Bottom", small=True, zero=True, required=False)
    front_thickness = Size(label="Thickness of a front", small=True, required=False)
    trim_limit = Size(
        label="Most to trim off a door on hand", small=True, zero=True, required=False
    )
    least_stile = Size(
        label="Least stile left after trimming", small=True, zero=True, required=False
    )
    skin = Size(label="Wood left before a screw's tip", small=True, zero=True, required=False)
    bite = Size(label="Least bite of a mounting screw", small=True, zero=True, required=False)
    hinge_end = Size(label="First hinge from a door's end", small=True, zero=True, required=False)

    def __init__(self, *args: Any, levels: Mapping[str, InForce], **kwargs: Any) -> None:
        own = {name: held.value for name, held in levels.items() if held.own}
        kwargs.setdefault("initial", own)
        super().__init__(*args, **kwargs)
        for name, held in levels.items():
            self._show_beneath(name, held)

    @property
    def values(self) -> dict[str, Any]:
        return {name: self.cleaned_data[name] for name in STANDARD_FIELDS}

    def _show_beneath(self, name: str, held: InForce) -> None:
        words = inherited(held.beneath, held.beneath_level, self.unit)
        field = self.fields[name]
        if isinstance(field, forms.ChoiceField):
            field.choices = [("", words), *MOUNTS]
        else:
            self.offer(name, words)


def inherited(value: Mm | str | None, level: str, unit: str) -> str:
    """What holds where a level says nothing, and whose word it is: `1/2, from the shop`."""
    if value is None:
        return "not set"
    said = _MOUNT_WORDS[value] if isinstance(value, str) else show(value, unit)
    if level == "default":
        return f"{said}, common practice"
    return f"{said}, from {'the ' if level in ('shop', 'job') else ''}{level}"

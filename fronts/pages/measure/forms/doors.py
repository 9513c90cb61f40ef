"""The form of a door on hand, and its old hinge bores."""

from typing import Any

from django import forms

from fronts.models import DoorOnHand
from fronts.pages.measure.forms.row_forms import RowForm
from fronts.pages.shared.choice_words import FRONT_BUILDS
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.pages.shared.length_fields import Size
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm, show
from fronts.rules.practice import PRACTICE

DOOR_FIELDS = (
    "label", "width", "height", "thickness", "build", "stile", "rail", "panel_thickness",
    "knob_x", "knob_y", "knob_diameter", "bore_diameter", "material",
)  # fmt: skip
BORE = Mm(35)
_PLACES = "Places are from the door's lower left corner, seen from the front."


class DoorForm(KitchenForm):
    """A door that exists and may become a front."""

    groups = (
        Group("", ("label", "width", "height", "thickness", "build", "material"), kind="cells"),
        Group("Its frame", ("stile", "rail", "panel_thickness"), kind="cells only-five-piece"),
        Group("Old knob hole", ("knob_x", "knob_y", "knob_diameter"), hint=_PLACES, kind="cells"),
        Group("Old hinge bores", ("bore_diameter",), kind="cells"),
    )

    label = forms.CharField(
        label="Label", max_length=40, error_messages={"required": "Enter a label, like D1."}
    )
    width = Size(label="Width")
    height = Size(label="Height")
    thickness = Size(label="Thickness", small=True)
    build = forms.ChoiceField(label="Built as", choices=FRONT_BUILDS)
    stile = Size(label="Width of the stiles", required=False)
    rail = Size(label="Width of the rails", required=False)
    panel_thickness = Size(label="Thickness of the panel", small=True, required=False)
    knob_x = Size(label="From the left", zero=True, required=False)
    knob_y = Size(label="From the bottom", zero=True, required=False)
    knob_diameter = Size(label="Diameter of the knob hole", small=True, required=False)
    bore_diameter = Size(label="Diameter of the bores", small=True, required=False)
    material = forms.CharField(label="Material", max_length=80, required=False)

    def __init__(self, *args: Any, door: DoorOnHand | None = None, **kwargs: Any) -> None:
        if door is not None:
            kwargs.setdefault("initial", {name: getattr(door, name) for name in DOOR_FIELDS})
        super().__init__(*args, **kwargs)
        for name, usual in (
            ("stile", PRACTICE.stile), ("rail", PRACTICE.rail),
            ("panel_thickness", PRACTICE.panel_thickness), ("knob_diameter", PRACTICE.knob_hole),
        ):  # fmt: skip
            self.offer(name, show(usual, self.unit))
        self.offer("bore_diameter", "35 mm")
        self.offer("material", "as the shop's")

    @property
    def values(self) -> dict[str, Any]:
        values = super().values
        return values | {"bore_diameter": values["bore_diameter"] or BORE}


class BoreForm(RowForm):
    """The place of one old hinge bore."""

    x = Size(label="From the left", zero=True, asks="how far the bore is from the left")
    y = Size(label="From the bottom", zero=True, asks="how far up the bore is")

    @property
    def row(self) -> Point:
        return Point(**self.cleaned_data)


def bore_rows(door: DoorOnHand | None) -> list[dict[str, Any]]:
    """The door's bores, as the form's rows start."""
    if door is None:
        return []
    return [{"x": bore.x, "y": bore.y} for bore in door.hinge_bores.order_by("position", "pk")]

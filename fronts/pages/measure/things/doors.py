"""Doors on hand, with their old hinge bores."""

from typing import Any

from fronts import models
from fronts.figures.sizes import size
from fronts.pages.measure.forms.row_forms import RowForm
from fronts.pages.measure.things.thing_page import InThing, ThingForm, ThingPage, Words
from fronts.pages.shared.kitchen_form import Group, When
from fronts.rules.kitchen import DoorOnHand, Point
from fronts.rules.lengths import show
from fronts.rules.practice import PRACTICE
from fronts.rules.validity import builds_with
from fronts.services.doors import door_delete

_PLACES = "Places are from the door's lower left corner, seen from the front."


class DoorForm(ThingForm):
    """A door that exists and may become a front."""

    facts = DoorOnHand
    groups = (
        Group("", ("label", "width", "height", "thickness", "build", "material"), kind="cells"),
        Group("Its frame", ("stile", "rail", "panel_thickness"), kind="cells"),
        Group("Old knob hole", ("knob_x", "knob_y", "knob_diameter"), hint=_PLACES, kind="cells"),
        Group("Old hinge bores", ("bore_diameter",), kind="cells"),
    )

    used_when = {
        name: When("build", builds_with(name)) for name in ("stile", "rail", "panel_thickness")
    }

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.fields["thickness"].required = True
        for name, usual in (
            ("stile", PRACTICE.stile), ("rail", PRACTICE.rail),
            ("panel_thickness", PRACTICE.panel_thickness), ("knob_diameter", PRACTICE.knob_hole),
        ):  # fmt: skip
            self.offer(name, show(usual, self.unit))
        self.offer("bore_diameter", "35 mm")
        self.offer("material", "as the shop's")


class BoreForm(RowForm):
    """The place of one old hinge bore."""

    facts = Point


def _words(door: models.DoorOnHand, unit: str) -> Words:
    """A door whose bores are at hand."""
    notes = ["knob hole"] if door.knob_x is not None else []
    bores = len(door.hinge_bores.all())
    if bores:
        notes.append(f"{bores} hinge bore{'s' if bores > 1 else ''}")
    what = f"{door.build.capitalize()}{f', {door.material}' if door.material else ''}"
    return Words(size(unit, door.width, door.height, door.thickness), what, tuple(notes))


DOORS = ThingPage(
    form=DoorForm,
    words=_words,
    letter="D",
    none="None. A door on hand is an old one that can become a front.",
    alike=("thickness", "build", "stile", "rail", "panel_thickness", "material"),
    inside=InThing("hinge_bores", BoreForm, "bores", "Places of old hinge bores"),
    delete=door_delete,
)

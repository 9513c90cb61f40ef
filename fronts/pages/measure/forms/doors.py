"""The form of a door on hand, and its old hinge bores."""

from typing import Any

from fronts.facts.rows import columns_of
from fronts.pages.measure.forms.row_forms import RowForm
from fronts.pages.shared.kitchen_form import Group, KitchenForm, When
from fronts.rules.kitchen import DoorOnHand, Point
from fronts.rules.lengths import show
from fronts.rules.practice import PRACTICE
from fronts.rules.validity import builds_with

_PLACES = "Places are from the door's lower left corner, seen from the front."


class DoorForm(KitchenForm):
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

    def __init__(self, *args: Any, door: DoorOnHand | None = None, **kwargs: Any) -> None:
        if door is not None:
            kwargs.setdefault("initial", columns_of(door))
        super().__init__(*args, **kwargs)
        self.fields["thickness"].required = True
        for name, usual in (
            ("stile", PRACTICE.stile), ("rail", PRACTICE.rail),
            ("panel_thickness", PRACTICE.panel_thickness), ("knob_diameter", PRACTICE.knob_hole),
        ):  # fmt: skip
            self.offer(name, show(usual, self.unit))
        self.offer("bore_diameter", "35 mm")
        self.offer("material", "as the shop's")

    @property
    def entered(self) -> DoorOnHand:
        """The door as it was entered, without its bores."""
        return self.stated(DoorOnHand, hinge_bores=())


class BoreForm(RowForm):
    """The place of one old hinge bore."""

    facts = Point


def bore_rows(door: DoorOnHand | None) -> list[dict[str, Any]]:
    """The door's bores, as the form's rows start."""
    return [] if door is None else [columns_of(bore) for bore in door.hinge_bores]

"""The form of a drawer box, and its rows of shelf-pin holes."""

from typing import Any

from fronts.facts.rows import columns_of
from fronts.pages.measure.forms.row_forms import RowForm
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.rules.box_facts import Box, BoxToMake, ShelfPins
from fronts.rules.kitchen import Opening
from fronts.rules.lengths import Mm
from fronts.rules.likely_box import likely_rise, likely_width

LOAD = "Left empty, the load is reckoned from the box's floor and its shelves."


class BoxForm(KitchenForm):
    """A drawer box as it stands in its opening."""

    facts = Box
    groups = (
        Group("", ("width", "height", "depth", "front_thickness"), kind="cells"),
        Group("In its opening", ("rise", "side_clearance"), kind="cells"),
        Group("Its slide", ("slide", "slide_width", "slide_height"), kind="cells"),
        Group("What it carries", ("shelves", "load_kg"), kind="cells", hint=LOAD),
    )

    def __init__(self, *args: Any, box: Box | None, **kwargs: Any) -> None:
        kwargs.setdefault("initial", {"shelves": 0} if box is None else columns_of(box))
        super().__init__(*args, **kwargs)
        self.offer("load_kg", "by its floor")

    @property
    def entered(self) -> Box:
        """The box as it was entered, without its rows of holes."""
        return self.stated(Box, shelf_pins=())


class BoxToMakeForm(KitchenForm):
    """What is decided about a box that is to be made; its sizes follow."""

    facts = BoxToMake
    groups = (Group("", ("slide", "shelves", "load_kg"), kind="cells wide", hint=LOAD),)

    def __init__(self, *args: Any, box: BoxToMake | None, **kwargs: Any) -> None:
        kwargs.setdefault("initial", columns_of(box or BoxToMake()))
        super().__init__(*args, **kwargs)
        self.offer("load_kg", "by its floor")

    @property
    def entered(self) -> BoxToMake:
        """What was decided."""
        return self.stated(BoxToMake)


class PinsForm(RowForm):
    """A row of shelf-pin holes, upwards from its lowest."""

    facts = ShelfPins


def pin_rows(box: Box | None) -> list[dict[str, Any]]:
    """The box's rows of holes, as the form's rows start."""
    return [] if box is None else [columns_of(pins) for pins in box.shelf_pins]


def next_box(
    opening: Opening, index: int, last: Box, behind: Opening, place: int
) -> dict[str, Any]:
    """What a new box starts with: built and hung like the last one that was entered.

    The last one stands behind front `place` of the opening `behind`.
    """
    names = ["height", "depth", "front_thickness", "slide", "slide_width", "slide_height"]
    if _is_lowest(opening, index) and _is_lowest(behind, place):
        names.append("rise")
    width = likely_width(opening.width, behind.width, last.width)
    initial = {name: getattr(last, name) for name in names}
    return initial if width is None else {**initial, "width": width}


def rise_offered(opening: Opening, index: int, step: Mm) -> Mm | None:
    """How high the box is likely to hang; None where the fronts are not even, or none is known."""
    fronts = opening.fronts
    if any(front.own_height for front in fronts):
        return None
    rises = {place: front.box.rise for place, front in enumerate(fronts) if front.box}
    return likely_rise(opening.height, len(fronts), index, rises, step)


def _is_lowest(opening: Opening, index: int) -> bool:
    return index == len(opening.fronts) - 1

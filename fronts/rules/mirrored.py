"""A cabinet as in a mirror: what was at the left stands at the right."""

from collections.abc import Callable, Mapping
from dataclasses import fields, is_dataclass, replace
from typing import TypeVar

from fronts.rules.box_facts import Box
from fronts.rules.kinds import Hinged
from fronts.rules.kitchen import Cabinet, FrontFacts, Measured, Opening
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Sides

T = TypeVar("T")
_OTHER: Mapping[Hinged, Hinged] = {"left": "right", "right": "left"}
FrontWidth = Callable[[str, int], Mm | None]
"""How wide a front is, by its opening's label and its place in it; None where it isn't known."""


def mirrored(cabinet: Cabinet, front_width: FrontWidth) -> Cabinet:
    """The cabinet with all that is in it, left and right changed; its place on the wall stays.

    A handle's own place on a front that has no width yet is left to the rules.
    """
    return replace(
        cabinet,
        openings=tuple(_opening(one, cabinet.width, front_width) for one in cabinet.openings),
        standard=_sides_changed(cabinet.standard),
    )


def _opening(opening: Opening, around: Mm, front_width: FrontWidth) -> Opening:
    fronts = [
        _front(front, opening, front_width(opening.label, place))
        for place, front in enumerate(opening.fronts)
    ]
    if opening.closing.across:
        fronts.reverse()
    return replace(
        opening,
        x=around - opening.x - opening.width,
        fronts=tuple(fronts),
        measured=_measured(opening.measured),
        standard=_sides_changed(opening.standard),
    )


def _front(front: FrontFacts, opening: Opening, width: Mm | None) -> FrontFacts:
    places = () if width is None else tuple(
        replace(place, x=width - place.x) for place in front.handles
    )  # fmt: skip
    return replace(
        front,
        hinged=_OTHER.get(front.hinged, front.hinged) if front.hinged else _unsaid(opening),
        shift_x=-front.shift_x,
        handles=places,
        box=None if front.box is None else _box(front.box, opening.width),
    )


def _unsaid(opening: Opening) -> Hinged | None:
    """A door whose hand nobody said hangs at the left, and so at the right in the mirror."""
    return "right" if opening.closing.hinged else None


def _box(box: Box, opening_width: Mm) -> Box:
    left = box.side_clearance
    return replace(
        box,
        side_clearance=None if left is None else opening_width - left - box.width,
        shelf_pins=tuple(replace(pins, x=box.width - pins.x) for pins in box.shelf_pins),
    )


def _measured(measured: Measured) -> Measured:
    return replace(
        measured,
        height_left=measured.height_right,
        height_right=measured.height_left,
        diagonal_1=measured.diagonal_2,
        diagonal_2=measured.diagonal_1,
    )


def _sides_changed(said: T) -> T:
    """The same with whatever is said of each side changed, however deep it lies."""
    if isinstance(said, Sides):
        return replace(said, left=said.right, right=said.left)
    if not is_dataclass(said) or isinstance(said, type):
        return said
    changed = {one.name: _sides_changed(getattr(said, one.name)) for one in fields(said)}
    return replace(said, **changed)

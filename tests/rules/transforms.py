"""Kitchens turned, moved and renamed, as laws of the schedule want them."""

from collections.abc import Callable
from dataclasses import replace
from typing import TypeVar

from fronts.rules.box_facts import Box
from fronts.rules.kinds import Hinged, Side
from fronts.rules.kitchen import (
    CHOOSE,
    Cabinet,
    DoorOnHand,
    FrontFacts,
    Kitchen,
    Measured,
    Opening,
    Point,
)
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Sides, Standard

T = TypeVar("T")
MIRRORED: dict[Side, Side] = {"left": "right", "right": "left", "top": "top", "bottom": "bottom"}


def each_opening(kitchen: Kitchen, change: Callable[[Opening], Opening]) -> Kitchen:
    """The kitchen with every opening changed."""
    cabinets = tuple(
        replace(each, openings=tuple(change(of) for of in each.openings))
        for each in kitchen.cabinets
    )
    return replace(kitchen, cabinets=cabinets)


def without_choice(kitchen: Kitchen) -> Kitchen:
    """No door is left to be chosen: of several equally good plans any may be found."""

    def decided(of: Opening) -> Opening:
        fronts = tuple(
            replace(front, door_on_hand=None) if front.door_on_hand == CHOOSE else front
            for front in of.fronts
        )
        return replace(of, fronts=fronts)

    return each_opening(kitchen, decided)


def without_measured_widths(kitchen: Kitchen) -> Kitchen:
    """Openings as wide as drawn: a measured width is taken from the left edge on."""

    def drawn(of: Opening) -> Opening:
        return replace(of, measured=replace(of.measured, width_top=None, width_bottom=None))

    return each_opening(kitchen, drawn)


def as_drawn(kitchen: Kitchen) -> Kitchen:
    """Nothing measured on site."""
    return each_opening(kitchen, lambda of: replace(of, measured=Measured()))


def moved(kitchen: Kitchen, by: Mm) -> Kitchen:
    """Every cabinet so far to the right."""
    return replace(
        kitchen, cabinets=tuple(replace(each, x=each.left + by) for each in kitchen.cabinets)
    )


def mirrored(kitchen: Kitchen) -> Kitchen:
    """The kitchen seen in a mirror: left is right on every level, in every door and box."""
    return replace(
        kitchen,
        standard=_standard(kitchen.standard),
        kind_standards=tuple(
            replace(one, standard=_standard(one.standard)) for one in kitchen.kind_standards
        ),
        cabinets=tuple(_cabinet(each) for each in kitchen.cabinets),
        doors_on_hand=tuple(_door(each) for each in kitchen.doors_on_hand),
    )


def mirrored_label(kitchen: Kitchen, label: str) -> str:
    """The label that the mirrored front has: a pair is named from the left."""
    for each in kitchen.cabinets:
        for of in each.openings:
            name = f"{each.label}.{of.label}"
            if of.closed_by == "pair" and label in (f"{name}.1", f"{name}.2"):
                return f"{name}.{'2' if label.endswith('.1') else '1'}"
    return label


def turned(sides: Sides[T]) -> Sides[T]:
    """Left and right exchanged."""
    return replace(sides, left=sides.right, right=sides.left)


def hinge_side(hinged: Hinged | None) -> Hinged | None:
    """The side that a door is hinged at in the mirror."""
    return None if hinged is None else MIRRORED[hinged]


def _standard(level: Standard) -> Standard:
    return replace(
        level,
        overlay=level.overlay and turned(level.overlay),
        inset_gap=level.inset_gap and turned(level.inset_gap),
        reveal=level.reveal and replace(level.reveal, end=turned(level.reveal.end)),
    )


def _cabinet(cabinet: Cabinet) -> Cabinet:
    return replace(
        cabinet,
        x=-cabinet.left - cabinet.width,
        standard=_standard(cabinet.standard),
        openings=tuple(_opening(each, cabinet.width) for each in cabinet.openings),
    )


def _opening(of: Opening, cabinet_width: Mm) -> Opening:
    taken = of.measured
    fronts = tuple(_front(front, of) for front in of.fronts)
    return replace(
        of,
        x=cabinet_width - of.x - of.width,
        fronts=tuple(reversed(fronts)) if of.closing.across else fronts,
        measured=replace(
            taken,
            height_left=taken.height_right,
            height_right=taken.height_left,
            diagonal_1=taken.diagonal_2,
            diagonal_2=taken.diagonal_1,
        ),
        standard=_standard(of.standard),
    )


def _front(front: FrontFacts, of: Opening) -> FrontFacts:
    hinged = (front.hinged or "left") if of.closing.hinged else front.hinged
    return replace(
        front,
        hinged=hinge_side(hinged),
        shift_x=-front.shift_x,
        box=front.box and _box(front.box, of.width),
    )


def _box(box: Box, opening_width: Mm) -> Box:
    clearance = box.side_clearance
    return replace(
        box,
        side_clearance=None if clearance is None else opening_width - box.width - clearance,
        shelf_pins=tuple(replace(each, x=box.width - each.x) for each in box.shelf_pins),
    )


def _door(door: DoorOnHand) -> DoorOnHand:
    hole = door.knob_hole
    return replace(
        door,
        knob_hole=hole and replace(hole, x=door.width - hole.x),
        hinge_bores=tuple(Point(door.width - each.x, each.y) for each in door.hinge_bores),
    )

"""How a knob is fixed on a front that stands on a box: common practice, no source."""

from dataclasses import replace
from typing import TypeAlias

import pytest

from fronts.rules.box_facts import Box, ShelfPins
from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import Recess
from fronts.rules.handles import handles_at
from fronts.rules.kitchen import KnobHole, Point
from fronts.rules.knob_fixing import fix_knob, knob_hole, knobs_on_box
from fronts.rules.practice import PRACTICE
from fronts.rules.rect import Rect
from fronts.rules.results import Front
from tests.rules.small_kitchens import (
    BOX,
    cabinet,
    door,
    inch,
    inches,
    kitchen,
    only_front,
    opening,
)

# A drawer front 16 × 28 1/2 in, its knob in its middle; a box 14 × 24 in, an inch in all round.
OF = kitchen(cabinet(opening("drawer", boxes=(BOX,))))
FRONT = only_front(OF)
OUTLINE = Rect(*inches("1", "1", "14", "24"))
SHOPS_HOLE = PRACTICE.knob_hole
Fixed: TypeAlias = tuple[str | None, bool | None, list[str]]


def with_knobs(front: Front, places: tuple[Point, ...]) -> Front:
    """The front with knobs at these places."""
    return replace(front, handles=handles_at(places, None, front.kind, front.face, "8-32"))


def thicker(thickness: str) -> Front:
    """The front, so thick."""
    return replace(FRONT, thickness=inch(thickness))


def _fixed(box: Box = BOX, front: Front = FRONT, outline: Rect = OUTLINE) -> Fixed:
    """The screw's length, whether it goes through the box, and the codes of what is told."""
    screw, findings = fix_knob(front, box, outline, SHOPS_HOLE, OF, FindingWriter("in"))
    told = [finding.code for finding in findings]
    return (None, None, told) if screw is None else (str(screw.length), screw.through_box, told)


LONG, SHORT = str(inch("1 3/4")), str(inch("1"))
BOX_FRONTS: list[tuple[str, str, Fixed]] = [
    ("through front and box", "3/4", (LONG, True, [])),
    ("in a recess of a thick box front", "1", (SHORT, False, [])),
    ("too thick for any screw, but for a recess", "3", (SHORT, False, [])),
]


@pytest.mark.parametrize(
    ("thickness", "fixed"), [row[1:] for row in BOX_FRONTS], ids=[row[0] for row in BOX_FRONTS]
)
def test_the_screw_by_the_box_front(thickness: str, fixed: Fixed) -> None:
    """8-32 engages 0.164 in and goes 1/2 in deep; 1 in and 1 3/4 in are stocked."""
    assert _fixed(replace(BOX, front_thickness=inch(thickness))) == fixed


def test_a_recess_is_as_wide_as_the_shop_makes_it() -> None:
    """1/2 in wide and 1/4 in deep; 1/8 in of the box front stays behind it."""
    thick = replace(BOX, front_thickness=inch("1"))

    screw, _ = fix_knob(FRONT, thick, OUTLINE, SHOPS_HOLE, OF, FindingWriter("in"))

    assert screw is not None
    assert screw.recess == Recess(inch("1/2"), inch("1/4"))


def test_where_nothing_fits_it_is_told() -> None:
    """A front 2 in thick wants a longer screw than is stocked, recess or not."""
    assert _fixed(front=thicker("2")) == (None, None, ["no-knob-screw-fits"])


def test_a_front_without_a_knob_needs_no_screw() -> None:
    """There is nothing to fix."""
    assert _fixed(front=with_knobs(FRONT, ())) == (None, None, [])


TOO_LONG = [
    ("both, and a recess would do", "3/8", "2", "10", "a stack of 2 3/8 in."),
    ("both, and no recess", "47/128", "2", "10",
     "a stack of 2 47/128 in; the box front is too thin for a recess."),
    ("the front alone, beside the box", "3/4", "1/2", "10", "a stack of 2 in."),
]  # fmt: skip


@pytest.mark.parametrize(
    ("box_front", "x", "y", "words"), [row[1:] for row in TOO_LONG], ids=[r[0] for r in TOO_LONG]
)
def test_the_stack_that_no_screw_fits(box_front: str, x: str, y: str, words: str) -> None:
    """A front 2 in thick; a recess 1/4 in deep leaves 1/8 in of a box front of 3/8."""
    thick = with_knobs(thicker("2"), (Point(inch(x), inch(y)),))
    box = replace(BOX, front_thickness=inch(box_front))

    _, (found,) = fix_knob(thick, box, OUTLINE, SHOPS_HOLE, OF, FindingWriter("in"))

    assert found.message == f"B1.a: no stocked knob screw fits {words}"


EDGES = [
    ("on its left edge", "1", "10", True),
    ("a hair left of it", "127/128", "10", False),
    ("on its right edge", "15", "10", True),
    ("a hair right of it", "15 1/128", "10", False),
    ("on its lower edge", "8", "1", True),
    ("a hair below it", "8", "127/128", False),
    ("on its upper edge", "8", "25", True),
    ("a hair above it", "8", "25 1/128", False),
]


@pytest.mark.parametrize(
    ("x", "y", "through"), [row[1:] for row in EDGES], ids=[row[0] for row in EDGES]
)
def test_a_knob_beside_the_box_goes_through_the_front_alone(x: str, y: str, through: bool) -> None:
    """The box front begins 1 in from the front's edge and is 14 × 24 in."""
    aside = with_knobs(FRONT, (Point(inch(x), inch(y)),))

    length, through_box, _ = _fixed(front=aside)

    assert (length, through_box) == ((LONG, True) if through else (SHORT, False))


# The knob is 7 in from the left and 13 1/4 in up on the box front.
PIN = ShelfPins(inch("7"), inch("13 1/4"), inch("1"), 1, inch("1/4"))
PINS = [
    ("on the knob's hole", PIN, ["hole-hits-shelf-pin"]),
    ("3/16 in away, edge to edge", replace(PIN, x=inch("7 13/32")), []),
    ("a hair nearer", replace(PIN, x=inch("7 51/128")), ["hole-hits-shelf-pin"]),
]


@pytest.mark.parametrize(("pins", "told"), [row[1:] for row in PINS], ids=[row[0] for row in PINS])
def test_a_hole_that_meets_a_shelf_pin_is_told(pins: ShelfPins, told: list[str]) -> None:
    """A 3/16 in hole and a 1/4 in pin want 3/16 in of wood between them."""
    assert _fixed(replace(BOX, shelf_pins=(pins,)))[2] == told


def test_several_holes_that_meet_pins_are_told_once() -> None:
    """Two knobs on a wide front, both over pins."""
    pair = with_knobs(FRONT, (Point(inch("4"), inch("10")), Point(inch("12"), inch("10"))))
    rows = tuple(ShelfPins(inch(x), inch("9"), inch("1"), 1, inch("1/4")) for x in ("3", "11"))

    assert _fixed(replace(BOX, shelf_pins=rows), pair)[2] == ["hole-hits-shelf-pin"]


def test_knobs_are_carried_over_to_the_box() -> None:
    """From the box front's own corner."""
    (knob,) = knobs_on_box(FRONT, OUTLINE)

    assert (knob.x, knob.y) == (inch("7"), inch("13 1/4"))


def test_a_door_brings_the_hole_that_it_has() -> None:
    """Else the shop's bit is used."""
    old = door(knob_hole=KnobHole(inch("8"), inch("14"), inch("1/4")))

    assert knob_hole(old, PRACTICE) == inch("1/4")
    assert knob_hole(door(), PRACTICE) == SHOPS_HOLE
    assert knob_hole(None, PRACTICE) == SHOPS_HOLE

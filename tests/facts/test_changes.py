"""What changed between two states of one thing, named as people name it."""

from dataclasses import replace

from fronts.facts.changes import Change, changes
from fronts.rules.box_facts import Box, ShelfPins
from fronts.rules.kitchen import DoorOnHand, FrontFacts, KnobHole, Measured, Opening, Point
from fronts.rules.standard_keys import Sides, Standard
from tests.rules.small_kitchens import inch

PINS = ShelfPins(x=inch("2"), y=inch("3"), pitch=inch("1 1/4"), count=5)
BOX = Box(
    width=inch("21"), height=inch("6"), front_thickness=inch("1/2"), rise=inch("1"),
    shelf_pins=(PINS,),
)  # fmt: skip
OPENING = Opening(
    label="a",
    x=inch("1 1/2"),
    y=inch("4 1/2"),
    width=inch("22"),
    height=inch("8"),
    closed_by="drawer",
    fronts=(FrontFacts(box=BOX),),
)
DOOR = DoorOnHand(
    label="D1", width=inch("18"), height=inch("24"), hinge_bores=(Point(inch("2"), inch("3")),)
)


def _front(opening: Opening, **facts: object) -> Opening:
    front = replace(opening.fronts[0], **facts)  # type: ignore[arg-type]
    return replace(opening, fronts=(front, *opening.fronts[1:]))


def test_nothing_changed_is_no_change() -> None:
    assert list(changes(OPENING, replace(OPENING))) == []


def test_a_length_of_its_own() -> None:
    assert list(changes(OPENING, replace(OPENING, width=inch("23")))) == [
        Change("width", inch("22"), inch("23"))
    ]


def test_within_a_group() -> None:
    now = replace(OPENING, measured=Measured(width_top=inch("21 15/16")))

    assert list(changes(OPENING, now)) == [
        Change("measured on site, width at the top", None, inch("21 15/16"))
    ]


def test_a_group_that_came_is_one_change() -> None:
    hole = KnobHole(x=inch("1"), y=inch("2"))

    assert list(changes(DOOR, replace(DOOR, knob_hole=hole))) == [Change("knob hole", None, hole)]


def test_the_side_that_changed_is_named() -> None:
    was = Standard(overlay=Sides(inch("1"), inch("1"), inch("1"), inch("1")))
    now = Standard(overlay=Sides(inch("1"), inch("1"), inch("1/2"), inch("1")))
    opening = replace(OPENING, standard=was)

    (change,) = changes(opening, replace(opening, standard=now))

    assert change.says.startswith("standard, overlay ")
    assert (change.was, change.now) == (inch("1"), inch("1/2"))


def test_the_front_and_the_row_of_holes_are_counted() -> None:
    now = _front(OPENING, box=replace(BOX, shelf_pins=(replace(PINS, count=6),)))

    assert list(changes(OPENING, now)) == [Change("front 1, box, row of holes 1, holes", 5, 6)]


def test_a_row_more_and_a_row_less() -> None:
    second = Point(inch("2"), inch("20"))
    more = replace(DOOR, hinge_bores=(*DOOR.hinge_bores, second))

    assert list(changes(DOOR, more)) == [Change("bore 2", None, second)]
    assert list(changes(more, DOOR)) == [Change("bore 2", second, None)]


def test_a_bore_moved() -> None:
    assert list(changes(DOOR, replace(DOOR, hinge_bores=(Point(inch("2"), inch("4")),)))) == [
        Change("bore 1, from the bottom", inch("3"), inch("4"))
    ]

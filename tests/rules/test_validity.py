"""What belongs together in a kitchen, and what contradicts itself."""

from dataclasses import replace

import pytest

from fronts.rules.job_facts import Stock
from fronts.rules.kinds import CLOSINGS, ClosedBy
from fronts.rules.kitchen import CHOOSE, DoorOnHand, FrontFacts, KnobHole, Measured, Opening, Point
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Reveal, Standard
from fronts.rules.validity import (
    belongs,
    builds_with,
    closings_with,
    door_faults,
    front_faults,
    lies_on,
    measured_faults,
    standard_faults,
    stock_faults,
    tidied,
)
from tests.rules.small_kitchens import BOX, all_round, door, inch

WISH = FrontFacts(build="slab", material="cherry", shift_x=Mm(1), box=BOX)
HEIGHT, WIDTH = inch("6"), inch("14")


def opening(closed_by: ClosedBy, *fronts: FrontFacts) -> Opening:
    """An opening that is closed so by these fronts."""
    place = inch("1")
    return Opening("a", place, place, inch("15"), inch("27"), closed_by, fronts)


@pytest.mark.parametrize(
    ("fact", "kinds"),
    [
        ("hinged", ("door",)),
        ("own_height", ("drawers",)),
        ("count", ("drawers",)),
        ("box", ("drawer", "drawers", "pull-out")),
        ("thickness", tuple(CLOSINGS)),
    ],
)
def test_a_fact_is_asked_for_where_there_is_a_use_for_it(
    fact: str, kinds: tuple[ClosedBy, ...]
) -> None:
    """Only a door has a choice of hinge sides, only a stack has heights."""
    assert closings_with(fact) == kinds
    assert {kind for kind, closing in CLOSINGS.items() if belongs(fact, closing)} == set(kinds)


@pytest.mark.parametrize("closed_by", [kind for kind in CLOSINGS if kind not in ("door", "open")])
def test_only_a_door_keeps_where_it_is_hinged(closed_by: ClosedBy) -> None:
    """And one that says nothing is hinged on the left."""
    hinged = tidied(opening(closed_by, FrontFacts(hinged="right"), FrontFacts(hinged="top")))
    assert {front.hinged for front in hinged.fronts} == {None}
    doors = [tidied(opening("door", front)).fronts[0] for front in (FrontFacts(), WISH)]
    assert [front.hinged for front in doors] == ["left", "left"]
    assert tidied(opening("door", FrontFacts(hinged="top"))).fronts[0].hinged == "top"


def test_only_a_stack_keeps_heights_of_its_fronts() -> None:
    """Whatever else is said of them stays, their boxes too."""
    front = replace(WISH, own_height=HEIGHT)

    assert tidied(opening("drawer", front)).fronts == (WISH,)
    assert tidied(opening("drawers", front, WISH)).fronts == (front, WISH)


@pytest.mark.parametrize(
    ("said", "kept"),
    [
        (FrontFacts(height=HEIGHT), FrontFacts(own_height=HEIGHT)),
        (FrontFacts(height=HEIGHT, own_height=WIDTH), FrontFacts(own_height=WIDTH)),
        (FrontFacts(height=HEIGHT, width=WIDTH), FrontFacts(height=HEIGHT, width=WIDTH)),
        (FrontFacts(width=WIDTH, own_height=HEIGHT), FrontFacts(width=WIDTH, own_height=HEIGHT)),
    ],
)
def test_a_height_alone_is_a_fronts_part_of_its_stack(said: FrontFacts, kept: FrontFacts) -> None:
    """Only with its width it is that of a front that exists; elsewhere it always is."""
    assert tidied(opening("drawers", said)).fronts == (kept,)
    assert tidied(opening("pull-out", FrontFacts(height=HEIGHT))).fronts[0].height == HEIGHT


@pytest.mark.parametrize("kind", CLOSINGS)
def test_what_is_tidied_stays_so(kind: ClosedBy) -> None:
    """Tidying again changes nothing."""
    once = tidied(opening(kind, replace(WISH, height=HEIGHT, hinged="top"), FrontFacts()))

    assert tidied(once) is once


@pytest.mark.parametrize(
    ("measured", "missing"),
    [
        (Measured(diagonal_1=HEIGHT), {"diagonal_2"}),
        (Measured(diagonal_2=HEIGHT), {"diagonal_1"}),
        (Measured(diagonal_1=HEIGHT, diagonal_2=HEIGHT), set()),
        (Measured(width_top=HEIGHT), set()),
    ],
)
def test_diagonals_come_in_twos(measured: Measured, missing: set[str]) -> None:
    """One alone tells nothing about square."""
    assert set(measured_faults(measured)) == missing


@pytest.mark.parametrize(
    ("closed_by", "named", "faults"),
    [
        ("pair", "D1", {"door_on_hand"}),
        ("drawers", "D1", {"door_on_hand"}),
        ("door", "D1", set()),
        ("pull-out", "D1", set()),
        ("pair", CHOOSE, set()),
        ("drawers", None, set()),
    ],
)
def test_a_named_door_serves_one_front(
    closed_by: ClosedBy, named: str | None, faults: set[str]
) -> None:
    """Where there are several, doors are chosen."""
    assert set(front_faults(FrontFacts(door_on_hand=named), CLOSINGS[closed_by])) == faults


@pytest.mark.parametrize(
    ("wrong", "faults"),
    [
        (door(), set()),
        (door(CHOOSE), {"label"}),
        (door(knob_hole=KnobHole(inch("16"), inch("28 1/2"))), set()),
        (door(knob_hole=KnobHole(inch("16 1/16"), inch("1"))), {"knob_hole.x"}),
        (door(knob_hole=KnobHole(inch("1"), inch("28 9/16"))), {"knob_hole.y"}),
        (door(hinge_bores=(Point(inch("0"), inch("28 1/2")),)), set()),
        (door(hinge_bores=(Point(inch("1"), inch("1")), Point(inch("17"), inch("1")))),
         {"hinge_bores"}),
        (door(hinge_bores=(Point(inch("1"), inch("29")),)), {"hinge_bores"}),
        (door(stile=inch("8")), {"stile"}),
        (door(stile=inch("7 15/16"), rail=inch("14 1/4")), {"rail"}),
        (door(rail=inch("14 3/16")), set()),
    ],
)  # fmt: skip
def test_what_is_in_a_door_lies_on_it(wrong: DoorOnHand, faults: set[str]) -> None:
    """Its edges still do; and a frame leaves a panel between its members."""
    assert set(door_faults(wrong)) == faults


@pytest.mark.parametrize("thread", ["8-32", "#8-32", "1/4-20", "M4", "m 4"])
def test_a_thread_that_screws_have(thread: str) -> None:
    """However people write it."""
    assert stock_faults(Stock(knob_thread=thread)) == {}


@pytest.mark.parametrize("thread", ["", "coarse", "M0", "8-32 ", " M4", "8-32\n"])
def test_a_thread_that_none_has(thread: str) -> None:
    """Nor has one with space around it."""
    assert set(stock_faults(Stock(knob_thread=thread))) == {"knob_thread"}


def test_a_level_says_how_far_fronts_lap_in_one_way() -> None:
    """An overlay and a reveal exclude each other."""
    overlay, reveal = all_round("1/2"), Reveal(inch("1/8"), all_round("1/16"))

    assert standard_faults(Standard(overlay=overlay)) == {}
    assert standard_faults(Standard(reveal=reveal)) == {}
    assert set(standard_faults(Standard(overlay=overlay, reveal=reveal))) == {"reveal.between"}


ON_IT = [
    ("its lower left corner", "0", "0", True),
    ("its upper right corner", "16", "28 1/2", True),
    ("a hair left of it", "-1/128", "5", False),
    ("a hair right of it", "16 1/128", "5", False),
    ("a hair below it", "5", "-1/128", False),
    ("a hair above it", "5", "28 65/128", False),
]


@pytest.mark.parametrize(("x", "y", "on_it"), [row[1:] for row in ON_IT], ids=[r[0] for r in ON_IT])
def test_a_place_lies_on_a_door(x: str, y: str, on_it: bool) -> None:
    """A door 16 × 28 1/2 in, its edges included."""
    assert lies_on(door(), Point(inch(x), inch(y))) is on_it


def test_only_a_frame_has_stiles() -> None:
    """A thickness is any door's."""
    assert builds_with("stile") == builds_with("panel_thickness") == ("five-piece",)
    assert set(builds_with("thickness")) == {"slab", "five-piece"}

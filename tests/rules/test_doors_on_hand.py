"""A door on hand as a front: laps, gaps, what it takes to serve, what shows."""

from dataclasses import replace
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.doors_on_hand import choose, knob_off_centre, shows, surplus
from fronts.rules.kinds import Hinged
from fronts.rules.kitchen import DoorOnHand, FrontFacts, KnobHole, Point
from fronts.rules.lengths import INCH, Mm
from fronts.rules.practice import PRACTICE
from tests.rules.laws import LAW
from tests.rules.small_kitchens import cabinet, closed, door, inch, kitchen, only_front
from tests.rules.small_kitchens import opening as small_opening

LIMIT, LEAST_STILE = inch("1"), inch("1 3/4")


@pytest.mark.parametrize(
    ("front", "opening", "laps"),
    [
        ("15 1/2", "15", "1/4"),
        ("28 1/2", "28", "1/4"),
        ("14 3/4", "15", "-1/8"),
        ("27 5/8", "28", "-3/16"),
        ("15", "15", "0"),
    ],
    ids=[
        "1/2 wider: overlay 1/4", "1/2 higher: overlay 1/4", "1/4 narrower: gap 1/8",
        "3/8 lower: gap 3/16", "same: flush",
    ],
)  # fmt: skip
def test_check_values(front: str, opening: str, laps: str) -> None:
    """Check values of a door taken over: common practice, no source."""
    there = FrontFacts(width=inch(front), height=inch("28 1/2"))
    of = closed(small_opening(), width=inch(opening), front=there)
    edges = only_front(kitchen(cabinet(of, width=inch("31")))).edges

    assert (edges["left"].overlay, edges["right"].overlay) == (inch(laps), inch(laps))


def _surplus(of: DoorOnHand, width: str = "15", height: str = "28") -> Mm | None:
    return surplus(of, inch(width), inch(height), LIMIT, LEAST_STILE, PRACTICE)


FRAMED = door("D", "16", "29", build="five-piece", stile=inch("2 1/4"), rail=inch("2 1/4"))


@pytest.mark.parametrize(
    ("of", "costs"),
    [
        (door("D", "15", "28"), "0"),
        (door("D", "15 1/4", "28 1/2"), "3/4"),
        (door("D", "16", "29"), "2"),
        (door("D", "16 1/16", "28"), None),
        (door("D", "15", "29 1/16"), None),
        (door("D", "14 15/16", "29"), None),
        (FRAMED, "2"),
        (replace(FRAMED, stile=inch("2 3/16")), None),
        (replace(FRAMED, rail=inch("2 3/16")), None),
        (replace(FRAMED, width=inch("15"), stile=inch("1 1/2")), "1"),
    ],
    ids=[
        "just the size", "3/4 in all", "an inch each way", "too wide", "too high", "too narrow",
        "five-piece: half off each stile leaves 1 3/4", "five-piece: stile too narrow",
        "five-piece: rail too narrow", "five-piece: narrow stile that is not trimmed",
    ],
)  # fmt: skip
def test_what_a_door_costs(of: DoorOnHand, costs: str | None) -> None:
    """It serves if both sizes suffice, within the trim limit; the cost is its total surplus."""
    assert _surplus(of) == (None if costs is None else inch(costs))


def test_a_frame_nobody_measured_is_taken_as_usual() -> None:
    """A stile of 2 1/4 in (common practice, no source) bears an inch of trimming."""
    assert _surplus(replace(FRAMED, stile=None, rail=None)) == inch("2")


def test_serving_more_fronts_comes_before_the_least_surplus() -> None:
    """A greedy choice would give the exact door to the first and leave the second without."""
    doors = [door("D1", "15", "28"), door("D2", "15 3/4", "28 3/4")]
    wanted = [_wish("15", "28"), _wish("14 1/2", "27 1/2")]

    assert choose(wanted, doors, PRACTICE) == {0: 1, 1: 0}


@pytest.mark.parametrize("widths", [("15 1/8", "15 1/16"), ("15 1/16", "15 1/128")])
def test_the_door_with_the_least_surplus_serves(widths: tuple[str, str]) -> None:
    """However little it is less by."""
    doors = [door(f"D{number}", width, "28") for number, width in enumerate(widths)]

    assert choose([_wish("15", "28")], doors, PRACTICE) == {0: 1}


def _wish(width: str, height: str) -> tuple[Mm, Mm, Mm, Mm]:
    return (inch(width), inch(height), LIMIT, LEAST_STILE)


near = st.integers(-4, 12).map(lambda n: 400 + n * INCH / 8)


@LAW
@given(st.lists(st.tuples(near, near), max_size=4), st.lists(st.tuples(near, near), max_size=4))
def test_no_other_plan_is_better(wanted: list[tuple[Mm, Mm]], sizes: list[tuple[Mm, Mm]]) -> None:
    """Against every plan there is: fewest left without, then least total surplus."""
    doors = [DoorOnHand(f"D{i}", *each, INCH) for i, each in enumerate(sizes)]
    wishes = [(width, height, LIMIT, LEAST_STILE) for width, height in wanted]

    def score(plan: dict[int, int]) -> tuple[int, Mm]:
        costs = [surplus(doors[d], *wishes[w], PRACTICE) for w, d in plan.items()]
        known = [each for each in costs if each is not None]
        return (-len(known), sum(known, Mm(0)))

    found = choose(wishes, doors, PRACTICE)
    padded = [*range(len(doors)), *[-1] * len(wishes)]
    plans = (dict(enumerate(order)) for order in set(permutations(padded, len(wishes))))
    best = min(score({w: d for w, d in plan.items() if d >= 0}) for plan in plans)

    assert len(set(found.values())) == len(found)
    assert score(found) == best
    assert -score(found)[0] == len(found)


BORES = (Point(inch("7/8"), inch("3 1/2")), Point(inch("7/8"), inch("25")))
KNOB = KnobHole(inch("14 1/2"), inch("26"), inch("3/16"))
OLD = door("D", "15 1/2", "28 1/2", hinge_bores=BORES, knob_hole=KNOB)


KNOBS = [("in the middle", "7 3/4", "0"), ("left", "7 1/2", "1/4"), ("right", "8", "1/4")]


@pytest.mark.parametrize(("x", "by"), [row[1:] for row in KNOBS], ids=[row[0] for row in KNOBS])
def test_how_far_a_knob_hole_is_off_the_middle(x: str, by: str) -> None:
    """Of a door 15 1/2 in wide, to either side."""
    assert knob_off_centre(replace(OLD, knob_hole=replace(KNOB, x=inch(x)))) == inch(by)


def test_a_door_without_a_knob_hole_has_none_off_the_middle() -> None:
    """Nothing is told of it."""
    assert knob_off_centre(replace(OLD, knob_hole=None)) == 0


MIDDLES: list[tuple[str, str, str, list[Hinged]]] = [
    ("in the very middle", "7 3/4", "14 1/4", []),
    ("an inch left of it and below", "6 3/4", "13 1/4", ["left", "bottom"]),
    ("a hair right of it and above", "7 97/128", "14 33/128", ["right", "top"]),
]


@pytest.mark.parametrize(
    ("x", "y", "hidden"), [row[1:] for row in MIDDLES], ids=[row[0] for row in MIDDLES]
)
@pytest.mark.parametrize("hinged", ["left", "right", "bottom", "top"])
def test_a_bore_is_hidden_in_the_half_where_the_hinges_are(
    x: str, y: str, hidden: list[Hinged], hinged: Hinged
) -> None:
    """The door's middle divides it."""
    bored = replace(OLD, knob_hole=None, hinge_bores=(Point(inch(x), inch(y)),))

    assert shows(bored, hinged) == ([] if hinged in hidden else ["1 old hinge bore"])


@pytest.mark.parametrize(
    ("hinged", "seen"),
    [
        ("left", []),
        ("right", ["2 old hinge bores", "the old knob hole, on the hinge side"]),
        ("bottom", ["1 old hinge bore"]),
        ("top", ["1 old hinge bore", "the old knob hole, on the hinge side"]),
        (None, ["2 old hinge bores"]),
    ],
    ids=["hung as before", "hung the other way", "bottom", "top", "as a pull-out"],
)  # fmt: skip
def test_what_of_the_doors_past_shows(hinged: Hinged | None, seen: list[str]) -> None:
    """Bores away from the hinge side, and a knob hole on it."""
    assert shows(OLD, hinged) == seen

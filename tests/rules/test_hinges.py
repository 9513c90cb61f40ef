"""Hinges: counts and centres. No published table exists; the shop's own must rise."""

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.hinges import hinge_centres, hinge_count, is_clear, too_heavy
from fronts.rules.lengths import INCH, Mm
from fronts.rules.practice import POUND, PRACTICE
from tests.rules.laws import LAW
from tests.rules.small_kitchens import SIXTEENTH, inch

BY_HEIGHT = [("10", 2), ("40", 2), ("40 1/16", 3), ("60", 3), ("60 1/16", 4), ("80", 4),
             ("80 1/16", 5), ("100", 5), ("100 1/16", None)]  # fmt: skip
BY_WEIGHT = [("1", 2), ("15", 2), ("15.1", 3), ("30", 3), ("30.1", 4), ("45", 4), ("45.1", 5),
             ("60", 5), ("60.1", None)]  # fmt: skip


@pytest.mark.parametrize(("height", "count"), BY_HEIGHT, ids=[f"{h} in high" for h, _ in BY_HEIGHT])
def test_count_by_height(height: str, count: int | None) -> None:
    """Common practice, from memory."""
    assert hinge_count(inch(height), POUND, PRACTICE) == count


@pytest.mark.parametrize(("pounds", "count"), BY_WEIGHT, ids=[f"{p} lb" for p, _ in BY_WEIGHT])
def test_count_by_weight(pounds: str, count: int | None) -> None:
    """Common practice, from memory."""
    weight = Fraction(pounds) * POUND

    assert hinge_count(inch("20"), weight, PRACTICE) == count
    assert too_heavy(weight, PRACTICE) == (count is None)


def test_the_greater_count_holds() -> None:
    """A low heavy door and a high light one."""
    assert hinge_count(inch("20"), 40 * POUND, PRACTICE) == 4
    assert hinge_count(inch("70"), 5 * POUND, PRACTICE) == 4


@LAW
@given(st.integers(1, 1600), st.integers(1, 300), st.integers(0, 400), st.integers(0, 100))
def test_a_larger_door_never_takes_fewer(height: int, weight: int, more: int, extra: int) -> None:
    """The table rises with height and with weight; past it there is no count."""
    small = hinge_count(height * SIXTEENTH, weight * POUND / 5, PRACTICE)
    large = hinge_count((height + more) * SIXTEENTH, (weight + extra) * POUND / 5, PRACTICE)

    assert large is None or (small is not None and small <= large)


def test_the_shops_own_table_replaces_it() -> None:
    """A shop that hangs every door on three says so."""
    three = replace(PRACTICE, hinges_by_height=((inch("50"), 3),), hinges_by_weight=((POUND, 3),))

    assert hinge_count(inch("20"), POUND / 2, three) == 3
    assert hinge_count(inch("51"), POUND / 2, three) is None


END, HALF = inch("3 1/2"), inch("1")
CENTRES = [
    ("28 1/2", 2, ["3 1/2", "25"]),
    ("47", 3, ["3 1/2", "23 1/2", "43 1/2"]),
    ("67", 4, ["3 1/2", "23 1/2", "43 1/2", "63 1/2"]),
    ("46 1/16", 3, ["3 1/2", "23 1/32", "42 9/16"]),
    ("13", 2, ["3 1/2", "9 1/2"]),
    ("9", 2, ["3 1/2", "5 1/2"]),
    ("8 15/16", 2, ["2 15/64", "6 45/64"]),
    ("11", 3, ["3 1/2", "5 1/2", "7 1/2"]),
]


@pytest.mark.parametrize(
    ("length", "count", "places"), CENTRES, ids=[f"{c} on {n} in" for n, c, _ in CENTRES]
)
def test_centres(length: str, count: int, places: list[str]) -> None:
    """3 1/2 in from the ends (common practice, no source), the rest equally spaced.

    Under 9 in two plates of 2 in no longer go between those: each has a half of the door.
    """
    found = hinge_centres(inch(length), count, END, (), HALF)

    assert found == tuple(inch(each) for each in places)


def test_moved_clear_of_a_rail() -> None:
    """A rail from 23 to 24 1/2 in: the middle hinge moves to an inch from its nearer edge."""
    rails = [(inch("23"), inch("24 1/2"))]

    found = hinge_centres(inch("47"), 3, END, rails, HALF)

    assert found == (END, inch("22"), inch("43 1/2"))


RAILS = [
    ("where it was", "20", "22 1/2", "23 1/2"),
    ("just up", "22 9/16", "23", "24"),
    ("just down", "24", "24 1/2", "23"),
    ("down, both as far", "22 1/2", "24 1/2", "21 1/2"),
    ("up past a lower rail", "22", "24", "25"),
    ("where no rail is", "23 1/2", "23 1/2", "23 1/2"),
]


@pytest.mark.parametrize(
    ("low", "high", "centre"), [row[1:] for row in RAILS], ids=[row[0] for row in RAILS]
)
def test_moved_as_little_as_may_be(low: str, high: str, centre: str) -> None:
    """The middle one of three, at 23 1/2 in, to an inch from the nearer edge of a rail."""
    found = hinge_centres(inch("47"), 3, END, [(inch(low), inch(high))], HALF)

    assert found == (END, inch(centre), inch("43 1/2"))


@pytest.mark.parametrize("rail", [("0", "47"), ("0", "46"), ("1", "47")])
def test_no_clear_place(rail: tuple[str, str]) -> None:
    """Rails all along leave nowhere to go; neither is there a place at a door's very end."""
    low, high = rail

    assert hinge_centres(inch("47"), 1, END, [(inch(low), inch(high))], HALF) is None


def test_a_hair_from_the_end_is_on_the_door() -> None:
    """A rail that leaves 1/128 in of the door's height for a centre."""
    rail = (inch("1 1/128"), inch("47"))

    assert hinge_centres(inch("47"), 1, END, [rail], HALF) == (inch("1/128"),)


def test_a_door_too_low_for_its_hinges() -> None:
    """Two plates of 2 in don't go on a door of 3 in."""
    assert hinge_centres(inch("3"), 2, END, (), HALF) is None


rails_of = st.lists(
    st.tuples(st.integers(-20, 500), st.integers(0, 120)).map(
        lambda pair: (pair[0] * INCH / 8, (pair[0] + pair[1]) * INCH / 8)
    ),
    max_size=4,
)


@LAW
@given(st.integers(16, 800), st.integers(2, 6), st.integers(0, 40), rails_of)
def test_centres_lie_on_the_door_clear_and_apart(
    length: int, count: int, end: int, rails: list[tuple[Mm, Mm]]
) -> None:
    """As many as wished, in order, inside, clear of every rail, plates beside each other."""
    long = length * INCH / 8
    found = hinge_centres(long, count, end * INCH / 8, rails, HALF)
    if found is None:
        return

    assert len(found) == count
    assert all(0 < each < long for each in found)
    for each in found:
        assert all(each <= low - HALF or each >= high + HALF for low, high in rails if low < high)
    assert all(after - before >= 2 * HALF for before, after in pairwise(found))


@pytest.mark.parametrize(("at", "clear"), [("23", "3/4"), ("24", "3/4"), ("22 1/4", "1 1/2")])
def test_a_centre_moves_clear_of_old_bores(at: str, clear: str) -> None:
    """The middle one of three, at 23 1/2 in, to the nearer end of what a bore keeps free."""
    bore, free = inch(at), inch(clear)

    found = hinge_centres(inch("47"), 3, END, (), HALF, [(bore - free, bore + free)])

    near = min(bore - free, bore + free, key=lambda end: abs(end - inch("23 1/2")))
    assert found == (END, near, inch("43 1/2"))


@pytest.mark.parametrize(("centre", "clear"), [("1 1/2", False), ("2", True), ("4", True)])
def test_whether_a_plate_is_clear_of_a_rail(centre: str, clear: bool) -> None:
    """A rail up to 1 in and a plate of 2 in: its middle from 2 in on."""
    assert is_clear(inch(centre), [(inch("0"), inch("1"))], HALF) is clear

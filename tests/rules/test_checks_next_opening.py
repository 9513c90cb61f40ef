"""Fronts that lap over the next opening, whose own front lies inside it."""

from dataclasses import replace

from fronts.rules.kitchen import FrontFacts, Kitchen, Measured, Opening
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases import lapping, one
from tests.rules.small_kitchens import (
    all_round,
    cabinet,
    codes_of,
    findings_of,
    inch,
    kitchen,
    opening,
)

INSET = Standard(mount="inset", inset_gap=all_round("3/32"))


def _next_to(inset: Opening, lap: str) -> Kitchen:
    """A fixed front in an opening at 20 in, and another opening from 36 in on."""
    first = opening("fixed", x=inch("20"), standard=lapping("1/2", lap, "1/2", "1/2"))
    second = replace(inset, label="b", x=inch("36"))
    return kitchen(cabinet(first, second, width=inch("60")))


def test_a_front_says_how_far_it_laps_over_the_next_opening() -> None:
    """Across, between the openings' edges; not where it laps up to the edge only."""
    inset = opening("fixed", standard=INSET)

    (found,) = findings_of(_next_to(inset, "1 1/4"), "laps-next-opening")

    assert found.message == "B1.a laps 1/4 in over the opening B1.b; its front can't pass."
    assert findings_of(_next_to(inset, "1"), "laps-next-opening") == []


def test_an_opening_that_stays_open_holds_no_front_to_pass() -> None:
    """A front may lap over its edge."""
    assert findings_of(_next_to(opening("open"), "1 1/4"), "laps-next-opening") == []


def test_one_leaf_inside_is_enough() -> None:
    """Of two leaves that exist the left lies inside its opening: what laps over it is told."""
    leaves = opening("pair")
    low, high = (FrontFacts(width=inch("7 3/4"), height=inch(each)) for each in ("27", "28 1/2"))
    pair = replace(leaves, fronts=(low, high))

    assert len(findings_of(_next_to(pair, "1 1/4"), "laps-next-opening")) == 1
    racked = replace(pair, measured=Measured(diagonal_1=inch("31 3/4"), diagonal_2=inch("30 7/8")))
    assert findings_of(one(racked), "opening-out-of-square")


def test_what_lies_in_its_own_opening_laps_no_other() -> None:
    """Two openings in one place, or an inset front that was moved: each is told as what it is."""
    lapping_one = opening("fixed")
    inset = opening("fixed", label="b", standard=INSET, x=inch("10"))
    twice = kitchen(cabinet(lapping_one, inset, width=inch("60")))
    moved = opening("fixed", standard=INSET, front=FrontFacts(shift_x=inch("5")))
    beside_it = replace(inset, x=inch("17"))

    assert "laps-next-opening" not in codes_of(twice)
    assert "laps-next-opening" not in codes_of(kitchen(cabinet(moved, beside_it, width=inch("60"))))

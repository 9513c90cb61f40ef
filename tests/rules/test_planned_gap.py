"""Which gaps are planned: a front against its opening, its neighbour, or its cabinet's edge."""

import pytest

from fronts.rules.fits import Gaps
from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.planned_gap import PlannedGap, is_gap, planned_gap, planned_gaps
from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import (
    all_round,
    beside,
    cabinet,
    inch,
    kitchen,
    only_front,
    opening,
)

DOOR = cabinet(opening())


def _planned(of: Kitchen, label: str, side: Side) -> PlannedGap | None:
    return planned_gap(schedule(of).front(label), side, of)


def test_where_no_front_is_near_the_reveal_to_the_cabinets_edge_is_planned() -> None:
    """A door 16 × 28 1/2 in the middle of a cabinet 18 × 30 1/2 shows 1 in at every side."""
    of = kitchen(DOOR)

    for side in SIDES:
        assert planned_gap(only_front(of), side, of) == PlannedGap(inch("1"), "edge")


def test_an_inset_front_has_its_gap_inside_the_opening() -> None:
    """The house standard's 3/32 in."""
    of = kitchen(cabinet(opening(standard=Standard(mount="inset"))))

    assert planned_gap(only_front(of), "left", of) == PlannedGap(inch("3/32"), "gap")


def test_between_two_fronts_the_gap_is_planned() -> None:
    """Two doors that each show 1 in of their cabinet are 2 in apart."""
    of = kitchen(DOOR, beside(DOOR))

    assert _planned(of, "B1.a", "right") == PlannedGap(inch("2"), "gap")
    assert _planned(of, "B2.a", "left") == PlannedGap(inch("2"), "gap")


def test_a_front_too_far_away_is_none_to_be_measured_to() -> None:
    """Past what the shop calls one run, 3 in (practice), what shows of the cabinet counts."""
    far = beside(DOOR, x=inch("20"))

    assert _planned(kitchen(DOOR, far), "B1.a", "right") == PlannedGap(inch("1"), "edge")


def test_where_the_edge_is_far_too_nothing_is_planned() -> None:
    """A door low in a tall cabinet has nothing near above it."""
    of = kitchen(cabinet(opening(), height=inch("60")))

    assert planned_gap(only_front(of), "top", of) is None


@pytest.mark.parametrize("lap", ["0", "1/64"])
def test_a_front_that_laps_by_nothing_is_planned_to_the_cabinets_edge(lap: str) -> None:
    """Or by a hair: it has no gap inside its opening, and shows what is left of the stile."""
    of = kitchen(DOOR, standard=Standard(overlay=all_round(lap)), step=inch("1/64"))

    assert planned_gap(only_front(of), "left", of) == PlannedGap(inch("1 1/2") - inch(lap), "edge")


def test_all_that_is_planned_round_a_front() -> None:
    """The same at each side; nothing where there is nothing to plan."""
    of = kitchen(cabinet(opening(), height=inch("60")))

    assert planned_gaps(only_front(of), of) == Gaps(inch("1"), inch("1"), None, inch("1"))


SPACES = [("-1/16", False), ("0", True), ("3", True), ("3 1/16", False)]


@pytest.mark.parametrize(("space", "gap"), SPACES, ids=[space for space, _ in SPACES])
def test_what_is_a_gap(space: str, gap: bool) -> None:
    """Nothing that overlaps, and nothing wider than what is still one run."""
    assert is_gap(inch(space), PRACTICE.filler) is gap

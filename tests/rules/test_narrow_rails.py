"""Low five-piece drawer fronts: full rails, narrow ones, or a slab.

2 1/4 in rails, 1 1/2 in narrow ones, 1 in of panel at least: common practice, no source.
"""

import pytest

from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.schedule import schedule
from tests.rules.finding_cases import one
from tests.rules.small_kitchens import codes_of, door, inch, only_front, opening

FIVE_PIECE = FrontFacts(build="five-piece", material="cherry")


def _front(height: str, closed_by: ClosedBy = "drawer", wish: FrontFacts = FIVE_PIECE) -> Kitchen:
    """A front so high, on an opening 1 in lower."""
    return one(opening(closed_by, height=inch(height) - inch("1"), front=wish))


@pytest.mark.parametrize(
    ("height", "build", "rail"),
    [
        ("5 1/2", "five-piece", "2 1/4"), ("5 7/16", "five-piece", "1 1/2"),
        ("4", "five-piece", "1 1/2"), ("3 15/16", "slab", "1 1/2"),
    ],
)  # fmt: skip
def test_a_drawer_front(height: str, build: str, rail: str) -> None:
    """Full rails and an inch of panel are 5 1/2 in, narrow ones and an inch 4 in."""
    front = only_front(_front(height))

    assert (front.build, front.rail) == (build, inch(rail))


def test_its_pieces_have_the_narrow_rails() -> None:
    """5 in high: 1 1/2 in rails, 2 in between them, 5/16 in of panel in each groove."""
    parts = {part.part: part for part in schedule(_front("5")).parts}

    assert (parts["rail"].width, parts["rail"].count) == (inch("1 1/2"), 2)
    assert parts["panel"].length == inch("2 5/8")


def test_the_slab_is_of_the_frames_wood() -> None:
    """It hangs among five-piece fronts; it is one piece."""
    (piece,) = schedule(_front("3")).parts

    assert (piece.part, piece.material) == ("slab", "cherry")
    assert "too-little-panel" in codes_of(_front("3"))


def test_a_slab_that_was_asked_for_is_no_news() -> None:
    """However low."""
    assert "too-little-panel" not in codes_of(_front("3", wish=FrontFacts(build="slab")))


def test_other_fronts_keep_their_rails() -> None:
    """A low door is told that it has no panel, instead."""
    assert only_front(_front("5", "fixed")).rail == inch("2 1/4")
    assert "no-room-for-panel" in codes_of(_front("4", "fixed"))


def test_what_exists_keeps_its_rails() -> None:
    """A front that is there, and a door on hand, have those that they have."""
    there = FrontFacts(build="five-piece", width=inch("16"), height=inch("5"))
    assert only_front(_front("5", wish=there)).rail == inch("2 1/4")

    old = door(width="16", height="5", build="five-piece", rail=inch("2"))
    of = opening("drawer", height=inch("4"), front=FrontFacts(door_on_hand="D1"))
    assert only_front(one(of, doors=[old])).rail == inch("2")

"""What was measured round a front, and whether it still is the front that was fitted."""

from dataclasses import replace

import pytest

from fronts.rules.fits import Gaps, hangs_still, hung_as
from fronts.rules.kitchen import FrontFacts
from fronts.rules.results import Front
from tests.rules.small_kitchens import cabinet, door, inch, kitchen, only_front, opening


def test_a_side_speaks_in_one_figure_or_at_both_its_ends() -> None:
    """Upright sides from the top, the others from the left; nothing where nothing is known."""
    gaps = Gaps(left=inch("1/8"), right_bottom=inch("1/4"), right_top=inch("3/16"),
                top_left=inch("1/16"), top_right=inch("0"))  # fmt: skip

    assert gaps.figures("left") == (inch("1/8"),)
    assert gaps.figures("right") == (inch("3/16"), inch("1/4"))
    assert gaps.figures("top") == (inch("1/16"), inch("0"))
    assert gaps.figures("bottom") == ()


def test_what_is_not_known_of_a_side_is_filled_whole() -> None:
    """One figure is not mixed with another's two ends."""
    known = Gaps(left=inch("1/8"), top_left=inch("1"), top_right=inch("2"))
    others = Gaps(left_top=inch("3"), left_bottom=inch("3"), right=inch("4"), top=inch("5"))

    filled = known.filled_from(others)

    assert filled == Gaps(
        left=inch("1/8"), right=inch("4"), top_left=inch("1"), top_right=inch("2")
    )


FRONT = only_front(kitchen(cabinet(opening())))
FROM_A_DOOR = only_front(
    kitchen(cabinet(opening(front=FrontFacts(door_on_hand="D1"))), doors=[door()])
)
CHANGES = [
    ("called otherwise", replace(FRONT, label="B9.z"), True),
    ("elsewhere on the wall", replace(FRONT, x=FRONT.x + inch("1")), True),
    ("1/16 in wider", replace(FRONT, width=FRONT.width + inch("1/16")), False),
    ("1/16 in lower", replace(FRONT, height=FRONT.height - inch("1/16")), False),
    ("thicker", replace(FRONT, thickness=inch("1")), False),
    ("hung the other way", replace(FRONT, hinged="right"), False),
    ("of five pieces", replace(FRONT, build="five-piece"), False),
    ("made from a door of the same size", FROM_A_DOOR, False),
]


@pytest.mark.parametrize(("now", "same"), [c[1:] for c in CHANGES], ids=[c[0] for c in CHANGES])
def test_a_front_made_or_hung_otherwise_is_another(now: Front, same: bool) -> None:
    """What it is called and where it stands may change."""
    assert hangs_still(hung_as(FRONT), now) is same


def test_any_door_of_the_same_size_is_as_good() -> None:
    """Which door on hand it was made from is no matter, only that it was."""
    assert hangs_still(hung_as(FROM_A_DOOR), replace(FROM_A_DOOR, door_on_hand="D2"))


def test_where_nobody_noted_which_it_was_it_is_taken_as_the_same() -> None:
    """Records of long ago hold no name of what hung."""
    assert hangs_still("", FRONT)

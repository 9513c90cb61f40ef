"""How a front that hangs off is brought right, worked by hand and held to its laws."""

from dataclasses import replace
from datetime import UTC, datetime
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.figures.mending_words import mending_lines, turns
from fronts.rules.fits import FitFacts, Gaps, RecordedFit
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.moving import Mending, mending_of
from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from fronts.rules.truing import truing_of
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening

DRAWER = kitchen(cabinet(opening("pull-out", boxes=[BOX])))
"""Its front shows 1 in at every side; its #8 screws have (1/4 − 0.164)/2 = 0.043 in of play."""
DOOR = kitchen(cabinet(opening("door", hinged="left")))
"""Hinged left; its hinges move it 2 mm sideways and up, each way."""
FIXED = kitchen(cabinet(opening("fixed")))
LEAST, LIMIT = inch("1/16"), inch("1")


WIDE = {"width": inch("30"), "height": inch("15")}
ROUND = {"width": inch("33"), "height": inch("18")}
FLAP = kitchen(cabinet(opening("door", hinged="top", **WIDE), **ROUND))
"""Hinged at its top, 31 × 16 in."""


def mended(
    of: Kitchen, measured: Gaps, least: Mm = LEAST, turn: Mm | None = None
) -> tuple[Mending, list[str]]:
    """What the gaps round the kitchen's only front ask for, and the same in words.

    A turn of its hinges' screws moves it by `turn`, where that is known.
    """
    planned = schedule(of)
    (front,) = planned.fronts
    if turn is not None and front.hinge is not None:
        front = replace(front, hinge=replace(front.hinge, turn=turn))
    fitting = planned.fitting(front.label)
    fit = RecordedFit("B1.a", datetime(2027, 3, 12, tzinfo=UTC), "", FitFacts("B1.a", measured))
    truing = truing_of(fit, front, fitting, of)
    mending = mending_of(
        truing, measured, front, fitting, PRACTICE, least_gap=least, trim_limit=LIMIT
    )
    return mending, mending_lines(mending, truing, front, fitting, of)


def gaps(left: str, right: str, top: str = "1", bottom: str = "1") -> Gaps:
    """Gaps in inches."""
    return Gaps(inch(left), inch(right), inch(top), inch(bottom))


# Geometry (common practice, no source): it moves by (error right − error left)/2.
WORKED = [
    ("as planned", DRAWER, gaps("1", "1"), ["It hangs as planned."]),
    ("a box's front to the right", DRAWER, gaps("1 1/32", "31/32"),
     ["Move it 1/32 to the left: loosen its screws, it slides in their holes; "
      "almost nothing of that play is left."]),
    ("too wide alone", DRAWER, gaps("15/16", "15/16"), ["It is 1/8 too wide."]),
    ("too narrow", DRAWER, gaps("1 1/16", "1"),
     ["It is 1/16 too narrow: the gaps stay so much wider in all. Make it again where that shows.",
      "Move it 1/32 to the left: loosen its screws, it slides in their holes; "
      "almost nothing of that play is left."]),
    # 2 mm = 0.0787 in: 1/32 of it leaves 0.0475 in, ≈ 1/16 to the nearest 1/32.
    ("a door to the left", DOOR, gaps("31/32", "1 1/32"),
     ["Move it 1/32 to the right: with the side screws; ≈1/16 of their play is left."]),
    ("a door too low", DOOR, gaps("1", "1", "1 1/32", "31/32"),
     ["Move it 1/32 up: with the height screws; ≈1/16 of their play is left."]),
    ("what is screwed from behind", FIXED, gaps("1 1/16", "15/16"),
     ["Unscrew it and set it 1/16 to the left."]),
    ("one side alone", DRAWER, Gaps(left=inch("15/16")),
     ["Measure the gap across from its left too: then it can be said how to move it."]),
    ("nothing measured", DRAWER, Gaps(), []),
]  # fmt: skip


@pytest.mark.parametrize(
    ("of", "measured", "lines"), [row[1:] for row in WORKED], ids=[row[0] for row in WORKED]
)
def test_worked_by_hand(of: Kitchen, measured: Gaps, lines: list[str]) -> None:
    """Lines in the order in which the work is done."""
    assert mended(of, measured)[1] == lines


def test_past_its_play_a_side_is_trimmed() -> None:
    """1/4 in off and less than that to go: the gap at the left stays under the least."""
    mending, lines = mended(DRAWER, gaps("3/4", "1 1/4"), least=inch("7/8"))

    (move,) = mending.moves
    assert (move.wanted, move.left) == (inch("1/4"), Mm(0))
    assert mending.trims == {"left": inch("1/4") - move.by}
    assert not mending.make_again
    assert lines[-1] == "Trim ≈7/32 off the left."


@pytest.mark.parametrize(
    ("of", "measured", "what"),
    [(DRAWER, gaps("1 1/4", "3/4"), "pilot holes in its back"),
     (DRAWER, gaps("1", "1", "1 1/4", "3/4"), "pilot holes in its back"),
     (DOOR, gaps("1 1/4", "3/4"), "screw holes of its hinge plates")],
)  # fmt: skip
def test_past_its_play_with_gaps_wide_enough_it_is_set_anew(
    of: Kitchen, measured: Gaps, what: str
) -> None:
    """Neither the saw nor packing helps: it says what does, once."""
    mending, lines = mended(of, measured)

    assert not mending.trims
    said = f"Where that shows, plug the {what} and bore them anew, so much farther over."
    assert lines[-1] == said
    assert lines.count(said) == 1
    assert lines[-2].endswith("is past its play.")


def test_past_what_may_be_trimmed_it_is_made_again() -> None:
    """2 1/4 in too wide."""
    mending, lines = mended(DRAWER, gaps("-1/8", "-1/8"))

    assert mending.make_again
    assert lines[-1] == "That is more than may be trimmed: make it again."


def test_a_door_past_its_screws_has_its_plates_packed_away_from_its_hinges() -> None:
    """It is to go 1/4 in to the right, away from the hinges; 2 mm of that by the screws."""
    mending, lines = mended(DOOR, gaps("3/4", "1 1/4"), least=inch("15/16"))

    (move,) = mending.moves
    assert move.packing == inch("1/4") - 2
    assert mending.gaps["left"] == inch("1")
    assert not mending.trims
    assert "Pack its hinge plates by ≈3/16." not in lines  # 4.35 mm are ≈ 5 1/2 of 32 parts.
    assert any(line.startswith("Pack its hinge plates by ≈") for line in lines)
    (other,) = mended(DOOR, gaps("1 1/4", "3/4"))[0].moves
    assert other.packing == 0


def test_a_door_that_leans_is_moved_at_each_hinge() -> None:
    """1/16 in to the right at its top and none at its bottom; hinges in between, in proportion."""
    leaning = Gaps(
        left_top=inch("1 1/16"), left_bottom=inch("1"),
        right_top=inch("15/16"), right_bottom=inch("1"),
    )  # fmt: skip
    (front,) = schedule(DOOR).fronts

    upper, lower = mended(DOOR, leaning)[0].moves

    assert (upper.where, lower.where) == ("upper hinge", "lower hinge")
    low, high = front.hinge_centres[0], front.hinge_centres[-1]
    assert upper.wanted == -inch("1/16") * high / front.height
    assert lower.wanted == -inch("1/16") * low / front.height
    at_top, at_bottom = mended(DRAWER, leaning)[0].moves
    assert (at_top.where, at_top.wanted) == ("at the top", -inch("1/16"))
    assert at_bottom.wanted == 0


def test_a_leaning_door_is_packed_at_the_hinge_that_wants_it() -> None:
    """The lower hinge's screws do it alone."""
    leaning = Gaps(
        left_top=inch("3/4"), left_bottom=inch("1"),
        right_top=inch("1 1/4"), right_bottom=inch("1"),
    )  # fmt: skip

    mending, lines = mended(DOOR, leaning)

    upper, lower = mending.moves
    assert upper.packing > 0
    assert lower.packing == 0
    assert any(line.startswith("Pack the plate of the upper hinge by ") for line in lines)


def test_one_side_alone_is_never_trimmed() -> None:
    """A move may be all that it needs; where nothing is planned across, it is only said."""
    mending, lines = mended(DRAWER, Gaps(left=inch("1/32")))
    assert not mending.trims
    assert lines == [
        "Measure the gap across from its left too: then it can be said how to move it."
    ]


def test_less_than_can_be_set_is_not_said() -> None:
    """A hundredth of an inch is nothing."""
    assert mended(DRAWER, gaps("1.01", "1"))[1] == ["It hangs as planned."]


@pytest.mark.parametrize(
    ("count", "words"),
    [("1/16", "a touch"), ("1/8", "a touch"), ("1/5", "1/4 turn"), ("1/2", "1/2 turn"),
     ("1", "1 turn"), ("5/4", "1 1/4 turns"), ("2", "2 turns")],
)  # fmt: skip
def test_turns_are_said_to_the_quarter(count: str, words: str) -> None:
    """As a screwdriver is turned."""
    assert turns(Fraction(count)) == words


sixteenths = st.integers(-24, 24).map(lambda parts: inch("1") + Mm(parts) * inch("1/16"))


@given(
    left=sixteenths, right=sixteenths, top=sixteenths, bottom=sixteenths,
    of=st.sampled_from([DRAWER, DOOR, FLAP, FIXED]),
)  # fmt: skip
def test_moved_and_trimmed_no_gap_is_under_the_least_one(
    left: Mm, right: Mm, top: Mm, bottom: Mm, of: Kitchen
) -> None:
    """Moves keep the sum of the gaps across, stay within their play, and trims do the rest."""
    measured = Gaps(left, right, top, bottom)

    mending, _ = mended(of, measured)

    after = mending.gaps
    assert after["left"] + after["right"] == left + right
    assert after["top"] + after["bottom"] == top + bottom
    for move in mending.moves:
        assert abs(move.by) <= abs(move.wanted)
        assert move.by * move.wanted >= 0
        assert move.left is None or move.left >= 0
        assert move.left in (None, 0) or move.by == move.wanted
        assert move.packing in (0, abs(move.wanted - move.by))
    for side in ("left", "right", "top", "bottom"):
        assert after[side] + mending.trims.get(side, 0) >= LEAST
    again = replace(measured, left=after["left"], right=after["right"])
    moved = [move for move in mended(of, again)[0].moves if move.sideways and move.by]
    past = any(move.wanted != move.by for move in mending.moves if move.sideways)
    assert past or not moved  # What was brought to the plan needs no second move.

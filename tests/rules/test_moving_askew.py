"""How a front that hangs askew is set right at each hinge, worked by hand and held to its laws."""

from collections.abc import Mapping, Sequence
from dataclasses import asdict, astuple, replace
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.fits import ENDS, Gaps, end_names
from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.moving import Mending, Move, mending_of
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Front
from fronts.rules.schedule import schedule
from fronts.rules.truing import Truing, hangs_off
from tests.rules.small_kitchens import cabinet, inch, kitchen, opening
from tests.rules.test_moving import (
    DOOR,
    DRAWER,
    FIXED,
    FLAP,
    LEAST,
    LIMIT,
    ROUND,
    WIDE,
    mended,
)

RIGHT = kitchen(cabinet(opening("door", hinged="right")))
FALL = kitchen(cabinet(opening("door", hinged="bottom", **WIDE), **ROUND))
MIRRORED: Mapping[Side, Side] = {
    "left": "bottom", "bottom": "left", "right": "top", "top": "right",
}  # fmt: skip
"""Each side in a mirror along the line on which across and upright are the same."""
SWAPPED = {
    f"{side}_{end}": f"{MIRRORED[side]}_{MIRRORED[end]}" for side in SIDES for end in ENDS[side]
}


def of_front(front: Front, measured: Gaps) -> Mending:
    """What the gaps round a front ask for that is planned 1 in from everything."""
    planned = Gaps(*[inch("1")] * 4)
    off = asdict(hangs_off(measured, planned))
    truing = Truing(**off, front=front.label, planned=planned, within_play=None)
    return mending_of(truing, measured, front, None, PRACTICE, least_gap=LEAST, trim_limit=LIMIT)


def askew(front: Front, turned: Fraction, right: Mm = NOTHING, up: Mm = NOTHING) -> Gaps:
    """Gaps at both ends of all sides of a front planned 1 in from everything, as it hangs.

    Its middle is off by so much, and it is turned, its top to the right, by so much a mm.
    """
    aside, over = turned * front.height / 2, turned * front.width / 2
    one = inch("1")
    return Gaps(
        left_top=one + right + aside, left_bottom=one + right - aside,
        right_top=one - right - aside, right_bottom=one - right + aside,
        top_left=one - up - over, top_right=one - up + over,
        bottom_left=one + up + over, bottom_right=one + up - over,
    )  # fmt: skip


def test_a_flap_that_hangs_askew_is_moved_at_each_hinge() -> None:
    """31 in wide, its left end 1/16 in too high, its right one as much too low.

    Its hinges stand 3 1/2 in from its ends: the left one is 1/16 − 1/8 · 3.5/31 = 0.0484 in too
    high there, which 1 mm a turn comes to 1 1/4 turns of its side screw. Of 2 mm 0.77 mm
    (0.0303 in) are left.
    """
    (front,) = schedule(FLAP).fronts
    assert (front.width, front.hinge_centres) == (inch("31"), (inch("3 1/2"), inch("27 1/2")))
    turned = inch("1/8") / inch("31")
    # It hangs right along its top edge, so that its middle is off to the left.
    measured = askew(front, turned, right=-turned * front.height / 2)

    mending, lines = mended(FLAP, measured, turn=Mm(1))

    left, right = mending.moves
    assert (left.where, right.where, left.sideways) == ("left hinge", "right hinge", False)
    assert right.wanted == -left.wanted == inch("1/16") - inch("1/8") * Fraction(7, 62)
    assert lines == [
        "Move it ≈1/16 down, left hinge: turn the side screw 1 1/4 turns; "
        "≈1/32 of their play is left.",
        "Move it ≈1/16 up, right hinge: turn the side screw 1 1/4 turns; "
        "≈1/32 of their play is left.",
    ]
    assert mending.gaps == dict.fromkeys(("left", "right", "top", "bottom"), inch("1"))


def test_what_its_side_gaps_say_turns_a_flap_too() -> None:
    """Left and right at both ends alone: it is turned about its middle, then set to the left."""
    (front,) = schedule(FLAP).fronts
    turned = inch("1/8") / inch("31")
    whole = askew(front, turned)
    sides = Gaps(
        left_top=whole.left_top, left_bottom=whole.left_bottom,
        right_top=whole.right_top, right_bottom=whole.right_bottom,
    )  # fmt: skip

    aside, left, right = mended(FLAP, sides)[0].moves

    assert (aside.sideways, aside.wanted) == (True, -turned * front.height / 2)
    assert (left.where, right.where) == ("left hinge", "right hinge")
    assert right.wanted == -left.wanted == inch("1/16") - inch("1/8") * Fraction(7, 62)


def test_a_flap_past_its_screws_has_the_plate_packed_that_wants_it() -> None:
    """Its left end is to go down, away from its hinges; its right one up, which no packing does."""
    (front,) = schedule(FLAP).fronts
    turned = inch("1/2") / inch("31")

    mending, lines = mended(FLAP, askew(front, turned, right=-turned * front.height / 2))

    left, right = mending.moves
    assert left.packing == abs(left.wanted) - 2
    assert right.packing == 0
    assert any(line.startswith("Pack the plate of the left hinge by ") for line in lines)
    assert not any("plate of the right hinge" in line for line in lines)


def test_a_door_that_sags_is_lifted_by_turning_it_alone() -> None:
    """Its hinges' edge is as high as planned: once it is turned back, so is the rest of it."""
    (front,) = schedule(DOOR).fronts
    turned = inch("1/16") / front.height

    mending, _ = mended(DOOR, askew(front, turned, up=-turned * front.width / 2))

    assert [move.where for move in mending.moves] == ["upper hinge", "lower hinge"]
    assert mending.gaps == dict.fromkeys(("left", "right", "top", "bottom"), inch("1"))


small = st.integers(-8, 8).map(lambda parts: Mm(parts) * inch("1/128"))


@given(
    lean=small, right=small, up=small,
    of=st.sampled_from([DRAWER, DOOR, RIGHT, FLAP, FALL, FIXED]),
)  # fmt: skip
def test_moved_as_far_as_its_screws_go_it_hangs_as_planned(
    lean: Mm, right: Mm, up: Mm, of: Kitchen
) -> None:
    """However it hangs off, its gaps are the planned ones then, unless its play is at an end."""
    (front,) = schedule(of).fronts

    mending, _ = mended(of, askew(front, lean / front.height, right, up))

    if all(move.made == move.wanted for move in mending.moves):
        assert mending.gaps == dict.fromkeys(("left", "right", "top", "bottom"), inch("1"))
    assert all(move.left is None or move.left >= 0 for move in mending.moves)


@given(lean=small, right=small, up=small, ends=st.sampled_from(["both", "upright", "level"]))
def test_a_flap_is_a_door_turned_by_90_degrees(lean: Mm, right: Mm, up: Mm, ends: str) -> None:
    """As in a mirror that swaps across and upright: the same moves, at the same places."""
    (door,) = schedule(DOOR).fronts
    flap = replace(door, width=door.height, height=door.width, hinged="bottom")
    measured = askew(door, lean / door.height, right, up)
    swapped = Gaps(**{SWAPPED[name]: getattr(measured, name) for name in SWAPPED})
    known: dict[str, Sequence[Side]] = {
        "both": SIDES, "upright": ("left", "right"), "level": ("top", "bottom"),
    }  # fmt: skip
    kept = known[ends]
    here, there = (
        Gaps(**{name: getattr(gaps, name) for side in sides for name in end_names(side)})
        for gaps, sides in ((measured, kept), (swapped, [MIRRORED[side] for side in kept]))
    )

    first, second = of_front(door, here), of_front(flap, there)

    def as_seen(moves: Sequence[Move]) -> list[tuple[object, ...]]:
        said = (replace(move, where="", sideways=False) for move in moves)
        return sorted(astuple(move) for move in said)

    assert as_seen(first.moves) == as_seen(second.moves)
    assert {MIRRORED[side]: gap for side, gap in first.gaps.items()} == second.gaps
    assert {MIRRORED[side]: trim for side, trim in first.trims.items()} == second.trims

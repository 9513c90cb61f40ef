"""What a fitting says where something is in its way: holes that move, screws and slots."""

from dataclasses import replace

import pytest

from fronts.rules.box_facts import Box, ShelfPins
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import (
    BOX,
    STOCK,
    all_round,
    cabinet,
    findings_of,
    inch,
    kitchen,
    only_fitting,
    only_front,
    opening,
)

# All values: common practice, no source.
QUARTER_LAP = Standard(overlay=all_round("1/4"))
INSET = Standard(mount="inset", inset_gap=all_round("3/32"))
SLIDE = replace(BOX, slide="bottom", slide_width=inch("1 3/4"), slide_height=inch("1/2"))


def _pull_out(box: Box, standard: Standard) -> Kitchen:
    return kitchen(cabinet(opening("pull-out", boxes=(box,))), standard=standard)


def _whole_moves(of: Kitchen) -> tuple[Mm, Mm]:
    """How far the hole at the bottom left was moved from its usual place."""
    hole = next(each for each in only_fitting(of).holes if each.moved)
    return abs(hole.box_x - inch("1 1/2")), abs(hole.box_y - inch("1 1/2"))


# A pin in the usual place of a hole, 1 1/2 in from side and end: 7/16 in from centre to centre.
IN_THE_WAY = ShelfPins(inch("1 1/2"), inch("1 1/2"), inch("1"), 1, inch("1/4"))
MOVES = [
    ("by sixteenths", "1/16", "1/16", "24", {"0", "7/16"}),
    ("by the cutting step where that is more", "1/16", "1/8", "24", {"1/4", "3/8"}),
    ("by 1/4 in where the shop says so", "1/4", "1/16", "24", {"0", "1/2"}),
    ("by whole steps: 3/32 in becomes 1/8", "3/32", "1/16", "24", {"1/4", "3/8"}),
    ("by 1/8 in on a box 70 in high", "1/16", "1/16", "70", {"1/4", "3/8"}),
]


@pytest.mark.parametrize(
    ("move", "step", "height", "moves"), [row[1:] for row in MOVES], ids=[row[0] for row in MOVES]
)
def test_the_step_by_which_a_hole_is_moved(
    move: str, step: str, height: str, moves: set[str]
) -> None:
    """The shop's number in whole cutting steps, and a thousandth of the box at least."""
    box = replace(BOX, height=inch(height), shelf_pins=(IN_THE_WAY,))
    tall = opening("pull-out", boxes=(box,), height=inch("72"))
    of = kitchen(
        cabinet(tall, height=inch("76"), kind="tall"),
        step=inch(step),
        practice=replace(PRACTICE, hole_move=inch(move)),
    )

    assert set(_whole_moves(of)) == {inch(each) for each in moves}


def test_holes_keep_clear_of_a_recess() -> None:
    """The recess is 1/2 in wide: 9/16 in from its centre, where a knob's hole asks for 13/32."""
    narrow = replace(BOX, width=inch("3 1/2"), height=inch("3 1/4"), front_thickness=inch("1"))
    drawer = opening("drawer", width=inch("4 1/2"), height=inch("4 1/4"), boxes=(narrow,))
    of = kitchen(cabinet(drawer), standard=QUARTER_LAP)
    (knob,), holes = only_front(of).knobs, only_fitting(of).holes

    screw = only_fitting(of).knob_screw

    assert screw is not None
    assert screw.recess is not None
    assert holes
    for hole in holes:
        apart = (hole.front_x - knob.x) ** 2 + (hole.front_y - knob.y) ** 2
        assert apart >= inch("9/16") ** 2


NO_SCREW = [
    ("between", "3/4", "1/8", "3/8", "1 1/8 in to 1 3/8 in"),
    ("one length only", "3/4", "1/8", "5/8", "1 3/8 in to 1 3/8 in"),
    ("bite and skin are more than the front", "3/4", "3/8", "1/2", "no length is right"),
]


@pytest.mark.parametrize(
    ("thick", "skin", "bite", "words"), [row[1:] for row in NO_SCREW], ids=[r[0] for r in NO_SCREW]
)
def test_the_screw_to_buy(thick: str, skin: str, bite: str, words: str) -> None:
    """Box front and bite at least, box front and front less the skin at most."""
    standard = replace(QUARTER_LAP, skin=inch(skin), bite=inch(bite))
    box = replace(BOX, front_thickness=inch(thick))
    of = replace(_pull_out(box, standard), stock=replace(STOCK, screw_lengths=()))

    (found,) = findings_of(of, "no-screw-fits")

    assert found.message == (
        f"B1.a: no stocked mounting screw bites without coming through ({words})."
    )


SLOTS = [
    ("a jig of nothing is not made", "3/32", None),
    ("packers, which have none", "43/128", None),
    ("the thinnest jig", "11/32", "9/16 in deep, the jig 1/4 in thick"),
    ("a jig as thick as the slot is deep", "21/32", "9/16 in deep, the jig 9/16 in thick"),
    ("a thicker one", "43/64", None),
]


@pytest.mark.parametrize(("rise", "words"), [row[1:] for row in SLOTS], ids=[r[0] for r in SLOTS])
def test_a_slot_through_its_jig(rise: str, words: str | None) -> None:
    """An inset front's jig is the rise less the gap of 3/32 in; the slot 9/16 in deep."""
    of = _pull_out(replace(SLIDE, rise=inch(rise)), INSET)

    told = [each.message for each in findings_of(of, "slot-cuts-jig")]

    assert len(told) == (words is not None)
    assert all(words in message for message in told if words)

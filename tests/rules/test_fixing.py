"""Fixing a front to its box: the trade's check values, and every part of a fitting.

All values are common practice, no source, unless a test says otherwise.
"""

from dataclasses import replace

import pytest

from fronts.rules.box_facts import Box, ShelfPins
from fronts.rules.fitting_results import Ledges, Slot
from fronts.rules.kitchen import DoorOnHand, FrontFacts, Kitchen, KnobHole, Measured, Opening, Point
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import (
    BOX,
    all_round,
    cabinet,
    codes_of,
    door,
    inch,
    kitchen,
    only_fitting,
    only_front,
    opening,
)

QUARTER_LAP = Standard(overlay=all_round("1/4"))
INSET = Standard(mount="inset", inset_gap=all_round("3/32"))


def _pull_out(box: Box = BOX, *, standard: Standard = QUARTER_LAP, **changes: object) -> Kitchen:
    return kitchen(cabinet(opening("pull-out", boxes=(box,), **changes)), standard=standard)


def test_check_value_both_three_quarters() -> None:
    """The opening's edge 1/2 in below and beside the box, overlay 1/4 in: 3/4 in both."""
    fitting = only_fitting(_pull_out())

    assert fitting.side_offset == inch("3/4")
    assert fitting.jig_thickness == inch("3/4")
    assert (fitting.method, fitting.jig_length) == ("jig", inch("14"))


def test_check_values_of_an_inset_front() -> None:
    """Clearance and rise of 1/2 in less a gap of 3/32 in: 13/32 in both."""
    fitting = only_fitting(_pull_out(standard=INSET))

    assert fitting.side_offset == inch("13/32")
    assert fitting.jig_thickness == inch("13/32")
    assert fitting.shims is not None
    assert (fitting.shims.side, fitting.shims.right, fitting.shims.bottom) == (inch("3/32"),) * 3


def test_a_door_on_hand_as_a_pull_out() -> None:
    """15 1/2 × 28 on 15 × 27 1/2: overlay 1/4 in, and the check values again."""
    of = _pull_out(front=FrontFacts(door_on_hand="D1"))
    of = replace(of, doors_on_hand=(door("D1", "15 1/2", "28"),))

    assert only_front(of).edges.left.overlay == inch("1/4")
    assert only_fitting(of).side_offset == inch("3/4")
    assert only_fitting(of).jig_thickness == inch("3/4")


def test_measured_side_clearance() -> None:
    """A box that stands off centre: the left offset follows it, the right takes the rest."""
    fitting = only_fitting(_pull_out(replace(BOX, side_clearance=inch("3/8"))))

    assert fitting.side_offset == inch("5/8")
    assert fitting.right_offset == inch("7/8")


@pytest.mark.parametrize(
    ("rise", "method"),
    [
        ("0", "shims"),
        ("3/32", "shims"),
        ("1/8", "packers"),
        ("43/128", "packers"),
        ("11/32", "jig"),
    ],
)
def test_no_jig_without_thickness(rise: str, method: str) -> None:
    """An inset front's jig is the rise less the gap; not above zero: shims; under 1/4 in: packers.

    Common practice, no source.
    """
    fitting = only_fitting(_pull_out(replace(BOX, rise=inch(rise)), standard=INSET))

    assert fitting.method == method
    assert (fitting.ledges is None) == (method != "jig")


def test_ledges_and_block() -> None:
    """1/4 × 2 1/4 in, proud by the front's thickness; the block is as deep as what is left."""
    assert only_fitting(_pull_out()).ledges == Ledges(
        thickness=inch("1/4"), length=inch("2 1/4"), overhang=inch("3/4"), block_depth=inch("1 1/2")
    )


SLIDE = replace(BOX, slide="bottom", slide_width=inch("1 3/4"), slide_height=inch("1/2"))


def test_slot_for_a_bottom_slide() -> None:
    """1/8 in wider and 1/16 in deeper than the slide."""
    assert only_fitting(_pull_out(SLIDE)).slot == Slot(inch("1 7/8"), inch("9/16"))
    assert only_fitting(_pull_out(replace(SLIDE, slide="side"))).slot is None


def test_mounting_screw_and_drill() -> None:
    """3/4 + 3/4: four 1 1/4 in; stop at 13/16 in; 0.043 in of play (#8: ASME B18.6.1)."""
    fitting = only_fitting(_pull_out())

    assert fitting.screw is not None
    assert (fitting.screw.length, fitting.screw.count) == (inch("1 1/4"), 4)
    assert fitting.drill_stop == inch("13/16")
    assert fitting.play == inch("0.043")


def test_knob_screw_through_both() -> None:
    """3/4 + 3/4 and an 8-32 engaged by 0.164 in: 1 3/4 in."""
    knob = only_fitting(_pull_out()).knob_screw

    assert knob is not None
    assert (knob.length, knob.through_box, knob.recess) == (inch("1 3/4"), True, None)


def test_knob_screw_in_a_recess() -> None:
    """No screw for an inch of box front and the front: 1 in through the front alone."""
    knob = only_fitting(_pull_out(replace(BOX, front_thickness=inch("1")))).knob_screw

    assert knob is not None
    assert knob.recess is not None
    assert (knob.length, knob.through_box) == (inch("1"), False)
    assert (knob.recess.width, knob.recess.depth) == (inch("1/2"), inch("1/4"))


def test_holes_keep_clear_of_a_knob_and_old_bores() -> None:
    """A door's old bores and its knob hole lie behind the box front; holes stay 3/16 in away."""
    old = DoorOnHand(
        "D1", inch("15 1/2"), inch("28"), inch("3/4"),
        knob_hole=KnobHole(inch("13 1/4"), inch("2 1/4"), inch("3/16")),
        hinge_bores=(Point(inch("2 1/4"), inch("2 1/4")), Point(inch("7/8"), inch("24"))),
    )  # fmt: skip
    of = replace(_pull_out(front=FrontFacts(door_on_hand="D1")), doors_on_hand=(old,))

    holes = only_fitting(of).holes

    assert len(holes) == 4
    for hole in holes:
        for place, across in [(b, old.bore_diameter) for b in old.hinge_bores]:
            assert _apart(hole.front_x, hole.front_y, place) >= _least(across)
        knob = only_front(of).knobs[0]
        assert _apart(hole.front_x, hole.front_y, knob) >= _least(inch("3/16"))
    assert sorted(hole.moved for hole in holes) == [False, False, True, True]


def _apart(x: Mm, y: Mm, place: Point) -> Mm:
    return (x - place.x) ** 2 + (y - place.y) ** 2


def _least(across: Mm) -> Mm:
    return ((inch("1/4") + across) / 2 + inch("3/16")) ** 2


TAPE: list[tuple[str, Measured, bool]] = [
    ("true", Measured(), True),
    ("1/8 wider below", Measured(width_top=inch("15"), width_bottom=inch("15 1/8")), True),
    ("3/16 wider below", Measured(width_top=inch("15"), width_bottom=inch("15 3/16")), False),
    ("leaning", Measured(diagonal_1=inch("31 7/16"), diagonal_2=inch("31 3/16")), False),
]


@pytest.mark.parametrize(("measured", "suggested"), [t[1:] for t in TAPE], ids=[t[0] for t in TAPE])
def test_foam_tape_only_where_the_opening_is_true(measured: Measured, suggested: bool) -> None:
    """Refused where the gaps may be out by more than the least gap, 1/16 in."""
    tape = only_fitting(_pull_out(measured=measured)).tape

    assert tape.suggested is suggested
    assert tape.why


def test_boxes_of_a_stack_go_to_their_fronts() -> None:
    """From the top; the front without one is told, and gets no fitting."""
    low = replace(BOX, height=inch("6"), rise=inch("1"))
    high = replace(low, rise=inch("19"))
    of = kitchen(cabinet(opening("drawers", count=3, boxes=(high, None, low))))
    found = schedule(of)

    assert [each.front for each in found.fittings] == ["B1.a.1", "B1.a.3"]
    assert [f.where for f in found.findings if f.code == "box-missing"] == [("B1.a.2",)]
    assert found.fittings[1].jig_thickness == inch("1 1/2")


def test_jig_of_an_upper_drawer_is_measured_from_its_own_front() -> None:
    """The rise counts from the opening's bottom edge, the jig from the front's."""
    high = replace(BOX, height=inch("6"), rise=inch("19"))
    of = kitchen(cabinet(opening("drawers", count=3, boxes=(high, None, None))))
    front, fitting = schedule(of).fronts[0], only_fitting(of)
    opening_bottom = inch("4") + inch("1 1/2")

    assert fitting.jig_thickness == opening_bottom + inch("19") - front.y


PIN = ShelfPins(inch("7"), inch("20 1/4"), inch("1"), 1, inch("1/4"))
PINS = [
    ("on the knob's hole", PIN, True),
    ("13/32 in away, edge to edge 3/16", replace(PIN, x=inch("7 13/32")), False),
    ("a hair nearer", replace(PIN, x=inch("7 51/128")), True),
    ("a row that steps over it", replace(PIN, y=inch("3/4"), pitch=inch("1"), count=20), False),
    ("a row that meets it", replace(PIN, y=inch("1/4"), pitch=inch("1"), count=21), True),
]


@pytest.mark.parametrize(("pins", "hits"), [each[1:] for each in PINS], ids=[p[0] for p in PINS])
def test_knob_hole_near_a_shelf_pin(pins: ShelfPins, hits: bool) -> None:
    """A 3/16 in hole within 3/16 in of a 1/4 in pin, edge to edge, is noted."""
    box = replace(BOX, height=inch("21"), shelf_pins=(pins,))
    of = _pull_out(box)
    knob, fitting = only_front(of).knobs[0], only_fitting(of)

    assert knob.y - fitting.jig_thickness == inch("20 1/4")
    assert ("hole-hits-shelf-pin" in codes_of(of)) is hits


def test_shims_of_a_stack_stand_on_the_front_below() -> None:
    """An inset stack's upper fronts are spaced by the gap between them."""
    box = replace(BOX, height=inch("6"), rise=inch("19"))
    stack: Opening = opening("drawers", count=3, boxes=(box, None, None))
    fitting = only_fitting(kitchen(cabinet(stack), standard=INSET))

    assert fitting.shims is not None
    assert fitting.shims.bottom == inch("1/8")

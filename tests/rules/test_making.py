"""What a laid-out front is made of, and how it hangs."""

from dataclasses import replace
from typing import Any

import pytest

from fronts.rules.kinds import Hinged
from fronts.rules.kitchen import Cabinet, FrontFacts, Kitchen, KnobHole, Point
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import (
    BOX,
    all_round,
    cabinet,
    closed,
    door,
    inch,
    kitchen,
    only_fitting,
    only_front,
    opening,
)

OLD = door(
    "D1", "16 1/2", "29", thickness=inch("7/8"), build="five-piece", stile=inch("2 1/2"),
    rail=inch("2 3/4"), panel_thickness=inch("3/8"), material="cherry",
    knob_hole=KnobHole(inch("15 1/4"), inch("26"), inch("3/16")),
    hinge_bores=(Point(inch("7/8"), inch("3 1/2")),),
)  # fmt: skip


def _from_door(choice: str, **changes: Any) -> Kitchen:
    of = opening(front=FrontFacts(door_on_hand=choice))
    return kitchen(cabinet(of), doors=[replace(OLD, **changes)])


def test_a_new_front_takes_the_shops_defaults() -> None:
    """A slab of the shop's board, as thick as the standard says; no frame to speak of."""
    front = only_front(kitchen(cabinet(opening())))

    assert (front.build, front.material, front.thickness) == ("slab", "MDF", inch("3/4"))


def test_the_nearest_word_on_thickness_holds() -> None:
    """What is wished for one front, else its opening's standard."""
    standard = Standard(front_thickness=inch("7/8"))

    of = opening(standard=standard)
    own = closed(of, front=FrontFacts(thickness=inch("13/16")))

    assert only_front(kitchen(cabinet(of))).thickness == inch("7/8")
    assert only_front(kitchen(cabinet(own))).thickness == inch("13/16")


def test_a_door_as_it_is_keeps_all_that_it_has() -> None:
    """Thickness, build, members, knob hole and bores are the door's."""
    front = only_front(_from_door("D1"))

    assert (front.thickness, front.build, front.material) == (inch("7/8"), "five-piece", "cherry")
    assert (front.stile, front.rail) == (inch("2 1/2"), inch("2 3/4"))
    assert front.panel_thickness == inch("3/8")
    assert front.knobs == (Point(inch("15 1/4"), inch("26")),)
    assert front.bores == OLD.hinge_bores


def test_a_trimmed_door_loses_half_from_each_side() -> None:
    """1/2 in each way: stiles, rails and knob hole all move 1/4 in."""
    front = only_front(_from_door("choose", hinge_bores=()))

    assert (front.width, front.height) == (inch("16"), inch("28 1/2"))
    assert (front.stile, front.rail) == (inch("2 1/4"), inch("2 1/2"))
    assert front.knobs == (Point(inch("15"), inch("25 3/4")),)


def test_a_bore_near_a_side_is_not_sawn_into() -> None:
    """7/8 in from the left, 1/4 in off it would cut a bore of 35 mm: the right gives all."""
    front = only_front(_from_door("choose"))

    assert (front.trim.left, front.trim.right) == (Mm(0), inch("1/2"))
    assert (front.frame.left, front.frame.right) == (inch("2 1/2"), inch("2"))
    assert front.knobs == (Point(inch("15 1/4"), inch("25 3/4")),)
    assert front.bores == (Point(inch("7/8"), inch("3 1/4")),)


def test_hinge_centres_of_a_door() -> None:
    """3 1/2 in from the ends of 28 1/2 in: common practice, no source."""
    front = only_front(kitchen(cabinet(opening())))

    assert front.hinges == 2
    assert front.hinge_centres == (inch("3 1/2"), inch("25"))


@pytest.mark.parametrize("hinged", ["top", "bottom"])
def test_a_flap_hangs_by_its_width(hinged: Hinged) -> None:
    """Its hinges lie along its upper or lower edge."""
    front = only_front(kitchen(cabinet(opening(hinged=hinged))))

    assert front.hinge_centres == (inch("3 1/2"), inch("12 1/2"))


def test_hinges_keep_clear_of_the_rails_behind() -> None:
    """A door that laps 3 in at the bottom: its hinge plate moves up past the rail."""
    laps = replace(Standard(overlay=all_round("1/2")))
    assert laps.overlay is not None
    low = Standard(overlay=replace(laps.overlay, bottom=inch("3")))
    front = only_front(kitchen(cabinet(opening(y=inch("3"), standard=low))))

    assert front.hinge_centres[0] == inch("3") + inch("1")
    assert front.hinge_centres[1] == front.height - inch("3 1/2")


def test_hinges_keep_clear_of_the_rail_above() -> None:
    """A door that laps 3 in at the top: its upper hinge plate moves down past the rail."""
    high = Standard(overlay=replace(all_round("1/2"), top=inch("3")))
    front = only_front(kitchen(cabinet(opening(standard=high))))

    assert front.hinge_centres == (inch("3 1/2"), front.height - inch("4"))


def test_past_the_hinge_table_a_door_gets_what_the_table_ends_with() -> None:
    """Five for a door 101 in high, though it is told that the table ends at 100."""
    tall = opening(height=inch("100"))

    assert only_front(kitchen(cabinet(tall, height=inch("110"), kind="tall"))).hinges == 5


@pytest.mark.parametrize("closed_by", ["drawer", "pull-out", "fixed"])
def test_only_doors_have_hinges(closed_by: str) -> None:
    """Drawer fronts, pull-outs and fixed fronts have none."""
    front = only_front(kitchen(cabinet(replace(opening(), closed_by=closed_by))))  # type: ignore[arg-type]

    assert (front.hinges, front.hinge_centres, front.hinged) == (0, (), None)


LOW_BOX = replace(BOX, height=inch("10"))


def test_a_pull_outs_knob_sits_over_its_box() -> None:
    """The screw goes through the box front: 3/4 in under the box's upper edge at most."""
    of: Cabinet = cabinet(opening("pull-out", boxes=(LOW_BOX,)))
    front, fitting = only_front(kitchen(of)), only_fitting(kitchen(of))

    assert front.knobs[0].y == fitting.jig_thickness + inch("10") - inch("3/4")
    assert fitting.knob_screw is not None
    assert fitting.knob_screw.through_box


def test_an_old_knob_hole_stays_where_it_is() -> None:
    """On a door that becomes a pull-out front the knob goes where the hole is."""
    of = opening("pull-out", boxes=(LOW_BOX,), front=FrontFacts(door_on_hand="D1"))
    made = kitchen(cabinet(of), doors=[replace(OLD, thickness=inch("3/4"))])
    front, fitting = only_front(made), only_fitting(made)

    assert front.knobs == (Point(inch("15 1/4"), inch("26")),)
    assert fitting.knob_screw is not None
    assert not fitting.knob_screw.through_box
    assert fitting.knob_screw.recess is None


def test_weight_rises_with_size() -> None:
    """A front of twice the thickness weighs twice as much."""
    thin, thick = (
        only_front(kitchen(cabinet(opening(front=FrontFacts(thickness=each)))))
        for each in (inch("3/4"), inch("1 1/2"))
    )

    assert Mm(2) * thin.weight_kg == thick.weight_kg

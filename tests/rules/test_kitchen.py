"""The snapshot: frozen, comparable, and read by side."""

from dataclasses import FrozenInstanceError, replace

import pytest
from hypothesis import given

from fronts.rules.box_facts import ShelfPins
from fronts.rules.job_facts import JobFacts, Stock
from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import DoorOnHand, Kitchen, KnobHole
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening
from tests.strategies import kitchens


def test_sides_are_read_by_name() -> None:
    """As seen from the front."""
    sides = Sides("l", "r", "t", "b")

    assert [sides[side] for side in SIDES] == ["l", "r", "t", "b"]


def test_a_snapshot_cannot_be_changed() -> None:
    """What a schedule was worked out from stays what it was."""
    of = kitchen(cabinet(opening()))

    with pytest.raises(FrozenInstanceError):
        of.cabinets[0].width = inch("1")  # type: ignore[misc]


def test_what_a_door_is_like_where_nobody_measured_more() -> None:
    """3/4 in thick, cups of 35 mm, pins of 1/4 in and a knob's hole of 3/16: common practice."""
    old = DoorOnHand("D1", inch("16"), inch("28"))

    assert (old.thickness, old.bore_diameter) == (inch("3/4"), Mm(35))
    assert KnobHole(inch("1"), inch("1")).diameter == inch("3/16")
    assert ShelfPins(inch("1"), inch("1"), inch("1"), 5).diameter == inch("1/4")


def test_what_a_job_goes_by_where_nobody_says() -> None:
    """It is cut to 1/16 in, and knobs take a screw 1/2 in deep: common practice, no source."""
    assert JobFacts("1").step == inch("1/16")
    assert Stock().knob_thread_depth == inch("1/2")


def test_things_are_found_by_their_labels() -> None:
    """A cabinet in its kitchen; a front, the fronts of a cabinet, and a fitting in a schedule."""
    pull_out = opening("pull-out", boxes=(BOX,))
    of = kitchen(cabinet(opening()), cabinet(pull_out, label="B2", x=inch("18")))
    found = schedule(of)

    assert of.cabinet("B2").x == inch("18")
    assert found.front("B2.a").cabinet == "B2"
    assert [front.label for front in found.fronts_of("B2")] == ["B2.a"]
    assert found.fitting("B1.a") is None
    assert found.fitting("B2.a") == found.fittings[0]


@KITCHEN_LAW
@given(kitchens())
def test_equal_kitchens_are_one_key(of: Kitchen) -> None:
    """A snapshot can be kept by what it says."""
    assert hash(replace(of)) == hash(of)
    assert {of: "kept"}[replace(of)] == "kept"

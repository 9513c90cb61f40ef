"""A database from before lists of hardware comes through as it was, and back."""

from typing import Any

import pytest

from fronts.rules.box_facts import USUAL_BOXES
from fronts.rules.items import NO_ITEMS
from fronts.rules.practice import inches
from fronts.snapshot import kitchen_of
from tests.factories import CabinetFactory, JobFactory, door_and_drawer
from tests.models.steps import migrated, newest

pytestmark = pytest.mark.thorough
BEFORE = ("fronts", "0010_names_go_back_to_people")


@pytest.mark.usefixtures("now")
def test_a_kitchen_from_before_is_the_same_kitchen() -> None:
    """Nothing is decided that nobody decided: no list, no box to make, every place as it was.

    Before, each cabinet had a place: one that stands beside others goes back to where its run
    puts it.
    """
    job, other = JobFactory.create(), JobFactory.create()
    door_and_drawer(job)
    there = kitchen_of(job)
    for label, x in (("B1", None), ("B2", None), ("B3", inches(50)), ("B4", None)):
        CabinetFactory.create(job=other, label=label, x=x)

    older: Any = migrated(BEFORE)("fronts", "Cabinet")
    run = older.objects.filter(job_id=other.pk).order_by("position")
    assert list(run.values_list("x", flat=True)) == [0, inches(18), inches(50), inches(68)]
    newest()

    kitchen = kitchen_of(job)
    assert kitchen == there
    assert (kitchen.hardware, kitchen.boxes_made_of) == (NO_ITEMS, USUAL_BOXES)
    assert kitchen.cabinets[0].x == 0
    box = kitchen.cabinets[0].openings[1].fronts[0].box
    assert box is not None
    assert (box.shelves, box.load_kg) == (0, None)

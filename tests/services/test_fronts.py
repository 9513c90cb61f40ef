"""Each front of an opening: decided by itself, with what it carries."""

from typing import Any

import pytest
from django.core.exceptions import ValidationError

from fronts.models import Box, FitRecord, Front, Opening
from fronts.rules.fits import FitFacts
from fronts.rules.kitchen import CHOOSE, FrontFacts
from fronts.rules.practice import inches
from fronts.selectors.kitchens import opening_of
from fronts.services.fits import fit_record
from fronts.services.fronts import front_change
from fronts.services.openings import opening_change
from fronts.snapshot import kitchen_of
from fronts.snapshot.things import at_hand
from shopjobs.models import Job, Person, Revision
from tests import saying
from tests.factories import NOW, BoxFactory, DoorOnHandFactory, JobFactory, OpeningFactory
from tests.saying import front_of

OTHERWISE = FrontFacts(
    own_height=inches(6), thickness=inches(7, 8), build="slab", material="cherry",
    shift_x=inches(-1, 16), shift_y=inches(1, 16), door_on_hand=CHOOSE,
)  # fmt: skip


@pytest.fixture
def stack(job: Job) -> Opening:
    """Three drawers."""
    return OpeningFactory.create(cabinet__job=job, closed_by="drawers", count=3)


def facts_of(job: Job) -> tuple[FrontFacts, ...]:
    """What is decided about the fronts of the job's only opening."""
    return kitchen_of(job).cabinets[0].openings[0].fronts


def fitted(front: Front, label: str, by: Person) -> FitRecord:
    """A record that the front fitted."""
    facts = FitFacts(label, note="snug")
    return fit_record(front=front, facts=facts, hung="", fingerprint="x", by=by, at=NOW)


def test_one_front_is_decided_by_itself(stack: Opening, job: Job, owner: Person) -> None:
    """The others stay as they were, and history says which one it was."""
    front_change(front=front_of(stack, 1), facts=OTHERWISE, by=owner, at=NOW)
    line = Revision.objects.order_by("pk").last()

    assert facts_of(job) == (FrontFacts(), OTHERWISE, FrontFacts())
    assert line is not None
    assert line.text.startswith("Front 2 of B1.a: height in the stack nothing → 6, ")
    assert "thickness nothing → 7/8" in line.text
    assert line.person == owner


def test_a_single_front_is_told_by_its_opening(job: Job) -> None:
    """What only a stack has is dropped; a door hangs somewhere."""
    opening = OpeningFactory.create(cabinet__job=job)
    front_change(front=front_of(opening), facts=OTHERWISE, at=NOW)
    line = Revision.objects.order_by("pk").last()

    (front,) = facts_of(job)
    assert (front.own_height, front.hinged, front.build) == (None, "left", "slab")
    assert line is not None
    assert line.text.startswith("Front 1 of B1.a: ")


def test_a_fronts_box_stays_when_the_front_is_changed(stack: Opening, job: Job) -> None:
    """It is entered and removed by itself."""
    BoxFactory.create(opening=stack, index=1)
    before = facts_of(job)[1].box
    front_change(front=front_of(stack, 1), facts=OTHERWISE, at=NOW)

    assert before is not None
    assert facts_of(job)[1].box == before


def test_a_wrong_front_changes_nothing(stack: Opening, job: Job) -> None:
    """A fault stands at its field: a size, a door that is not there or can't serve several."""
    DoorOnHandFactory.create(job=job, label="D1")
    wrong = (
        (FrontFacts(thickness=inches(0)), "thickness"),
        (FrontFacts(material="m" * 81), "material"),
        (FrontFacts(door_on_hand="D1"), "door"),
    )
    for facts, field in wrong:
        with pytest.raises(ValidationError) as refused:
            front_change(front=front_of(stack), facts=facts, at=NOW)
        assert set(refused.value.message_dict) == {field}

    assert facts_of(job) == (FrontFacts(),) * 3


def test_a_front_is_made_of_a_door_of_its_own_job(job: Job) -> None:
    """A door of the same name on hand for another job is another one."""
    other = DoorOnHandFactory.create(job=JobFactory.create(shop=job.shop), label="D7")
    front = front_of(OpeningFactory.create(cabinet__job=job))
    with pytest.raises(ValidationError) as refused:
        front_change(front=front, facts=FrontFacts(door_on_hand="D7"), at=NOW)
    assert refused.value.message_dict == {"door": ["no door on hand is called D7"]}

    own = DoorOnHandFactory.create(job=job, label="D7")
    front_change(front=front, facts=FrontFacts(door_on_hand="D7"), at=NOW)
    assert Front.objects.get().door == own
    assert not other.fronts.exists()


def test_fronts_that_stay_are_the_same_rows(stack: Opening, job: Job) -> None:
    """A stack that grows or shrinks keeps what its first fronts carry."""
    first = front_of(stack)
    front_change(front=first, facts=OTHERWISE, at=NOW)
    saying.opening_change(opening=stack, count=4, at=NOW)
    assert facts_of(job) == (OTHERWISE, *[FrontFacts()] * 3)

    saying.opening_change(opening=stack, count=1, at=NOW)
    assert [*Front.objects.all()] == [first]


def test_the_only_box_of_a_stack_goes_with_what_it_stood_behind(stack: Opening) -> None:
    """Two of three drawers have none yet: the third's goes."""
    BoxFactory.create(opening=stack, index=2, height=inches(4))

    saying.opening_change(opening=stack, closed_by="fixed", at=NOW, count=None)

    assert not Box.objects.exists()


def test_one_box_among_fronts_that_all_stay_goes_too(job: Job) -> None:
    """A pair of doors in the place of two drawers, one of which stood on a box."""
    opening = OpeningFactory.create(cabinet__job=job, closed_by="drawers", count=2)
    BoxFactory.create(opening=opening, index=1, height=inches(4))

    saying.opening_change(opening=opening, closed_by="pair", at=NOW, count=None)

    assert Front.objects.count() == 2
    assert not Box.objects.exists()


@pytest.mark.parametrize("given", [1, 2])
def test_diagonals_come_in_twos(job: Job, given: int) -> None:
    """The one that is missing is asked for."""
    opening = OpeningFactory.create(cabinet__job=job)
    row = opening_of(job, opening.pk)
    said: dict[str, Any] = {f"measured_diagonal_{given}": inches(31)}
    with pytest.raises(ValidationError) as refused:
        saying.opening_change(opening=row, at=NOW, **said)

    assert set(refused.value.message_dict) == {f"measured_diagonal_{3 - given}"}


def test_saving_an_opening_as_it_is_changes_nothing(stack: Opening, job: Job) -> None:
    """Boxes, fronts and all."""
    BoxFactory.create(opening=stack, index=1)
    front_change(front=front_of(stack, 2), facts=OTHERWISE, at=NOW)
    before = kitchen_of(job)
    row = opening_of(job, stack.pk)
    opening_change(opening=row, facts=at_hand(row), at=NOW)

    assert kitchen_of(job) == before

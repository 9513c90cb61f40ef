"""Reads start from the job: what belongs to another one does not exist."""

import pytest
from django.core.exceptions import ObjectDoesNotExist
from pytest_django import DjangoAssertNumQueries

from fronts.models import DoorOnHand
from fronts.rules.practice import inches
from fronts.selectors.kitchens import (
    cabinet_of,
    cabinets_of,
    front_keys_of,
    front_of,
    opening_of,
    openings_of,
    thing_of,
    things_of,
)
from fronts.selectors.schedules import schedule_of
from shopjobs.models import Job, Person
from tests.factories import (
    BoxFactory,
    CabinetFactory,
    DoorOnHandFactory,
    JobFactory,
    OpeningFactory,
)


@pytest.fixture
def others_job(stranger: Person) -> Job:
    """A job of another shop."""
    assert stranger.shop is not None
    return JobFactory.create(shop=stranger.shop)


def test_another_jobs_things_do_not_exist(job: Job, others_job: Job) -> None:
    """Cabinets, openings and doors."""
    cabinet = CabinetFactory.create(job=job)
    opening, door = OpeningFactory.create(cabinet=cabinet), DoorOnHandFactory.create(job=job)
    assert cabinet_of(job, cabinet.pk) == cabinet
    assert opening_of(job, opening.pk) == opening
    assert thing_of(job, DoorOnHand, door.pk) == door

    with pytest.raises(ObjectDoesNotExist):
        cabinet_of(others_job, cabinet.pk)
    with pytest.raises(ObjectDoesNotExist):
        opening_of(others_job, opening.pk)
    with pytest.raises(ObjectDoesNotExist):
        thing_of(others_job, DoorOnHand, door.pk)


def test_a_list_takes_as_many_queries_for_many_as_for_one(
    job: Job, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    """Cabinets with their openings, doors and boxes at hand."""
    door = DoorOnHandFactory.create(job=job)
    for index in range(3):
        cabinet = CabinetFactory.create(job=job, label=f"B{index}", x=inches(18 * index))
        BoxFactory.create(
            opening__cabinet=cabinet, opening__closed_by="drawer", opening__front_door=door
        )

    with django_assert_num_queries(3):
        seen = [
            (cabinet.label, opening.label, str(front.door), front.box.slide)
            for cabinet in cabinets_of(job)
            for opening in cabinet.openings.all()
            for front in opening.fronts.all()
        ]
    assert seen == [(f"B{index}", "a", "D1", "side") for index in range(3)]


def test_lists_are_in_the_order_that_people_gave(job: Job) -> None:
    """Openings and doors."""
    cabinet = CabinetFactory.create(job=job)
    for label in ("b", "a"):
        OpeningFactory.create(cabinet=cabinet, label=label, closed_by="open")
    for label in ("D2", "D1"):
        DoorOnHandFactory.create(job=job, label=label)

    assert [opening.label for opening in openings_of(job, cabinet.pk)] == ["b", "a"]
    assert [door.label for door in things_of(job, DoorOnHand)] == ["D2", "D1"]


def test_a_front_is_found_by_its_place_in_its_opening(job: Job, others_job: Job) -> None:
    """From the top; there is none beyond the last, and none of another job's."""
    stack = OpeningFactory.create(cabinet__job=job, closed_by="drawers", count=3)
    box = BoxFactory.create(opening=stack, index=2)

    assert front_of(job, stack.pk, 2) == box.front
    assert [front_of(job, stack.pk, index).position for index in range(3)] == [0, 1, 2]
    for asked, index in ((job, 3), (others_job, 0)):
        with pytest.raises(ObjectDoesNotExist):
            front_of(asked, stack.pk, index)


def test_fronts_are_known_by_what_they_are_called_now(job: Job, others_job: Job) -> None:
    """A single front like its opening, several by their numbers; none of another job's."""
    cabinet = CabinetFactory.create(job=job)
    stack = OpeningFactory.create(cabinet=cabinet, closed_by="drawers", count=2)
    door = OpeningFactory.create(cabinet=cabinet, label="b")
    OpeningFactory.create(cabinet=cabinet, label="c", closed_by="open")
    OpeningFactory.create(cabinet__job=others_job)

    assert front_keys_of(job) == {
        "B1.a.1": front_of(job, stack.pk, 0).pk,
        "B1.a.2": front_of(job, stack.pk, 1).pk,
        "B1.b": front_of(job, door.pk, 0).pk,
    }


def test_the_schedule_follows_what_was_entered(job: Job) -> None:
    """Nothing of it is kept."""
    cabinet = CabinetFactory.create(job=job, mount="inset")
    OpeningFactory.create(cabinet=cabinet)
    assert [front.label for front in schedule_of(job).fronts] == ["B1.a"]

    OpeningFactory.create(
        cabinet__job=job, cabinet__label="B2", cabinet__x=inches(18), cabinet__mount="inset"
    )
    assert [front.label for front in schedule_of(job).fronts] == ["B1.a", "B2.a"]

"""Reads start from the job: what belongs to another one does not exist."""

import pytest
from django.core.exceptions import ObjectDoesNotExist
from pytest_django import DjangoAssertNumQueries

from fronts.rules.practice import inches
from fronts.selectors.kitchens import (
    boxes_of,
    cabinet_of,
    cabinets_of,
    door_of,
    doors_of,
    opening_labelled,
    opening_of,
    openings_of,
    schedule_of,
)
from shopjobs.models import Job, Person
from tests.factories import make_box, make_cabinet, make_door, make_opening


@pytest.fixture
def others_job(stranger: Person) -> Job:
    """A job of another shop."""
    assert stranger.shop is not None
    return Job.objects.create(shop=stranger.shop, number="K-1")


def test_another_jobs_things_do_not_exist(job: Job, others_job: Job) -> None:
    """Cabinets, openings and doors."""
    cabinet = make_cabinet(job)
    opening, door = make_opening(cabinet), make_door(job)
    assert cabinet_of(job, cabinet.pk) == cabinet
    assert opening_of(job, opening.pk) == opening
    assert door_of(job, door.pk) == door

    with pytest.raises(ObjectDoesNotExist):
        cabinet_of(others_job, cabinet.pk)
    with pytest.raises(ObjectDoesNotExist):
        opening_of(others_job, opening.pk)
    with pytest.raises(ObjectDoesNotExist):
        door_of(others_job, door.pk)
    assert opening_labelled(others_job, "B1", "a") is None


def test_a_finding_leads_to_its_opening(job: Job) -> None:
    """By the labels of cabinet and opening; None once it is gone."""
    opening = make_opening(make_cabinet(job))

    assert opening_labelled(job, "B1", "a") == opening
    assert opening_labelled(job, "B1", "z") is None


def test_a_list_takes_as_many_queries_for_many_as_for_one(
    job: Job, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    """Cabinets with their openings, doors and boxes at hand."""
    door = make_door(job)
    for index in range(3):
        cabinet = make_cabinet(job, label=f"B{index}", x=inches(18 * index))
        make_box(make_opening(cabinet, closed_by="drawer", front_door=door))

    with django_assert_num_queries(3):
        seen = [
            (cabinet.label, opening.label, str(opening.front_door), len(opening.boxes.all()))
            for cabinet in cabinets_of(job)
            for opening in cabinet.openings.all()
        ]
    assert seen == [(f"B{index}", "a", "D1", 1) for index in range(3)]


def test_lists_are_in_the_order_that_people_gave(job: Job) -> None:
    """Openings, boxes and doors."""
    cabinet = make_cabinet(job)
    for label in ("b", "a"):
        make_opening(cabinet, label=label, closed_by="open")
    for label in ("D2", "D1"):
        make_door(job, label=label)
    stack = make_opening(cabinet, label="c", closed_by="drawers", count=3)
    lowest, highest = make_box(stack, index=2), make_box(stack, index=0)

    assert [each.label for each in openings_of(cabinet)] == ["b", "a", "c"]
    assert [each.label for each in doors_of(job)] == ["D2", "D1"]
    assert boxes_of(stack) == {0: highest, 2: lowest}


def test_the_schedule_follows_what_was_entered(job: Job) -> None:
    """Nothing of it is kept."""
    cabinet = make_cabinet(job, mount="inset")
    make_opening(cabinet)
    assert [front.label for front in schedule_of(job).fronts] == ["B1.a"]

    make_opening(make_cabinet(job, label="B2", x=inches(18), mount="inset"))
    assert [front.label for front in schedule_of(job).fronts] == ["B1.a", "B2.a"]

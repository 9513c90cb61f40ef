"""Doors on hand over all jobs: those that are left over, and one that goes to another job."""

from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse

from fronts.models import DoorOnHand, Front
from fronts.rules.practice import inches
from fronts.services.history import capability_for, revision_undo
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision
from shopjobs.services.refused import Refused
from tests.dom import dom
from tests.factories import (
    NOW,
    CabinetFactory,
    DoorOnHandFactory,
    JobFactory,
    OpeningFactory,
    overlaid,
)

SignIn = Callable[[Person], Client]
PAGE = "/shop/offcuts/doors/"


@pytest.fixture
def other(job: Job) -> Job:
    """Another job of the shop, with a door D1 of its own."""
    other = JobFactory.create(shop=job.shop, number="K-2")
    DoorOnHandFactory.create(job=other, label="D1")
    return other


def one(door: DoorOnHand) -> str:
    return reverse("fronts:shop-door", args=[door.pk])


def used(job: Job, label: str) -> Front:
    """A front of the job that is made of this door by name."""
    overlaid(job)
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    front = opening.fronts.get()
    Front.objects.filter(pk=front.pk).update(door=DoorOnHand.objects.get(job=job, label=label))
    return front


def test_only_doors_that_no_front_is_made_of_are_left_over(
    job: Job, other: Job, installer: Person, signed_in: SignIn
) -> None:
    DoorOnHandFactory.create(job=job, label="D7")
    DoorOnHandFactory.create(job=job, label="D8")
    used(job, "D7")
    DoorOnHandFactory.create(job=JobFactory.create(), label="T-1")
    page = dom(signed_in(installer).get(PAGE))
    assert sorted(each.words for each in page.all("tbody th")) == ["D1", "D8"]
    assert "Move" not in page.words


def test_a_door_goes_to_another_job_with_all_it_has_under_a_free_name(
    job: Job, other: Job, office: Person, signed_in: SignIn
) -> None:
    door = DoorOnHandFactory.create(job=job, label="D1", knob_x=inches(2), knob_y=inches(3))
    before = kitchen_of(job).doors_on_hand[0]
    revisions = job.revision, other.revision
    client = signed_in(office)
    page = dom(client.post(one(door), {"seen_in": job.pk, "to": "K-2"}, follow=True))
    assert "It is door D2 of job K-2 now." in page.words
    door.refresh_from_db()
    assert (door.job, door.label) == (other, "D2")
    moved = kitchen_of(other).doors_on_hand[1]
    assert (moved.width, moved.knob_hole) == (before.width, before.knob_hole)
    assert [Job.objects.get(pk=each.pk).revision for each in (job, other)] == [
        revisions[0] + 1, revisions[1] + 1,
    ]  # fmt: skip
    revision = Revision.objects.latest("pk")
    assert capability_for(revision, office) == "edit_kitchen"
    revision_undo(revision=revision, at=NOW, by=office)
    door.refresh_from_db()
    assert (door.job, door.label) == (job, "D1")


def test_who_moves_it_second_is_told(
    job: Job, other: Job, office: Person, signed_in: SignIn
) -> None:
    door = DoorOnHandFactory.create(job=job, label="D5")
    third = JobFactory.create(shop=job.shop, number="K-3")
    client = signed_in(office)
    client.post(one(door), {"seen_in": job.pk, "to": "K-2"})
    late = client.post(one(door), {"seen_in": job.pk, "to": third.number})
    assert late.status_code == 422
    assert "Somebody moved it meanwhile: it is D5 of job K-2." in dom(late).words


def test_a_front_keeps_its_door(job: Job, other: Job, office: Person, signed_in: SignIn) -> None:
    door = DoorOnHandFactory.create(job=job, label="D7")
    front = used(job, "D7")
    client = signed_in(office)
    assert f"It is front {front.opening} of job {job.number}" in dom(client.get(one(door))).words
    refused = client.post(one(door), {"seen_in": job.pk, "to": "K-2"})
    assert refused.status_code == 422
    assert "D7 is front" in dom(refused).words


def test_a_move_is_not_taken_back_from_under_a_front(
    job: Job, other: Job, office: Person, signed_in: SignIn
) -> None:
    door = DoorOnHandFactory.create(job=job, label="D7")
    signed_in(office).post(one(door), {"seen_in": job.pk, "to": "K-2"})
    revision = Revision.objects.latest("pk")
    used(other, "D7")
    with pytest.raises(Refused, match="is made of door D7 by now"):
        revision_undo(revision=revision, at=NOW, by=office)
    door.refresh_from_db()
    assert door.job == other


@pytest.mark.parametrize("to", ["", "K-404", "K-1", "T-1", "\0", "9" * 50])
def test_a_job_that_it_can_not_go_to_is_refused(
    job: Job, other: Job, office: Person, signed_in: SignIn, to: str
) -> None:
    JobFactory.create(number="T-1")
    door = DoorOnHandFactory.create(job=job, label="D5")
    answer = signed_in(office).post(one(door), {"seen_in": job.pk, "to": to})
    assert answer.status_code == 422
    assert answer.context["form"].errors["to"]


def test_another_shop_s_door_is_nobody_s(
    job: Job, office: Person, installer: Person, signed_in: SignIn
) -> None:
    theirs = DoorOnHandFactory.create(job=JobFactory.create(), label="T-1")
    ours = DoorOnHandFactory.create(job=job, label="D5")
    assert signed_in(office).get(one(theirs)).status_code == 404
    assert signed_in(installer).get(one(ours)).status_code == 403

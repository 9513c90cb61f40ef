"""What each door on hand could become: drawn over its opening, then accepted."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Front, HingeBore
from fronts.rules.lengths import read
from fronts.rules.practice import inches
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.factories import (
    CabinetFactory,
    DoorOnHandFactory,
    OpeningFactory,
    overlaid,
)

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn, job: Job) -> Client:
    """The owner at the desk: a door to hang, a door on hand that fits, one far too large."""
    overlaid(job)
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job, label="B1"))
    drawer = CabinetFactory.create(job=job, label="B2", x=None)
    OpeningFactory.create(cabinet=drawer, closed_by="drawer")
    fits = DoorOnHandFactory.create(
        job=job, label="D1", width=inches(65, 4), height=inches(29), build="slab"
    )
    HingeBore.objects.create(door=fits, x=inches(1), y=inches(4), position=0)
    DoorOnHandFactory.create(job=job, label="D2", width=inches(40), height=inches(60))
    return signed_in(owner)


def test_each_door_is_drawn_over_the_opening_that_it_serves(desk: Client, job: Job) -> None:
    """With what is sawn off, its bores, and what it would bring; nothing is decided yet."""
    page = dom(desk.get(f"/jobs/{job.pk}/doors/uses/"))
    first, second = page.all(".uses > li")
    assert first.one("h2").words == "D1 → B1.a"
    assert "1/4 off the right, 1/4 off the top and the bottom" in first.words
    assert "plug" in first.one(".finding").words
    assert first.one("svg title").words == "Door D1 over B1.a"
    assert len(first.all("svg circle")) >= 1
    assert first.one("input[name=doors]").attribute("checked") is not None
    assert second.one("h2").words == "D2"
    assert "It serves nowhere" in second.words
    assert not Front.objects.exclude(door=None).exists()


def test_what_is_chosen_is_used_in_one_step(desk: Client, job: Job) -> None:
    """By name; then it is decided, and offered no more."""
    before = Revision.objects.count()
    answer = desk.post(f"/jobs/{job.pk}/doors/uses/", {"doors": ["D1"]})
    assert answer.status_code == 302
    front = Front.objects.get(opening__cabinet__label="B1")
    assert front.door is not None
    assert front.door.label == "D1"
    assert Revision.objects.count() == before + 1
    page = dom(desk.get(f"/jobs/{job.pk}/doors/uses/"))
    assert "decided already" in page.words
    assert not page.all("input[name=doors]")


@pytest.mark.parametrize("chosen", [[], ["D2"], ["D9"]])
def test_what_can_not_be_used_is_refused(chosen: list[str], desk: Client, job: Job) -> None:
    """Nothing chosen, or a door that serves nowhere by now."""
    answer = desk.post(f"/jobs/{job.pk}/doors/uses/", {"doors": chosen})
    assert answer.status_code == 422
    assert dom(answer).all(".summary li")
    assert not Front.objects.exclude(door=None).exists()


def test_a_job_without_doors_says_where_they_are_entered(
    job: Job, owner: Person, signed_in: SignIn
) -> None:
    """And who may not edit has no such page."""
    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/doors/uses/"))
    assert "There are no doors on hand" in page.words
    assert "What they could become" not in dom(signed_in(owner).get(f"/jobs/{job.pk}/")).words


def test_the_list_of_doors_leads_there(
    desk: Client, job: Job, installer: Person, signed_in: SignIn
) -> None:
    """For whoever may decide it."""
    links = [a.attribute("href") for a in dom(desk.get(f"/jobs/{job.pk}/")).all("a")]
    assert f"/jobs/{job.pk}/doors/uses/" in links
    assert signed_in(installer).get(f"/jobs/{job.pk}/doors/uses/").status_code == 403


def test_no_other_door_is_taken_than_was_accepted(
    job: Job, owner: Person, signed_in: SignIn
) -> None:
    """Two alike over a pair: one by itself would be either; together they are as proposed."""
    overlaid(job)
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job), closed_by="pair")
    desk = signed_in(owner)
    page = dom(desk.get(f"/jobs/{job.pk}/"))
    wide = page.all(".fronts tbody tr")[0].all("td")[0].words
    for label in ("D1", "D2"):
        DoorOnHandFactory.create(
            job=job, label=label, width=read(wide, "in"), height=inches(57, 2), build="slab"
        )
    address = f"/jobs/{job.pk}/doors/uses/"
    heads = [head.words for head in dom(desk.get(address)).all(".uses h2")]
    assert sorted(head.split()[-1] for head in heads) == ["B1.a.1", "B1.a.2"]

    later = next(head.split()[0] for head in heads if head.endswith(".a.1"))
    first = dom(desk.post(address, {"doors": [later]}))
    taken = Front.objects.filter(choose=True).count()
    assert taken == 1 or "choose them together" in first.words
    desk.post(address, {"doors": ["D1", "D2"]})
    assert Front.objects.filter(choose=True).count() == 2


def test_accepting_twice_is_once(desk: Client, job: Job) -> None:
    """A double click."""
    address = f"/jobs/{job.pk}/doors/uses/"
    key = dom(desk.get(address)).one("#door-uses").field("form_key").value
    for _ in range(2):
        assert desk.post(address, {"doors": ["D1"], "form_key": key}).status_code == 302
    assert "It is done already." in dom(desk.get(address)).words

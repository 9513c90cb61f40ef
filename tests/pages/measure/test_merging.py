"""Two people who change one thing: what each touched goes together, or both are shown."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.rules.practice import inches
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.factories import CabinetFactory
from tests.pages.kitchens import HTMX, NEW_CABINET, seen_in

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """The owner at the desk."""
    return signed_in(owner)


def test_nobodys_newer_value_is_overwritten(
    job: Job, desk: Client, office: Person, signed_in: SignIn
) -> None:
    """A fact that two changed is answered with both values, at its field."""
    cabinet = CabinetFactory.create(job=job)
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/"
    typed = {**NEW_CABINET, "wall": "North", "x": "0", "y": "4"}
    mine, theirs = (seen_in(dom(desk.get(address))) for _ in range(2))
    signed_in(office).post(address, {**typed, "width": "20", **theirs})

    answer = desk.post(address, {**typed, "width": "21", **mine}, headers=HTMX)

    assert answer.status_code == 409
    told = dom(answer).one(f"#cabinet-{cabinet.pk}-width_error").words
    assert told.startswith("otto, at ")
    assert "made this “20” while you were typing; yours is “21”." in told
    assert dom(answer).field("width").value == "21"
    cabinet.refresh_from_db()
    assert cabinet.width == inches(20)

    again = desk.post(address, {**typed, "width": "21", **seen_in(dom(answer))}, headers=HTMX)
    assert again.status_code == 200
    cabinet.refresh_from_db()
    assert cabinet.width == inches(21)


def test_what_two_people_change_goes_together(
    job: Job, desk: Client, office: Person, signed_in: SignIn
) -> None:
    """Different facts of one thing: both are saved, and what was not touched is not written."""
    cabinet = CabinetFactory.create(job=job)
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/"
    typed = {**NEW_CABINET, "wall": "North", "x": "0", "y": "4"}
    mine, theirs = (seen_in(dom(desk.get(address))) for _ in range(2))
    signed_in(office).post(address, {**typed, "width": "20", **theirs})

    answer = desk.post(address, {**typed, "width": "18.0", "depth": "23", **mine}, headers=HTMX)

    assert answer.status_code == 200
    cabinet.refresh_from_db()
    assert (cabinet.width, cabinet.depth) == (inches(20), inches(23))
    assert newest(job).text == "B1: depth 24 → 23"


def test_theirs_is_taken_by_a_button(
    job: Job, desk: Client, office: Person, signed_in: SignIn
) -> None:
    """Beside the field; what else was typed is saved with it."""
    cabinet = CabinetFactory.create(job=job)
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/"
    typed = {**NEW_CABINET, "wall": "North", "x": "0", "y": "4"}
    mine, theirs = (seen_in(dom(desk.get(address))) for _ in range(2))
    signed_in(office).post(address, {**typed, "width": "20", **theirs})
    answer = dom(desk.post(address, {**typed, "width": "21", "depth": "23", **mine}))
    assert answer.one("button[name='theirs'][value='width']").words == "Take 20 for the width"

    again = {**typed, "width": "21", "depth": "23", "theirs": "width", **seen_in(answer)}
    assert desk.post(address, again).status_code == 302
    cabinet.refresh_from_db()
    assert (cabinet.width, cabinet.depth) == (inches(20), inches(23))


def newest(job: Job) -> Revision:
    """What was done to the job last."""
    revision = Revision.objects.filter(job=job).order_by("-pk").first()
    assert revision is not None
    return revision

"""A front that was fitted, and what happens to its record when the kitchen is changed."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Cabinet, FitRecord, Opening
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import CabinetFactory, OpeningFactory, door_and_drawer, overlaid
from tests.pages.kitchens import HTMX, NEW_CABINET, NEW_OPENING, posted_by, seen_in

SignIn = Callable[[Person], Client]
ANOTHER = "This is another front now"
CHANGED = "Fitted before the change"
DONE = {"state": "as planned"}


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


@pytest.fixture
def cabinet(job: Job, desk: Client) -> Cabinet:
    """A cabinet whose door and drawer were both fitted."""
    overlaid(job)
    cabinet = door_and_drawer(job)
    for front in ("B1.a", "B1.b"):
        desk.post(fit_page(cabinet), DONE | {"front": front, "note": f"tight {front}"})
    return cabinet


def fit_page(cabinet: Cabinet) -> str:
    """The cabinet's page on site."""
    return f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/"


def record(client: Client, cabinet: Cabinet, front: str) -> str:
    """What the cabinet's page says of how one of its fronts fitted."""
    return dom(client.get(fit_page(cabinet))).one(f"[id='record-{front}']").words


def fitted(client: Client, cabinet: Cabinet) -> str:
    """What the list of cabinets says of them."""
    return dom(client.get(f"/jobs/{cabinet.job_id}/fit/")).all(".state")[0].words


def save(client: Client, address: str, form: dict[str, str]) -> None:
    """Open a form and save it so."""
    version = seen_in(dom(client.get(address)))
    assert client.post(address, {**form, **version}, headers=HTMX).status_code == 200


def save_door(client: Client, cabinet: Cabinet, **typed: str) -> None:
    """Change the opening with the door."""
    door = Opening.objects.get(cabinet=cabinet, label="a")
    save(
        client,
        f"/jobs/{cabinet.job_id}/openings/{door.pk}/",
        {**NEW_OPENING, "height": "19", **typed},
    )


def test_a_cabinet_that_is_renamed_stays_fitted(cabinet: Cabinet, desk: Client) -> None:
    """The record is its front's, whatever its label; so it is when another takes the old name."""
    save(
        desk,
        f"/jobs/{cabinet.job_id}/cabinets/{cabinet.pk}/",
        {**NEW_CABINET, "label": "Sink", "wall": "North", "x": "0", "y": "4"},
    )

    assert fitted(desk, cabinet) == "done"
    said = record(desk, cabinet, "Sink.a")
    assert "tight B1.a" in said
    assert ANOTHER not in said
    taker = OpeningFactory.create(cabinet=CabinetFactory.create(job=cabinet.job, label="B1"))
    assert "Recorded by" not in record(desk, taker.cabinet, "B1.a")


def test_an_opening_that_is_renamed_stays_fitted(cabinet: Cabinet, desk: Client) -> None:
    """The drawer beside it keeps its own record, under its own name."""
    save_door(desk, cabinet, label="door")

    assert fitted(desk, cabinet) == "done"
    assert "tight B1.a" in record(desk, cabinet, "B1.door")
    assert "tight B1.b" in record(desk, cabinet, "B1.b")


@pytest.mark.parametrize(
    "typed",
    [
        {"front_hinged": "right"}, {"width": "14 1/2"}, {"front_thickness": "7/8"},
        {"front_build": "five-piece"},
    ],
)  # fmt: skip
def test_a_front_that_hangs_otherwise_is_to_be_fitted_anew(
    typed: dict[str, str], cabinet: Cabinet, desk: Client
) -> None:
    """The page says so beside what was measured; the list no longer counts it; others stand."""
    save_door(desk, cabinet, **typed)

    assert fitted(desk, cabinet) == "1 of 2 done"
    said = record(desk, cabinet, "B1.a")
    assert ANOTHER in said
    assert "Fit it and measure again." in said
    assert "tight B1.a" in said
    beside = record(desk, cabinet, "B1.b")
    assert ANOTHER not in beside
    assert CHANGED not in beside

    desk.post(fit_page(cabinet), DONE | {"front": "B1.a"})
    assert fitted(desk, cabinet) == "done"
    assert ANOTHER not in record(desk, cabinet, "B1.a")


def test_a_front_changed_and_changed_back_is_the_one_that_was_fitted(
    cabinet: Cabinet, desk: Client
) -> None:
    """A slip at the desk costs nobody a second visit."""
    save_door(desk, cabinet, front_hinged="right")
    save_door(desk, cabinet, front_hinged="left")

    assert fitted(desk, cabinet) == "done"
    assert ANOTHER not in record(desk, cabinet, "B1.a")


def test_deleting_an_opening_names_boxes_and_records_that_went(
    cabinet: Cabinet, desk: Client
) -> None:
    """The answer names both; the other front's record stands afterwards."""
    drawer = Opening.objects.get(cabinet=cabinet, label="b")
    address = f"/jobs/{cabinet.job_id}/openings/{drawer.pk}/delete/"

    answer = dom(desk.post(address, headers=HTMX))

    went = [line.words for line in answer.all(".gone li")]
    assert went == ["box 1 of B1.b", "the record of how B1.b fitted"]
    assert fitted(desk, cabinet) == "done"
    assert "tight B1.a" in record(desk, cabinet, "B1.a")
    assert not dom(desk.get(fit_page(cabinet))).has("[id='record-B1.b']")


def test_a_stack_that_loses_a_fitted_front_says_so(cabinet: Cabinet, desk: Client) -> None:
    """Fewer fronts than were fitted: the answer names the record, and Undo brings it back."""
    pair = {**NEW_OPENING, "height": "19", "closed_by": "pair"}
    door = Opening.objects.get(cabinet=cabinet, label="a")
    address = f"/jobs/{cabinet.job_id}/openings/{door.pk}/"
    save(desk, address, pair)
    desk.post(fit_page(cabinet), DONE | {"front": "B1.a.2"})
    single = {**NEW_OPENING, "height": "19", **seen_in(dom(desk.get(address)))}

    answer = dom(desk.post(address, single, headers=HTMX))

    assert [line.words for line in answer.all(".gone li")] == ["the record of how B1.a.2 fitted"]
    assert FitRecord.objects.get(label="B1.a.2").front is None
    assert "tight B1.a" in record(desk, cabinet, "B1.a")
    undo = answer.one(".gone form")
    desk.post(undo.attribute("action"), posted_by(undo))
    assert FitRecord.objects.filter(label="B1.a.2", front__isnull=False).exists()

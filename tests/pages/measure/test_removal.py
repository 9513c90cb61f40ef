"""What is taken away on the job's page: at once, said with all that went, and offered back."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Box, Cabinet, DoorOnHand, Opening
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import BoxFactory, CabinetFactory, DoorOnHandFactory, OpeningFactory
from tests.pages.kitchens import HTMX, NEW_OPENING, furnish, posted_by, seen_in
from tests.saying import front_of

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def labels(job: Job) -> list[str]:
    """The job's cabinets in their order."""
    return [each.label for each in Cabinet.objects.filter(job=job).order_by("position")]


def test_deleting_says_what_went_and_offers_it_back(job: Job, desk: Client) -> None:
    """One press; openings and boxes are named where the cabinet stood, with an Undo."""
    furnish(job)
    cabinet = Cabinet.objects.get(label="B2")
    place = f"cabinet-{cabinet.pk}"
    page = dom(desk.get(f"/jobs/{job.pk}/"))
    delete = page.one(f"[id='{place}'] form[action$='/cabinets/{cabinet.pk}/delete/']")

    answer = desk.post(delete.attribute("action"), headers=HTMX)
    gone = dom(answer).one(f"[id='{place}'].gone")
    assert answer["HX-Retarget"] == f"#{place}"
    assert gone.one("p").words == "Cabinet B2 is deleted. With it:"
    assert [line.words for line in gone.all("li")] == ["opening B2.a", "box 1 of B2.a"]
    assert labels(job) == ["B1"]

    back = desk.post(gone.one("form").attribute("action"), posted_by(gone.one("form")))
    assert back["Location"] == f"/jobs/{job.pk}/#{place}"
    assert labels(job) == ["B1", "B2"]
    assert Box.objects.exists()


def test_deleting_without_javascript_says_and_offers_the_same(job: Job, desk: Client) -> None:
    """The page that follows has the words and the Undo on top."""
    furnish(job)
    cabinet = Cabinet.objects.get(label="B2")
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/delete/"

    said = dom(desk.post(address, follow=True)).one("#said")
    assert "Cabinet B2 is deleted. With it: opening B2.a box 1 of B2.a" in said.words
    desk.post(said.one("form").attribute("action"), posted_by(said.one("form")))
    assert labels(job) == ["B1", "B2"]


def test_a_cabinet_is_deleted_by_a_press_alone(job: Job, desk: Client) -> None:
    """An address that is only opened deletes nothing; what is gone is not there to delete."""
    address = f"/jobs/{job.pk}/cabinets/{CabinetFactory.create(job=job).pk}/delete/"

    assert desk.get(address).status_code == 405
    assert labels(job) == ["B1"]
    desk.post(address)
    assert desk.post(address).status_code == 404


def test_deleting_an_opening_says_what_went(job: Job, desk: Client) -> None:
    """The answer names the boxes; the cabinet stays without them."""
    furnish(job)
    opening = Opening.objects.get(cabinet__label="B2")

    answer = dom(desk.post(f"/jobs/{job.pk}/openings/{opening.pk}/delete/", headers=HTMX))

    assert "Opening B2.a is deleted. With it: box 1 of B2.a" in answer.one(".gone").words
    assert not Box.objects.exists()
    assert Opening.objects.count() == 1


@pytest.mark.parametrize("headers", [HTMX, {}], ids=["htmx", "plain"])
def test_boxes_that_lose_their_front_are_said_and_offered_back(
    headers: dict[str, str], job: Job, desk: Client
) -> None:
    """A drawer that becomes a door loses its box: done, said, with an Undo."""
    opening = BoxFactory.create(opening__cabinet__job=job).front.opening
    address = f"/jobs/{job.pk}/openings/{opening.pk}/"
    typed = NEW_OPENING | {"closed_by": "door"} | seen_in(dom(desk.get(address)))

    page = dom(desk.post(address, typed, headers=headers, follow=True))

    assert "Opening B1.a is saved. With it: box 1 of B1.a" in page.words
    assert not Box.objects.exists()
    (undo,) = (form for form in page.all(":is(.gone, .said) form"))
    desk.post(undo.attribute("action"), posted_by(undo))
    assert Box.objects.exists()
    opening.refresh_from_db()
    assert opening.closed_by == "drawer"


def test_a_change_that_takes_nothing_offers_nothing(job: Job, desk: Client) -> None:
    """Though something was deleted just before."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    other = CabinetFactory.create(job=job, label="B2")
    OpeningFactory.create(cabinet=other)
    desk.post(f"/jobs/{job.pk}/cabinets/{other.pk}/delete/", headers=HTMX)

    address = f"/jobs/{job.pk}/openings/{opening.pk}/"
    for height in ("27 1/2", "27"):
        typed = NEW_OPENING | {"height": height} | seen_in(dom(desk.get(address)))
        saved = dom(desk.post(address, typed, headers=HTMX))
        assert "Opening B1.a is saved." in saved.words
        assert not saved.has(".gone")


def test_a_door_that_was_used_names_its_openings(job: Job, desk: Client) -> None:
    """Deleting a door on hand says which fronts were made from it; they can have it back."""
    door = DoorOnHandFactory.create(job=job)
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job), front_door=door)
    page = dom(desk.get(f"/jobs/{job.pk}/"))
    delete = page.one(f"#door-{door.pk} form").attribute("action")

    gone = dom(desk.post(delete, headers=HTMX)).one(".gone")
    assert "Door D1 is deleted. With it: B1.a gets a new front" in gone.words
    assert not DoorOnHand.objects.exists()
    assert front_of(opening).door is None

    desk.post(gone.one("form").attribute("action"), posted_by(gone.one("form")))
    assert front_of(opening).door == door


def test_a_box_is_removed_and_offered_back(job: Job, desk: Client) -> None:
    """From its own form; beside its front it is said, with an Undo. Twice it can't be removed."""
    box = BoxFactory.create(opening__cabinet__job=job)
    opening = box.front.opening_id
    form = dom(desk.get(f"/jobs/{job.pk}/openings/{opening}/boxes/0/", headers=HTMX))
    address = form.one("button[formaction]").attribute("formaction")
    assert form.one("button[formaction]").words == "Remove the box"

    answer = dom(desk.post(address, headers=HTMX)).one(f"#opening-{opening}")

    assert "not measured" in answer.words
    assert answer.one(".gone p").words == "Box of B1.a is removed."
    assert not Box.objects.exists()
    assert desk.post(address).status_code == 404
    undo = answer.one(".gone form")
    desk.post(undo.attribute("action"), posted_by(undo))
    assert Box.objects.get().rise == box.rise

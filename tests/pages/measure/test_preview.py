"""The drawing that follows while a form is typed in."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Cabinet, Opening
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import CabinetFactory, OpeningFactory, overlaid
from tests.pages.kitchens import HTMX, NEW_CABINET, NEW_OPENING, furnish

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def test_a_new_cabinet_is_drawn_before_it_is_entered(job: Job, desk: Client) -> None:
    """The drawing shows the front that it would get; nothing is kept."""
    overlaid(job)

    answer = desk.get(f"/jobs/{job.pk}/cabinets/new/preview/", NEW_CABINET, headers=HTMX)

    assert "16 × 28 1/2" in dom(answer).words
    assert "HX-Retarget" not in answer
    assert not Cabinet.objects.exists()


def test_what_it_would_break_is_said_beside_the_drawing(job: Job, desk: Client) -> None:
    """A finding of the cabinet as it is typed stands under its drawing."""
    answer = desk.get(
        f"/jobs/{job.pk}/cabinets/new/preview/", {**NEW_CABINET, "face": "drawer"}, headers=HTMX
    )

    assert "Stop." in [word.words for word in dom(answer).all("strong")]


@pytest.mark.parametrize("typed", [{"width": ""}, {"width": "2 1/"}, {"sides": "30"}])
def test_what_can_not_be_read_yet_leaves_the_drawing(
    typed: dict[str, str], job: Job, desk: Client
) -> None:
    """A half-typed size is answered beside the drawing, not in its place."""
    answer = desk.get(
        f"/jobs/{job.pk}/cabinets/new/preview/", {**NEW_CABINET, **typed}, headers=HTMX
    )

    assert answer.status_code == 200
    assert answer["HX-Retarget"] == "#cabinet-new-not-yet"
    assert not dom(answer).has("svg")


def test_a_changed_opening_is_drawn_with_its_neighbours(job: Job, desk: Client) -> None:
    """The cabinet is drawn with the opening as it is typed; the row stays as it is."""
    furnish(job)
    opening = Opening.objects.get(cabinet__label="B1")

    answer = desk.get(
        f"/jobs/{job.pk}/openings/{opening.pk}/preview/",
        {**NEW_OPENING, "width": "14", "closed_by": "drawers", "count": "2"},
        headers=HTMX,
    )

    assert "B1.a.2" in dom(answer).words
    opening.refresh_from_db()
    assert opening.closed_by == "door"


def test_a_new_opening_is_drawn(job: Job, desk: Client) -> None:
    """The first opening of a cabinet is seen before it is entered."""
    overlaid(job)
    cabinet = CabinetFactory.create(job=job)
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/openings/new/preview/"

    assert "16 × 28 1/2" in dom(desk.get(address, NEW_OPENING, headers=HTMX)).words
    past = desk.get(address, {**NEW_OPENING, "width": "17"}, headers=HTMX)
    assert "HX-Retarget" in past


def test_a_changed_cabinet_is_drawn_with_its_openings(job: Job, desk: Client) -> None:
    """They follow it, as they do once it is saved, unless they could not lie in it."""
    overlaid(job)
    cabinet = OpeningFactory.create(cabinet=CabinetFactory.create(job=job)).cabinet
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/preview/"
    typed = {**NEW_CABINET, "x": "0", "y": "4"}

    assert "18 × 28 1/2" in dom(desk.get(address, {**typed, "width": "20"}, headers=HTMX)).words
    assert not dom(desk.get(address, {**typed, "width": "3"}, headers=HTMX)).has("svg")


def test_labels_of_people_are_written_as_text(job: Job, desk: Client) -> None:
    """A label with signs of markup in it is drawn, and is no markup."""
    typed = {**NEW_CABINET, "label": "<b>B1</b>"}

    page = dom(desk.get(f"/jobs/{job.pk}/cabinets/new/preview/", typed, headers=HTMX))

    assert not page.has("b")
    desk.post(f"/jobs/{job.pk}/cabinets/new/", typed)
    assert not dom(desk.get(f"/jobs/{job.pk}/")).has("b")


def test_a_stacks_heights_may_be_begun(job: Job, desk: Client) -> None:
    """One height of three is drawn, the rest shared; one too many waits for the person."""
    furnish(job)
    opening = Opening.objects.get(cabinet__label="B1")
    stack = {**NEW_OPENING, "closed_by": "drawers", "count": "3"}
    address = f"/jobs/{job.pk}/openings/{opening.pk}/preview/"

    begun = desk.get(address, {**stack, "heights": "6 1/2"}, headers=HTMX)
    too_many = desk.get(address, {**stack, "heights": "6,6,6,6"}, headers=HTMX)

    assert begun.status_code == too_many.status_code == 200
    assert "B1.a.1" in dom(begun).words
    assert "6 1/2" in [figure.words for figure in dom(begun).all("svg text")]
    assert "HX-Retarget" not in begun
    assert "HX-Retarget" in too_many


def test_a_face_is_drawn_as_it_is_typed(job: Job, desk: Client) -> None:
    """In words, in its cell; half a face leaves the drawing, and nothing is kept."""
    furnish(job)
    cabinet = Cabinet.objects.get(label="B1")

    def typed(face: str) -> Any:
        query = {f"cabinet-{cabinet.pk}-face": face}
        return desk.get(f"/jobs/{job.pk}/cells/preview/", query, headers=HTMX)

    answer = typed("drawer 6 over door right")
    assert "B1.b" in dom(answer).one("svg").words
    for face in ("drawer 6 ov", "drawer 60 over pair"):
        answer = typed(face)
        assert answer["HX-Reswap"] == "none"
        assert "The drawing waits" in dom(answer).words
    assert Opening.objects.filter(cabinet=cabinet).get().closed_by == "door"
    assert desk.get(f"/jobs/{job.pk}/cells/preview/", {"x": "1"}).status_code == 404


def test_the_empty_row_is_drawn_as_it_is_typed(job: Job, desk: Client) -> None:
    """As far as it comes to a cabinet."""
    furnish(job)
    address = f"/jobs/{job.pk}/rows/new/preview/"
    typed = {"wall": "North", "kind": "base", "width": "30", "face": "pair"}
    assert dom(desk.get(address, typed, headers=HTMX)).all("svg")
    for said in ({"width": ""}, {"face": "pa"}, {"kind": "filler"}, {"width": "2 1/"}):
        answer = desk.get(address, typed | said, headers=HTMX)
        assert answer.status_code == 200
        assert not dom(answer).all("svg")

"""Drawer boxes and doors on hand, with their little tables of holes."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Box, DoorOnHand, HingeBore, ShelfPins
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import BoxFactory, CabinetFactory, DoorOnHandFactory, OpeningFactory
from tests.pages.kitchens import HTMX, seen_in

SignIn = Callable[[Person], Client]

BOX = {
    "width": "14", "height": "5", "depth": "21", "front_thickness": "5/8", "rise": "1/2",
    "side_clearance": "", "slide": "bottom", "slide_width": "1 3/4", "slide_height": "1/2",
}  # fmt: skip
DOOR = {
    "label": "D1", "width": "16", "height": "27", "thickness": "3/4", "build": "five-piece",
    "stile": "2 1/4", "rail": "", "panel_thickness": "", "knob_x": "", "knob_y": "",
    "knob_diameter": "", "bore_diameter": "", "material": "",
}  # fmt: skip


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def rows(prefix: str, *filled: dict[str, str]) -> dict[str, Any]:
    """The rows of a table as they are posted, with one that is empty."""
    posted: dict[str, Any] = {
        f"{prefix}-TOTAL_FORMS": len(filled) + 1,
        f"{prefix}-INITIAL_FORMS": 0,
    }
    for number, row in enumerate((*filled, dict.fromkeys(filled[0], "") if filled else {})):
        posted |= {f"{prefix}-{number}-{name}": typed for name, typed in row.items()}
    return posted


def test_a_box_is_entered_with_its_shelf_pins(job: Job, desk: Client) -> None:
    """The box and its rows of holes are one form; empty rows are none."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job), closed_by="pull-out")
    pins = {"x": "1 1/2", "y": "3", "pitch": "1", "count": "20", "diameter": "1/4"}

    answer = desk.post(
        f"/jobs/{job.pk}/openings/{opening.pk}/boxes/0/",
        BOX | rows(f"pins-{opening.pk}-0", pins),
        headers=HTMX,
    )

    assert answer.status_code == 200
    assert "Box: 14 × 5 × 21, 1/2 up" in dom(answer).words
    assert Box.objects.get().front_thickness == inches(5, 8)
    row = ShelfPins.objects.get()
    assert (row.x, row.count) == (inches(3, 2), 20)


def test_the_next_box_is_built_like_the_last(job: Job, desk: Client) -> None:
    """Its slide, thickness and clearance are those of the last box; its width follows."""
    BoxFactory.create(opening__cabinet__job=job)
    other = OpeningFactory.create(
        cabinet=CabinetFactory.create(job=job), width=inches(12), closed_by="drawers", count=3
    )

    page = dom(desk.get(f"/jobs/{job.pk}/openings/{other.pk}/boxes/2/"))

    assert page.field("width").value == "11"
    assert page.field("front_thickness").value == "1/2"
    assert page.field("slide").value == "side"


@pytest.mark.parametrize(
    ("row", "message"),
    [
        ({"x": "1", "y": "", "pitch": "1", "count": "5", "diameter": "1/4"}, "how far up"),
        (
            {"x": "1", "y": "3", "pitch": "1", "count": "501", "diameter": "1/4"},
            "Give 500 at most.",
        ),
        ({"x": "1", "y": "3", "pitch": "0", "count": "5", "diameter": "1/4"}, "is nothing"),
    ],
)
def test_a_row_that_is_half_filled_in_is_refused(
    row: dict[str, str], message: str, job: Job, desk: Client
) -> None:
    """The message stands in the row, and the box is not entered either."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job), closed_by="drawer")
    posted = BOX | rows(f"pins-{opening.pk}-0", row)

    answer = desk.post(f"/jobs/{job.pk}/openings/{opening.pk}/boxes/0/", posted, headers=HTMX)

    assert answer.status_code == 422
    assert message in dom(answer).words
    assert not Box.objects.exists()


def test_a_table_without_its_count_of_rows_is_refused(job: Job, desk: Client) -> None:
    """A form whose table was torn off is refused in words."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job), closed_by="drawer")

    answer = desk.post(f"/jobs/{job.pk}/openings/{opening.pk}/boxes/0/", BOX)

    assert answer.status_code == 422
    assert "The rows of the table are missing" in dom(answer).words


def test_a_box_stands_only_behind_a_drawer(job: Job, desk: Client) -> None:
    """A door has no box, and a single drawer no second one."""
    door = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    drawer = OpeningFactory.create(cabinet=CabinetFactory.create(job=job), closed_by="drawer")

    for opening, index in ((door, 0), (drawer, 1)):
        address = f"/jobs/{job.pk}/openings/{opening.pk}/boxes/{index}/"
        assert desk.get(address).status_code == 404
        assert desk.post(address, BOX).status_code == 404


def test_an_upper_box_is_offered_its_likely_rise(job: Job, desk: Client) -> None:
    """In a stack of even fronts the next box hangs a front's share higher; it is only greyed."""
    opening = OpeningFactory.create(
        cabinet=CabinetFactory.create(job=job), closed_by="drawers", count=3, height=inches(27)
    )
    BoxFactory.create(opening=opening, index=2, rise=inches(1, 2))

    page = dom(desk.get(f"/jobs/{job.pk}/openings/{opening.pk}/boxes/1/"))

    assert page.has("[placeholder='likely 9 1/2']")
    assert page.field("rise").value == ""
    assert "from the bottom of the whole opening" in page.words


def test_a_door_is_entered_with_its_bores(job: Job, desk: Client) -> None:
    """Bores that were measured are kept in their order; the next door has the next label."""
    bores = ({"x": "7/8", "y": "3"}, {"x": "7/8", "y": "24"})

    answer = desk.post(f"/jobs/{job.pk}/doors/new/", DOOR | rows("bores-new", *bores), headers=HTMX)

    assert "2 hinge bores" in dom(answer).words
    assert [bore.y for bore in HingeBore.objects.order_by("position")] == [inches(3), inches(24)]
    page = dom(desk.get(f"/jobs/{job.pk}/doors/new/"))
    assert (page.field("label").value, page.field("stile").value) == ("D2", "2 1/4")


def test_a_bore_outside_the_door_is_refused(job: Job, desk: Client) -> None:
    """What is in a door lies on it."""
    posted = DOOR | rows("bores-new", {"x": "17", "y": "3"})

    answer = desk.post(f"/jobs/{job.pk}/doors/new/", posted, headers=HTMX)

    assert answer.status_code == 422
    assert "A bore lies outside the door." in dom(answer).words
    assert not DoorOnHand.objects.exists()


def test_a_door_is_changed_and_its_bores_taken_out(job: Job, desk: Client) -> None:
    """A row that was emptied is gone."""
    door = DoorOnHandFactory.create(job=job)
    HingeBore.objects.create(door=door, x=inches(1), y=inches(3))
    address = f"/jobs/{job.pk}/doors/{door.pk}/"
    page = dom(desk.get(address))
    prefix = f"bores-{door.pk}"
    assert page.field(f"{prefix}-0-y").value == "3"

    emptied = {f"{prefix}-TOTAL_FORMS": 1, f"{prefix}-INITIAL_FORMS": 1,
               f"{prefix}-0-x": "", f"{prefix}-0-y": ""}  # fmt: skip
    answer = desk.post(address, {**DOOR, "width": "15 1/2"} | emptied | seen_in(page))

    assert answer.status_code == 302
    door.refresh_from_db()
    assert door.width == inches(31, 2)
    assert not HingeBore.objects.exists()

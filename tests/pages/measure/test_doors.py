"""Doors on hand as a table: each cell saved as it is left, rows typed or pasted."""

import json
from collections.abc import Callable
from fractions import Fraction
from typing import Any

import pytest
from django.test import Client

from fronts.models import DoorOnHand
from fronts.rules.kitchen import Point
from fronts.rules.limits import MOST_DOORS
from fronts.rules.practice import inches
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.factories import DoorOnHandFactory
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]
BORE = Point(Fraction(22), Fraction(90))


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """The owner at the desk."""
    return signed_in(owner)


@pytest.fixture
def door(job: Job) -> DoorOnHand:
    """A slab of 16 × 28 1/2 in with a bore."""
    return DoorOnHandFactory.create(
        job=job, label="D1", width=inches(16), height=inches(57, 2), hinge_bores=[BORE]
    )


def send(desk: Client, job: Job, cells: dict[str, str], **headers: str) -> Any:
    """Send what was typed into cells, with what these showed."""
    page = dom(desk.get(f"/jobs/{job.pk}/doors/"))
    seen = {name: page.one(f"[name='{name}']").value for name in cells}
    return desk.post(
        f"/jobs/{job.pk}/cells/", {**cells, "seen": json.dumps(seen)}, headers=headers or HTMX
    )


def enter(desk: Client, job: Job, **row: str) -> Any:
    """Send the empty row, with rows that were pasted as `more`."""
    return desk.post(f"/jobs/{job.pk}/doors/rows/", row, headers=HTMX)


def doors(job: Job) -> list[tuple[str, object, object, str]]:
    """Label, width, height and build of each."""
    return [(d.label, d.width, d.height, d.build) for d in kitchen_of(job).doors_on_hand]


def test_a_cell_is_saved_and_what_has_none_stays(door: DoorOnHand, job: Job, desk: Client) -> None:
    """Its width as a sum, its build by a letter; its bores stay where they were."""
    answer = send(desk, job, {f"door-{door.pk}-width": "15+1/4", f"door-{door.pk}-build": "f"})

    assert answer.status_code == 200
    assert "job-changed" in answer["HX-Trigger-After-Settle"]
    (held,) = kitchen_of(job).doors_on_hand
    assert (held.width, held.height, held.build) == (inches(61, 4), inches(57, 2), "five-piece")
    assert held.hinge_bores == (BORE,)


def test_a_mistake_is_told_at_its_cell(door: DoorOnHand, job: Job, desk: Client) -> None:
    """With what the cell wants; nothing is saved."""
    cell = f"door-{door.pk}-build"
    answer = send(desk, job, {cell: "panel", f"door-{door.pk}-width": "12"})

    assert answer.status_code == 422
    told = dom(answer).one(f"[id='{cell}-fault']").words
    assert told == "D1, built as: enter slab or five-piece."
    assert doors(job) == [("D1", inches(16), inches(57, 2), "slab")]


def test_two_people_change_one_door(door: DoorOnHand, job: Job, desk: Client) -> None:
    """Different cells go together; the same one waits for a choice."""
    seen = json.dumps({f"door-{door.pk}-width": "16"})
    send(desk, job, {f"door-{door.pk}-thickness": "7/8"})
    body = {f"door-{door.pk}-width": "15", "seen": seen}
    assert desk.post(f"/jobs/{job.pk}/cells/", body, headers=HTMX).status_code == 200
    (held,) = kitchen_of(job).doors_on_hand
    assert (held.width, held.thickness) == (inches(15), inches(7, 8))

    body[f"door-{door.pk}-width"] = "14"
    again = desk.post(f"/jobs/{job.pk}/cells/", body, headers=HTMX)
    assert again.status_code == 422
    assert kitchen_of(job).doors_on_hand[0].width == inches(15)


def test_the_empty_row_goes_on_from_the_last(door: DoorOnHand, job: Job, desk: Client) -> None:
    """What is left empty is as in the door before; the answer brings the next row."""
    answer = enter(desk, job, width="12", height="30")

    assert answer.status_code == 200
    page = dom(answer)
    assert page.one("#said").words == "1 door is entered."
    assert page.one("[name='label']").attribute("placeholder") == "D3"
    assert doors(job)[1] == ("D2", inches(12), inches(30), "slab")
    assert dom(enter(desk, job, width="")).one("[role='alert']").words.startswith("Enter")
    assert enter(desk, job, width="12", height="30", label="D1").status_code == 422


def test_pasted_rows_are_one_step(door: DoorOnHand, job: Job, desk: Client) -> None:
    """Each goes on from the one before it; one step back takes all of them."""
    before = Revision.objects.count()
    rows = "\t10\t20\t\tf\toak\n\t11\t21\nX7\t12\t22\t7/8\ts"
    assert enter(desk, job, more=rows).status_code == 200

    assert doors(job)[1:] == [
        ("D2", inches(10), inches(20), "five-piece"),
        ("D3", inches(11), inches(21), "five-piece"),
        ("X7", inches(12), inches(22), "slab"),
    ]
    assert [each.material for each in kitchen_of(job).doors_on_hand[1:]] == ["oak"] * 3
    revision = Revision.objects.latest("pk")
    assert (Revision.objects.count(), revision.text) == (before + 1, "Entered 3 doors on hand")
    desk.post(f"/jobs/{job.pk}/undo/", {"revision": revision.pk})
    assert len(doors(job)) == 1


def test_a_pasted_row_that_is_wrong_is_named_and_nothing_is_lost(
    door: DoorOnHand, job: Job, desk: Client
) -> None:
    """None is entered; what was pasted is there to be mended."""
    rows = "\t10\t20\n\t10\tten"
    answer = enter(desk, job, more=rows)

    assert answer.status_code == 422
    page = dom(answer)
    assert "Row 2, height:" in page.one("[role='alert']").words
    assert "10\tten" in page.one("textarea[name='more']").value
    assert len(doors(job)) == 1


ODD = ["\x00", "a", "\t" * 300, "[]", "\t1\t1\n" * (MOST_DOORS + 2), "\t1\t1\t\t\t\tlost"]


@pytest.mark.parametrize("rows", ODD)
def test_anything_may_be_pasted(rows: str, door: DoorOnHand, job: Job, desk: Client) -> None:
    """It is told what is wrong with it."""
    assert enter(desk, job, more=rows).status_code == 422
    assert len(doors(job)) == 1


def test_without_scripts_a_row_is_a_form(door: DoorOnHand, job: Job, desk: Client) -> None:
    """Saved, refused with what was typed, entered: each a page."""
    address = f"/jobs/{job.pk}/cells/"
    page = dom(desk.get(f"/jobs/{job.pk}/doors/"))
    shown = {"seen": page.one(f"#door-{door.pk}-cells [name='seen']").value}
    saved = desk.post(address, {f"door-{door.pk}-width": "15"} | shown)
    assert saved.headers["Location"] == f"/jobs/{job.pk}/doors/"
    refused = desk.post(address, {f"door-{door.pk}-width": "1/2/3"})
    assert refused.status_code == 422
    assert dom(refused).one(f"[name='door-{door.pk}-width']").value == "1/2/3"
    entered = desk.post(f"/jobs/{job.pk}/doors/rows/", {"width": "9", "height": "9"})
    assert entered.headers["Location"] == f"/jobs/{job.pk}/doors/"
    assert [one[0] for one in doors(job)] == ["D1", "D2"]
    again = desk.post(f"/jobs/{job.pk}/doors/rows/", {"width": "nine"})
    assert dom(again).one("[name='width']").value == "nine"


def test_a_door_is_deleted_from_its_table(door: DoorOnHand, job: Job, desk: Client) -> None:
    """And one is back at the table, with Undo beside what is said."""
    page = dom(desk.get(f"/jobs/{job.pk}/doors/"))
    way = page.one(f"form[action*='/doors/{door.pk}/delete/']").attribute("action")
    answer = desk.post(str(way), follow=True)
    assert answer.redirect_chain[-1][0] == f"/jobs/{job.pk}/doors/"
    assert "Door D1 is deleted." in dom(answer).words
    assert doors(job) == []


def test_who_may_not_change_a_kitchen_reads_it(
    door: DoorOnHand, job: Job, installer: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Sizes without fields; another shop's job is none."""
    page = dom(signed_in(installer).get(f"/jobs/{job.pk}/doors/"))
    assert "28 1/2" in page.one("#doors").words
    assert not page.has("#doors input")
    assert enter(signed_in(installer), job, width="9", height="9").status_code == 403
    other = signed_in(stranger)
    assert other.get(f"/jobs/{job.pk}/doors/").status_code == 404
    assert enter(other, job, width="9", height="9").status_code == 404

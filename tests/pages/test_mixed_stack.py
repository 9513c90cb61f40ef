"""A stack whose top front is a slab and the others five-piece, entered through the pages.

Worked by hand: the opening is 15 × 27 1/2, half an inch lapped all round and 1/8 between
fronts: 16 wide; 28 1/2 less two gaps is 28 1/4 for three fronts. The top one is given 6 1/4,
so the other two are 11 each.
"""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Opening
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import CabinetFactory, overlaid
from tests.pages.kitchens import HTMX, NEW_OPENING, no_rows, seen_in
from tests.pdf_text import words_of

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


@pytest.fixture
def stack(job: Job, desk: Client) -> Opening:
    """Five-piece maple fronts are entered for the stack, then a slab of MDF on top."""
    overlaid(job)
    cabinet = CabinetFactory.create(job=job)
    entered = desk.post(
        f"/jobs/{job.pk}/cabinets/{cabinet.pk}/openings/new/",
        {
            **NEW_OPENING, "closed_by": "drawers", "count": "3", "heights": "6 1/4",
            "front_build": "five-piece", "front_material": "hard maple",
        },
        headers=HTMX,
    )  # fmt: skip
    assert entered.status_code == 200
    opening = Opening.objects.get(cabinet=cabinet)
    top = f"/jobs/{job.pk}/openings/{opening.pk}/fronts/0/"
    typed = {
        "own_height": "6 1/4", "build": "slab", "material": "MDF",
        **no_rows(f"handles-{opening.pk}-0"),
    }  # fmt: skip
    kept = desk.post(top, typed | seen_in(dom(desk.get(top))), headers=HTMX)
    assert kept.status_code == 200
    return opening


def sheet(client: Client, path: str) -> str:
    """The words of a sheet in one line."""
    return words_of(client.get(path).content)


def test_the_schedule_has_each_front_as_it_was_decided(stack: Opening, desk: Client) -> None:
    """One slab of its own height over two five-piece fronts of the same."""
    rows = dom(desk.get(f"/jobs/{stack.cabinet.job_id}/")).all(".fronts tbody tr")

    said = [[cell.words for cell in row.all("td")] for row in rows]
    assert [(row[0], row[1], row[-1]) for row in said] == [
        ("16", "6 1/4", "slab, MDF"),
        ("16", "11", "five-piece, hard maple"),
        ("16", "11", "five-piece, hard maple"),
    ]


def test_the_sheets_say_so_too(stack: Opening, desk: Client) -> None:
    """The schedule on paper and the fitting sheet name what each front is made as."""
    start = f"/jobs/{stack.cabinet.job_id}/sheets"
    schedule = sheet(desk, f"{start}/schedule/")
    fitting = sheet(desk, f"{start}/fitting/{stack.cabinet_id}/")

    for text in (schedule, fitting):
        top, second, third = (text.index(f"B1.a.{place}") for place in (1, 2, 3))
        assert "slab, MDF" in text[top:second]
        assert "five-piece, hard maple" in text[second:third]
        assert "five-piece, hard maple" in text[third:]


def test_the_cut_list_has_a_slab_and_two_frames(stack: Opening, desk: Client) -> None:
    """One MDF piece of the slab's size; four stiles as long as their fronts, four rails."""
    page = dom(desk.get(f"/jobs/{stack.cabinet.job_id}/cut/"))
    lines = [[cell.words for cell in row.all("td")] for row in page.all(".sizes tbody tr")]

    slabs = [line for line in lines if "B1.a.1" in line[-1]]
    assert [(line[0], line[1], line[2]) for line in slabs] == [("16", "6 1/4", "1")]
    stiles = [line for line in lines if "stile" in line[3]]
    assert [(line[0], line[2]) for line in stiles] == [("11", "4")]
    rails = [line for line in lines if "rail" in line[3]]
    assert [line[2] for line in rails] == ["4"]
    assert all("B1.a.1" not in line[-1] for line in (*stiles, *rails))

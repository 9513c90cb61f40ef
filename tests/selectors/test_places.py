"""Cabinets without a place of their own: shown where their run puts them, kept without one."""

import json
from collections.abc import Callable
from datetime import date

import pytest
from django.test import Client

from fronts.jobfile import write
from fronts.models import Cabinet
from fronts.rules.kitchen import Kitchen
from fronts.rules.wall_facts import Thing, Wall
from fronts.selectors.kitchens import placed_kitchen_of
from fronts.selectors.schedules import schedule_of
from fronts.services.imports import job_import
from fronts.sheets.fitting import content
from fronts.sheets.job_source import source_of_job
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import NOW
from tests.pages.kitchens import HTMX, NEW_CABINET
from tests.rules.small_kitchens import beside, cabinet, inch, kitchen, opening

SignIn = Callable[[Person], Client]


def in_run() -> Kitchen:
    """Two cabinets of 18 in with a filler of 3 in between, none pinned, along a wall of 30."""
    first = cabinet(opening())
    filler = Thing("F1", "filler", "North", inch("3"), after="B1")
    second = beside(first, x=None)
    wall = Wall("North", inch("30"))
    return kitchen(cabinet(opening(), x=None), second, others=(filler,), walls=(wall,))


@pytest.fixture
def placeless(shop: Shop) -> Job:
    """A job whose cabinets stand where their run puts them."""
    return job_import(kitchen=in_run(), shop=shop, at=NOW)


def test_what_is_read_is_placed(placeless: Job) -> None:
    """The second cabinet stands after the filler; its door is seen there."""
    assert [one.left for one in placed_kitchen_of(placeless).cabinets] == [0, inch("21")]
    assert schedule_of(placeless).front("B2.a").x == inch("22")


def test_what_is_kept_and_written_is_not(placeless: Job) -> None:
    """A file says no place that nobody said, so that the run still moves with its cabinets."""
    told = json.loads(write(kitchen_of(placeless)))

    assert not any("x" in one for one in (*told["cabinets"], *told["others"]))


def test_every_page_and_sheet_shows_them(placeless: Job, owner: Person, signed_in: SignIn) -> None:
    """Measured, fitted, printed: nothing asks for a place that is not there."""
    desk, path = signed_in(owner), f"/jobs/{placeless.pk}/"
    second = Cabinet.objects.get(job=placeless, label="B2").pk
    for page in ("", "fit/", f"fit/{second}/", f"cabinets/{second}/", f"cabinets/{second}/copy/"):
        assert desk.get(path + page).status_code == 200
    assert "B2.a" in content(source_of_job(placeless, date(2027, 3, 1)))


def test_a_run_past_its_wall_is_said_on_the_page(
    placeless: Job, owner: Person, signed_in: SignIn
) -> None:
    """The fault is the wall's, which no front and no cabinet is called by."""
    page = dom(signed_in(owner).get(f"/jobs/{placeless.pk}/"))

    assert "Wall North: the run on the floor ends 9 in past the wall's end." in page.words


def test_a_cabinet_is_drawn_in_its_run_before_it_is_entered(
    placeless: Job, owner: Person, signed_in: SignIn
) -> None:
    """The preview of one more, without a place, after those that there are."""
    typed = {**NEW_CABINET, "label": "B3", "wall": "North"}
    path = f"/jobs/{placeless.pk}/cabinets/new/preview/"
    answer = signed_in(owner).get(path, typed, headers=HTMX)

    assert "16 × 28 1/2" in dom(answer).words
    assert "HX-Retarget" not in answer

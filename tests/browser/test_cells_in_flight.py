"""Cells of a wall's table that are gone on with while the one before is on its way."""

import re

import pytest
from playwright.sync_api import APIResponse, Page, Route, expect

from fronts.models import DoorOnHand
from fronts.rules.practice import inches
from shopjobs.models import Job, Revision
from tests.browser.conftest import AT_A_DESK
from tests.browser.test_wall_table import depths, run
from tests.factories import DoorOnHandFactory

__all__ = ["run"]
pytestmark = [pytest.mark.slow, AT_A_DESK]


def test_a_block_stays_chosen_when_the_table_comes_anew(run: Page) -> None:
    """As it does a moment after a cell was saved, while one goes on already."""
    run.get_by_label("Depth of B1", exact=True).focus()
    run.keyboard.press("Shift+ArrowDown")
    with run.expect_response(re.compile(r"/jobs/\d+/")):
        run.evaluate("htmx.trigger(document.body, 'job-drawn')")
    expect(run.locator(".htmx-request")).to_have_count(0)
    expect(run.locator("[data-chosen]")).to_have_count(2)
    run.keyboard.press("Delete")
    expect(run.locator("#cell-faults")).to_contain_text("B1, depth")


def test_what_is_taken_back_before_the_answer_is_saved_too(run: Page) -> None:
    """A cell says again what it said at first while its first change is on its way."""
    depth = run.get_by_label("Depth of B1", exact=True)
    said, kept, before = depth.input_value(), depths(), Revision.objects.count()
    held: list[Route] = []
    run.route(re.compile("/cells/"), lambda route: held.append(route), times=1)
    for value in ("22", said):
        depth.focus()
        run.keyboard.type(value)
        run.keyboard.press("Tab")
    expect(run.locator("[data-waits]")).to_have_count(1)
    run.wait_for_timeout(100)
    held[0].continue_()
    expect(run.locator("[data-waits]")).to_have_count(0)
    expect(depth).to_have_value(said)
    assert depths() == kept
    assert Revision.objects.count() == before + 2


def test_a_table_from_before_a_change_is_not_shown_after_it(run: Page) -> None:
    """What was asked for first comes late, and says what held then: a cell would fall back."""
    table = re.compile(r"/jobs/\d+/\?wall=")
    held: list[tuple[Route, APIResponse]] = []
    run.route(table, lambda _: None)  # What is asked for later never comes.
    run.route(table, lambda route: held.append((route, route.fetch())), times=1)
    for value, label in (("22", "B1"), ("20", "B2")):
        run.get_by_label(f"Depth of {label}", exact=True).focus()
        run.keyboard.type(value)
        run.keyboard.press("Tab")
        expect(run.locator("#said")).to_have_text(f"{label} is saved.")
        run.wait_for_timeout(300)
    ((route, as_it_was),) = held
    route.fulfill(response=as_it_was)
    run.wait_for_timeout(300)
    expect(run.get_by_label("Depth of B2", exact=True)).to_have_value("20")
    assert depths()[:2] == [inches(22), inches(20)]


def test_doors_from_before_a_change_are_not_shown_after_it(page: Page, job: Job) -> None:
    """Their table is one of cells too."""
    DoorOnHandFactory.create_batch(2, job=job)
    page.goto(f"/jobs/{job.pk}/doors/")
    table = re.compile(r"\d/jobs/\d+/doors/$")
    held: list[tuple[Route, APIResponse]] = []
    page.route(table, lambda _: None)  # What is asked for later never comes.
    page.route(table, lambda route: held.append((route, route.fetch())), times=1)
    widths = page.get_by_label("Width of")
    for place, value in enumerate(("11", "12")):
        widths.nth(place).focus()
        page.keyboard.type(value)
        page.keyboard.press("Tab")
        expect(page.locator("[data-waits]")).to_have_count(0)
        page.wait_for_timeout(300)
    ((route, as_it_was),) = held
    route.fulfill(response=as_it_was)
    page.wait_for_timeout(300)
    expect(widths.nth(1)).to_have_value("12")
    assert DoorOnHand.objects.get(label="D2").width == inches(12)


def test_what_was_refused_meanwhile_is_nobodys_change(run: Page) -> None:
    """The cell is mended before its refusal is there, and two more are left: all three hold."""
    held: list[Route] = []
    run.route(re.compile("/cells/"), lambda route: held.append(route), times=1)
    for value, cell in (("2 x", "B1"), ("22", "B1"), ("20", "B2"), ("19", "B3")):
        run.get_by_label(f"Depth of {cell}", exact=True).focus()
        run.keyboard.type(value)
        run.keyboard.press("Tab")
    expect(run.locator("[data-waits]")).to_have_count(3)
    held[0].continue_()
    expect(run.locator("[data-waits]")).to_have_count(0)
    expect(run.locator("#cell-faults")).to_be_empty()
    assert depths() == [inches(22), inches(20), inches(19)]

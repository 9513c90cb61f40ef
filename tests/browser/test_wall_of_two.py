"""One wall, typed in by two people, over a connection that drops, and without scripts."""

import pytest
from playwright.sync_api import Browser, Page, expect
from pytest_django.live_server_helper import LiveServer

from fronts.models import Cabinet
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.browser.conftest import AT_A_DESK, come_in, open_context
from tests.browser.test_wall_table import depths, run

__all__ = ["run"]
pytestmark = [pytest.mark.thorough, AT_A_DESK]


def type_in(page: Page, label: str, text: str) -> None:
    """Type into a cell and leave it."""
    page.get_by_label(label, exact=True).focus()
    page.keyboard.type(text)
    page.keyboard.press("Enter")


def test_what_did_not_get_through_goes_along_with_the_next(run: Page) -> None:
    """It is said, and stays typed; nothing has to be typed anew."""
    run.context.set_offline(True)
    type_in(run, "Depth of B1", "20")
    expect(run.locator(".fault")).to_contain_text("The server can't be reached.")
    expect(run.get_by_label("Depth of B1", exact=True)).to_have_value("20")
    assert depths() == [inches(24)] * 3

    run.context.set_offline(False)
    type_in(run, "Depth of B2", "21")
    expect(run.locator("#said")).to_have_text("2 rows are saved.")
    expect(run.locator(".fault")).to_have_count(0)
    assert depths() == [inches(20), inches(21), inches(24)]


def test_two_people_in_one_wall(
    run: Page, job: Job, browser: Browser, live_server: LiveServer, width: int, office: Person
) -> None:
    """What each types goes together; where both typed into one cell, the later one is told,
    and has it by saving again."""
    context = open_context(browser, live_server, width)
    come_in(context, live_server, office)
    other = context.new_page()
    other.goto(f"/jobs/{job.pk}/")

    type_in(other, "Depth of B1", "22")
    expect(other.locator("#said")).to_have_text("B1 is saved.")
    type_in(run, "Height of B1", "31")
    expect(run.locator("#said")).to_have_text("B1 is saved.")
    expect(run.get_by_label("Depth of B1", exact=True)).to_have_value("22")
    cabinet = Cabinet.objects.get(label="B1")
    assert (cabinet.depth, cabinet.height) == (inches(22), inches(31))

    type_in(other, "Depth of B3", "19")
    expect(other.locator("#said")).to_have_text("B3 is saved.")
    type_in(run, "Depth of B3", "18")
    fault = run.locator("#cell-faults")
    expect(fault).to_contain_text("19")
    expect(run.get_by_label("Depth of B3", exact=True)).to_have_value("18")
    assert Cabinet.objects.get(label="B3").depth == inches(19)
    type_in(run, "Depth of B3", "18")
    expect(fault).to_be_empty()
    assert Cabinet.objects.get(label="B3").depth == inches(18)
    context.close()


def test_without_scripts_row_by_row(plain_page: Page, job: Job, run: Page) -> None:
    """Each row has its Save; the empty row its Add; a row is moved, and lines go before one."""
    plain_page.goto(f"/jobs/{job.pk}/")
    plain_page.get_by_label("Depth of B2", exact=True).fill("54-33")
    plain_page.get_by_role("button", name="Save the row of B2", exact=True).click()
    assert depths() == [inches(24), inches(21), inches(24)]

    plain_page.get_by_label("Width of the new row").fill("30")
    plain_page.get_by_label("What closes it of the new row").fill("pair")
    plain_page.get_by_role("button", name="Add the row").click()
    expect(plain_page.get_by_label("What closes B4")).to_have_value("pair")
    cabinet = Cabinet.objects.get(label="B4")
    row = plain_page.locator(f"#cabinet-{cabinet.pk}")
    row.locator("summary", has_text="for cabinet B4").click()
    row.get_by_role("button", name="Move it earlier").click()
    labels = [one.label for one in Cabinet.objects.order_by("position")]
    assert labels == ["B1", "B2", "B4", "B3"]

"""The menu of a row of a wall's table, in a real browser."""

import pytest
from playwright.sync_api import Page, expect

from shopjobs.models import Job
from tests.pages.kitchens import furnish

pytestmark = pytest.mark.slow


def test_the_menu_of_a_row_is_seen_whole(page: Page, plain_page: Page, job: Job) -> None:
    """Also where the row is the last thing in the window; Escape closes it, and so does another."""
    furnish(job)
    for shown in (page, plain_page):
        shown.goto(f"/jobs/{job.pk}/")
        menu = shown.locator("#cabinets .row:first-child > .does > details").last
        menu.evaluate("menu => menu.scrollIntoView({block: 'end'})")
        menu.locator("summary").click()
        expect(menu.locator("> div")).to_be_in_viewport(ratio=1)
    page.keyboard.press("Escape")
    last = page.locator("#cabinets details > div").last
    expect(last).to_be_hidden()
    first = page.locator("#cabinets details").first
    first.locator("summary").click()
    expect(first.locator("> div")).to_be_in_viewport(ratio=1)
    page.locator("#findings-head").click()
    expect(first.locator("> div")).to_be_hidden()

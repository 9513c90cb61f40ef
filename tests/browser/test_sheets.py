"""The sheets of a job in a real browser: the set is printed by a real worker and taken away."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Page, expect

from fronts.models import Cabinet
from shopjobs.models import Job
from tests.factories import door_and_drawer, overlaid
from tests.queue_work import in_queue, workers


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """A cabinet with a door and a drawer."""
    overlaid(job)
    return door_and_drawer(job)


@pytest.fixture
def a_worker() -> Iterator[None]:
    """Long work waits in the queue for a real worker, which is there."""
    with in_queue, workers():
        yield


@pytest.mark.thorough
@pytest.mark.usefixtures("a_worker")
def test_all_sheets_are_printed_and_taken_away(page: Page, cabinet: Cabinet) -> None:
    """The page counts them without a reload; the ZIP comes as a file."""
    page.goto(f"/jobs/{cabinet.job_id}/fit/")
    page.get_by_role("link", name="All sheets").click()
    page.get_by_role("button", name="Print all 7 sheets").click()
    expect(page.locator("#sheet-set")).to_contain_text("of 7 sheets printed")

    link = page.get_by_role("link", name="All sheets, ZIP")
    link.wait_for(timeout=60_000)
    with page.expect_download() as download:
        link.click()
    assert download.value.suggested_filename == "K-1 sheets.zip"
    assert page.evaluate("document.documentElement.scrollWidth - window.innerWidth") <= 0


@pytest.mark.thorough
@pytest.mark.usefixtures("a_worker")
def test_all_sheets_are_printed_without_javascript(plain_page: Page, cabinet: Cabinet) -> None:
    """The page asks again by itself."""
    plain_page.goto(f"/jobs/{cabinet.job_id}/sheets/")
    plain_page.get_by_role("button", name="Print all 7 sheets").click()
    expect(plain_page.locator("#sheet-set")).to_contain_text("Look again")

    expect(plain_page.locator("#sheet-set")).to_contain_text("Kept until", timeout=60_000)

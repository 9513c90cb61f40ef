"""A form that is open in its place on the job's page, for the tests of what happens to it."""

from playwright.sync_api import Locator, Page, expect

from fronts.models import Opening
from shopjobs.models import Job

DRAFTS = "Object.entries(localStorage).filter(([key]) => key.startsWith('draft ')).map(String)"


def line_of(page: Page) -> Locator:
    """Where B1's door stands on the job's page, among its cabinet's openings, which are shown."""
    opening = Opening.objects.get(cabinet__label="B1")
    shown_openings(page, opening.cabinet_id)
    return page.locator(f"#opening-{opening.pk}")


def shown_openings(page: Page, cabinet: int) -> None:
    """Show the openings of a cabinet where they are folded away."""
    folded = page.locator(f"#cabinet-{cabinet} [data-opens-row][aria-expanded=false]")
    if folded.count():
        folded.click()


def width_in(line: Locator) -> Locator:
    """The field of the opening's width."""
    return line.get_by_label("Width", exact=True)


def opened(page: Page, job: Job) -> Locator:
    """The form of B1's door, opened in its place on the job's page."""
    page.goto(f"/jobs/{job.pk}/")
    line = line_of(page)
    line.get_by_role("link", name="Change opening a").click()
    expect(width_in(line)).to_be_visible()
    return line

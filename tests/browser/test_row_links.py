"""Findings and rows of a wall's table lead to each other, in a real browser."""

import pytest
from playwright.sync_api import Page, expect

from fronts.models import Cabinet, JobStandard
from fronts.rules.practice import inches
from shopjobs.models import Job
from tests.browser.conftest import AT_A_DESK
from tests.browser.test_wall_table import run
from tests.factories import CabinetFactory, OpeningFactory

__all__ = ["run"]
pytestmark = [pytest.mark.slow, AT_A_DESK]


def test_a_finding_leads_to_its_row_and_back(run: Page, job: Job) -> None:
    """From the row's mark into the list; from the list into the row, which is unfolded."""
    cabinet = Cabinet.objects.get(label="B2")
    JobStandard.objects.filter(job=job).delete()  # Nobody says how far fronts lap.
    run.reload()
    run.locator(f"#cabinet-{cabinet.pk} > .row .mark").first.click()
    assert run.evaluate("document.querySelector('.finding:target').innerText").startswith("!")
    run.locator(".finding:target").get_by_role("link", name="B2.a", exact=True).first.click()
    expect(run.get_by_label("Label of B2.a")).to_be_focused()


def test_a_finding_leads_to_its_row_on_another_wall(run: Page, job: Job) -> None:
    """That wall is shown then, with the row unfolded: of an opening as of a cabinet."""
    JobStandard.objects.filter(job=job).delete()  # Nobody says how far fronts lap.
    one, _ = (
        CabinetFactory.create(job=job, label=label, wall="East", x=inches(x))
        for label, x in (("E1", 0), ("E2", 6))  # Where the first one is.
    )
    opening = OpeningFactory.create(cabinet=one)
    for row, label in ((f"opening-{opening.pk}", "E1.a"), (f"cabinet-{one.pk}", "E1")):
        run.goto(f"/jobs/{job.pk}/?wall=North")
        run.locator(".finding").get_by_role("link", name=label, exact=True).first.click()
        run.wait_for_url(f"**/?at={row}")
        expect(run.get_by_label(f"Label of {label}", exact=True)).to_be_focused()

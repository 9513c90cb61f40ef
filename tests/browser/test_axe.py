"""No page has a fault that axe finds: the rules of WCAG 2.2 AA and its own good practice.

axe-core (MPL 2.0) is brought by the package axe-playwright-python.
"""

import pytest
from axe_playwright_python.sync_playwright import Axe  # type: ignore[import-untyped]
from django.test import Client
from playwright.sync_api import Page

from shopjobs.models import Job, Person
from tests.every_page import every_page
from tests.pages.kitchens import furnish

pytestmark = pytest.mark.thorough


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing(page: Page, job: Job, owner: Person, scheme: str) -> None:
    """On every page, at both widths, in both colour schemes."""
    furnish(job)
    client = Client()
    client.force_login(owner)
    page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
    axe, found = Axe(), []
    pages = [path for _, path, _ in every_page(client, job, owner)]
    for path in pages:
        page.goto(path)
        for fault in axe.run(page).response["violations"]:
            places = [node["target"][0] for node in fault["nodes"]]
            found.append(f"{path} {fault['id']}: {places[:3]} ({len(places)})")
    assert len(pages) > 40
    assert "\n".join(found) == ""

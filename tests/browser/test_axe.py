"""No page has a fault that axe finds: the rules of WCAG 2.2 AA and its own good practice.

axe-core (MPL 2.0) is brought by the package axe-playwright-python.
"""

import pytest
from axe_playwright_python.sync_playwright import Axe  # type: ignore[import-untyped]
from django.test import Client
from playwright.sync_api import FilePayload, Page, expect

from fronts.rules.snags import SnagFacts
from fronts.services.snags import snag_raise
from shopjobs.models import Job, Person
from tests.browser.conftest import AT_A_DESK
from tests.every_page import every_page
from tests.factories import NOW
from tests.pages.kitchens import furnish

pytestmark = pytest.mark.thorough
VIOLATIONS = {"resultTypes": ["violations"]}
OF_COLOURS = {"runOnly": ["color-contrast", "link-in-text-block"]}
"""The rules that look at colours; by all others a page is the same in the dark."""
NO_PHOTO = FilePayload(name="a.jpg", mimeType="image/jpeg", buffer=b"no photo")


def test_axe_finds_nothing(page: Page, job: Job, owner: Person) -> None:
    """On every page, at both widths, in both colour schemes."""
    furnish(job)
    client = Client()
    client.force_login(owner)
    axe, found = Axe(), []
    pages = [path for _, path, _ in every_page(client, job, owner)]
    for path in pages:
        page.emulate_media(color_scheme="light")
        page.goto(path)
        faults = axe.run(page, options=VIOLATIONS).response["violations"]
        page.emulate_media(color_scheme="dark")
        faults += axe.run(page, options=VIOLATIONS | OF_COLOURS).response["violations"]
        for fault in faults:
            places = [node["target"][0] for node in fault["nodes"]]
            found.append(f"{path} {fault['id']}: {places[:3]} ({len(places)})")
    assert len(pages) > 40
    assert "\n".join(found) == ""


@AT_A_DESK
def test_axe_finds_nothing_where_photos_are_refused(page: Page, job: Job, owner: Person) -> None:
    """At a snag, where the focus goes to what was refused, and in the form of a new one."""
    snag_raise(job=job, facts=SnagFacts("job", "scratched", ""), by=owner, at=NOW)
    page.goto(f"/jobs/{job.pk}/snags/")
    another = page.locator(".snag [type=file]")
    another.set_input_files(NO_PHOTO)
    expect(another).to_have_accessible_description(
        "This is no photo that can be read; take it as JPEG or PNG."
    )
    expect(another).to_be_focused()
    page.get_by_text("A new snag").click()
    page.get_by_label("What is wrong").fill("rubs")
    page.get_by_label("Photos from this device").set_input_files(NO_PHOTO)
    page.get_by_role("button", name="Write the snag down").click()
    expect(page.locator("#snag-new [aria-invalid=true]")).to_have_count(2)

    found = Axe().run(page).response["violations"]

    assert [(fault["id"], fault["nodes"][0]["target"]) for fault in found] == []

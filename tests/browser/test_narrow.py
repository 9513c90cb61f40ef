"""The narrowest window that WCAG 2.2 asks for (1.4.10, reflow): 320 CSS pixels, no page wider."""

import pytest
from django.test import Client
from playwright.sync_api import Page

from shopjobs.models import Job, Person
from tests.every_page import every_page
from tests.pages.kitchens import furnish

pytestmark = [pytest.mark.thorough, pytest.mark.parametrize("width", [320], ids=["narrow"])]
WIDER = "document.documentElement.scrollWidth - document.documentElement.clientWidth"


def test_no_page_is_wider_than_its_window(page: Page, job: Job, owner: Person) -> None:
    """Drawings and tables scroll in boxes of their own."""
    furnish(job)
    client = Client()
    client.force_login(owner)
    wide = []
    for _, path, _ in every_page(client, job, owner):
        page.goto(path)
        if page.evaluate(WIDER) > 0:
            wide.append(path)
    assert wide == []

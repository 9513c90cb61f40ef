"""Sizes taken on a phone with the page's large keys: how many taps, how large, where it goes."""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Locator, Page, expect
from pytest_django.live_server_helper import LiveServer

from fronts.models import Opening
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.browser.conftest import PHONE, come_in, open_context
from tests.factories import door_and_drawer

KEY = 64
"""The smallest key in CSS px."""
TAPS = {
    "width-top": ("1", "5", "1/2", "Next"),
    "width-bottom": ("1", "5", "3/8", "+1/16", "Next"),
    "height-left": ("1", "9", "+1/16", "Next"),
    "height-right": ("1", "9", "Next"),
    "diagonal-1": ("2", "4", "3/8", "Next"),
    "diagonal-2": ("as the other", "Next"),
}


@pytest.fixture
def phone(browser: Browser, live_server: LiveServer, installer: Person) -> Iterator[Page]:
    """An installer's phone."""
    context = open_context(browser, live_server, PHONE)
    come_in(context, live_server, installer)
    page = context.new_page()
    page.set_viewport_size({"width": PHONE, "height": 844})
    yield page
    context.close()


def test_six_sizes_take_twenty_two_taps(phone: Page, job: Job) -> None:
    """Nothing moves under the thumb from one size to the next, and no page is loaded anew."""
    door = Opening.objects.get(cabinet=door_and_drawer(job), label="a")
    phone.goto(f"/jobs/{job.pk}/measuring/")
    expect(phone.locator("[data-along-take]")).to_be_visible()  # It comes with the scripts.
    phone.get_by_role("link", name="Begin with B1.a").tap()
    phone.wait_for_url("**/width-top/")  # With its style sheets, by which the keys are so large.
    keys = phone.locator(".keys button, .next")
    expect(keys).to_have_count(21)
    boxes = [box for each in keys.all() if (box := each.bounding_box())]
    assert all(box["width"] >= KEY and box["height"] >= KEY for box in boxes)
    assert max(box["y"] + box["height"] for box in boxes) <= 844
    phone.evaluate("window.isTheSamePage = true")

    for size, taps in TAPS.items():
        expect(phone).to_have_url(re.compile(f"/{size}/"))
        for tap in taps:
            key(phone, tap).tap()

    expect(phone.locator("#said")).to_contain_text("It stands square.")
    expect(phone).to_have_title(re.compile("^B1.b, width at the top"))
    assert phone.evaluate("window.isTheSamePage")
    now = [box for each in keys.all() if (box := each.bounding_box())]
    assert now == boxes
    assert sum(map(len, TAPS.values())) == 22
    door.refresh_from_db()
    assert [door.measured_width_bottom, door.measured_height_left, door.measured_diagonal_2] == [
        inches(247, 16), inches(305, 16), inches(195, 8),
    ]  # fmt: skip


def test_keys_mend_what_was_typed(phone: Page, job: Job) -> None:
    """Back-space takes the part of an inch first; a new part takes the place of the old.

    On the smallest phone a question comes into view, and nothing is wider than the screen.
    """
    door = Opening.objects.get(cabinet=door_and_drawer(job), label="a")
    phone.goto(f"/jobs/{job.pk}/measuring/{door.pk}/width-top/")
    field = phone.locator("[data-reading]")

    for tap, shown in (
        ("1", "1"), ("1/2", "1 1/2"), ("5", "15 1/2"), ("7/8", "15 7/8"), ("+1/16", "15 15/16"),
        ("+1/16", "16"), ("1/4", "16 1/4"), ("Back-space", "16"), ("Back-space", "1"),
        ("Clear", ""), ("3/4", "3/4"), ("as planned", "15"),
    ):  # fmt: skip
        key(phone, tap).tap()
        expect(field).to_have_value(shown)

    phone.set_viewport_size({"width": 320, "height": 640})
    for tap in ("Clear", "4", "2", "Next"):
        key(phone, tap).tap()
    expect(phone.locator(".question")).to_be_in_viewport(ratio=1)
    key(phone, "Yes, keep it").tap()
    expect(phone.locator("h2")).to_contain_text("width at the bottom")
    assert phone.evaluate("document.documentElement.scrollWidth - window.innerWidth") <= 0


def key(page: Page, words: str) -> Locator:
    """A key by its words; what adds a part of an inch says so in full."""
    name = f"and {words[1:]} more" if words.startswith("+") else words
    return page.get_by_role("button", name=name, exact=not words.startswith("as "))

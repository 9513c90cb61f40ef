"""Undo and Redo by keyboard, and where one is after it."""

import pytest
from playwright.sync_api import Page, expect

from fronts.models import Cabinet
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.browser.conftest import PHONE
from tests.factories import NOW, CabinetFactory, OpeningFactory, overlaid
from tests.saying import cabinet_change

pytestmark = pytest.mark.thorough

RESIZED = "B1: width 18 → 20; B1.a: width 15 → 17"
TARGET = 44
"""The smallest height of what a finger presses, in CSS px."""


@pytest.fixture
def long_job(job: Job, owner: Person) -> Job:
    """A job whose page is far longer than the window; the last thing done was a width."""
    overlaid(job)
    for _ in range(12):
        OpeningFactory.create(cabinet=CabinetFactory.create(job=job, by=owner), by=owner)
    first = Cabinet.objects.get(label="B1")
    cabinet_change(cabinet=first, width=inches(20), at=NOW, by=owner)
    return job


def kept_width() -> object:
    """The first cabinet's width as it is kept."""
    return Cabinet.objects.get(label="B1").width


@pytest.mark.parametrize("redo", ["Control+y", "Control+Shift+Z"])
def test_keys_undo_and_redo(redo: str, page: Page, long_job: Job) -> None:
    """The page comes back where one was, and says there what it did."""
    page.goto(f"/jobs/{long_job.pk}/")
    page.evaluate("scrollTo(0, 1200)")
    page.keyboard.press("Control+z")
    expect(page.locator("#said")).to_contain_text(f"Undid: {RESIZED}.")
    expect(page.locator("#said")).to_be_in_viewport()
    assert page.evaluate("scrollY") == pytest.approx(1200, abs=2)
    assert kept_width() == inches(18)

    page.keyboard.press(redo)
    expect(page.locator("#said")).to_contain_text(f"Did again: {RESIZED}.")
    assert page.evaluate("scrollY") == pytest.approx(1200, abs=2)
    assert kept_width() == inches(20)


def test_where_text_is_typed_the_browsers_own_undo_holds(page: Page, long_job: Job) -> None:
    """Ctrl+Z in a field takes back what was typed there, and nothing of the job."""
    page.goto(f"/jobs/{long_job.pk}/cabinets/{Cabinet.objects.get(label='B1').pk}/")
    field = page.get_by_label("Width")
    field.press("End")
    field.press_sequentially("5")
    expect(field).to_have_value("205")
    page.keyboard.press("Control+z")
    expect(field).to_have_value("20")
    assert kept_width() == inches(20)


def test_keys_say_so_where_there_is_nothing_to_undo(page: Page, job: Job) -> None:
    """Nothing happens silently."""
    page.goto(f"/jobs/{job.pk}/")
    page.evaluate("document.activeElement.blur()")
    page.keyboard.press("Control+z")
    expect(page.locator("#said")).to_have_text("There is nothing to undo.")
    page.keyboard.press("Control+y")
    expect(page.locator("#said")).to_have_text("There is nothing to do again.")


def test_the_bars_button_keeps_the_focus_and_the_place(page: Page, long_job: Job) -> None:
    """Pressed by keyboard, Undo becomes Redo under the same finger, where nothing is left."""
    page.goto(f"/jobs/{long_job.pk}/")
    page.locator("#undo-bar [data-step=undo] button").focus()
    page.keyboard.press("Enter")
    expect(page.locator("#said")).to_contain_text("Undid")
    expect(page.locator("#undo-bar [data-step=undo] button")).to_be_focused()


def test_what_another_changed_is_asked_about_and_one_comes_back(
    page: Page, long_job: Job, office: Person
) -> None:
    """The question between keeps the place where one was."""
    page.goto(f"/jobs/{long_job.pk}/")
    first = Cabinet.objects.get(label="B1")
    cabinet_change(cabinet=first, width=inches(22), at=NOW, by=office)
    page.evaluate("scrollTo(0, 900)")
    page.keyboard.press("Control+z")
    expect(page.locator("main")).to_contain_text(f"“{RESIZED}” of")
    expect(page.locator("main")).to_contain_text("was changed since")
    assert kept_width() == inches(22)

    page.get_by_role("button", name="Take it back").click()
    expect(page.locator("#said")).to_contain_text(f"Undid: {RESIZED}.")
    assert page.evaluate("scrollY") == pytest.approx(900, abs=2)
    assert kept_width() == inches(18)


def test_undo_after_a_deletion_in_place(page: Page, long_job: Job) -> None:
    """The bar follows what was done on the page, and so do the keys; one stays where one is."""
    page.goto(f"/jobs/{long_job.pk}/")
    cabinet = Cabinet.objects.order_by("position").last()
    assert cabinet is not None
    place = page.locator(f"#cabinet-{cabinet.pk}")
    place.locator("summary").first.click()
    place.get_by_role("button", name=f"Delete cabinet {cabinet.label}").click()
    expect(page.locator("#undo-bar")).to_contain_text(f"Deleted cabinet {cabinet.label}")
    page.keyboard.press("Control+z")

    expect(place.get_by_label(f"Label of {cabinet.label}", exact=True)).to_be_in_viewport()
    assert Cabinet.objects.filter(pk=cabinet.pk).exists()


def test_the_bar_is_one_line(
    page: Page, width: int, long_job: Job, office: Person, owner: Person
) -> None:
    """However long the words are; on a phone its buttons fit a finger."""
    first = Cabinet.objects.get(label="B1")
    cabinet_change(cabinet=first, label="W" * 40, depth=inches(20), at=NOW, by=office)
    for depth in (21, 22):
        cabinet_change(cabinet=first, depth=inches(depth), at=NOW, by=owner)
    page.goto(f"/jobs/{long_job.pk}/")
    page.evaluate("document.activeElement.blur()")
    page.keyboard.press("Control+z")
    expect(page.locator("#said")).to_contain_text("Undid")
    cabinet_change(cabinet=first, height=inches(40), at=NOW, by=office)
    page.reload()

    bar = page.locator("#undo-bar")
    heights = [
        each.evaluate("each => each.getBoundingClientRect().height")
        for each in bar.locator("button, a").all()
    ]
    assert len(heights) == 4
    high = bar.evaluate("bar => bar.getBoundingClientRect().height")
    assert high == max(heights)
    assert min(heights) >= (TARGET if width == PHONE else 0)
    assert page.evaluate("document.documentElement.scrollWidth - window.innerWidth") <= 0


def test_history_fits_the_window_with_long_words(page: Page, long_job: Job, office: Person) -> None:
    """Labels without a space, in lines, in old and new values, and in the kitchen as it was."""
    first = Cabinet.objects.get(label="B1")
    cabinet_change(cabinet=first, label="W" * 40, at=NOW, by=office)
    cabinet_change(cabinet=first, depth=inches(20), at=NOW, by=office)
    page.goto(f"/jobs/{long_job.pk}/history/")
    for fold in page.locator(".history summary").all()[:3]:
        fold.click()
    assert page.evaluate("document.documentElement.scrollWidth - window.innerWidth") <= 0

    page.get_by_role("link", name="As it was after: Entered opening B1.a").click()
    expect(page.locator("h1")).to_contain_text("As it was on")
    assert page.evaluate("document.documentElement.scrollWidth - window.innerWidth") <= 0

"""Where the focus goes, by keyboard alone: into a form that opens, and back to what opened it."""

import re

import pytest
from playwright.sync_api import Locator, Page, expect

from shopjobs.models import Job
from tests.browser.conftest import AT_A_DESK
from tests.browser.opened_forms import line_of
from tests.pages.kitchens import furnish

pytestmark = [pytest.mark.thorough, AT_A_DESK]


@pytest.fixture
def shown(page: Page, job: Job) -> Page:
    """The job's page, with a small kitchen."""
    furnish(job)
    page.goto(f"/jobs/{job.pk}/")
    return page


def press(link: Locator) -> None:
    """Follow a link by keyboard, out of its fold where it stands in one."""
    link.evaluate("""link => {
      const fold = link.closest("details"), row = link.closest(".cabinet");
      row?.querySelector("[data-opens-row][aria-expanded=false]")?.click();
      if (fold) fold.open = true;  // Last: a click elsewhere closes a row's menu.
    }""")
    link.focus()
    link.press("Enter")


@pytest.mark.parametrize("how", ["link", "escape"])
@pytest.mark.parametrize(
    "name",
    ["Change opening a", "Change cabinet B1", "Copy cabinet B1", "Add an opening to cabinet B1",
     "Add a door", "This job's standard", "This job's stock", "Add a wall cabinet"],
)  # fmt: skip
def test_into_the_form_and_back_to_its_link(shown: Page, name: str, how: str) -> None:
    """Whoever opens a form types at once, and is back at its link after leaving it."""
    link = shown.get_by_role("link", name=name, include_hidden=True).first
    press(link)
    form = shown.locator("form.editor", has=shown.locator(":focus"))
    expect(form).to_have_count(1)
    expect(form.locator(":is(input, select):focus")).to_have_count(1)

    if how == "escape":
        shown.keyboard.press("Escape")
    else:
        press(form.locator("[data-leaves]"))

    expect(shown.locator(":focus")).to_have_accessible_name(re.compile(name))
    expect(shown.locator("form.editor")).to_have_count(0)


@pytest.mark.parametrize("how", ["link", "escape"])
def test_back_to_a_link_in_a_fold(shown: Page, how: str) -> None:
    """The fold that the link stands in is open again."""
    line = line_of(shown)
    line.locator("summary").click()
    press(line.get_by_role("link", name="Its own standard"))
    expect(line.locator(":is(input, select):focus")).to_have_count(1)

    if how == "escape":
        shown.keyboard.press("Escape")
    else:
        press(line.locator("[data-leaves]"))

    expect(line.get_by_role("link", name="Its own standard")).to_be_focused()


def test_a_saved_form_leads_to_its_link(shown: Page) -> None:
    """As one leaves a form, so one leaves it saved."""
    line = line_of(shown)
    press(line.get_by_role("link", name="Change opening a"))
    expect(line.locator(":is(input, select):focus")).to_have_count(1)
    shown.keyboard.press("Enter")

    expect(line.get_by_role("link", name="Change opening a")).to_be_focused()


def test_escape_leaves_a_page_of_its_own_alone(shown: Page, job: Job) -> None:
    """Only a form that opened in place is left by it."""
    shown.goto(f"/jobs/{job.pk}/doors/new/")
    shown.get_by_label("Width", exact=True).press("Escape")

    expect(shown.get_by_role("heading", name="New door on hand")).to_be_visible()
    assert shown.url.endswith("/doors/new/")


def test_what_is_typed_as_the_form_opens_is_drawn(shown: Page) -> None:
    """The form listens from the moment it stands there: a fast typist loses no drawing."""
    line = line_of(shown)
    shown.evaluate("""() => new MutationObserver((_, watch) => {
      const width = document.querySelector("form.editor input[name=width]");
      if (!width) return;
      watch.disconnect();
      width.value = "14 1/2";
      width.dispatchEvent(new Event("input", { bubbles: true }));
    }).observe(document.body, { childList: true, subtree: true })""")
    press(line.get_by_role("link", name="Change opening a"))
    expect(line.locator(".preview")).to_contain_text("15 1/2")

"""Whose drafts are kept, which never are, and where none can be, in a real browser."""

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from shopjobs.models import Job, Person
from tests.browser.conftest import AT_A_DESK, sign_in
from tests.browser.opened_forms import DRAFTS, line_of, opened, width_in
from tests.factories import PASSWORD
from tests.pages.kitchens import furnish

pytestmark = [pytest.mark.thorough, AT_A_DESK]


@pytest.fixture
def kitchen(job: Job) -> Job:
    """The job with a small kitchen."""
    furnish(job)
    return job


def test_nobody_sees_the_drafts_of_another(page: Page, kitchen: Job, office: Person) -> None:
    """Signing out keeps what was typed for that person, and hides it from the next one."""
    width_in(opened(page, kitchen)).fill("14 1/2")
    page.get_by_role("button", name="Sign out").click()
    sign_in(page, office.username)
    opened(page, kitchen)
    expect(page.locator(".draft:visible")).to_have_count(0)
    expect(width_in(line_of(page))).to_have_value("15")

    page.get_by_role("button", name="Sign out").click()
    sign_in(page, "ada")
    page.goto(f"/jobs/{kitchen.pk}/")
    expect(width_in(line_of(page))).to_have_value("14 1/2")


def test_no_password_is_kept(page: Page) -> None:
    """Neither a new person's, nor one's own, nor any token."""
    page.goto("/people/")
    page.get_by_label("Sign-in name").fill("vera")
    page.get_by_label("Password").fill("correct-horse-7")
    kept = str(page.evaluate(DRAFTS))
    assert "vera" in kept
    assert "correct-horse-7" not in kept
    token = page.locator("#new-person [name=csrfmiddlewaretoken]").input_value()
    assert token not in kept

    page.goto("/password/")
    page.get_by_label("Password now").fill(PASSWORD)
    assert PASSWORD not in str(page.evaluate(DRAFTS))


def test_leaving_a_form_keeps_its_draft(page: Page, kitchen: Job) -> None:
    """Leaving it says so, with a way to drop it; opened again, the form has it."""
    line = opened(page, kitchen)
    width_in(line).fill("14 1/2")
    line.get_by_role("link", name="Leave it").click()

    expect(page.locator("#said")).to_contain_text("Opening B1.a: what you typed is not saved")
    expect(page.locator("#said")).to_be_in_viewport()
    expect(line.get_by_role("link", name="Change opening a")).to_be_focused()
    line.get_by_role("link", name="Change opening a").click()
    expect(page.locator("#said p")).to_have_count(0)
    expect(width_in(line)).to_have_value("14 1/2")
    expect(line.locator(".draft-note")).to_contain_text("is here again")

    line.get_by_role("link", name="Leave it").click()
    page.locator("#said").get_by_role("button", name="Drop it").click()
    line.get_by_role("link", name="Change opening a").click()
    expect(width_in(line)).to_have_value("15")


def test_a_browser_without_storage_says_so_once(
    page: Page, kitchen: Job, context_script: BrowserContext
) -> None:
    """The form works all the same, and the page is not left without a word."""
    width_in(opened(page, kitchen)).fill("14 1/2")
    line = line_of(page)

    expect(line.locator(".draft-refused")).to_contain_text("This browser can't keep what you type")
    line.get_by_role("button", name="Save").click()
    expect(line.get_by_label("Width of B1.a")).to_have_value("14 1/2")
    line.get_by_role("link", name="Change opening a").click()
    width_in(line).fill("14")
    expect(page.locator(".draft-refused:visible")).to_have_count(0)

    with page.expect_event("dialog") as asked:
        page.once("dialog", lambda dialog: dialog.accept())
        page.goto("/people/")
    assert asked.value.type == "beforeunload"


@pytest.fixture(params=["full", "refused"])
def context_script(page: Page, request: pytest.FixtureRequest) -> BrowserContext:
    """A browser whose storage is full, or refuses to be asked."""
    how = {
        "full": "Storage.prototype.setItem = () => { throw new DOMException('', "
        "'QuotaExceededError'); };",
        "refused": "for (const name of ['localStorage', 'sessionStorage']) Object.defineProperty("
        "window, name, { get() { throw new DOMException('', 'SecurityError'); } });",
    }
    page.context.add_init_script(how[request.param])
    return page.context

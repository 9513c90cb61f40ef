"""A save that failed, in a real browser: it is said at the form until it is dealt with."""

import re

import pytest
from django.template.loader import render_to_string
from playwright.sync_api import Locator, Page, Route, expect

from fronts.models import Opening
from fronts.rules.practice import inches
from shopjobs.models import Job, Person, Role
from tests.browser.conftest import AT_A_DESK
from tests.browser.opened_forms import line_of, opened, shown_openings, width_in
from tests.factories import PASSWORD
from tests.pages.kitchens import furnish

pytestmark = [pytest.mark.thorough, AT_A_DESK]
POSTS = re.compile(r"/openings/\d+/$")
PREVIEWS = re.compile(r"/preview/")


@pytest.fixture
def kitchen(job: Job) -> Job:
    """The job with a small kitchen."""
    furnish(job)
    return job


def answer_saves(page: Page, status: int, template: str) -> None:
    """Let the server's answer to each save be this one."""
    words = render_to_string(template)

    def answer(route: Route) -> None:
        if route.request.method == "POST":
            route.fulfill(status=status, content_type="text/html", body=words)
        else:
            route.fallback()

    page.route(POSTS, answer)


def save(line: Locator) -> None:
    """Press the form's button."""
    line.get_by_role("button", name="Save").click()


def type_on(page: Page, line: Locator) -> None:
    """Type something else, and see the drawing follow it."""
    with page.expect_response(PREVIEWS):
        width_in(line).fill("14 3/4")
    expect(line.locator(".preview")).to_contain_text("15 3/4")


@pytest.mark.parametrize(
    ("status", "template", "words", "again"),
    [
        (403, "errors/403.html#fault", "Your role in the shop doesn't do this.", False),
        (500, "errors/500.html#fault", "The site failed at this", True),
        (503, "errors/busy.html#fault", "Somebody else is saving", True),
        (507, "errors/full.html#fault", "disk is full", True),
        (502, "sheets/cautions.html", "The server failed at this (502).", True),
    ],
)
def test_what_failed_is_said_until_it_is_saved(
    page: Page, kitchen: Job, status: int, template: str, words: str, again: bool
) -> None:
    """The drawing that follows wipes nothing; a save that goes through does."""
    line = opened(page, kitchen)
    width_in(line).fill("14 1/2")
    answer_saves(page, status, template)
    save(line)

    said = line.locator("[role=status] .fault")
    expect(said).to_contain_text(words)
    expect(said).to_contain_text("What you typed is still here, but not saved.")
    expect(said).to_contain_text("Try again") if again else None
    expect(said).to_be_in_viewport()
    expect(line.get_by_role("button", name="Save")).to_be_focused()
    expect(width_in(line)).to_have_value("14 1/2")
    type_on(page, line)
    expect(said).to_contain_text(words)

    page.unroute(POSTS)
    save(line)
    expect(line.get_by_label("Width of B1.a")).to_have_value("14 3/4")
    expect(page.locator(".fault")).to_have_count(0)


def test_a_server_that_is_gone_is_said_until_it_is_back(page: Page, kitchen: Job) -> None:
    """Both are said: that nothing was saved, and that the drawing waits."""
    line = opened(page, kitchen)
    width_in(line).fill("14 1/2")
    expect(line.locator(".preview")).to_contain_text("15 1/2")
    page.context.set_offline(True)
    save(line)
    expect(line.locator(".fault")).to_contain_text("The server can't be reached.")

    width_in(line).fill("14 3/4")
    expect(line.locator(".fault")).to_have_count(2)
    page.context.set_offline(False)
    width_in(line).fill("14 7/8")
    expect(line.locator(".preview")).to_contain_text("15 7/8")
    expect(line.locator(".fault")).to_have_count(1)
    expect(line.locator(".fault")).to_contain_text("What you typed is still here, but not saved.")
    save(line)
    expect(line.get_by_label("Width of B1.a")).to_have_value("14 7/8")


def test_a_role_that_was_taken_away_is_said_at_the_form(
    page: Page, kitchen: Job, owner: Person
) -> None:
    """The server's own answer, as it comes."""
    line = opened(page, kitchen)
    width_in(line).fill("14 1/2")
    Person.objects.filter(pk=owner.pk).update(role=Role.INSTALLER)
    save(line)

    fault = line.locator(".fault[data-about=save]")
    expect(fault).to_contain_text("Your role in the shop doesn't do this.")
    expect(width_in(line)).to_have_value("14 1/2")


def test_a_conflict_stays_said_while_one_types(page: Page, kitchen: Job) -> None:
    """409: who saved stands above the form until it is saved again."""
    line = opened(page, kitchen)
    width_in(line).fill("14 1/2")
    Opening.objects.filter(cabinet__label="B1").update(width=inches(57, 4))
    save(line)

    expect(line.locator(".summary")).to_be_focused()
    type_on(page, line)
    expect(line.locator(".summary")).to_be_visible()
    page.reload()
    expect(line.locator(".draft-note")).to_contain_text("Width: 14 1/4 by now, you typed 14 3/4")


def test_a_refusal_stays_said_while_one_types(page: Page, kitchen: Job) -> None:
    """422: the fault stands at its field until it is saved again."""
    line = opened(page, kitchen)
    width_in(line).fill("wide")
    save(line)

    expect(line.locator(".summary")).to_be_focused()
    type_on(page, line)
    expect(line.locator(".summary")).to_be_visible()
    save(line)
    expect(line.get_by_label("Width of B1.a")).to_have_value("14 3/4")


def sign_in_here(page: Page, owner: Person) -> None:
    """Sign in on the page that one was sent to."""
    page.get_by_label("Sign-in name").fill(owner.username)
    page.get_by_label("Password").fill(PASSWORD)
    page.get_by_role("button", name="Sign in").click()


def test_a_session_that_ends_while_typing_throws_nothing_away(
    page: Page, kitchen: Job, owner: Person
) -> None:
    """The drawing's request is refused, and said at the form; the way back has all of it."""
    line = opened(page, kitchen)
    page.evaluate("window.same = true")
    page.context.clear_cookies(name="sessionid")
    width_in(line).fill("14 1/2")

    expect(line.locator(".fault")).to_contain_text("Your session ended. Sign in and go on.")
    assert page.evaluate("window.same") is True
    expect(width_in(line)).to_have_value("14 1/2")

    line.locator(".fault").get_by_role("link", name="Sign in").click()
    sign_in_here(page, owner)
    expect(width_in(line_of(page))).to_have_value("14 1/2")
    save(line_of(page))
    expect(line_of(page).get_by_label("Width of B1.a")).to_have_value("14 1/2")


def test_a_save_after_the_session_ended_comes_back_to_the_form(
    page: Page, kitchen: Job, owner: Person
) -> None:
    """One signs in, and stands at the open form with what was typed."""
    line = opened(page, kitchen)
    width_in(line).fill("14 1/2")
    page.context.clear_cookies(name="sessionid")
    save(line)
    expect(page.get_by_text("what you typed is kept")).to_be_visible()
    sign_in_here(page, owner)

    expect(width_in(line_of(page))).to_have_value("14 1/2")
    expect(line_of(page)).to_be_in_viewport()


def test_a_session_that_ends_on_a_page_without_scripts(
    plain_page: Page, kitchen: Job, owner: Person
) -> None:
    """A plain browser is led to sign in, and back to the form."""
    opening = Opening.objects.get(cabinet__label="B1")
    plain_page.goto(f"/jobs/{kitchen.pk}/openings/{opening.pk}/")
    plain_page.context.clear_cookies(name="sessionid")
    plain_page.get_by_role("button", name="Save").click()
    sign_in_here(plain_page, owner)

    expect(plain_page.get_by_role("heading", name="Opening B1.a")).to_be_visible()


def test_what_fails_elsewhere_is_said_on_top_until_something_works(
    page: Page, kitchen: Job
) -> None:
    """A link that leads nowhere says so; the next one that works takes that away."""
    page.goto(f"/jobs/{kitchen.pk}/")
    opening = Opening.objects.get(cabinet__label="B2")
    line = page.locator(f"#opening-{opening.pk}")
    shown_openings(page, opening.cabinet_id)
    opening.delete()
    line.get_by_role("link", name="Change opening a").click()
    expect(page.locator("#fault")).to_contain_text("There is nothing at this address.")

    line_of(page).get_by_role("link", name="Change opening a").click()
    expect(width_in(line_of(page))).to_be_visible()
    expect(page.locator("#fault")).to_be_empty()


def test_a_button_that_failed_speaks_of_nothing_typed(page: Page, kitchen: Job) -> None:
    """Where there is nothing to type, there is nothing to keep; it can be pressed again."""
    page.goto(f"/jobs/{kitchen.pk}/")
    line = line_of(page)
    line.locator("summary").click()
    page.context.set_offline(True)
    line.get_by_role("button", name="Delete").click()

    expect(line.locator(".fault")).to_have_text("The server can't be reached. Try again.")
    page.context.set_offline(False)
    line.get_by_role("button", name="Delete").click()
    expect(page.locator(".fault")).to_have_count(0)
    assert not Opening.objects.filter(cabinet__label="B1").exists()

"""The site in a real browser, at the width of a desk and of a phone."""

import re

from playwright.sync_api import Page, expect

from shopjobs.models import Job
from tests.browser.conftest import AT_A_DESK, ON_A_PHONE, SMALLEST_TARGET
from tests.factories import JobFactory

CONTROLS = "main :is(button, select, input:not([type=hidden]), td a, th a, .actions a):visible"
HEIGHTS = "controls => controls.map((one) => one.getBoundingClientRect().height)"


@AT_A_DESK
def test_a_new_job_is_refused_beside_its_field_and_then_made(page: Page) -> None:
    """A job without a number gets a message at the field; what was typed stays."""
    page.goto("/jobs/")
    page.get_by_label("Client").fill("Lindqvist")
    page.get_by_role("button", name="Make the job").click()

    summary = page.locator(".summary")
    expect(summary).to_be_focused()
    expect(page.get_by_label("Client")).to_have_value("Lindqvist")
    expect(page.locator("#id_number_error")).to_have_text("Enter a job number, like K-104.")

    summary.get_by_role("link").click()
    expect(page.get_by_label("Job number")).to_be_focused()
    page.keyboard.type("K-7")
    page.keyboard.press("Enter")

    expect(page).to_have_url(re.compile(r"/jobs/\d+/"))
    assert Job.objects.get().number == "K-7"


@AT_A_DESK
def test_a_slow_press_opens_what_was_found(page: Page, job: Job) -> None:
    """Leaving the field asks for nothing anew, which would take the row from under the finger."""
    JobFactory.create(shop=job.shop, number="Z-9")
    page.goto("/jobs/")
    page.get_by_label("Search").press_sequentially(job.number)
    found = page.locator("a.row-link")
    expect(found).to_have_count(1)

    found.click(delay=1000)

    expect(page).to_have_url(re.compile(rf"/jobs/{job.pk}/"))


def test_nothing_scrolls_sideways(page: Page, job: Job) -> None:
    """No page of the site is wider than its window."""
    own = ("/shop/", "/password/", "/sessions/")
    for address in ("/jobs/", f"/jobs/{job.pk}/settings/", "/people/", *own):
        page.goto(address)

        wide = page.evaluate("document.documentElement.scrollWidth - window.innerWidth")
        assert wide <= 0, address


@ON_A_PHONE
def test_targets_are_large_enough_for_a_finger(page: Page, job: Job) -> None:
    """On a phone every control is at least 44 px high."""
    for address in ("/jobs/", f"/jobs/{job.pk}/settings/", "/people/", "/shop/"):
        page.goto(address)
        assert min(page.locator(CONTROLS).evaluate_all(HEIGHTS)) >= SMALLEST_TARGET, address


@ON_A_PHONE
def test_another_browser_is_signed_out_from_here(page: Page, plain_page: Page) -> None:
    """Its session is ended from a browser that runs no scripts, with a finger too."""
    page.goto("/jobs/")
    plain_page.goto("/password/")
    plain_page.get_by_role("link", name="Where you are signed in").click()
    end = plain_page.get_by_role("button", name="End the session of")
    assert min(end.evaluate_all(HEIGHTS)) >= SMALLEST_TARGET

    end.click()

    expect(plain_page.get_by_text("Signed out:")).to_be_visible()
    expect(plain_page.get_by_role("row")).to_have_count(2)
    page.reload()
    expect(page.get_by_role("heading", name="Sign in")).to_be_visible()


@AT_A_DESK
def test_the_session_ends_in_mid_edit(page: Page) -> None:
    """htmx's answer after the session ended is the sign-in page, and the way back."""
    page.goto("/jobs/")
    page.get_by_label("Job number").fill("K-9")
    page.context.clear_cookies(name="sessionid")
    page.get_by_role("button", name="Make the job").click()

    expect(page.get_by_role("heading", name="Sign in")).to_be_visible()
    expect(page).to_have_url(re.compile(r"/sign-in/\?ended=kept&next=/jobs/%23new-job$"))


@AT_A_DESK
def test_the_server_is_out_of_reach(page: Page) -> None:
    """Without a connection the page says so, and what was typed stays."""
    page.goto("/jobs/")
    page.get_by_label("Job number").fill("K-9")
    page.context.set_offline(True)
    page.get_by_role("button", name="Make the job").click()

    expect(page.locator("#new-job .faults")).to_contain_text("can't be reached")
    expect(page.get_by_label("Job number")).to_have_value("K-9")


@AT_A_DESK
def test_a_job_is_made_without_javascript(plain_page: Page) -> None:
    """Without scripts a plain form does the same: message at the field, then the job."""
    plain_page.goto("/jobs/")
    plain_page.get_by_label("Client").fill("Lindqvist")
    plain_page.get_by_role("button", name="Make the job").click()

    expect(plain_page.locator("#id_number_error")).to_have_text("Enter a job number, like K-104.")
    expect(plain_page.get_by_label("Client")).to_have_value("Lindqvist")

    plain_page.get_by_label("Job number").fill("K-7")
    plain_page.get_by_role("button", name="Make the job").click()

    expect(plain_page).to_have_url(re.compile(r"/jobs/\d+/"))
    assert Job.objects.get().client_name == "Lindqvist"

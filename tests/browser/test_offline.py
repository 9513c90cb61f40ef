"""On site without a signal: what is entered waits on the phone, and comes once, in its order."""

from collections.abc import Iterator
from pathlib import Path
from typing import Any
from unittest.mock import patch

import pytest
from PIL import Image
from playwright.sync_api import Page, Route, expect
from pytest_django.live_server_helper import LiveServer

from fronts.models import Cabinet, FitRecord, Opening, WallPhoto
from fronts.rules.practice import inches
from fronts.services.site_sizes import size_measure
from shopjobs.models import Job, Person
from tests.browser.conftest import PHONE, come_in
from tests.factories import CabinetFactory, OpeningFactory, overlaid

pytestmark = [
    pytest.mark.thorough, pytest.mark.parametrize("width", [PHONE], ids=["phone"])
]  # fmt: skip


@pytest.fixture
def opening(job: Job) -> Opening:
    """An opening 15 in wide that a door closes."""
    overlaid(job)
    return OpeningFactory.create(cabinet=CabinetFactory.create(job=job))


@pytest.fixture
def way(opening: Opening) -> str:
    """Where its sizes are taken."""
    return f"/jobs/{opening.cabinet.job_id}/measuring/{opening.pk}/"


@pytest.fixture
def along(page: Page, job: Job, opening: Opening) -> Iterator[Page]:
    """A phone that has the job along, and no signal."""
    page.goto(f"/jobs/{job.pk}/measuring/")
    take_along = page.get_by_role("button", name="Take this job along")
    expect(take_along).to_be_visible()
    expect(page.get_by_role("button", name="Leave it")).to_be_hidden()
    take_along.click()
    said = page.locator("[data-along-said]")  # Its sheets are printed for it: that takes a while.
    expect(said).to_have_text("On this phone, also without a signal.", timeout=60_000)
    page.context.set_offline(True)
    yield page
    page.context.set_offline(False)


def take(page: Page, size: str) -> None:
    """Type a size and go on."""
    page.locator("[data-reading]").fill(size)
    page.get_by_role("button", name="Next", exact=True).click()


def test_sizes_wait_and_are_sent_in_their_order(along: Page, way: str, opening: Opening) -> None:
    """Entered page after page; there after the tab is closed; sent by themselves, once each."""
    along.goto(f"{way}width-top/")
    for size, following in (("15 1/8", "width-bottom"), ("15", "height-left")):
        take(along, size)
        along.wait_for_url(f"**{way}{following}/")
    waiting = along.locator("#waiting")
    expect(waiting).to_contain_text("2 entries wait to be sent.")
    assert Opening.objects.get().measured_width_top is None

    again = along.context.new_page()
    along.close()
    again.goto(f"{way}width-top/")
    expect(again.locator("#waiting")).to_contain_text("2 entries wait to be sent.")
    expect(again.locator("[data-reading]")).to_have_value("15 1/8")
    again.context.set_offline(False)
    again.get_by_role("button", name="Send now").click()
    expect(again.locator("#waiting")).to_be_empty()
    opening.refresh_from_db()
    assert (opening.measured_width_top, opening.measured_width_bottom) == (
        inches(121, 8),
        inches(15),
    )


def test_diagonals_are_kept_together(along: Page, way: str, opening: Opening) -> None:
    """One alone waits for the other; both are one entry, whichever is corrected; no other's."""
    along.goto(f"{way}diagonal-1/")
    take(along, "31 1/4")
    along.wait_for_url("**/diagonal-2/")
    along.locator("#waiting summary").click()
    expect(along.locator("#waiting")).to_contain_text("wants the other diagonal")
    take(along, "31 3/8")
    along.wait_for_url("**/measuring/")
    expect(along.locator("#waiting")).to_contain_text("1 entry waits to be sent.")
    along.goto(f"{way}diagonal-1/")
    take(along, "31 5/16")
    along.wait_for_url("**/diagonal-2/")
    expect(along.locator("#waiting")).to_contain_text("1 entry waits to be sent.")
    along.context.set_offline(False)
    expect(along.locator("#waiting")).not_to_contain_text("waits to be sent")
    opening.refresh_from_db()
    assert (opening.measured_diagonal_1, opening.measured_diagonal_2) == (
        inches(501, 16), inches(251, 8)
    )  # fmt: skip


def test_a_diagonal_alone_is_not_lost(along: Page, way: str, opening: Opening) -> None:
    """It is not sent, since it would not be kept; it says what it wants."""
    along.goto(f"{way}diagonal-1/")
    take(along, "31 1/4")
    along.wait_for_url("**/diagonal-2/")
    along.context.set_offline(False)
    along.goto(f"{way}width-top/")
    expect(along.locator("#waiting")).to_contain_text("1 entry waits to be sent.")


def test_who_signed_in_anew_sends_what_waits(
    along: Page, way: str, opening: Opening, owner: Person, live_server: LiveServer
) -> None:
    """The token of the page on which it was entered is an old one by then."""
    along.goto(f"{way}width-top/")
    take(along, "15 1/8")
    along.wait_for_url(f"**{way}width-bottom/")
    along.context.clear_cookies()
    along.context.set_offline(False)
    come_in(along.context, live_server, owner)
    along.goto(f"{way}height-left/")
    expect(along.locator("#waiting")).not_to_contain_text("waits to be sent")
    opening.refresh_from_db()
    assert opening.measured_width_top == inches(121, 8)


def test_nobody_else_reads_what_was_taken_along(
    along: Page, job: Job, stranger: Person, live_server: LiveServer
) -> None:
    """Who signs in on the same phone finds nothing of the one before."""
    along.context.set_offline(False)
    along.context.clear_cookies()
    come_in(along.context, live_server, stranger)
    along.goto("/jobs/")
    along.context.set_offline(True)
    along.goto(f"/jobs/{job.pk}/measuring/")
    expect(along.get_by_role("heading", name="No connection")).to_be_visible()
    expect(along.get_by_role("listitem")).to_have_text("nothing yet")


def test_one_that_fails_holds_up_no_other(along: Page, way: str, opening: Opening) -> None:
    """It is told apart; what comes behind it is sent."""
    along.goto(f"{way}width-top/")
    for size, following in (("15 1/8", "width-bottom"), ("15", "height-left")):
        take(along, size)
        along.wait_for_url(f"**{way}{following}/")

    def fail(*, name: str, **told: Any) -> Opening:
        if name == "width_top":
            raise RuntimeError("broken for one")
        return size_measure(name=name, **told)

    with patch("fronts.pages.on_site.views.size_measure", fail):
        along.context.set_offline(False)
        expect(along.locator("#waiting")).to_contain_text("1 to settle.")
    expect(along.locator("#waiting")).to_contain_text("The site failed at this")
    opening.refresh_from_db()
    assert (opening.measured_width_top, opening.measured_width_bottom) == (None, inches(15))


def test_a_lost_answer_makes_one_record(page: Page, job: Job, opening: Opening) -> None:
    """It was saved, nobody heard of it; sent again it is answered as the first time."""
    page.goto(f"/jobs/{job.pk}/fit/{opening.cabinet_id}/")

    def lose(route: Route) -> None:
        route.fetch()
        route.abort()

    page.route("**/fit/**", lambda route: lose(route) if route.request.method == "POST"
               else route.continue_())  # fmt: skip
    page.locator("[id='record-B1.a']").get_by_role("button", name="As planned").click()
    expect(page.locator("#waiting")).to_contain_text("1 entry waits to be sent.")
    assert FitRecord.objects.count() == 1
    page.unroute("**/fit/**")
    page.get_by_role("button", name="Send now").click()
    expect(page.locator("#waiting")).to_be_empty()
    assert FitRecord.objects.count() == 1


def test_what_somebody_else_changed_is_shown_and_nothing_is_dropped(
    along: Page, way: str, opening: Opening
) -> None:
    """Both stay until somebody settles it; dropped only at the second press."""
    along.goto(f"{way}width-top/")
    take(along, "15 1/8")
    along.wait_for_url(f"**{way}width-bottom/")
    Opening.objects.filter(pk=opening.pk).update(measured_width_top=inches(31, 2))
    along.context.set_offline(False)
    along.get_by_role("button", name="Send now").click()
    waiting = along.locator("#waiting")
    expect(waiting).to_contain_text("1 to settle.")
    expect(waiting).to_contain_text("15 1/2")
    opening.refresh_from_db()
    assert opening.measured_width_top == inches(31, 2)

    waiting.get_by_role("button", name="Drop it").click()
    waiting.get_by_role("button", name="Drop it for good").click()
    expect(waiting).not_to_contain_text("waits to be sent")


def test_pages_that_came_along_are_there(along: Page, job: Job, opening: Opening) -> None:
    """Measuring, fitting and its drawing; what did not come says so and leads to what did."""
    along.goto(f"/jobs/{job.pk}/fit/{opening.cabinet_id}/")
    expect(along.get_by_role("heading", name="Cabinet B1")).to_be_visible()
    assert along.locator("h1").evaluate("one => getComputedStyle(one).fontWeight") == "600"
    along.goto(f"/jobs/{job.pk}/order/")
    expect(along.get_by_role("heading", name="No connection")).to_be_visible()
    assert along.locator("h1").evaluate("one => getComputedStyle(one).fontWeight") == "600"
    along.get_by_role("link", name="Measuring", exact=True).click()
    expect(along.get_by_role("heading", name="Measuring on site")).to_be_visible()


def test_signing_out_asks_while_something_waits(along: Page, way: str, job: Job) -> None:
    """What waits stays for the same person."""
    along.goto(f"{way}width-top/")
    take(along, "15 1/8")
    along.wait_for_url(f"**{way}width-bottom/")
    along.goto(f"/jobs/{job.pk}/measuring/")
    expect(along.locator("#waiting")).to_contain_text("1 entry waits to be sent.")
    along.get_by_role("button", name="Sign out").click()
    expect(along.locator("#waiting")).to_contain_text("Sign out all the same?")


def test_who_has_signed_out_sends_nothing(along: Page, way: str, opening: Opening) -> None:
    """The entries wait until the same person is back."""
    along.goto(f"{way}width-top/")
    take(along, "15 1/8")
    along.wait_for_url(f"**{way}width-bottom/")
    along.context.clear_cookies()
    along.context.set_offline(False)
    along.get_by_role("button", name="Send now").click()
    expect(along.locator("#waiting")).to_contain_text("Sign in to send them.")
    expect(along.locator("#waiting")).to_contain_text("1 entry waits to be sent.")
    assert Cabinet.objects.count() == 1
    opening.refresh_from_db()
    assert opening.measured_width_top is None


def test_a_photo_waits_as_well(along: Page, job: Job, tmp_path: Path) -> None:
    """Made small on the phone; each is an entry of its own; seen once it is sent."""
    along.goto(f"/jobs/{job.pk}/measuring/")
    for colour, few in (("red", "1 entry waits"), ("green", "2 entries wait")):
        file = tmp_path / f"{colour}.png"
        Image.new("RGB", (2400, 1200), colour).save(file)
        along.locator("[data-photo]").set_input_files(file)
        expect(along.locator("#waiting")).to_contain_text(f"{few} to be sent.")
    assert not WallPhoto.objects.exists()

    along.context.set_offline(False)
    along.get_by_role("button", name="Send now").click()
    expect(along.locator("figure img")).to_have_count(2)
    expect(along.locator("#waiting")).to_be_empty()
    image = along.locator("figure img").first
    expect(image).to_have_js_property("naturalWidth", 1600)
    assert WallPhoto.objects.count() == 2

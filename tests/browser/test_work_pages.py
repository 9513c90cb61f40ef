"""Order, fit and cut in a real browser, at a desk and on a phone."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Locator, Page, expect

from fronts.models import Cabinet, FitRecord, OrderCheck
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.browser.conftest import AT_A_DESK, ON_A_PHONE, SMALLEST_TARGET
from tests.factories import PASSWORD, JobFactory, door_and_drawer, overlaid
from tests.queue_work import in_queue, workers

MAIN_TARGET = 64
"""The least height in CSS px of what an installer does in gloves."""
TEXT = 16
"""Smaller text in an input makes phones zoom in."""
SIZES = """controls => controls.map((one) => [one.textContent.trim(),
  one.getBoundingClientRect().height, parseFloat(getComputedStyle(one).fontSize)])"""


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """A cabinet with a door, a drawer, and a plywood front above them."""
    overlaid(job)
    return door_and_drawer(job, front_material="birch plywood")


@pytest.fixture
def a_worker() -> Iterator[None]:
    """Long work waits in the queue for a real worker, which is there."""
    with in_queue, workers():
        yield


@AT_A_DESK
def test_a_line_is_checked_in_place_and_taken_back(page: Page, cabinet: Cabinet) -> None:
    """The list stays; the mark has a name and a time; the focus goes on to the next line."""
    page.goto(f"/jobs/{cabinet.job_id}/order/")
    row = page.get_by_role("row").filter(has_text="by each door's height")
    row.get_by_role("button", name="Check hinge").click()

    expect(row).to_contain_text("2 checked by Ada")
    expect(page.locator(".stages")).to_contain_text("1 of")
    expect(page.locator("[id$=-check]:focus")).to_have_count(1)
    assert OrderCheck.objects.get().need == 2

    row.get_by_role("button", name="Uncheck hinge").click()
    expect(page.locator(".stages")).to_contain_text("0 of")


@AT_A_DESK
def test_a_line_is_checked_without_javascript(plain_page: Page, cabinet: Cabinet) -> None:
    """A plain form does the same, note and all."""
    plain_page.goto(f"/jobs/{cabinet.job_id}/order/")
    row = plain_page.get_by_role("row").filter(has_text="by each door's height")
    row.get_by_text("Add a note").click()
    row.get_by_label("Note on hinge").fill("in the van")
    row.get_by_role("button", name="Check hinge").click()

    expect(row).to_contain_text("2 checked by Ada")
    expect(row).to_contain_text("in the van")


def not_as_planned(record: Locator) -> None:
    """Open what is said of a front that is not as planned."""
    record.get_by_text("Not as planned").click()


@ON_A_PHONE
def test_a_fit_is_recorded_in_place(page: Page, cabinet: Cabinet) -> None:
    """A slip is refused beside its field; what was typed beside it stays; then it is kept."""
    page.goto(f"/jobs/{cabinet.job_id}/fit/")
    page.locator(".cabinets a").first.click()
    door = page.locator("[id='record-B1.a']")
    other = page.locator("[id='record-B1.b']")
    not_as_planned(other)
    other.get_by_label("Note").fill("still typing")
    not_as_planned(door)
    door.locator("input[name=gap_left]").fill("1/0")
    door.locator("input[name=gap_top]").fill("3/32")
    door.get_by_role("button", name="Done", exact=True).click()

    expect(door.locator(".error")).to_contain_text("divides by zero")
    expect(door.locator("input[name=gap_top]")).to_have_value("3/32")

    door.locator("input[name=gap_left]").fill("15/16")
    door.get_by_role("button", name="Done", exact=True).click()

    expect(door).to_contain_text("Ada, ")
    expect(other.get_by_label("Note")).to_have_value("still typing")
    assert FitRecord.objects.get().gap_left == inches(15, 16)


@ON_A_PHONE
def test_a_fit_is_recorded_without_javascript(plain_page: Page, cabinet: Cabinet) -> None:
    """A plain form does the same, and comes back to where one was."""
    plain_page.goto(f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/")
    door = plain_page.locator("[id='record-B1.a']")
    not_as_planned(door)
    door.locator("input[name=gap_left]").fill("15/16")
    door.get_by_role("button", name="Done", exact=True).click()

    expect(plain_page.locator("[id='record-B1.a']")).to_contain_text("Ada, ")
    assert plain_page.url.endswith("#record-B1.a")


@ON_A_PHONE
def test_without_a_connection_it_is_said_where_one_looks(page: Page, cabinet: Cabinet) -> None:
    """However far down the form stands; what was typed waits there, and is sent by itself."""
    page.goto(f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/")
    drawer = page.locator("[id='record-B1.b']")
    not_as_planned(drawer)
    drawer.locator("input[name=gap_left]").fill("15/16")
    page.context.set_offline(True)
    drawer.get_by_role("button", name="Done", exact=True).click()

    expect(drawer.locator(".waits-here")).to_be_in_viewport()
    expect(drawer.locator(".waits-here")).to_have_text(
        "Waits to be sent: How B1.b fits: 15/16, done"
    )
    expect(drawer.locator("input[name=gap_left]")).to_have_value("15/16")
    page.context.set_offline(False)
    expect(page.locator("#waiting")).to_be_empty()
    expect(drawer.locator(".by")).to_contain_text("Ada, ")


@AT_A_DESK
def test_a_form_from_before_a_sign_in_says_so_where_one_looks(page: Page, cabinet: Cabinet) -> None:
    """A cookie that is gone is a fault that is seen too."""
    page.goto(f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/")
    drawer = page.locator("[id='record-B1.b']")
    not_as_planned(drawer)
    drawer.locator("input[name=gap_left]").fill("15/16")
    page.context.clear_cookies(name="csrftoken")
    drawer.get_by_role("button", name="Done", exact=True).click()

    expect(drawer.locator(".faults .fault")).to_be_in_viewport()


@ON_A_PHONE
def test_what_was_typed_outlives_the_session(page: Page, owner: Person, cabinet: Cabinet) -> None:
    """After signing in again one stands at the same form, and nothing is typed twice."""
    page.goto(f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/")
    work = page.locator("[id='record-B1.b-work']")
    work.locator("summary").click()
    work.locator(".step").first.click()
    expect(work.locator(".step").first).to_have_attribute("aria-pressed", "true")
    drawer = page.locator("[id='record-B1.b']")
    not_as_planned(drawer)
    drawer.locator("input[name=gap_left]").fill("15/16")
    page.context.clear_cookies(name="sessionid")
    drawer.get_by_role("button", name="Done", exact=True).click()

    expect(page.locator("p.said")).to_contain_text("what you typed is kept")
    page.get_by_label("Sign-in name").fill(owner.username)
    page.get_by_label("Password").fill(PASSWORD)
    page.get_by_role("button", name="Sign in").click()
    expect(drawer.locator("input[name=gap_left]")).to_have_value("15/16")
    expect(drawer).to_be_in_viewport()
    expect(work.locator(".step").first).to_have_attribute("aria-pressed", "true")

    drawer.get_by_role("button", name="Done", exact=True).click()
    expect(drawer).to_contain_text("Ada, ")
    page.reload()
    drawer.get_by_text("Correct it").click()
    expect(drawer.locator("input[name=gap_left]")).to_have_value("15/16")
    assert page.evaluate("Object.keys(localStorage).filter(key => key.includes('draft'))") == []


@ON_A_PHONE
def test_tables_keep_their_words_on_the_narrowest_phone(page: Page, cabinet: Cabinet) -> None:
    """At 320 px nothing scrolls sideways and no word is broken in two."""
    page.set_viewport_size({"width": 320, "height": 700})
    page.goto(f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/")
    drawer = page.locator("[id='record-B1.b']")
    not_as_planned(drawer)
    drawer.locator("input[name=gap_left]").fill("1 3/16")
    drawer.get_by_role("button", name="Done", exact=True).click()
    expect(drawer).to_contain_text("Ada, ")

    assert page.evaluate("document.documentElement.scrollWidth - window.innerWidth") <= 0
    for cell in page.locator(":is(.gaps, .holes) :is(td, tbody th)").all():
        assert cell.evaluate("cell => cell.scrollWidth - cell.clientWidth") <= 0
    high = drawer.locator(".gaps td").first.evaluate("cell => cell.getBoundingClientRect().height")
    assert high < 2 * 24 + 20


@AT_A_DESK
@pytest.mark.usefixtures("a_worker")
def test_a_plan_is_made_while_the_page_shows_how_far_it_is(
    page: Page, plain_page: Page, cabinet: Cabinet
) -> None:
    """The form gives way to the progress, and that to the drawn plan, without a reload; where no
    scripts run the page says that it is at work, and looks again by itself."""
    page.goto(f"/jobs/{cabinet.job_id}/cut/")
    page.get_by_role("button", name="Make the plan").click()
    expect(page.locator(".at-work")).to_contain_text("materials worked out")
    expect(page.locator("#cut-plan .takes")).to_contain_text("proved least", timeout=60_000)
    expect(page.locator("#cut-plan svg").first).to_be_visible()

    another = JobFactory.create(shop=cabinet.job.shop, number="K-2")
    overlaid(another)
    door_and_drawer(another)
    plain_page.goto(f"/jobs/{another.pk}/cut/")
    plain_page.get_by_role("button", name="Make the plan").click()
    expect(plain_page.locator("#cut-plan")).to_contain_text("Look again")
    expect(plain_page.locator("#cut-plan .takes")).to_contain_text("proved least", timeout=60_000)


@AT_A_DESK
def test_a_plan_that_nobody_works_on_says_so_and_is_called_off(
    page: Page, cabinet: Cabinet
) -> None:
    """Without a worker the page doesn't spin for ever; cancelled, the form is there again."""
    with in_queue:
        page.goto(f"/jobs/{cabinet.job_id}/cut/")
        page.get_by_role("button", name="Make the plan").click()
        expect(page.locator(".at-work")).to_contain_text("No worker is running")

        page.get_by_role("button", name="Cancel the plan").click()
        expect(page.locator("#cut-plan")).to_contain_text("Cancelled by Ada")
        expect(page.get_by_role("button", name="Make the plan")).to_be_visible()


def test_nothing_scrolls_sideways(page: Page, cabinet: Cabinet) -> None:
    """No page is wider than its window."""
    for path in ("cut/", "order/", "fit/", f"fit/{cabinet.pk}/"):
        page.goto(f"/jobs/{cabinet.job_id}/{path}")

        wide = page.evaluate("document.documentElement.scrollWidth - window.innerWidth")
        assert wide <= 0, path


@ON_A_PHONE
def test_targets_fit_a_finger(page: Page, cabinet: Cabinet) -> None:
    """Whatever is pressed on a phone is high enough."""
    controls = "main :is(button, select, summary, a, input:not([type=hidden], [type=checkbox]))"
    for path in ("cut/", "order/", "fit/", f"fit/{cabinet.pk}/"):
        page.goto(f"/jobs/{cabinet.job_id}/{path}")
        sizes = page.locator(f"{controls}:visible").evaluate_all(SIZES)
        assert sizes
        assert [one for one in sizes if one[1] <= SMALLEST_TARGET - 1] == [], path


def test_what_an_installer_does_is_large(page: Page, cabinet: Cabinet) -> None:
    """Links to cabinets, inputs and buttons for gloved thumbs; text that does not zoom."""
    page.goto(f"/jobs/{cabinet.job_id}/fit/")
    links = page.locator(".cabinets a").evaluate_all(SIZES)
    page.goto(f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/")
    controls = page.locator(
        ".record :is(input:not([type=hidden]), button:not(.aside)):visible"
    ).evaluate_all(SIZES)

    assert links
    assert controls
    assert [one for one in links + controls if one[1] < MAIN_TARGET] == []
    assert [one for one in controls if one[2] < TEXT] == []

"""The order with a delivered box in hand, on a phone; and the list checked by keys alone."""

from playwright.sync_api import Page, expect

from shopjobs.models import Job, Person
from tests.browser.conftest import AT_A_DESK, ON_A_PHONE
from tests.factories import door_and_drawer, overlaid
from tests.ordering import approved, facts_of, sent_to

OVERLAPS = """() => [...document.querySelectorAll('.order tr')].filter((row) => {
  const cells = [...row.children].map((cell) => cell.getBoundingClientRect());
  return cells.some((one, i) => cells.some((other, j) => i < j
    && one.left < other.right - 1 && other.left < one.right - 1
    && one.top < other.bottom - 1 && other.top < one.bottom - 1));
}).length"""
SIDEWAYS = "document.documentElement.scrollWidth > innerWidth"


@ON_A_PHONE
def test_a_box_is_received_and_what_is_short_found(page: Page, job: Job, office: Person) -> None:
    """In under ten taps: one amount is typed over, and the page says what is missing."""
    overlaid(job)
    door_and_drawer(job)
    approved(job, office)
    sent_to(job, "Northfield", office)
    taps = 0

    page.goto(f"/jobs/{job.pk}/order/", timeout=60_000)
    assert page.evaluate(OVERLAPS) == 0
    assert not page.evaluate(SIDEWAYS)
    short = page.get_by_label("Came of hinge screw", exact=True)
    short.tap()
    short.fill("7")
    taps += 1
    page.get_by_role("button", name="These came").tap()
    taps += 1

    expect(page.locator(".waits")).to_contain_text("2 items from Northfield")
    expect(page.locator(".is-short")).to_have_count(1)
    expect(page.locator(".is-short")).to_contain_text("hinge screw")
    expect(page.locator(".is-short")).to_contain_text("2 still to come")
    assert taps < 10


@AT_A_DESK
def test_the_list_is_gone_through_with_enter_alone(page: Page, job: Job) -> None:
    """Each Enter checks the line that has the focus and goes on to the next; then it approves."""
    overlaid(job)
    door_and_drawer(job)
    page.goto(f"/jobs/{job.pk}/order/")
    page.get_by_role("button", name="Check hinge H-LAP").focus()

    for checked in range(1, len(facts_of(job)) + 1):
        expect(page.locator("button:focus")).to_contain_text("Check")
        page.keyboard.press("Enter")
        expect(page.locator(".stages")).to_contain_text(f"{checked} of")
    expect(page.locator("#approve-button")).to_be_focused()
    page.keyboard.press("Enter")

    expect(page.locator(".stages")).to_contain_text("Ada")
    expect(page.locator("#send-form")).to_be_visible()

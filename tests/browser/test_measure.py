"""A kitchen entered by hand in a real browser, at the width of a desk and of a phone."""

import re

import pytest
from playwright.sync_api import Locator, Page, expect

from fronts.models import Cabinet, Opening
from fronts.rules.practice import inches
from fronts.selectors.kitchens import placed_kitchen_of
from shopjobs.models import Job, Person
from tests.browser.conftest import AT_A_DESK, ON_A_PHONE, SMALLEST_TARGET, sign_in
from tests.browser.opened_forms import line_of, shown_openings
from tests.factories import CabinetFactory, OpeningFactory, overlaid
from tests.pages.kitchens import furnish

pytestmark = pytest.mark.slow
CONTROLS = (
    "main :is(button, select, summary, input:not([type=hidden], [type=checkbox]), .does a, .adds a,"
    " .more a, .ways a, .boxes a, .actions a, .fronts a):visible"
)
SMALL = """(controls, least) => controls
  .filter((control) => control.getBoundingClientRect().height < least)
  .map((control) => control.outerHTML.slice(0, 80))"""


def press(page: Page, *keys: str) -> None:
    """Press keys one after the other; what is no key's name is typed."""
    for key in keys:
        if key in ("Tab", "Enter", "Escape"):
            page.keyboard.press(key)
        else:
            page.keyboard.type(key)


def width_field(page: Page) -> Locator:
    """Where the next cabinet's width is typed."""
    return page.locator("#cabinet-new-width")


def entered(page: Page, label: str) -> None:
    """Wait until the cabinet stands in the list and the next form is ready."""
    expect(page.get_by_label(f"Label of {label}", exact=True)).to_be_visible()
    expect(width_field(page)).to_be_focused()
    expect(width_field(page)).to_have_value("")


@AT_A_DESK
def test_four_cabinets_from_nothing_by_keyboard(page: Page, job: Job) -> None:
    """Only what is new of each cabinet is typed; the walls and the fronts follow."""
    overlaid(job)
    page.goto(f"/jobs/{job.pk}/")
    expect(page.get_by_label("Width of the new row")).to_be_focused()
    page.get_by_role("link", name="Add a base cabinet").press("Enter")
    expect(width_field(page)).to_be_focused()

    press(page, "18", "Tab", "30 1/2", "Tab", "24", "Enter")
    entered(page, "B1")
    press(page, "21", "Tab", "Tab", "Tab", "Stack", "Tab", "3", "Enter")
    entered(page, "B2")
    press(page, "33", "Tab", "Tab", "Tab", "Drawer over a pair", "Tab", "5", "Enter")
    entered(page, "B3")
    press(page, "24", "Enter")
    entered(page, "B4")

    placed = placed_kitchen_of(Job.objects.get()).cabinets
    places = [(cabinet.label, cabinet.left) for cabinet in placed]
    assert places == [("B1", 0), ("B2", inches(18)), ("B3", inches(39)), ("B4", inches(72))]
    kinds = Opening.objects.filter(cabinet__label="B3").order_by("position")
    assert [each.closed_by for each in kinds] == ["drawer", "pair"]
    expect(page.locator("#elevations svg a")).to_have_count(1 + 3 + 3 + 3)
    expect(page.locator(".fronts tbody tr")).to_have_count(1 + 3 + 3 + 3)
    expect(page.locator("#findings")).to_contain_text("its box is not measured")


def test_an_edit_in_place_is_followed_by_the_drawing(page: Page, job: Job) -> None:
    """A changed width shows in the line, the drawing and the schedule, without a new page."""
    furnish(job)
    page.goto(f"/jobs/{job.pk}/")
    page.evaluate("window.same = true")
    line = line_of(page)

    line.get_by_role("link", name="Change opening a").click()
    line.get_by_label("Width", exact=True).fill("14 1/2")
    line.get_by_role("button", name="Save").click()

    expect(line.get_by_label("Width of B1.a")).to_have_value("14 1/2")
    expect(line.get_by_role("link", name="Change opening a")).to_be_focused()
    expect(page.locator("#elevations svg")).to_contain_text("15 1/2 × 28 1/2")
    expect(page.locator(".fronts tbody tr").first).to_contain_text("15 1/2")
    expect(page.locator("#said")).to_have_text("Opening B1.a is saved.")
    assert page.evaluate("window.same") is True


@ON_A_PHONE
def test_one_front_of_a_stack_is_changed_in_place(page: Page, job: Job) -> None:
    """Its form stands where the opening stood; the line and the schedule follow."""
    overlaid(job)
    cabinet = CabinetFactory.create(job=job)
    opening = OpeningFactory.create(
        cabinet=cabinet, closed_by="drawers", count=3, front_build="five-piece"
    )
    page.goto(f"/jobs/{job.pk}/")
    page.evaluate("window.same = true")
    shown_openings(page, cabinet.pk)
    line = page.locator(f"#opening-{opening.pk}")

    line.get_by_role("link", name="Change front 1 from the top of opening a").click()
    expect(line.get_by_label("Width of the front")).to_be_visible()
    line.get_by_label("Built as").select_option("Slab")
    line.get_by_label("Height in the stack").fill("6 1/4")
    line.get_by_role("button", name="Save").click()

    expect(line).to_contain_text("Front 1 from the top: 6 1/4 high, slab")
    expect(line).to_contain_text("Front 2 from the top: five-piece")
    rows = page.locator(".fronts tbody tr")
    expect(rows.nth(0)).to_contain_text("slab")
    expect(rows.nth(1)).to_contain_text("five-piece")
    expect(page.locator("#said")).to_have_text("Front B1.a.1 is saved.")
    assert page.evaluate("window.same") is True


@AT_A_DESK
def test_the_drawing_follows_the_keys_and_leaves_them_alone(page: Page, job: Job) -> None:
    """Typing redraws the cabinet beside the form; a half-typed size only makes it wait."""
    furnish(job)
    opening = Opening.objects.get(cabinet__label="B1")
    page.goto(f"/jobs/{job.pk}/openings/{opening.pk}/")
    field, drawing = page.get_by_label("Width", exact=True), page.locator(".preview")

    field.fill("13 1/")
    expect(page.locator(".not-yet")).to_contain_text("The drawing waits")
    expect(drawing).to_contain_text("16 × 28 1/2")
    page.keyboard.type("2", delay=60)

    expect(drawing).to_contain_text(re.compile("14 1/2 ?× 28 1/2"))
    expect(page.locator(".not-yet")).to_be_empty()
    expect(field).to_have_value("13 1/2")
    expect(field).to_be_focused()
    opening.refresh_from_db()
    assert opening.width == inches(15)


@AT_A_DESK
def test_a_fault_takes_the_focus_and_leads_to_its_field(page: Page, job: Job) -> None:
    """The summary is focused; its line leads to the field, where what was typed stands."""
    page.goto(f"/jobs/{job.pk}/")
    page.get_by_role("link", name="Add a base cabinet").press("Enter")
    expect(width_field(page)).to_be_focused()
    page.keyboard.type("two feet")
    page.keyboard.press("Enter")

    expect(page.locator(".summary")).to_be_focused()
    page.locator(".summary").get_by_role("link", name="two feet").click()

    expect(width_field(page)).to_be_focused()
    expect(width_field(page)).to_have_value("two feet")
    expect(width_field(page)).to_have_attribute("aria-invalid", "true")


@AT_A_DESK
def test_a_front_in_the_drawing_leads_to_its_row_and_back(page: Page, job: Job) -> None:
    """A click on a front is in its row; where one is in the table, the drawing marks the front."""
    furnish(job)
    page.goto(f"/jobs/{job.pk}/")
    front = page.locator("#elevations").get_by_role("link", name="B1.a 16 × 28 1/2 door")

    front.click()
    expect(page.get_by_label("Label of B1.a")).to_be_focused()
    expect(front).to_have_class("chosen")

    page.get_by_label("Width of B2", exact=True).focus()
    expect(front).not_to_have_class("chosen")


def test_deleting_says_what_went_and_brings_it_back(page: Page, job: Job) -> None:
    """One press; what went is said where the cabinet stood, and Undo leads back to it there."""
    furnish(job)
    page.goto(f"/jobs/{job.pk}/")
    cabinet = Cabinet.objects.get(label="B2")
    place = page.locator(f"#cabinet-{cabinet.pk}")

    place.locator("summary").first.click()
    place.get_by_role("button", name="Delete cabinet B2").click()
    expect(place).to_be_focused()
    expect(place).to_contain_text("box 1 of B2.a")
    expect(page.locator("#elevations svg")).not_to_contain_text("B2")
    expect(page.locator("#undo-bar")).to_contain_text("Undo: Deleted cabinet B2")
    assert not Cabinet.objects.filter(label="B2").exists()

    place.get_by_role("button", name="Undo").click()
    expect(page.locator("#said")).to_contain_text("Undid: Deleted cabinet B2.")
    expect(place.get_by_label("Label of B2", exact=True)).to_be_in_viewport()
    assert Cabinet.objects.filter(label="B2").exists()


@AT_A_DESK
def test_fields_that_mean_nothing_are_put_away(page: Page, job: Job) -> None:
    """A door asks for its hinges, a stack for its drawers."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    page.goto(f"/jobs/{job.pk}/openings/{opening.pk}/")
    expect(page.get_by_label("Hinged")).to_be_visible()
    expect(page.get_by_label("How many drawers")).to_be_hidden()

    page.get_by_label("Closed by").select_option("drawers")

    expect(page.get_by_label("Hinged")).to_be_hidden()
    expect(page.get_by_label("How many drawers")).to_be_visible()


@AT_A_DESK
def test_it_all_works_without_javascript(plain_page: Page, job: Job) -> None:
    """Without scripts the same forms are pages of their own, and lead back."""
    overlaid(job)
    page = plain_page
    page.goto(f"/jobs/{job.pk}/")
    page.get_by_label("Width", exact=True).fill("18")
    page.get_by_role("button", name="Enter the cabinet").click()
    expect(page.locator(".summary")).to_contain_text("Enter the height")
    expect(page.get_by_label("Width", exact=True)).to_have_value("18")

    page.get_by_label("Height", exact=True).fill("30 1/2")
    page.get_by_label("Depth").fill("24")
    page.get_by_role("button", name="Enter the cabinet").click()
    expect(page.locator(".said")).to_have_text("Cabinet B1 is entered.")
    expect(page.locator("#elevations svg")).to_contain_text("B1.a")

    page.locator("#cabinets summary").first.click()
    page.get_by_role("link", name="Add an opening").first.click()
    expect(page.get_by_role("heading", name="New opening in cabinet B1")).to_be_visible()
    page.go_back()
    page.get_by_role("link", name="Change opening a").click()
    page.get_by_label("Hinged").select_option("right")
    page.get_by_role("button", name="Save").click()
    expect(page.locator("#cabinets")).to_contain_text("Door, hinged right")


@ON_A_PHONE
def test_the_installer_measures_on_a_phone(open_page: Page, installer: Person, job: Job) -> None:
    """The installer gets the measured sizes of an opening in its place, and nothing else."""
    furnish(job)
    page = open_page
    sign_in(page, installer.username)
    page.goto(f"/jobs/{job.pk}/")
    opening = Opening.objects.get(cabinet__label="B1")
    line = line_of(page)

    line.get_by_role("link", name="Measure opening a").click()
    line.get_by_label("Width at the top").fill("14 15/16")
    line.get_by_role("button", name="Save").click()

    expect(line).to_contain_text("measured on site")
    opening.refresh_from_db()
    assert opening.measured_width_top == inches(239, 16)


def test_nothing_scrolls_sideways_but_drawings_and_tables(page: Page, job: Job) -> None:
    """No page is wider than its window; a wide drawing scrolls in a box that takes the focus."""
    furnish(job)
    for place in range(6):
        CabinetFactory.create(job=job, label=f"C{place}")
    opening = Opening.objects.get(cabinet__label="B2")
    start = f"/jobs/{job.pk}/"
    for address in (
        start, f"{start}cabinets/new/", f"{start}openings/{opening.pk}/", f"{start}doors/new/",
        f"{start}openings/{opening.pk}/fronts/0/", f"{start}openings/{opening.pk}/boxes/0/",
        f"{start}standard/", "/shop/standard/", "/shop/standard/lap/", "/jobs/import/",
    ):  # fmt: skip
        page.goto(address)
        wide = page.evaluate("document.documentElement.scrollWidth - window.innerWidth")
        assert wide <= 0, address
    page.goto(start)
    box = page.get_by_role("region", name="Elevation of wall North")
    box.focus()
    expect(box).to_be_focused()


@ON_A_PHONE
def test_targets_are_large_enough_for_a_finger(page: Page, job: Job) -> None:
    """On a phone every control of the job's page and its forms is at least 44 px high."""
    furnish(job)
    opening = Opening.objects.get(cabinet__label="B2")
    start = f"/jobs/{job.pk}/"
    for address in (
        start, f"{start}cabinets/new/", f"{start}openings/{opening.pk}/",
        f"{start}openings/{opening.pk}/fronts/0/", f"{start}openings/{opening.pk}/boxes/0/",
        "/shop/standard/", "/shop/standard/lap/", "/jobs/import/",
    ):  # fmt: skip
        page.goto(address)
        assert page.locator(CONTROLS).evaluate_all(SMALL, SMALLEST_TARGET) == [], address

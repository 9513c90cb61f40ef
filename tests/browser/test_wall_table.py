"""A wall's table in a real browser: typed like a spreadsheet, by keyboard alone."""

import pytest
from playwright.sync_api import Page, expect

from fronts.models import Cabinet, Opening
from fronts.rules.practice import inches
from shopjobs.models import Job, Revision
from tests.browser.conftest import AT_A_DESK
from tests.factories import CabinetFactory, OpeningFactory, overlaid

pytestmark = [pytest.mark.slow, AT_A_DESK]
NOTEBOOK = "base 30 1/2 high 24 deep 4 up\nB1 18 door left\nB2 24 drawer 6 over pair\n"
PASTE = """([cell, text]) => {
  const data = new DataTransfer();
  data.setData("text/plain", text);
  cell.dispatchEvent(new ClipboardEvent("paste", {clipboardData: data, bubbles: true,
    cancelable: true}));
}"""


@pytest.fixture
def run(page: Page, job: Job) -> Page:
    """A wall with three cabinets, each with a door."""
    overlaid(job)
    for place in range(3):
        cabinet = CabinetFactory.create(job=job, label=f"B{place + 1}", x=None)
        OpeningFactory.create(cabinet=cabinet)
    page.goto(f"/jobs/{job.pk}/")
    return page


def depths() -> list[object]:
    """What the cabinets' depths are kept as."""
    return list(Cabinet.objects.order_by("position").values_list("depth", flat=True))


def test_each_cell_is_saved_as_it_is_left(run: Page) -> None:
    """Typing replaces, Enter goes down, Escape takes back, and the drawing follows."""
    width = run.get_by_label("Width of B1", exact=True)
    width.focus()
    run.keyboard.type("54-33")
    run.keyboard.press("Enter")
    expect(run.get_by_label("Width of B2", exact=True)).to_be_focused()
    expect(run.locator("#said")).to_have_text("B1 is saved.")
    expect(run.locator("#elevations svg")).to_contain_text("19 × 28 1/2")
    expect(width).to_have_value("21")
    assert Opening.objects.get(cabinet__label="B1").width == inches(18)

    run.keyboard.type("999")
    run.keyboard.press("Escape")
    expect(run.get_by_label("Width of B2", exact=True)).to_have_value("18")
    run.keyboard.press("ArrowRight")
    expect(run.get_by_label("What closes B2", exact=True)).to_be_focused()
    run.keyboard.press("ArrowUp")
    expect(run.get_by_label("What closes B1", exact=True)).to_be_focused()


def test_what_is_typed_meanwhile_stays(run: Page) -> None:
    """The answer to one cell does not touch the next one, nor take the caret out of it."""
    run.get_by_label("Depth of B1").focus()
    run.keyboard.type("22")
    with run.expect_response(lambda answer: "wall=" in answer.url):
        run.keyboard.press("Enter")
        run.keyboard.type("20 1")
    run.keyboard.type("/2")
    expect(run.get_by_label("Depth of B2")).to_be_focused()
    expect(run.get_by_label("Depth of B2")).to_have_value("20 1/2")
    run.keyboard.press("Enter")

    expect(run.locator("#said")).to_have_text("B2 is saved.")
    assert depths() == [inches(22), inches(41, 2), inches(24)]


def test_a_row_that_is_as_it_was_is_not_touched(run: Page) -> None:
    """What follows from a cell comes into its row; the others stay, and so does the focus."""
    rows = run.locator("#cabinets > .cabinet")
    for row in rows.all():
        row.evaluate("row => { row.isOld = true; }")
    run.get_by_label("Depth of B2", exact=True).focus()
    run.keyboard.type("22")
    run.keyboard.press("Enter")
    expect(rows.nth(1)).not_to_have_js_property("isOld", True)

    expect(rows.nth(0)).to_have_js_property("isOld", True)
    expect(rows.nth(2)).to_have_js_property("isOld", True)
    expect(run.get_by_label("Depth of B3", exact=True)).to_be_focused()


def test_rows_change_places_and_go(run: Page) -> None:
    """In the order of the wall after each step, and after it is taken back."""
    labels = run.locator("#cabinets > .cabinet > .row:first-child .name input")

    def stand(*wanted: str) -> None:
        expect(labels).to_have_count(len(wanted))
        for place, label in enumerate(wanted):
            expect(labels.nth(place)).to_have_value(label)

    run.get_by_label("Width of B3", exact=True).focus()
    run.keyboard.press("Alt+ArrowUp")
    stand("B1", "B3", "B2")
    expect(run.get_by_label("Width of B3", exact=True)).to_be_focused()
    run.get_by_text("More for cabinet B1").click()
    run.get_by_role("button", name="Delete cabinet B1").click()
    stand("B3", "B2")
    run.locator("#undo-bar").get_by_title("Deleted cabinet B1").click()
    stand("B1", "B3", "B2")
    run.locator("#undo-bar").get_by_title("Moved B3 along its wall").click()
    stand("B1", "B2", "B3")


def test_a_mistake_is_marked_at_its_cell_and_stops_nothing(run: Page) -> None:
    """What was typed stays there; the next cell is saved all the same."""
    first = run.get_by_label("Depth of B1")
    first.focus()
    run.keyboard.type("2 x")
    run.keyboard.press("Enter")
    expect(first).to_have_attribute("aria-invalid", "true")
    expect(run.locator("#cell-faults")).to_contain_text("“2 x” is not a length")

    run.keyboard.type("20")
    run.keyboard.press("Enter")
    expect(run.locator("#said")).to_have_text("B2 is saved.")
    expect(first).to_have_value("2 x")


def test_a_block_is_pasted_and_taken_back_at_once(run: Page, job: Job) -> None:
    """Three depths from a spreadsheet are one step; what has no cell is said."""
    cell = run.get_by_label("Depth of B1").element_handle()
    run.evaluate(PASTE, [cell, "20\n21\n22\n23"])

    expect(run.locator("#said")).to_have_text("3 rows are saved.")
    expect(run.locator("#cell-faults")).to_contain_text("There is no row for 23.")
    assert depths() == [inches(20), inches(21), inches(22)]
    before = Revision.objects.filter(job=job).count()

    expect(run.locator("#undo-bar")).to_contain_text("Undo")
    run.evaluate("document.activeElement.blur()")
    run.keyboard.press("Control+z")
    expect(run.locator("#said")).to_contain_text("Undid")
    assert depths() == [inches(24)] * 3
    assert Revision.objects.filter(job=job).count() == before + 1


def test_lines_and_filling_down(run: Page) -> None:
    """A line by Enter, several pasted; a face in words; a cell as the one above it."""
    lines = run.locator("[data-lines]")
    lines.fill("B7 30 pair")
    lines.press("Enter")
    expect(run.locator("#said")).to_have_text("1 line entered.")
    expect(lines).to_be_focused()

    face = run.get_by_label("What closes B7")
    expect(face).to_have_value("pair")
    face.focus()
    run.keyboard.press("Control+d")
    expect(run.locator("#said")).to_have_text("B7 is saved.")
    expect(face).to_have_value("door left")
    assert Opening.objects.get(cabinet__label="B7").closed_by == "door"

    goes_on = run.locator("#lines-go-on")
    expect(goes_on).to_contain_text("goes on with base cabinets 30 1/2 high 24 deep 4 up")
    run.get_by_label("Depth of B7").fill("22")
    run.get_by_label("Depth of B7").press("Enter")
    expect(goes_on).to_contain_text("22 deep")

"""Blocks of a wall's table, and its empty row, by keyboard in a real browser."""

import re

import pytest
from playwright.sync_api import Page, expect

from fronts.models import Cabinet, DoorOnHand, Opening
from fronts.rules.practice import inches
from shopjobs.models import Job, Revision
from tests.browser.conftest import AT_A_DESK
from tests.browser.test_wall_table import PASTE, depths, run
from tests.factories import CabinetFactory, overlaid

__all__ = ["run"]
pytestmark = [pytest.mark.slow, AT_A_DESK]
COPIED = """(event_name) => {
  const data = new DataTransfer();
  document.activeElement.dispatchEvent(new ClipboardEvent(event_name,
    {clipboardData: data, bubbles: true, cancelable: true}));
  return data.getData("text/plain");
}"""


def test_a_block_is_chosen_copied_and_filled(run: Page) -> None:
    """Shift and arrows choose; what is copied are its rows with tabs; Ctrl D fills it down."""
    height = run.get_by_label("Height of B1", exact=True)
    height.focus()
    run.keyboard.press("Shift+ArrowDown")
    run.keyboard.press("Shift+ArrowRight")
    expect(run.locator("[data-chosen]")).to_have_count(4)
    assert run.evaluate(COPIED, "copy") == "30 1/2\t24\n30 1/2\t24"

    depth = run.get_by_label("Depth of B1", exact=True)
    depth.focus()
    expect(run.locator("[data-chosen]")).to_have_count(0)
    run.keyboard.type("20")
    run.keyboard.press("Shift+ArrowDown")
    run.keyboard.press("Shift+ArrowDown")
    run.keyboard.press("Control+d")
    expect(run.locator("#said")).to_have_text("2 rows are saved.")
    run.keyboard.press("Escape")
    run.keyboard.press("ArrowDown")
    expect(run.locator("#said")).to_have_text("B1 is saved.")
    assert depths() == [inches(20)] * 3


def test_all_of_a_block_says_the_same(run: Page) -> None:
    """Ctrl Enter, in one step; Delete clears it, and what can't be nothing is said."""
    run.get_by_label("Depth of B1").focus()
    run.keyboard.type("22")
    run.keyboard.press("Shift+ArrowDown")
    run.keyboard.press("Shift+ArrowDown")
    before = Revision.objects.count()
    run.keyboard.press("Control+Enter")
    expect(run.locator("#said")).to_have_text("3 rows are saved.")
    assert depths() == [inches(22)] * 3
    assert Revision.objects.count() == before + 1

    run.get_by_label("From the left of B2", exact=True).focus()
    run.keyboard.type("30")
    run.keyboard.press("Enter")
    expect(run.locator("#said")).to_have_text("B2 is saved.")
    run.get_by_label("From the left of B1", exact=True).focus()
    run.keyboard.press("Shift+ArrowDown")
    run.keyboard.press("Delete")
    expect(run.locator("[data-waits]")).to_have_count(0)
    expect(run.get_by_label("From the left of B2", exact=True)).to_have_value("")
    assert Cabinet.objects.get(label="B2").x is None

    expect(run.locator(".htmx-request")).to_have_count(0)
    run.get_by_label("Width of B1", exact=True).focus()
    run.keyboard.press("Shift+ArrowDown")
    expect(run.locator("[data-chosen]")).to_have_count(2)
    assert run.evaluate(COPIED, "cut") == "18\n18"
    expect(run.locator("#cell-faults")).to_contain_text("enter the width")
    assert set(Cabinet.objects.values_list("width", flat=True)) == {inches(18)}


def test_the_empty_row_goes_on_from_key_to_key(run: Page) -> None:
    """Down from the last row into it; Enter enters it, and so does Tab out of its last cell."""
    run.get_by_label("Width of B3", exact=True).focus()
    run.keyboard.press("ArrowDown")
    width = run.get_by_label("Width of the new row")
    expect(width).to_be_focused()
    run.keyboard.type("21")
    run.keyboard.press("Tab")
    run.keyboard.type("pair")
    run.keyboard.press("Enter")
    expect(run.locator("#said")).to_have_text("B4 is entered.")
    expect(width).to_be_focused()
    expect(run.locator("#elevations svg")).to_contain_text("B4.a.1")
    expect(run.get_by_label("What closes B4")).to_have_value("pair")

    run.keyboard.type("24")
    run.get_by_label("Up of the new row").focus()
    run.keyboard.press("Tab")
    expect(run.locator("#said")).to_have_text("B5 is entered.")
    expect(width).to_be_focused()
    expect(width).to_have_value("")
    expect(run.get_by_label("Width of B5", exact=True)).to_be_visible()
    run.keyboard.press("ArrowUp")
    expect(run.get_by_label("Width of B5", exact=True)).to_be_focused()


def test_what_the_empty_row_offers_follows_its_kind(run: Page, job: Job) -> None:
    """What is typed in it already stays, and so does the focus."""
    overlaid(job)
    CabinetFactory.create(job=job, label="W4", kind="wall", wall="East", depth=inches(12))
    run.get_by_label("Width of the new row").fill("30")
    run.get_by_label("New row:").select_option("Wall cabinet")
    expect(run.get_by_label("Depth of the new row")).to_have_attribute("placeholder", "12")
    expect(run.get_by_label("Label of the new row")).to_have_attribute("placeholder", "W5")
    expect(run.get_by_label("Width of the new row")).to_have_value("30")


def test_rows_of_a_spreadsheet_become_cabinets_in_one_step(run: Page, job: Job) -> None:
    """Pasted into the empty row; what can't be read stays as lines, with what is wrong."""
    cell = run.get_by_label("Label of the new row").element_handle()
    before = Revision.objects.filter(job=job).count()
    run.evaluate(PASTE, [cell, "B7\t36\tdrawer 6 over pair\r\nB8\t18\tdoor left\t34\t22\r\n"])
    expect(run.locator("#said")).to_have_text("2 lines entered.")
    expect(run.get_by_label("What closes B7")).to_have_value("drawer 6 over pair")
    added = Cabinet.objects.get(label="B8")
    assert (added.height, added.depth) == (inches(34), inches(22))
    assert Revision.objects.filter(job=job).count() == before + 1

    label = run.get_by_label("Label of the new row")
    expect(label).to_have_attribute("placeholder", "B9")
    width = run.get_by_label("Width of the new row").element_handle()
    run.evaluate(PASTE, [width, "20\tpair\n21\tpear\n22\tpair"])
    lines = run.locator("[data-lines]")
    expect(run.locator("#lines .summary")).to_contain_text("found “pear”")
    expect(lines).to_have_value("base\nB9 20 pair\nB10 21 pear\nB11 22 pair")
    assert Opening.objects.filter(cabinet__label="B9").count() == 0


def test_rows_that_go_past_the_last_are_not_dropped(run: Page) -> None:
    """They stand as lines, to be entered."""
    cell = run.get_by_label("Label of B3", exact=True).element_handle()
    run.evaluate(PASTE, [cell, "B3\t20\tpair\nB4\t21\tpair"])
    expect(run.locator("#said")).to_have_text("B3 is saved.")
    expect(run.locator("#cell-faults")).to_contain_text("written below as lines")
    expect(run.locator("[data-lines]")).to_have_value("base\nB4 21 pair")
    expect(run.locator("[data-lines]")).to_be_focused()


def test_a_face_is_drawn_while_it_is_typed(run: Page) -> None:
    """Beside the table; once one leaves the cell the wall's own drawing shows it."""
    run.get_by_label("What closes B2").focus()
    run.keyboard.type("drawer 6 over pair")
    expect(run.locator("#as-typed")).to_contain_text("B2.b.1")
    expect(run.get_by_label("What closes B2")).to_be_focused()
    run.keyboard.type(" ov")
    expect(run.locator("#as-typed-not-yet")).to_contain_text("The drawing waits")
    for _ in range(3):
        run.keyboard.press("Backspace")
    expect(run.locator("#as-typed-not-yet")).to_be_empty()
    run.keyboard.press("Enter")
    expect(run.locator("#elevations svg")).to_contain_text("B2.b.1")
    expect(run.locator("#as-typed")).to_be_empty()


def test_the_drawing_is_made_larger_and_stays_so(run: Page) -> None:
    """By its buttons, and by keys while it has the focus; an edit leaves it where one looks."""
    box = run.locator("#elevations .drawing-box")
    wide = "box => box.querySelector('svg').getBoundingClientRect().width"
    fitted = box.evaluate(wide)
    run.get_by_role("button", name="Larger").click()
    assert box.evaluate(wide) > 1.4 * fitted
    box.focus()
    run.keyboard.press("+")
    run.keyboard.press("+")
    before = box.evaluate(wide)
    assert before > 3 * fitted
    box.evaluate("box => box.scrollTo(120, 60)")

    run.get_by_label("Depth of B1", exact=True).focus()
    run.keyboard.type("20")
    run.keyboard.press("Enter")
    expect(run.locator("#said")).to_have_text("B1 is saved.")
    assert box.evaluate(wide) == before
    assert box.evaluate("box => [box.scrollLeft, box.scrollTop]") == [120, 60]
    box.focus()
    run.keyboard.press("0")
    assert box.evaluate(wide) == fitted
    assert run.evaluate("document.documentElement.scrollWidth <= innerWidth")


def test_what_is_pasted_leaves_what_waits_in_the_lines(run: Page) -> None:
    """A block without labels counts on; lines that were begun stay, and nothing is sent yet."""
    lines = run.locator("[data-lines]")
    lines.fill("filler 3")
    cell = run.get_by_label("Label of the new row").element_handle()
    run.evaluate(PASTE, [cell, "\t36\tdoor left\n\t30\tpair"])
    expect(lines).to_have_value("filler 3\nbase\nB4 36 door left\nB5 30 pair")
    expect(run.locator("#cell-faults")).to_contain_text("written below as lines")
    assert Cabinet.objects.count() == 3
    run.keyboard.press("Alt+\\")


def test_rows_are_typed_faster_than_they_are_answered(run: Page) -> None:
    """No key is lost: what is typed meanwhile goes into the next row, each in its turn."""
    run.get_by_label("Width of the new row").focus()
    for width in ("21", "22 1/2", "23", "24"):
        run.keyboard.type(width)
        run.keyboard.press("Enter")
    run.keyboard.type("25")
    expect(run.get_by_label("Width of B7", exact=True)).to_have_value("24")
    widths = Cabinet.objects.order_by("position").values_list("width", flat=True)
    assert list(widths)[3:] == [inches(21), inches(45, 2), inches(23), inches(24)]
    expect(run.get_by_label("Width of the new row")).to_have_value("25")
    expect(run.get_by_label("Width of the new row")).to_be_focused()


def test_a_row_that_is_refused_keeps_what_was_typed_since(run: Page) -> None:
    """It is there again with what is wrong; the rows after it wait as lines."""
    width = run.get_by_label("Width of the new row")
    width.focus()
    for said in ("2 x", "22", "23"):
        run.keyboard.type(said)
        run.keyboard.press("Enter")
    expect(run.locator("#row-new .error")).to_contain_text("“2 x” is not a length")
    expect(width).to_have_value("2 x")
    expect(run.locator("[data-lines]")).to_have_value(re.compile(r"base\nB4 22.*\n(B5 )?23", re.S))
    assert Cabinet.objects.count() == 3
    expect(run.locator("[data-lines]")).to_be_focused()


def test_a_refused_cell_stays_refused_while_another_is_saved(run: Page) -> None:
    """With what is wrong, in view, until it is settled."""
    first = run.get_by_label("What closes B1")
    first.focus()
    run.keyboard.type("three ducks")
    run.keyboard.press("Enter")
    fault = run.locator("#cell-faults")
    expect(fault).to_contain_text("B1, what closes it: found “three")
    expect(fault).to_be_in_viewport()
    run.get_by_label("Depth of B3", exact=True).focus()
    run.keyboard.type("20")
    run.keyboard.press("Enter")
    expect(run.locator("#said")).to_have_text("B3 is saved.")
    expect(first).to_have_value("three ducks")
    expect(first).to_have_attribute("aria-invalid", "true")
    expect(fault).to_contain_text("three")
    first.focus()
    run.keyboard.press("Escape")
    run.get_by_label("Depth of B2", exact=True).focus()
    expect(fault).to_be_empty()
    expect(first).to_have_value("door left")


def test_doors_on_hand_are_a_table_too(page: Page, job: Job) -> None:
    """Typed in the empty row, filled down, pasted with rows of their own, by keyboard alone."""
    page.goto(f"/jobs/{job.pk}/doors/")
    page.get_by_label("Width of the new door").focus()
    for key in ("16", "Tab", "28 1/2", "Tab", "3/4", "Tab", "s", "Enter"):
        page.keyboard.press(key) if key in ("Tab", "Enter") else page.keyboard.type(key)
    expect(page.locator("#said")).to_have_text("1 door is entered.")
    expect(page.get_by_label("Width of the new door")).to_be_focused()
    cell = page.get_by_label("Width of the new door").element_handle()
    page.evaluate(PASTE, [cell, "14\t20\t3/4\tf\toak\n15\t21"])
    expect(page.locator("#said")).to_have_text("2 doors are entered.")
    expect(page.get_by_label("Material of D3", exact=True)).to_have_value("oak")

    page.get_by_label("Width of D3", exact=True).focus()
    page.keyboard.press("Control+d")
    page.keyboard.press("ArrowUp")
    expect(page.locator("#said")).to_have_text("D3 is saved.")
    page.keyboard.type("17")
    page.keyboard.press("ArrowDown")
    expect(page.locator("#said")).to_have_text("D2 is saved.")
    page.keyboard.type("1/2/3")
    page.keyboard.press("ArrowUp")
    expect(page.locator("#cell-faults")).to_contain_text("D3, width:")
    widths = DoorOnHand.objects.order_by("position").values_list("width", flat=True)
    assert list(widths) == [inches(16), inches(17), inches(14)]

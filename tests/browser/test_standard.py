"""A short page of the shop's standard in a real browser: its drawing follows the keys."""

from playwright.sync_api import Locator, Page, expect

from tests.browser.conftest import AT_A_DESK

STROKE = "path => getComputedStyle(path).strokeWidth"


def _marked(lines: Locator) -> list[str]:
    """How thick the dimension's lines are drawn."""
    return [line.evaluate(STROKE) for line in lines.all()]


@AT_A_DESK
def test_the_drawing_follows_and_marks_what_is_typed(page: Page) -> None:
    """The field keeps its focus and text; its dimension is strong, also once it is drawn anew."""
    page.goto("/shop/standard/knobs/")
    field = page.get_by_label("Knob from a door's end")
    lines = page.locator('svg .measure[data-of="2"] path')
    thin = _marked(lines)

    field.focus()
    strong = _marked(lines)
    field.press_sequentially("5 1/2")

    expect(page.locator("svg")).to_contain_text("from end 5 1/2")
    expect(field).to_be_focused()
    expect(field).to_have_value("5 1/2")
    assert strong != thin
    assert _marked(lines) == strong
    assert _marked(page.locator('svg .measure[data-of="3"] path')) == thin

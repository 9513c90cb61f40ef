"""A notebook that is typed in by keyboard alone, as lines or row by row, every key counted."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from playwright.sync_api import Locator, Page, expect

from fronts.figures.faces import words_of_face
from fronts.rules.kinds import CABINET_KINDS
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import Mm, read, write

NOTEBOOKS = Path(__file__).parent.parent / "data" / "notebooks"
_WIDTH = r"([0-9]+(?: [0-9]+/[0-9]+)?)"
_WALL = re.compile(rf"wall (?!cabinets)(\S+)(?: {_WIDTH})?")
_THING = re.compile(rf"(upper )?(filler|end panel|gap|appliance) {_WIDTH} ?(.*)")
_CELLS = ("label", "width", "face", "height", "depth", "x", "y")


@dataclass
class Typist:
    """Presses keys on a page, and counts them: one a letter, one a Tab, Enter or the like."""

    page: Page
    keys: int = 0
    written: int = 0
    """Letters of what was measured or said, without what goes from cell to cell."""
    fields: int = 0

    def type(self, text: str) -> None:
        """Type a text, letter by letter."""
        self.page.keyboard.type(text)
        self.keys += len(text)
        self.written += len(text)
        self.fields += 1

    def press(self, *names: str) -> None:
        """Press keys by their names."""
        for name in names:
            self.page.keyboard.press(name)
            self.keys += 1

    def lines(self, text: str) -> None:
        """Type all lines into the field for lines, and enter them."""
        self.page.locator("[data-lines]").focus()
        for line in text.splitlines():
            self.type(line)
            self.press("Shift+Enter")
        self.press("Backspace", "Tab", "Enter")
        expect(self.page.locator("#said")).to_contain_text("entered.")


@dataclass
class RowTyping:
    """Types what the lines of a notebook come to into the empty row of the wall's table."""

    typist: Typist
    kitchen: Kitchen
    shown: str = "base"
    """The kind that the empty row is for."""

    def all(self, text: str) -> None:
        """Type every line, from the width of the empty row on."""
        self._cell("width").focus()
        for line in text.splitlines():
            self.enter(line)

    def enter(self, line: str) -> None:
        """Type a line, unless it only says something of those that follow."""
        wall, thing, cabinet = _WALL.fullmatch(line), _THING.fullmatch(line), line.split()[0]
        if wall:
            self._row("new-wall", {"label": wall[1], "width": wall[2] or ""})
            self.shown = "base"
        elif thing:
            above = "-above" if thing[1] else ""
            self._row(thing[2].replace(" ", "-") + above, {"width": thing[3], "face": thing[4]})
        elif any(cabinet == one.label for one in self.kitchen.cabinets):
            self._cabinet(self.kitchen.cabinet(cabinet))

    def _cabinet(self, cabinet: Cabinet) -> None:
        """What differs from what the row shows where it is empty."""
        self._choose(cabinet.kind)
        said = {
            "label": cabinet.label,
            "width": self._written(cabinet.width),
            "face": words_of_face(cabinet, self.kitchen.job),
            "height": self._written(cabinet.height),
            "depth": self._written(cabinet.depth),
            "y": self._written(cabinet.y),
        }
        high, up = self._offered("height"), self._offered("y")
        if CABINET_KINDS[cabinet.kind].hangs and high and up:
            top = read(high, "in") + read(up, "in")
            if top == cabinet.y + cabinet.height:  # Its kind's top line, which it keeps by itself.
                said["y"] = ""
        self._row(cabinet.kind, said)

    def _row(self, kind: str, said: Mapping[str, str]) -> None:
        self._choose(kind)
        differ = [name for name in _CELLS if said.get(name) and said[name] != self._offered(name)]
        at = _CELLS.index("width")
        for name in differ:
            way = _CELLS.index(name) - at
            self.typist.press(*["Tab" if way > 0 else "Shift+Tab"] * abs(way))
            at = _CELLS.index(name)
            self.typist.type(said[name])
        own_key = self._row_form.locator("[name=form_key]")
        sent = own_key.input_value()
        self.typist.press("Enter")
        expect(own_key).not_to_have_value(sent)
        self._ready()

    def _choose(self, kind: str) -> None:
        """Go to the row's kind, and choose by its first letter, as one does in any list."""
        if kind == self.shown:
            return
        chosen = self._row_form.locator("select")
        self.typist.press("Shift+Tab", "Shift+Tab")
        expect(chosen).to_be_focused()
        letter = "n" if kind == "new-wall" else kind[0]
        page = self.typist.page
        with page.expect_response(lambda answer: f"kind={kind}" in answer.url):
            self.typist.press(letter, *[letter] * kind.endswith("-above"))
        self.typist.press("Enter")
        self.shown = kind

    def _ready(self) -> None:
        """The next empty row is there."""
        expect(self._cell("width")).to_be_focused()
        expect(self._cell("width")).to_have_value("")

    def _offered(self, name: str) -> str:
        return self._cell(name).get_attribute("placeholder") or ""

    def _written(self, length: Mm) -> str:
        return write(length, self.kitchen.job.unit)

    def _cell(self, name: str) -> Locator:
        return self._row_form.locator(f"[name={name}]")

    @property
    def _row_form(self) -> Locator:
        return self.typist.page.locator("#row-new")

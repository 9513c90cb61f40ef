"""What closes a cabinet, in words: rows from the top, in each row cells from the left.

`drawer 6 beside drawer over pair`
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import NoReturn

from fronts.notebook.faults import NotUnderstood
from fronts.notebook.sizes import HIGH
from fronts.notebook.stack_heights import Heights, stack_heights
from fronts.notebook.words import Words
from fronts.rules.kinds import CLOSINGS, HINGE_SIDES, MOST_FRONTS, ClosedBy, Hinged, Unit
from fronts.rules.lengths import Mm

OVER, BESIDE, WIDE = "over", "beside", "wide"
STACK: ClosedBy = "drawers"
CELLS: tuple[ClosedBy, ...] = (
    "door", "pair", "drawer", "pull-out", "fixed", "open", "lift-up", "tip-out",
)  # fmt: skip
"""The words for what closes an opening, but for a stack of drawers, which is counted."""
_HANDS = ", ".join(f"door {side}" for side in HINGE_SIDES)
_A_CELL = f"{_HANDS}, {', '.join(CELLS[1:])}, or drawers with their number, like 3 drawers"


@dataclass(frozen=True, slots=True)
class Cell:
    """One opening of a face; `heights` are a stack's, from the top. None: shares what is left."""

    closed_by: ClosedBy
    hinged: Hinged | None = None
    heights: Heights = ()
    width: Mm | None = None

    @property
    def takes_sizes(self) -> bool:
        """Whether sizes of its opening may stand after it: after a stack stand its fronts'."""
        return not CLOSINGS[self.closed_by].stack


@dataclass(frozen=True, slots=True)
class Row:
    """Openings beside each other, from the left, all as high; None: shares what is left."""

    cells: tuple[Cell, ...]
    height: Mm | None = None


Face = tuple[Row, ...]
"""Rows from the top."""
Faces = Mapping[str, Face]
"""Faces that a shop saved, by their names."""
NO_FACES: Faces = {}


def read_face(text: str, unit: Unit, saved: Faces = NO_FACES) -> Face:
    """The face that a text says in words, or by the name of a saved one; else NotUnderstood."""
    return face_at(Words(text, unit), saved)


def face_at(words: Words, saved: Faces) -> Face:
    """The face that is all the rest of a line; our own words come before a saved face's name.

    Where it is refused, the words stay where they were not understood.
    """
    start = words.at
    try:
        return _rows(words)
    except NotUnderstood as fault:
        stuck, words.at = words.at, start
        named = next((face for name, face in saved.items() if _same(name, words.rest)), None)
        if named is None:
            words.at = stuck
            names = "".join(f", {name}" for name in saved)
            raise NotUnderstood(fault.found, f"{fault.wanted}{names}") from None
        words.at = len(words.text)
        return named


def _same(name: str, said: str) -> bool:
    return name.casefold().split() == said.casefold().split()


def _rows(words: Words) -> Face:
    rows = [_row(words)]
    while words.take(OVER):
        rows.append(_row(words))
    if not words.ended:
        *_, last = rows[-1].cells
        sizes = "a size of it" if last.takes_sizes else "heights of its fronts, commas between them"
        words.refuse(f"{OVER}, {BESIDE}, {sizes}, or nothing more")
    return tuple(rows)


def _row(words: Words) -> Row:
    row = _with_cell(Row(()), words)
    while words.take(BESIDE):
        row = _with_cell(row, words)
    return row


def _with_cell(row: Row, words: Words) -> Row:
    count = _count(words)
    if count is not None:
        cell = Cell(STACK, heights=stack_heights(words, count))
        return replace(row, cells=(*row.cells, cell))
    word = words.take(*CELLS)
    closed_by = next((cell for cell in CELLS if cell == word), None)
    if closed_by is None:
        words.refuse(_A_CELL)
    hinged = _hand(words) if CLOSINGS[closed_by].hinged else None
    return _sized(row, Cell(closed_by, hinged), words)


def _sized(row: Row, cell: Cell, words: Words) -> Row:
    """The row with the cell and the sizes after it: its width, and the row's height once."""
    height, start = row.height, words.at
    while (size := words.size()) is not None:
        if words.take(WIDE):
            if cell.width is not None:
                _refuse_again(words, start, "its width")
            cell = replace(cell, width=size)
        else:
            words.take(HIGH)
            if height is not None:
                _refuse_again(words, start, "the height of its row")
            height = size
        start = words.at
    return Row((*row.cells, cell), height)


def _refuse_again(words: Words, start: int, what: str) -> NoReturn:
    words.at = start
    words.refuse(f"{OVER}, {BESIDE} or nothing more: {what} is said already")


def _hand(words: Words) -> Hinged:
    word = words.take(*HINGE_SIDES)
    side = next((side for side in HINGE_SIDES if side == word), None)
    if side is None:
        words.refuse(f"the side of its hinges: {_HANDS}")
    return side


def _count(words: Words) -> int | None:
    """How many drawers a stack has, where the next words are a number and `drawers`."""
    start, number = words.at, words.word
    if not (number.isascii() and number.isdigit()):
        return None
    words.any_word()
    if not words.take(STACK):
        words.at = start
        return None
    if len(number) > len(str(MOST_FRONTS)) or not 1 <= int(number) <= MOST_FRONTS:
        words.at = start
        words.refuse(f"1 to {MOST_FRONTS} drawers")
    return int(number)

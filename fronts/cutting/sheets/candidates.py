"""Which part goes into a free rectangle: a plain loop over few candidates, arrays over many."""

from collections.abc import Callable, Sequence
from typing import Literal, NamedTuple, TypeAlias

import numpy as np
from numpy.typing import NDArray

from fronts.cutting.integer_problem import IntegerProblem, Orientation

Ints: TypeAlias = NDArray[np.int64]
Pick = Literal["first", "snug", "strip"]
Row: TypeAlias = tuple[int, int, int, Orientation]
"""Length, width, item, and the way it lies."""

_FAR = 1 << 62
MANY = 150
"""Rows from which arrays are faster than a loop."""


class FreeRectangle(NamedTuple):
    """A rectangle that is still free."""

    x: int
    y: int
    length: int
    width: int


class Candidates:
    """Items in the order in which they are tried on one board, each in every way it may lie."""

    def __init__(self, problem: IntegerProblem, board: int, order: Sequence[int]) -> None:
        self.rows: list[Row] = [
            (way.length, way.width, item, way)
            for item in order
            for way in problem.items[item].orientations[board]
        ]


class CandidateList:
    """The rows that are still wanted, as a list."""

    def __init__(self, rows: list[Row], pick: Pick) -> None:
        self._rows = rows
        self._choose = _LOOPS[pick]

    def take(self, room: FreeRectangle) -> Row | None:
        """What goes into this room, or None."""
        return self._choose(room, self._rows)

    def drop(self, item: int) -> bool:
        """Forget an item; whether any is left."""
        self._rows = [row for row in self._rows if row[2] != item]
        return bool(self._rows)


class CandidateArrays:
    """The rows that are still wanted, as arrays."""

    def __init__(self, rows: list[Row], pick: Pick) -> None:
        self._rows = rows
        self._length = np.array([row[0] for row in rows], np.int64)
        self._width = np.array([row[1] for row in rows], np.int64)
        self._item = np.array([row[2] for row in rows], np.int64)
        self._choose = _ARRAYS[pick]

    def take(self, room: FreeRectangle) -> Row | None:
        """What goes into this room, or None."""
        row = self._choose(room, self._length, self._width)
        return None if row < 0 else self._rows[row]

    def drop(self, item: int) -> bool:
        """Forget an item: it is made too large for any room."""
        self._length[self._item == item] = _FAR >> 32
        return True


def wanted(choice: Candidates, left: Sequence[int], pick: Pick) -> CandidateList | CandidateArrays:
    """The rows of the items that are left."""
    rows = [row for row in choice.rows if left[row[2]] > 0]
    return CandidateList(rows, pick) if len(rows) < MANY else CandidateArrays(rows, pick)


def _first(room: FreeRectangle, rows: list[Row]) -> Row | None:
    _, _, length, width = room
    for row in rows:
        if row[0] <= length and row[1] <= width:
            return row
    return None


def _snug(room: FreeRectangle, rows: list[Row]) -> Row | None:
    """What leaves the narrowest strip beside it."""
    _, _, length, width = room
    best, least = None, length + width
    for row in rows:
        spare, above = length - row[0], width - row[1]
        if spare >= 0 and above >= 0:
            strip = spare if spare < above else above
            if strip < least:
                best, least = row, strip
    return best


def _strip(room: FreeRectangle, rows: list[Row]) -> Row | None:
    """What uses up the width of the rectangle best, then its length."""
    _, _, length, width = room
    best, least = None, (width + 1) * (length + 1)
    for row in rows:
        spare, above = length - row[0], width - row[1]
        if spare >= 0 and above >= 0 and above * (length + 1) + spare < least:
            best, least = row, above * (length + 1) + spare
    return best


def _first_of(room: FreeRectangle, lengths: Ints, widths: Ints) -> int:
    fits = (lengths <= room.length) & (widths <= room.width)
    row = int(fits.argmax())
    return row if fits[row] else -1


def _snug_of(room: FreeRectangle, lengths: Ints, widths: Ints) -> int:
    spare, above = room.length - lengths, room.width - widths
    return _least(np.minimum(spare, above), (spare < 0) | (above < 0))


def _strip_of(room: FreeRectangle, lengths: Ints, widths: Ints) -> int:
    spare, above = room.length - lengths, room.width - widths
    barred = (spare < 0) | (above < 0)
    narrow = np.where(barred, _FAR, above)
    near = narrow == narrow.min()
    return _least(np.where(near, spare, _FAR), barred)


def _least(spare: Ints, barred: NDArray[np.bool_]) -> int:
    spare[barred] = _FAR
    row = int(spare.argmin())
    return row if spare[row] < _FAR else -1


_LOOPS: dict[Pick, Callable[[FreeRectangle, list[Row]], Row | None]] = {
    "first": _first,
    "snug": _snug,
    "strip": _strip,
}
_ARRAYS: dict[Pick, Callable[[FreeRectangle, Ints, Ints], int]] = {
    "first": _first_of,
    "snug": _snug_of,
    "strip": _strip_of,
}

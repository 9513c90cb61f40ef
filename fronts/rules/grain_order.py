"""The order of pieces that stand on a wall, and how cuts right across part them again.

Pieces fall into columns where lines from top to bottom part them, else into rows, and those
again, until each stands alone. So their order is that in which faces of one flitch are numbered:
from left to right, in a column from the top (Architectural Woodwork Standards, layout of grained
faces; memory).
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Generic, TypeVar

from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Grouped(Generic[T]):
    """A piece by itself, or groups: columns from the left, or where `rows` rows from the top."""

    rect: Rect
    piece: T | None = None
    rows: bool = False
    groups: tuple["Grouped[T]", ...] = ()

    @property
    def pieces(self) -> tuple[T, ...]:
        """All of them in their order."""
        if self.piece is not None:
            return (self.piece,)
        return tuple(piece for group in self.groups for piece in group.pieces)


def grouped(pieces: Sequence[tuple[Rect, T]]) -> Grouped[T]:
    """The pieces in columns and rows; those that no line parts are taken from the left."""
    rect = _around([rect for rect, _ in pieces])
    if len(pieces) == 1:
        return Grouped(rect, pieces[0][1])
    columns = _parted(pieces, lambda rect: (rect.x, rect.right))
    if len(columns) > 1:
        return Grouped(rect, groups=tuple(grouped(column) for column in columns))
    rows = _parted(pieces, lambda rect: (-rect.top, -rect.y))
    if len(rows) > 1:
        return Grouped(rect, rows=True, groups=tuple(grouped(row) for row in rows))
    from_left = sorted(pieces, key=lambda one: (one[0].x, -one[0].top))
    return Grouped(rect, groups=tuple(grouped([one]) for one in from_left))


def _parted(
    pieces: Sequence[tuple[Rect, T]], span: Callable[[Rect], tuple[Mm, Mm]]
) -> list[list[tuple[Rect, T]]]:
    groups: list[list[tuple[Rect, T]]] = []
    end: Mm | None = None
    for piece in sorted(pieces, key=lambda one: span(one[0])):
        low, high = span(piece[0])
        if end is None or low >= end:
            groups.append([])
        groups[-1].append(piece)
        end = high if end is None else max(end, high)
    return groups


def _around(rects: Sequence[Rect]) -> Rect:
    left, low = min(rect.x for rect in rects), min(rect.y for rect in rects)
    right, top = max(rect.right for rect in rects), max(rect.top for rect in rects)
    return Rect(left, low, right - left, top - low)

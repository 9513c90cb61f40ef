"""The face that a cabinet's openings are, where words can say it.

Sizes are left unsaid where sharing makes them as they are; else all are said but that of one row
(or cell), the lowest (or right-most) that can go without. What comes of it is held against the
openings that there are, so that words never say anything else.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import groupby

from fronts.notebook.face import CELLS, STACK, Cell, Face, Row
from fronts.notebook.faults import NotUnderstood
from fronts.notebook.openings import Around, openings_of
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.lengths import Mm


@dataclass(frozen=True, slots=True)
class RegularFace:
    """A face that words can say, and how wide its members are."""

    face: Face
    member: Mm


def regular_face(cabinet: Cabinet, unit: Unit, step: Mm) -> RegularFace | None:
    """The face of a cabinet; None where it has no opening, or none that words can say."""
    if any(opening.closed_by not in (*CELLS, STACK) for opening in cabinet.openings):
        return None
    member = min((opening.x for opening in cabinet.openings), default=None)
    if member is None:
        return None
    around = Around(cabinet.width, cabinet.height, member, unit, step)
    down = sorted(cabinet.openings, key=lambda opening: (-opening.y, opening.x))
    rows = [_row(list(row), around) for _, row in groupby(down, key=lambda opening: opening.y)]
    face = tuple(row for row in rows if row is not None)
    if len(face) < len(rows):
        return None
    takes = [any(cell.takes_sizes for cell in row.cells) for row in face]
    for said in _ways(takes):
        tried = tuple(
            row if tells else replace(row, height=None)
            for row, tells in zip(face, said, strict=True)
        )
        if _places(tried, around) == [_place(opening) for opening in down]:
            return RegularFace(tried, member)
    return None


def _row(openings: Sequence[Opening], around: Around) -> Row | None:
    """The row that these are, its height said; None where no words make them as wide."""
    cells = [_cell(opening) for opening in openings]
    for said in _ways([cell.takes_sizes for cell in cells]):
        tried = tuple(
            cell if tells else replace(cell, width=None)
            for cell, tells in zip(cells, said, strict=True)
        )
        alone = _places((Row(tried),), around)
        across = [(x, width) for x, _, width, _ in alone]
        if across == [(opening.x, opening.width) for opening in openings]:
            return Row(tried, openings[0].height)
    return None


def _cell(opening: Opening) -> Cell:
    closing = opening.closing
    hinged = opening.fronts[0].hinged or "left" if closing.hinged else None
    heights = tuple(front.own_height for front in opening.fronts) if closing.stack else ()
    return Cell(opening.closed_by, hinged, heights, opening.width)


def _ways(takes: Sequence[bool]) -> Iterator[tuple[bool, ...]]:
    """Which sizes to say: none, or all that can be but one; the last that goes without first."""
    yield (False,) * len(takes)
    for without in reversed(range(len(takes))):
        yield tuple(tells and index != without for index, tells in enumerate(takes))


def _places(face: Face, around: Around) -> list[tuple[Mm, Mm, Mm, Mm]]:
    """Where a face's openings lie; nowhere if it does not fit."""
    try:
        return [_place(opening) for opening in openings_of(face, around)]
    except NotUnderstood:
        return []


def _place(opening: Opening) -> tuple[Mm, Mm, Mm, Mm]:
    return opening.x, opening.y, opening.width, opening.height

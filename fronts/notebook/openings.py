"""The openings of a face: a member all round it, and between its rows and cells.

Rows without a height share what is left, each down to the step, and what remains goes to the
lowest of them; cells without a width likewise, and what remains goes to the right-most.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.notebook.face import Cell, Face
from fronts.notebook.faults import NotUnderstood
from fronts.rules import lengths
from fronts.rules.front_sizes import divide
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import FrontFacts, Opening
from fronts.rules.lengths import INCH, NOTHING, Mm
from fronts.rules.limits import MOST_OPENINGS
from fronts.rules.opening_labels import opening_label

LEAST: Mapping[Unit, Mm] = {"in": INCH, "mm": Mm(25)}
"""An opening less high or wide is a slip of the pen; common practice, no source."""
_LETTERS = "abcdefghijklmnopqrstuvwxyz"


@dataclass(frozen=True, slots=True)
class Around:
    """The cabinet that a face is in: its size, the width of its members, and the shop's step."""

    width: Mm
    height: Mm
    member: Mm
    unit: Unit
    step: Mm


def openings_of(face: Face, around: Around) -> tuple[Opening, ...]:
    """The openings from the top, in a row from the left; NotUnderstood where they don't fit."""
    if sum(len(row.cells) for row in face) > MOST_OPENINGS:
        raise NotUnderstood("more openings", f"at most {MOST_OPENINGS} in a cabinet")
    heights = _shared(around.height, [row.height for row in face], around, _HEIGHTS)
    openings: list[Opening] = []
    top = around.height - around.member
    for row, height in zip(face, heights, strict=True):
        widths = _shared(around.width, [cell.width for cell in row.cells], around, _WIDTHS)
        x = around.member
        for cell, width in zip(row.cells, widths, strict=True):
            label = opening_label(len(openings))
            openings.append(_opening(label, cell, x, top - height, width, height))
            x += width + around.member
        top -= height + around.member
    return tuple(openings)


@dataclass(frozen=True, slots=True)
class _Way:
    """What shares a span, as faults say it: heights of rows, or widths of cells."""

    parts: str
    size: str
    free: str


_HEIGHTS = _Way("rows", "high", "a row without a height")
_WIDTHS = _Way("openings beside each other", "wide", "one without a width")


def _shared(span: Mm, said: Sequence[Mm | None], around: Around, way: _Way) -> tuple[Mm, ...]:
    """The sizes that fill a span with members round and between them."""
    inside = span - 2 * around.member
    division = divide(inside, around.member, around.step, said, lowest_takes_rest=True)
    sizes = list(division.sizes)
    sharing = [index for index, size in enumerate(said) if size is None]
    if sharing:
        sizes[sharing[-1]] += division.rest
    elif division.rest:
        room = inside - (len(sizes) - 1) * around.member
        raise NotUnderstood(
            f"{way.parts} {_shown(sum(sizes, NOTHING), around)} {way.size} in all",
            f"{_shown(room, around)}, which is what the members leave, or {way.free}",
        )
    least = LEAST[around.unit]
    if min(sizes) < least:
        raise NotUnderstood(
            f"{way.parts} of which one is {_shown(min(sizes), around)} {way.size}",
            f"{_shown(least, around)} at least for each, with members of "
            f"{_shown(around.member, around)} round and between them",
        )
    return tuple(sizes)


def _opening(label: str, cell: Cell, x: Mm, y: Mm, width: Mm, height: Mm) -> Opening:
    fronts = tuple(FrontFacts(own_height=height) for height in cell.heights)
    if cell.hinged:
        fronts = (FrontFacts(hinged=cell.hinged),)
    return Opening(label, x, y, width, height, cell.closed_by, fronts)


def _shown(length: Mm, around: Around) -> str:
    return lengths.show_with_unit(length, around.unit)

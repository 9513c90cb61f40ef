"""A block cut up into its parts: cuts right across, every part just where it was laid out.

A part that lies less than a saw's width inside its edge of the block lies at that edge: nothing
that narrow can be sawn off.
"""

from collections.abc import Sequence
from typing import NamedTuple

from fronts.cutting.cut_units import CutUnit
from fronts.cutting.guillotine_tree import NotEdgeToEdgeError
from fronts.cutting.model import Request, Side
from fronts.cutting.saw_bench import Bench, SawnPiece, cut, keep, place, to_size
from fronts.rules.lengths import NOTHING, Mm


class _Laid(NamedTuple):
    """A part of a block where it lies on the board, by its index."""

    part: int
    x: Mm
    y: Mm
    right: Mm
    top: Mm


def laid_places(request: Request, unit: CutUnit, piece: SawnPiece, *, turned: bool) -> list[_Laid]:
    """Where a unit's parts lie in its piece; a block that is turned is turned as one."""
    laid = []
    for index, x, y in unit.members:
        part = request.parts[index]
        length, width = part.length, NOTHING if part.width is None else part.width
        if turned:
            x, y, length, width = unit.width - y - width, x, width, length
        left, low = piece.x + x, piece.y + y
        laid.append(_Laid(index, left, low, left + length, low + width))
    return laid


def cut_up(bench: Bench, piece: SawnPiece, parts: Sequence[_Laid], *, turned: bool) -> None:
    """Saw a piece into its parts; rips first where both ways part them."""
    if len(parts) == 1:
        part = parts[0]
        piece, parts = _freed(bench, piece, parts, "length")
        piece, parts = _freed(bench, piece, parts, "width")
        piece = to_size(bench, piece, part.right - part.x, part.top - part.y)
        place(bench, piece, part.part, turned)
        return
    along, groups = _apart(parts, bench.request)
    for group in groups:
        piece, moved = _freed(bench, piece, group, along)
        edge = max(part.top if along == "length" else part.right for part in moved)
        sawn = piece
        if edge < (piece.top if along == "length" else piece.right):
            sawn, piece = cut(bench, piece, along, edge, "block")
        cut_up(bench, sawn, moved, turned=turned)
    if sawn is not piece:
        keep(bench, piece)


def _apart(parts: Sequence[_Laid], request: Request) -> tuple[Side, list[list[_Laid]]]:
    """The parts in groups that cuts this way part, in their order."""
    ways: tuple[Side, ...] = ("width",) if request.sticks else ("length", "width")
    for along in ways:
        groups: list[list[_Laid]] = []
        end: Mm | None = None
        for part in sorted(parts, key=lambda part: _span(part, along)):
            low, high = _span(part, along)
            if end is None or low >= end + request.kerf:
                groups.append([])
            groups[-1].append(part)
            end = high if end is None else max(end, high)
        if len(groups) > 1:
            return along, groups
    raise NotEdgeToEdgeError


def _span(part: _Laid, along: Side) -> tuple[Mm, Mm]:
    """From where to where a part lies across cuts along this side."""
    return (part.y, part.top) if along == "length" else (part.x, part.right)


def _freed(
    bench: Bench, piece: SawnPiece, parts: Sequence[_Laid], along: Side
) -> tuple[SawnPiece, list[_Laid]]:
    """The piece without what lies before its parts, and the parts in it."""
    start = min(_span(part, along)[0] for part in parts)
    low = piece.y if along == "length" else piece.x
    if start - low > bench.request.kerf:
        edge = start - bench.request.kerf
        waste, piece = cut(bench, piece, along, edge, "block", keep_low=False)
        keep(bench, waste)
        return piece, list(parts)
    back = start - low
    if along == "length":
        return piece, [part._replace(y=part.y - back, top=part.top - back) for part in parts]
    return piece, [part._replace(x=part.x - back, right=part.right - back) for part in parts]

"""Parts whose grain runs on, laid out on a sheet as they stand on the wall, a kerf between them.

The kerf is what is lost of the figure between neighbours. What is too wide or too long for a
sheet is parted and goes on behind or beside what came before; what a sheet holds no more goes on
on the next, so that each has as much as it holds, in order. The grain runs along the sheet's `x`:
with upright grain what is on top on the wall is at the left.

Parts that stand flush stay flush; one that is narrower than its neighbours keeps its place
beside them.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple, TypeAlias

from fronts.rules.grain_order import Grouped, grouped
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.rect import Rect

Fits: TypeAlias = Callable[[Mm, Mm], bool]
"""Whether so much, along the grain and across, comes out of a sheet."""


@dataclass(frozen=True, slots=True)
class GrainPiece:
    """A part by a number of the caller's; `along`, `across` the grain, where its front stands."""

    number: int
    along: Mm
    across: Mm
    rect: Rect


class PlacedPiece(NamedTuple):
    """Where a piece lies in its block: `x` along the grain, `y` across it."""

    number: int
    x: Mm
    y: Mm
    along: Mm
    across: Mm


@dataclass(frozen=True, slots=True)
class GrainBlock:
    """Pieces that are cut out of a sheet as one; in `runs` of them the grain runs on unbroken."""

    along: Mm
    across: Mm
    pieces: tuple[PlacedPiece, ...]
    runs: int = 1


def grain_blocks(
    pieces: Sequence[GrainPiece], kerf: Mm, fits: Fits, *, upright: bool
) -> tuple[GrainBlock, ...]:
    """The pieces as few blocks that fit, in order; one that fits nowhere is a block by itself."""
    whole, bench = grouped([(piece.rect, piece) for piece in pieces]), _Bench(kerf, fits, upright)
    blocks: list[GrainBlock] = []
    for run in _runs(whole, bench):
        longer = _joined(blocks[-1], run, bench) if blocks else None
        if longer:
            blocks[-1] = longer
        else:
            blocks.append(run)
    return tuple(blocks)


class _Bench(NamedTuple):
    kerf: Mm
    fits: Fits
    upright: bool


def _joined(first: GrainBlock, then: GrainBlock, bench: _Bench) -> GrainBlock | None:
    """Both as one block, the second behind the first or beside it; None where neither fits."""
    widest, longest = max(first.across, then.across), max(first.along, then.along)
    behind = first.along + bench.kerf + then.along
    beside = first.across + bench.kerf + then.across
    for along, across, x, y in (
        (behind, widest, first.along + bench.kerf, NOTHING),
        (longest, beside, NOTHING, first.across + bench.kerf),
    ):
        if bench.fits(along, across):
            moved = tuple(one._replace(x=one.x + x, y=one.y + y) for one in then.pieces)
            return GrainBlock(along, across, (*first.pieces, *moved), first.runs + then.runs)
    return None


def _runs(group: Grouped[GrainPiece], bench: _Bench) -> Iterator[GrainBlock]:
    """The pieces in order, in parts that fit and are laid out as on the wall."""
    block = _laid_out(group, bench)
    if bench.fits(block.along, block.across) or group.piece is not None:
        yield block
        return
    together: list[Grouped[GrainPiece]] = []
    for part in group.groups:
        longer = _laid_out(replace(group, groups=(*together, part)), bench)
        if bench.fits(longer.along, longer.across):
            together.append(part)
            continue
        if together:
            yield _laid_out(replace(group, groups=tuple(together)), bench)
        alone = _laid_out(part, bench)
        together = [part] if bench.fits(alone.along, alone.across) else []
        if not together:
            yield from _runs(part, bench)
    if together:
        yield _laid_out(replace(group, groups=tuple(together)), bench)


def _laid_out(group: Grouped[GrainPiece], bench: _Bench) -> GrainBlock:
    piece = group.piece
    if piece is not None:
        placed = PlacedPiece(piece.number, NOTHING, NOTHING, piece.along, piece.across)
        return GrainBlock(piece.along, piece.across, (placed,))
    lengthwise = group.rows == bench.upright
    parts = [(part, _laid_out(part, bench)) for part in group.groups]
    if group.rows and not bench.upright:
        parts.reverse()
    beside = max(block.across if lengthwise else block.along for _, block in parts)
    place, laid = NOTHING, {}
    for part, block in parts:
        room = beside - (block.across if lengthwise else block.along)
        off = min(_off(part.rect, group, bench), room)
        off = off if off > bench.kerf else NOTHING
        x, y = (place, off) if lengthwise else (off, place)
        for one in block.pieces:
            laid[one.number] = one._replace(x=one.x + x, y=one.y + y)
        place += (block.along if lengthwise else block.across) + bench.kerf
    size = (place - bench.kerf, beside) if lengthwise else (beside, place - bench.kerf)
    in_order = tuple(laid[piece.number] for piece in group.pieces)
    return GrainBlock(*size, in_order)


def _off(rect: Rect, group: Grouped[GrainPiece], bench: _Bench) -> Mm:
    """How far a column lies below the top (or above the bottom), a row from the left."""
    parts = [part.rect for part in group.groups]
    if group.rows:
        return rect.x - min(part.x for part in parts)
    if bench.upright:
        return max(part.top for part in parts) - rect.top
    return rect.y - min(part.y for part in parts)

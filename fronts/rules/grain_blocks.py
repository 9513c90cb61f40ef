"""A set's parts of one material as blocks to saw: each piece with its place in its block."""

from collections.abc import Sequence
from fractions import Fraction
from typing import NamedTuple

from fronts.rules.grain_layout import Fits, GrainPiece, PlacedPiece, grain_blocks
from fronts.rules.grain_results import GrainPlace
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect
from fronts.rules.results import Part


class PartInBlock(NamedTuple):
    """One piece of a part, its front's place in the set, and where it lies in its block."""

    part: Part
    grain: GrainPlace
    placed: PlacedPiece


class PartsBlock(NamedTuple):
    """Pieces that are cut out of a sheet as one; in `runs` of them the grain runs on unbroken."""

    parts: tuple[PartInBlock, ...]
    runs: int


def blocks_of(parts: Sequence[Part], kerf: Mm, fits: Fits) -> tuple[PartsBlock, ...]:
    """The blocks of one set's parts of one material, in order."""
    pieces = [piece for part in parts for piece in _pieces(part)]
    if not pieces:
        return ()
    numbered = [
        GrainPiece(number, part.length, part.width, rect)
        for number, (part, _, rect) in enumerate(pieces)
    ]
    upright = pieces[0][1].upright
    return tuple(
        PartsBlock(
            tuple(PartInBlock(*pieces[placed.number][:2], placed) for placed in block.pieces),
            block.runs,
        )
        for block in grain_blocks(numbered, kerf, fits, upright=upright)
    )


def _pieces(part: Part) -> list[tuple[Part, GrainPlace, Rect]]:
    """Each of a part's pieces: panels of one front stand on top of one another."""
    grain = part.grain
    if grain is None:
        return []
    rect, high = grain.rect, grain.rect.height / Fraction(part.count)
    return [
        (part, grain, Rect(rect.x, rect.top - number * high, rect.width, high))
        for number in range(1, part.count + 1)
    ]

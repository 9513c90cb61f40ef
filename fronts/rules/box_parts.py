"""The pieces of a drawer box, and what they weigh.

+--+--------------+--+      front and back = width - 2 sides + 2 joints
|  |    front     |  |      bottom, shelves: in grooves all round, a little play;
|  +--------------+  |      for under slides the bottom runs on beneath the back
|  |              |  |
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.box_stock import MATERIAL, BoxStock
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.materials import density_of
from fronts.rules.results import Part
from fronts.rules.weight import mass_kg

SIDE, FRONT, BACK = "box-side", "box-front", "box-back"
BOTTOM, SHELF = "box-bottom", "box-shelf"
"""The pieces by their names, which the cut list shares."""
PIECES = (SIDE, FRONT, BACK, BOTTOM, SHELF)
"""In the order in which they are cut and built."""


@dataclass(frozen=True, slots=True)
class BoxShape:
    """A box by its outside; `recess`: its bottom is so high up and runs on beneath the back.

    `low`: its sides are low, so that one can reach in from beside it.
    """

    width: Mm
    height: Mm
    depth: Mm
    shelves: int
    low: bool
    recess: Mm | None


@dataclass(frozen=True, slots=True)
class BoxPiece:
    """One kind of piece of a box; grain runs along `length`."""

    part: str
    length: Mm
    width: Mm
    thickness: Mm
    count: int


def box_pieces(shape: BoxShape, stock: BoxStock) -> tuple[BoxPiece, ...]:
    """All pieces of a box."""
    return tuple(_pieces(shape, stock))


def _pieces(shape: BoxShape, stock: BoxStock) -> Iterator[BoxPiece]:
    thick, deeper = stock.side, 2 * stock.groove - stock.play
    tiers = 1 + shape.shelves
    side_height = min(shape.height, stock.low_side) if shape.low else shape.height
    across = shape.width - 2 * thick + 2 * stock.joint
    within = (shape.width - 2 * thick + deeper, shape.depth - 2 * thick + deeper)
    back, bottom = shape.height, within[1]
    if shape.recess is not None:
        back = shape.height - shape.recess - stock.bottom
        bottom = shape.depth - thick + stock.groove - stock.play
    yield BoxPiece(SIDE, shape.depth, side_height, thick, 2 * tiers)
    yield BoxPiece(FRONT, across, shape.height, thick, 1)
    yield BoxPiece(BACK, across, back, thick, 1)
    yield BoxPiece(BOTTOM, within[0], bottom, stock.bottom, 1)
    if shape.shelves:
        yield BoxPiece(SHELF, *within, stock.bottom, shape.shelves)


def box_weight(pieces: Iterable[BoxPiece], stock: BoxStock) -> Fraction:
    """Kilograms of a box: of all its pieces."""
    volume = sum(
        (
            max(piece.length, NOTHING) * max(piece.width, NOTHING) * piece.thickness * piece.count
            for piece in pieces
        ),
        Fraction(0),
    )
    return mass_kg(volume, density_of(stock.material, MATERIAL))


def parts_of_box(front: str, pieces: Iterable[BoxPiece], material: str) -> tuple[Part, ...]:
    """The pieces of a front's box as the cut list has them."""
    return tuple(
        Part(
            label=f"{front} {piece.part}", front=front, part=piece.part, length=piece.length,
            width=piece.width, thickness=piece.thickness, material=material, count=piece.count,
        )
        for piece in pieces
    )  # fmt: skip

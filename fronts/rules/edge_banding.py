"""Which edges are banded, and how much banding that takes.

All four edges of a slab front are banded where its material's core would show at them, as
`materials` says of each board; solid wood and panels in a frame have nothing to hide (common
practice, no source).
"""

from collections import defaultdict
from collections.abc import Iterable

from fronts.rules.lengths import Mm
from fronts.rules.materials import Board, material_of
from fronts.rules.parts import SLAB
from fronts.rules.results import Part


def is_banded(part: Part) -> bool:
    """Whether the part's edges are banded, all four of them."""
    material = material_of(part.material)
    return part.part == SLAB and isinstance(material, Board) and material.banded


def banding_lengths(parts: Iterable[Part]) -> dict[tuple[str, Mm], Mm]:
    """The length of banding by material and thickness, nothing added for trimming it."""
    total: dict[tuple[str, Mm], Mm] = defaultdict(Mm)
    for part in parts:
        if is_banded(part):
            total[part.material, part.thickness] += 2 * (part.length + part.width) * part.count
    return dict(sorted(total.items()))

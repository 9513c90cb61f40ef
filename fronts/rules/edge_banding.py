"""How much edge banding the parts want.

All four edges of a slab front of plywood or particleboard are banded; MDF is taken to be
painted, solid wood and panels in a frame have nothing to hide (common practice, no source).
"""

from collections import defaultdict
from collections.abc import Iterable

from fronts.rules.lengths import Mm
from fronts.rules.materials import Board, material_of
from fronts.rules.results import Part

BANDED = frozenset({"plywood", "particleboard"})
SIDES_OF_ONE_SIZE = 2


def is_banded(part: Part) -> bool:
    """Whether the part's edges are banded, all four of them."""
    found = material_of(part.material)
    return part.part == "slab" and isinstance(found, Board) and found.name in BANDED


def banding_of(parts: Iterable[Part]) -> dict[tuple[str, Mm], Mm]:
    """The length of banding by material and thickness, nothing added for trimming it."""
    total: dict[tuple[str, Mm], Mm] = defaultdict(Mm)
    for part in parts:
        if is_banded(part):
            around = SIDES_OF_ONE_SIZE * (part.length + part.width)
            total[part.material, part.thickness] += around * part.count
    return dict(sorted(total.items()))

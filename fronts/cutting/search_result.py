"""What a search hands back: a packing, and the bound that was proved on its cost."""

from dataclasses import dataclass

from fronts.cutting import patterns as col
from fronts.cutting.bounds.lower_bound import Bound
from fronts.cutting.integer_problem import Lattice
from fronts.cutting.patterns import Packing


@dataclass(frozen=True, slots=True)
class Found:
    """`bound` is valid for every plan of edge-to-edge cuts from the same stock."""

    packing: Packing
    bound: Bound


def done(packing: Packing, bound: Bound, lattice: Lattice) -> bool:
    """Whether a packing is proved the least."""
    return not packing.short and col.cost(packing, lattice.boards) <= bound.cost

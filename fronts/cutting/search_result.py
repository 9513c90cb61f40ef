"""What a search hands back: a packing, and the bound that was proved on its cost."""

from dataclasses import dataclass

from fronts.cutting import patterns
from fronts.cutting.bounds.lower_bound import LowerBound
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.patterns import Packing


@dataclass(frozen=True, slots=True)
class SearchResult:
    """`bound` is valid for every plan of edge-to-edge cuts from the same stock."""

    packing: Packing
    bound: LowerBound


def proved_least(packing: Packing, bound: LowerBound, problem: IntegerProblem) -> bool:
    """Whether a packing is proved the least."""
    return not packing.short and patterns.cost(packing, problem.boards) <= bound.cost

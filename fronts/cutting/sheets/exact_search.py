"""Few parts settled exactly: every way of cutting them edge to edge is looked at.

Which multisets of parts one board can hold is known from their shape functions
(`shape_functions.py`); the cheapest way to share all parts out follows (`cheapest_partition.py`).
A plan is the least, or the bound says what is: as far as the budget lasts, and with up to about a
dozen parts it does. One board is tried first, then two: the less may be wasted, the less is to be
kept.
"""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from math import floor, prod

from fronts.cutting import patterns
from fronts.cutting.bounds import lower_bound
from fronts.cutting.bounds.lower_bound import LowerBound
from fronts.cutting.budget import Budget
from fronts.cutting.integer_problem import BoardKind, IntegerProblem, Orientation
from fronts.cutting.patterns import Pattern
from fronts.cutting.search_result import SearchResult
from fronts.cutting.sheets.cheapest_partition import AREA_STEPS, Sharing, scarce_kinds
from fronts.cutting.sheets.multisets import Multisets, splits_of
from fronts.cutting.sheets.shape_functions import BudgetSpentError, ShapeFunctions

MOST_SPLITS = 3**13
"""So many splits are few enough: those of 13 different parts, or of more that repeat."""
MOST_USES = 16
"""How many different uses of scarce stock may be told apart."""
LARGEST = 1 << 60
"""Areas and prices beyond this would not stay whole numbers."""


def settled(problem: IntegerProblem, known: SearchResult, budget: Budget) -> SearchResult:
    """A cheaper packing than the known one, or the proof that there is none; in time, or neither.

    Ways to lie that a bound must allow for but no plan takes are tried too before it is a proof.
    """
    demand = [item.demand for item in problem.items]
    if splits_of(demand) > MOST_SPLITS or _too_large(problem, sum(demand)):
        return known
    multisets = Multisets(demand)
    planned = tuple(item.orientations for item in problem.items)
    allowed = tuple(item.bound_orientations for item in problem.items)
    packing, bound = known.packing, known.bound
    for most in _targets(problem, known):
        try:
            for ways in (planned,) if planned == allowed else (planned, allowed):
                shared = _cheapest(problem, multisets, ways, most, budget)
                if shared is None:
                    continue
                if ways is planned:
                    cheaper = patterns.packing([(sheet, 1) for sheet in shared[1]], problem)
                    packing = min(packing, cheaper, key=lambda p: patterns.rank(p, problem))
                least = LowerBound(shared[0]) if planned == allowed else bound
                return SearchResult(packing, lower_bound.strongest([bound, least]))
        except BudgetSpentError:
            break
        bound = lower_bound.strongest(
            [bound, LowerBound(0, impossible=True) if most is None else LowerBound(most + 1)]
        )
    return SearchResult(packing, bound)


def _too_large(problem: IntegerProblem, parts: int) -> bool:
    boards = problem.boards
    uses = prod(limit + 1 for limit in scarce_kinds(boards, parts).values())
    area = max(board.length * board.width for board in boards)
    price = max(board.cost for board in boards) * (parts + 1) * AREA_STEPS
    return uses > MOST_USES or (parts + 1) * max(area * AREA_STEPS, price) > LARGEST


def _targets(problem: IntegerProblem, known: SearchResult) -> Iterator[int | None]:
    """Costs not to exceed, rising; None is any cost, where the known packing is short."""
    if known.packing.short:
        yield None
        return
    cost = patterns.cost(known.packing, problem.boards)
    if len(problem.boards) > 1:
        yield cost - 1
    else:
        yield from range(known.bound.cost, cost, problem.boards[0].cost)


def _cheapest(
    problem: IntegerProblem,
    multisets: Multisets,
    ways: Sequence[tuple[tuple[Orientation, ...], ...]],
    most: int | None,
    budget: Budget,
) -> tuple[int, list[Pattern]] | None:
    """The least cost of all parts and their boards, where it is no more than `most`."""
    boards = problem.boards
    area = _most_area(boards, most)
    total = sum(item.area * item.demand for item in problem.items)
    smallest = min(board.length * board.width for board in boards)
    shapes = [
        None if board.limit == 0 else ShapeFunctions(
            multisets, board, [ways[kind] for ways in ways],
            LARGEST if area is None else area - total, budget,
            alone=area is not None and area < 2 * smallest,
        )
        for kind, board in enumerate(boards)
    ]  # fmt: skip
    shared = Sharing(multisets, boards, shapes, budget).cheapest()
    return None if shared is None or (most is not None and shared[0] > most) else shared


def _most_area(boards: tuple[BoardKind, ...], cost: int | None) -> int | None:
    """No more board area than this can be had at that cost; None where there is no end of it."""
    area, left = Fraction(0), None if cost is None else Fraction(cost)
    for board in sorted(boards, key=lambda b: Fraction(b.cost, b.length * b.width)):
        often = None if left is None or board.cost == 0 else left / board.cost
        if board.limit is not None and (often is None or board.limit < often):
            often = Fraction(board.limit)
        if often is None:
            return None
        area += often * board.length * board.width
        left = None if left is None else left - often * board.cost
    return floor(area)

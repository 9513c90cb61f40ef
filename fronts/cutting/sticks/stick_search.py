"""The fewest sticks: column generation, its bound, and descents from fractions to whole sticks.

The bound rounded up is nearly always the least (see `column_generation.py`), so what takes time is
to find the plan: diving, then an integer program over the columns that the descents asked for.
"""

from itertools import pairwise

from fronts.cutting import patterns
from fronts.cutting.bounds import lower_bound
from fronts.cutting.budget import Budget
from fronts.cutting.column_generation import ColumnGeneration, Relaxation
from fronts.cutting.diving_heuristic import FIRST, SKIPS, DivingHeuristic
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.pattern_pool import PatternPool
from fronts.cutting.patterns import Pattern
from fronts.cutting.search_result import SearchResult, proved_least
from fronts.cutting.sticks.first_fit_decreasing import longest_first
from fronts.cutting.sticks.knapsack_pricing import KnapsackPricer
from fronts.solver import IntegerLimits

ROOT_ROUNDS = 2_000
NODES = 20_000
DIVES = len(FIRST)
"""Descents between two integer programs over the columns that they found."""


def plan_sticks(problem: IntegerProblem, budget: Budget) -> SearchResult:
    """The best packing of sticks within the budget, never worse than the longest first."""

    def finish(left: list[int], open_boards: list[int | None]) -> list[tuple[Pattern, int]]:
        return longest_first(problem, left, open_boards)

    quick = finish([i.demand for i in problem.items], [b.limit for b in problem.boards])
    best = patterns.packing(quick, problem)
    bound = lower_bound.farley_bound(
        sum(i.area * i.demand for i in problem.items),
        [b.length for b in problem.boards],
        problem.boards,
    )
    if proved_least(best, bound, problem):
        return SearchResult(best, bound)
    pricer = KnapsackPricer(problem)
    generation = ColumnGeneration(problem, pricer)
    sizes = [item.length for item in problem.items]
    order = sorted(range(len(sizes)), key=lambda i: -sizes[i])
    generation.exchange(pairwise(order))
    generation.add(column for column, _ in best.chosen)
    root: Relaxation | None = None
    for turn, skip in enumerate(SKIPS):
        if budget.over or proved_least(best, bound, problem):
            break
        if root is None or not root.settled:
            pricer.hurried = False
            again = generation.solve(budget.share(0.5), ROOT_ROUNDS, hasty=root is None)
            root = again or root
            bound = bound if root is None else lower_bound.strongest([bound, root.bound])
            pricer.hurried = True
        best = DivingHeuristic(generation, finish, bound.cost, budget, skip).run(best)
        if turn % DIVES == DIVES - 1 and not proved_least(best, bound, problem):
            pool = PatternPool(problem)
            pool.add(generation.columns)
            limits = IntegerLimits(budget.share(0.7).seconds, NODES)
            best = pool.cover(best, bound.cost, limits, root.weights if root else ())
    return SearchResult(best, bound)

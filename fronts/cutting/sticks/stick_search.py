"""The least sticks: column generation, its bound, and descents from fractions to whole sticks."""

from itertools import pairwise

from fronts.cutting import patterns as col
from fronts.cutting.bounds import lower_bound as proof
from fronts.cutting.budget import Budget
from fronts.cutting.column_generation import Generation, Relaxed
from fronts.cutting.diving_heuristic import FIRST, SKIPS, Dive
from fronts.cutting.integer_problem import Lattice
from fronts.cutting.pattern_pool import Pool
from fronts.cutting.patterns import Column
from fronts.cutting.search_result import Found, done
from fronts.cutting.sticks.first_fit_decreasing import longest_first
from fronts.cutting.sticks.knapsack_pricing import StickPricer
from fronts.solver import IntegerLimits

ROOT_ROUNDS = 2_000
NODES = 20_000
DIVES = len(FIRST)
"""Descents between two integer programs over the columns that they found."""


def plan_sticks(lattice: Lattice, budget: Budget) -> Found:
    """The best packing of sticks within the budget, never worse than the longest first."""

    def finish(left: list[int], open_boards: list[int | None]) -> list[tuple[Column, int]]:
        return longest_first(lattice, left, open_boards)

    quick = finish([i.demand for i in lattice.items], [b.limit for b in lattice.boards])
    best = col.packing(quick, lattice)
    bound = proof.weigh(
        sum(i.area * i.demand for i in lattice.items),
        [b.length for b in lattice.boards],
        lattice.boards,
    )
    if done(best, bound, lattice):
        return Found(best, bound)
    pricer = StickPricer(lattice)
    generation = Generation(lattice, pricer)
    sizes = [next(lies[0] for lies in i.lies if lies).length for i in lattice.items]
    order = sorted(range(len(sizes)), key=lambda i: -sizes[i])
    generation.exchange(pairwise(order))
    generation.add(column for column, _ in best.chosen)
    root: Relaxed | None = None
    for turn, skip in enumerate(SKIPS):
        if budget.over or done(best, bound, lattice):
            break
        if root is None or not root.settled:
            pricer.hurried = False
            again = generation.solve(budget.share(0.5), ROOT_ROUNDS, hasty=root is None)
            root = again or root
            bound = bound if root is None else proof.best([bound, root.bound])
            pricer.hurried = True
        best = Dive(generation, finish, bound.cost, budget, skip).run(best)
        if turn % DIVES == DIVES - 1 and not done(best, bound, lattice):
            pool = Pool(lattice)
            pool.add(generation.columns)
            limits = IntegerLimits(budget.share(0.7).seconds, NODES)
            best = pool.cover(best, bound.cost, limits, root.weights if root else ())
    return Found(best, bound)

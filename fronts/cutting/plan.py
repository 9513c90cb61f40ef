"""The cutting plan: from a request to layouts that can be sawn, with what is proved of them.

With no prices the aim is the fewest pieces of stock, then the least stock area; with prices it is
the least cost. Offcuts that the shop has cost nothing and are used first. What cannot be placed
because stock runs out comes before either.
"""

import time
from collections import Counter
from collections.abc import Iterator
from dataclasses import replace

from fronts.cutting import patterns
from fronts.cutting.bounds import lower_bound
from fronts.cutting.bounds.dual_feasible import quick_bound
from fronts.cutting.budget import Budget, Clock, begin, until
from fronts.cutting.cut_units import CutUnit
from fronts.cutting.integer_problem import IntegerProblem, integer_problem
from fronts.cutting.model import Layout, Plan, Request
from fronts.cutting.offcuts_first import has_offcuts, offcuts_first, without_offcuts
from fronts.cutting.patterns import Packing
from fronts.cutting.sawing import layout, leaves
from fronts.cutting.search_result import SearchResult, proved_least
from fronts.cutting.sequences import in_sequence, kept_in_sequence
from fronts.cutting.sheets.largest_offcut import with_largest_offcut
from fronts.cutting.sheets.sheet_search import plan_sheets
from fronts.cutting.sheets.tidying import Tidier
from fronts.cutting.sticks.stick_search import plan_sticks

SEARCH = 0.9
"""Share of the seconds by which the search ends; then comes tidying, then writing out."""
WITH_OFFCUTS = 0.6
"""Share of the search that the shop's offcuts take part in, where the least is not proved then."""
OFFCUT_SECONDS = 1.0
"""Seconds at most for one big offcut."""
TIDYING = 0.96
WRITING = 5e-5
"""Seconds that a part takes to be written out."""


def plan(request: Request, seconds: float, clock: Clock = time.monotonic) -> Plan:
    """The best plan found within `seconds`; every unit must fit some stock (see `misfits`)."""
    started = clock()
    problem = integer_problem(request)
    writing = min(WRITING * sum(item.demand for item in problem.items), seconds / 2)
    search = begin(seconds * SEARCH - writing, clock)
    result = _searched(problem, search)
    waiting = _UnitsLeft(problem)
    packing = _kindest(problem, result.packing, search.share(0.3).capped(OFFCUT_SECONDS))
    result = replace(result, packing=packing)
    tidier = Tidier(problem, until(started + seconds * TIDYING - writing, clock))
    packing = kept_in_sequence(tidier.drained(result.packing), problem, request)
    result = replace(result, packing=packing)
    layouts = in_sequence(_layouts(request, problem, tidier, waiting, packing))
    used = sum(shown.count for shown in layouts if not shown.stock.own)
    priced = any(stock.price is not None for stock in request.stock)
    count = _counted(problem) if priced else result.bound
    return Plan(
        request=request,
        layouts=layouts,
        unplaced=tuple(waiting.unplaced(request)),
        lower_bound=min(count.cost, used),
        proved=proved_least(result.packing, result.bound, problem),
        cost=patterns.cost(result.packing, problem.boards) * problem.coin if priced else None,
        cost_bound=result.bound.cost * problem.coin if priced else None,
        cannot_all_fit=result.bound.impossible,
        seconds=clock() - started,
    )


def _searched(problem: IntegerProblem, budget: Budget) -> SearchResult:
    """The best packing; offcuts to choose from never make it worse than it is without them."""
    find = plan_sticks if problem.sticks else plan_sheets
    if not has_offcuts(problem):
        return find(problem, budget)
    result = find(problem, budget.share(WITH_OFFCUTS))
    if proved_least(result.packing, result.bound, problem):
        return result
    without = find(without_offcuts(problem), budget)
    better = min(result.packing, without.packing, key=lambda p: patterns.rank(p, problem))
    return replace(result, packing=better)


def _kindest(problem: IntegerProblem, packing: Packing, budget: Budget) -> Packing:
    """Of plans that cost the same, one that uses offcuts up and leaves a large one."""
    if has_offcuts(problem):
        return offcuts_first(problem, packing, budget)
    return with_largest_offcut(problem, packing, budget)


def _counted(problem: IntegerProblem) -> lower_bound.LowerBound:
    """A bound on the number of boards, whatever they cost; of the shop's own none is counted."""
    boards = tuple(replace(board, cost=int(not board.own)) for board in problem.boards)
    return quick_bound(replace(problem, boards=boards))


def _layouts(
    request: Request,
    problem: IntegerProblem,
    tidier: Tidier,
    waiting: "_UnitsLeft",
    packing: Packing,
) -> Iterator[Layout]:
    """Each layout with its count; equal ones are one."""
    merged: dict[Layout, int] = {}
    for column, times in packing.chosen:
        tree = tidier.tree(column)
        order = [leaf.spot.item for leaf in leaves(tree) if leaf.spot is not None]
        left = times
        while left > 0:
            units, often = waiting.take(order, left)
            shown = layout(request, problem, column.board, tree, iter(units))
            merged[shown] = merged.get(shown, 0) + often
            left -= often
    for shown, count in merged.items():
        yield replace(shown, count=count)


class _UnitsLeft:
    """Units of one size are alike to the search; here each place gets its own label again."""

    def __init__(self, problem: IntegerProblem) -> None:
        self._units = [list(item.units) for item in problem.items]
        self._left = [[unit.count for unit in item.units] for item in problem.items]

    def take(self, order: list[int], most: int) -> tuple[list[CutUnit], int]:
        """Units for the places of one sheet, and how many sheets can be just so."""
        used: Counter[tuple[int, int]] = Counter()
        units = []
        for item in order:
            which = next(k for k, left in enumerate(self._left[item]) if left > used[item, k])
            used[item, which] += 1
            units.append(self._units[item][which])
        often = min(most, *(self._left[i][k] // n for (i, k), n in used.items()))
        for (item, which), n in used.items():
            self._left[item][which] -= n * often
        return units, often

    def unplaced(self, request: Request) -> Iterator[tuple[str, int]]:
        """Labels of the parts that are left, with how many."""
        counted: Counter[int] = Counter()
        for units, left in zip(self._units, self._left, strict=True):
            for unit, n in zip(units, left, strict=True):
                counted.update({part: n for part in unit.parts if n})
        for index in sorted(counted):
            yield request.parts[index].label, counted[index]

"""The largest offcut: the same sheets, one of them kept partly whole.

Of plans that cost the same, the one that leaves a piece worth keeping is better (the usable
leftovers of Cherri, Arenales and Yanasse 2009, "The one-dimensional cutting stock problem with
usable leftover: a heuristic approach"). A piece as wide or as long as the sheet is set aside before
anything is cut; if all parts still find room on so many sheets, that piece is the offcut. The
largest that works is looked for by halving. No part is lost and no sheet more is cut; that no
larger offcut exists is not claimed.
"""

from collections.abc import Iterator
from dataclasses import replace

from fronts.cutting import patterns
from fronts.cutting.bounds.lower_bound import LowerBound
from fronts.cutting.budget import Budget
from fronts.cutting.integer_problem import BoardKind, IntegerProblem, Item, Orientation
from fronts.cutting.patterns import Packing
from fronts.cutting.sheets.sheet_search import SheetSearch
from fronts.cutting.sheets.tidying import largest_left

PROBES = 6
"""Halvings of the doubt about each way to set a piece aside."""


def with_largest_offcut(problem: IntegerProblem, packing: Packing, budget: Budget) -> Packing:
    """The same parts on as many sheets, with a larger offcut where one is found in time."""
    if problem.sticks or len(problem.boards) > 1 or packing.short or not packing.chosen:
        return packing
    board = problem.boards[0]
    count = sum(times for _, times in packing.chosen)
    spare = count * board.length * board.width - sum(i.area * i.demand for i in problem.items)
    best, most = packing, max(largest_left(board, column) for column, _ in packing.chosen)
    for along in (True, False):
        line, across = (board.length, board.width) if along else (board.width, board.length)
        low, high = most // across, min(spare // across, line - 1)
        for _ in range(PROBES):
            aside = (low + high + 1) // 2
            if aside <= low or budget.over:
                break
            smaller = _without(problem, aside, count, budget.share(0.3), along=along)
            if smaller is None:
                high = aside - 1
            else:
                low, best, most = aside, smaller, aside * across
    return best


def _without(
    problem: IntegerProblem, aside: int, count: int, budget: Budget, *, along: bool
) -> Packing | None:
    """All parts on `count` sheets of which one is shorter (or narrower) by `aside`, or None."""
    board = problem.boards[0]
    short = (
        replace(board, length=board.length - aside, limit=1)
        if along
        else replace(board, width=board.width - aside, limit=1)
    )
    boards = (replace(board, limit=count - 1), short)
    items = tuple(_item(item, short) for item in problem.items)
    search = SheetSearch(replace(problem, boards=boards, items=items))
    search.bound = LowerBound(count)  # so that the first packing without shortage is good enough
    for step in (search.passes, search.strips, search.settle, search.generate, search.dive):
        step(budget.share(0.4))
    if search.best.short or patterns.cost(search.best, boards) > count:
        return None
    return Packing(tuple(_merged(search.best)))


def _item(item: Item, short: BoardKind) -> Item:
    def fitting(ways: tuple[Orientation, ...]) -> tuple[Orientation, ...]:
        return tuple(x for x in ways if x.length <= short.length and x.width <= short.width)

    return replace(
        item,
        orientations=(item.orientations[0], fitting(item.orientations[0])),
        bound_orientations=(item.bound_orientations[0], fitting(item.bound_orientations[0])),
    )


def _merged(packing: Packing) -> Iterator[tuple[patterns.Pattern, int]]:
    for column, times in packing.chosen:
        yield replace(column, board=0), times

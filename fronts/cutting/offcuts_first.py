"""Offcuts first: what the shop has is cut up before what is bought.

The search sees to it that no more is bought than need be (an offcut costs nothing). Where an
offcut would save no whole sheet it leaves it alone; here such a one takes parts off the sheets all
the same, those that fill it best, so that more of a sheet stays whole. Nothing is ever bought for
it: parts only leave the sheets, and what is proved of their number holds.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from fronts.cutting import patterns
from fronts.cutting.budget import Budget
from fronts.cutting.integer_problem import IntegerProblem, Item
from fronts.cutting.patterns import Packing, Pattern, pattern_of, stick_pattern
from fronts.cutting.sheets.candidates import Candidates
from fronts.cutting.sheets.constructive_heuristic import FillRule, Split, fill
from fronts.cutting.sheets.largest_offcut import with_largest_offcut
from fronts.cutting.sticks.first_fit_decreasing import stick_fill

_SPLITS: tuple[Split, ...] = ("big", "rip", "cross")


def has_offcuts(problem: IntegerProblem) -> bool:
    """Whether there are any of the shop's to take."""
    return any(board.own for board in problem.boards)


def without_offcuts(problem: IntegerProblem) -> IntegerProblem:
    """The same problem where none of the shop's offcuts is there."""
    boards = [replace(board, limit=0) if board.own else board for board in problem.boards]
    return replace(problem, boards=tuple(boards))


def offcuts_first(problem: IntegerProblem, packing: Packing, budget: Budget) -> Packing:
    """The same parts with the shop's offcuts in use, and one large offcut of what is bought."""
    boards = problem.boards
    mine = [(pattern, times) for pattern, times in packing.chosen if boards[pattern.board].own]
    theirs = [each for each in packing.chosen if not boards[each[0].board].own]
    left = [0] * len(problem.items)
    for pattern, times in theirs:
        for item, n in pattern.yields:
            left[item] += n * times
    mine += _filled(problem, left, _unused(problem, mine))
    wanted = tuple(replace(i, demand=n) for i, n in zip(problem.items, left, strict=True))
    rest = patterns.packing(theirs, replace(problem, items=wanted))
    rest = _rest_with_largest_offcut(problem, rest, left, budget)
    return Packing((*mine, *rest.chosen), packing.short)


def _unused(problem: IntegerProblem, mine: Sequence[tuple[Pattern, int]]) -> Counter[int]:
    """How many of each of the shop's offcuts are not cut yet."""
    free = Counter({b: board.limit or 0 for b, board in enumerate(problem.boards) if board.own})
    for pattern, times in mine:
        free[pattern.board] -= times
    return +free


def _filled(
    problem: IntegerProblem, left: list[int], free: Counter[int]
) -> list[tuple[Pattern, int]]:
    """Offcuts filled, the fullest first; takes what they hold from `left`."""
    filled: list[tuple[Pattern, int]] = []
    while any(left) and free:
        tried = [found for b in free if (found := _fullest(problem, b, left)) is not None]
        if not tried:
            break
        _, pattern = max(tried, key=lambda found: (found[0], -found[1].board))
        for item, n in pattern.yields:
            left[item] -= n
        filled.append((pattern, 1))
        free -= Counter([pattern.board])
    return filled


def _fullest(
    problem: IntegerProblem, number: int, left: Sequence[int]
) -> tuple[Fraction, Pattern] | None:
    """The best way found to fill one offcut, with the share of it that becomes parts."""
    board = problem.boards[number]
    order = sorted(range(len(left)), key=lambda item: -problem.items[item].area)
    if problem.sticks:
        sizes = [item.length for item in problem.items]
        counts = stick_fill(board.length, sizes, order, left)
        tried = [stick_pattern(number, counts, problem)] if counts else []
    else:
        choice = Candidates(problem, number, order)
        ways = [fill(board, choice, left, FillRule("snug", split)) for split in _SPLITS]
        tried = [pattern_of(number, spots) for spots in ways if spots]
    whole = board.length * board.width
    shares = [(Fraction(patterns.area_of(one.spots), whole), one) for one in tried]
    return max(shares, key=lambda share: share[0], default=None)


def _rest_with_largest_offcut(
    problem: IntegerProblem, rest: Packing, left: Sequence[int], budget: Budget
) -> Packing:
    """What is still bought, as a problem of its own where it is of one size."""
    bought = [b for b, each in enumerate(problem.boards) if not each.own]
    kept = [item for item, n in enumerate(left) if n]
    if len(bought) != 1 or not kept:
        return rest
    board, place = bought[0], {item: index for index, item in enumerate(kept)}
    alone = replace(
        problem,
        boards=(problem.boards[board],),
        items=tuple(_on(problem.items[item], board, left[item]) for item in kept),
    )
    packed = Packing(tuple((_moved(p, 0, place), times) for p, times in rest.chosen))
    best = with_largest_offcut(alone, packed, budget)
    back = dict(enumerate(kept))
    return Packing(tuple((_moved(p, board, back), times) for p, times in best.chosen))


def _on(item: Item, board: int, demand: int) -> Item:
    """The item where there is no other board than this."""
    return replace(
        item,
        demand=demand,
        orientations=(item.orientations[board],),
        bound_orientations=(item.bound_orientations[board],),
    )


def _moved(pattern: Pattern, board: int, items: dict[int, int]) -> Pattern:
    """The same places under the other problem's numbers."""
    return pattern_of(board, [spot._replace(item=items[spot.item]) for spot in pattern.spots])

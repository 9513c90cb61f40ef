"""Quick plans for sticks: the longest part that still fits, stick after stick.

First fit decreasing; with one length of stick never more than 11/9 of the least and two thirds of
a stick (Dósa 2007, "The tight bound of first fit decreasing bin-packing algorithm").
"""

from collections.abc import Sequence
from fractions import Fraction

from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.patterns import Pattern, stick_pattern


def longest_first(
    problem: IntegerProblem, left: list[int], open_boards: list[int | None]
) -> list[tuple[Pattern, int]]:
    """First fit decreasing over what is left; equal sticks are counted at once."""
    sizes = [item.length for item in problem.items]
    order = sorted(range(len(sizes)), key=lambda i: -sizes[i])
    sticks: list[tuple[Pattern, int]] = []
    while True:
        order = [item for item in order if left[item] > 0]
        best = _best(problem, sizes, order, left, open_boards)
        if best is None:
            return sticks
        board, counts = best
        limit = open_boards[board]
        often = min(left[item] // n for item, n in counts)
        often = often if limit is None else min(often, limit)
        for item, n in counts:
            left[item] -= n * often
        if limit is not None:
            open_boards[board] = limit - often
        sticks.append((stick_pattern(board, counts, problem), often))


def _best(
    problem: IntegerProblem,
    sizes: Sequence[int],
    order: Sequence[int],
    left: Sequence[int],
    open_boards: Sequence[int | None],
) -> tuple[int, list[tuple[int, int]]] | None:
    """The stick that gives most length for its cost; of equals, the shortest."""
    best, most = None, (Fraction(-1), 0)
    for board, size in enumerate(problem.boards):
        if open_boards[board] == 0:
            continue
        counts = stick_fill(size.length, sizes, order, left)
        used = sum(sizes[item] * n for item, n in counts)
        if not counts:
            continue
        worth = Fraction(used, size.cost) if size.cost else Fraction(used * 10**9), -size.length
        if worth > most:
            best, most = (board, counts), worth
    return best


def stick_fill(
    length: int, sizes: Sequence[int], order: Sequence[int], left: Sequence[int]
) -> list[tuple[int, int]]:
    """How many of each part one stick holds, those first in `order` first."""
    counts = []
    for item in order:
        n = min(left[item], length // sizes[item])
        if n > 0:
            counts.append((item, n))
            length -= n * sizes[item]
    return counts

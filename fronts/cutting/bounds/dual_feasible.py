"""Bounds for sheets that hold for every way of packing: area, and dual-feasible functions.

A dual feasible function maps sizes of at most one line so that what fits on the line together
still does when mapped. Mapped areas then bound like areas do; the product over the two directions
may stretch each its own way (Fekete and Schepers 2004, "A general framework for bounds for
higher-dimensional orthogonal packing problems"). A part that may turn counts the lighter way.
"""

from collections.abc import Iterator, Sequence
from math import isqrt

import numpy as np
from numpy.typing import NDArray

from fronts.cutting.bounds import lower_bound
from fronts.cutting.integer_problem import BoardKind, IntegerProblem, Item

MOST_STEPS = 40
MOST_CELLS = 3_000_000
"""Items times pairs of stretches."""
CHECKED = 12


def area_bound(problem: IntegerProblem, boards: Sequence[BoardKind]) -> lower_bound.LowerBound:
    """Parts' area over boards' area."""
    total = sum(item.area * item.demand for item in problem.items)
    return lower_bound.farley_bound(total, [b.length * b.width for b in boards], boards)


def dual_feasible_bound(
    problem: IntegerProblem, boards: Sequence[BoardKind], enough: int
) -> lower_bound.LowerBound:
    """The best bound over pairs of stretches, each made for the largest board.

    Floats pick the pairs that promise most; whole numbers decide what those prove.
    """
    pairs = _Pairs(problem)
    demand = np.array([item.demand for item in problem.items], float)
    totals = pairs.rows() @ demand
    best = lower_bound.NOTHING
    for k in np.argsort(-totals, kind="stable")[:CHECKED]:
        (along, whole_along), (up, whole_up) = pairs.pair(int(k))
        weight = sum(i.demand * _lightest(i, along, up) for i in problem.items)
        bound = lower_bound.farley_bound(weight, [whole_along * whole_up] * len(boards), boards)
        best = lower_bound.strongest([best, bound])
        if best.cost >= enough:
            break
    return best


class _Pairs:
    """All pairs of a stretch along the board and one across it."""

    def __init__(self, problem: IntegerProblem) -> None:
        longest = max(b.length for b in problem.boards)
        widest = max(b.width for b in problem.boards)
        self._ways = [item.bound_sizes for item in problem.items]
        self._lengths = sorted({length for ways in self._ways for length, _ in ways})
        self._widths = sorted({width for ways in self._ways for _, width in ways})
        steps = max(3, min(MOST_STEPS, isqrt(MOST_CELLS // max(len(self._ways), 1)) - 8))
        self._along = list(_stretches(longest, self._lengths, steps))
        self._up = list(_stretches(widest, self._widths, steps))

    def pair(self, index: int) -> tuple[tuple[dict[int, int], int], tuple[dict[int, int], int]]:
        """The pair that a row is made of."""
        along, up = divmod(index, len(self._up))
        return self._along[along], self._up[up]

    def rows(self) -> NDArray[np.float64]:
        """What each item weighs at least, whichever way it lies, as a share of the board."""
        row_of = {size: k for k, size in enumerate(self._lengths)}
        column_of = {size: k for k, size in enumerate(self._widths)}
        along = np.array([[w[s] / top for s in self._lengths] for w, top in self._along])
        up = np.array([[w[s] / top for s in self._widths] for w, top in self._up])
        weights: list[NDArray[np.float64]] = []
        for turn in range(2 if any(len(ways) > 1 for ways in self._ways) else 1):
            picked = [ways[min(turn, len(ways) - 1)] for ways in self._ways]
            a = along[:, [row_of[length] for length, _ in picked]]
            b = up[:, [column_of[width] for _, width in picked]]
            weights.append((a[:, None, :] * b[None, :, :]).reshape(-1, len(picked)))
        return np.asarray(np.minimum(weights[0], weights[-1]))


def _lightest(item: Item, along: dict[int, int], up: dict[int, int]) -> int:
    return min(
        along[way.length] * up[way.width] for ways in item.bound_orientations for way in ways
    )


def _stretches(line: int, sizes: Sequence[int], steps: int) -> Iterator[tuple[dict[int, int], int]]:
    """Stretched sizes, and what a whole line carries of them."""
    yield {size: size for size in sizes}, line
    marks = sorted({min(size, line - size) for size in sizes} | {line // 2, line // 3})
    for mark in _some([m for m in marks if 0 < m <= line // 2], steps):
        yield _small_dropped(line, sizes, mark)
    for parts in range(1, 8):
        yield _rounded(line, sizes, parts)


def _some(marks: Sequence[int], most: int) -> Sequence[int]:
    return marks if len(marks) <= most else [marks[i * len(marks) // most] for i in range(most)]


def _small_dropped(line: int, sizes: Sequence[int], mark: int) -> tuple[dict[int, int], int]:
    """The function U: sizes over line - mark fill the line; those under the mark weigh nothing."""
    return {s: line if s > line - mark else 0 if s < mark else s for s in sizes}, line


def _rounded(line: int, sizes: Sequence[int], parts: int) -> tuple[dict[int, int], int]:
    """The functions u of k, scaled: how often `parts + 1` of a size pass the whole line."""
    mapped = {}
    for size in sizes:
        times = (parts + 1) * size
        mapped[size] = size * parts if times % line == 0 else times // line * line
    return mapped, line * parts


def quick_bound(problem: IntegerProblem, enough: int | None = None) -> lower_bound.LowerBound:
    """The best bound that takes no search: `enough` is where to stop looking."""
    area = area_bound(problem, problem.boards)
    if problem.sticks or (enough is not None and area.cost >= enough):
        return area
    stop = enough if enough is not None else 1 << 62
    return lower_bound.strongest([area, dual_feasible_bound(problem, problem.boards, stop)])

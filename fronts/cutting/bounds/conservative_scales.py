"""Bounds for sheets from two scales made for the parts at hand: one along the board, one across.

A scale gives every size a weight such that parts that fit on one line together weigh at most a
full line in all (a conservative scale: Fekete and Schepers 2004, "A general framework for bounds
for higher-dimensional orthogonal packing problems"). The product of a scale along and a scale
across is then a weight of which no board holds more than its lines do, however it is packed.

For a given scale along, the best scale across is the dual of a cutting stock problem in one
dimension (parts' widths on the board's width, as often as their scaled lengths say), and the other
way round: so each is improved in turn. Floats search; whole numbers decide what is proved.
"""

from collections.abc import Iterator, Sequence

import numpy as np
from numpy.typing import NDArray

from fronts.cutting import work_counter
from fronts.cutting.bounds import lower_bound
from fronts.cutting.budget import Budget
from fronts.cutting.integer_problem import BoardKind, IntegerProblem
from fronts.cutting.knapsack import KnapsackTable, RoundedSizes, knapsack, rough_scale, scales
from fronts.solver import Entry, LinearProgram

Floats = NDArray[np.float64]
TURNS = 8
"""How often a pair of scales is improved, at most."""
ROUNDS = 200
CELLS = 1_500
"""Of the line that is tried before the exact one."""
MORE_LOADS = 6
FULL = 1 << 22
"""The whole weight that stands for a full line."""
_NEAR = 1e-7
_GAIN = 1e-4


def conservative_scale_bound(
    problem: IntegerProblem, boards: Sequence[BoardKind], enough: int, budget: Budget
) -> lower_bound.LowerBound:
    """The best bound over pairs of scales; stops where it reaches `enough`."""
    ways = [
        (index, *size)
        for index, item in enumerate(problem.items)
        for size in sorted({way[:2] for ways in item.bound_orientations for way in ways})
    ]
    demand = [item.demand for item in problem.items]
    items = [item for item, _, _ in ways]
    along = ScaledSide(items, [length for _, length, _ in ways], demand, [b.length for b in boards])
    across = ScaledSide(items, [width for _, _, width in ways], demand, [b.width for b in boards])
    bound = lower_bound.NOTHING
    for first, second in ((along, across), (across, along)):
        if budget.over or bound.cost >= enough:
            break
        pair = _improved(first, second, budget)
        u, v = pair if first is along else pair[::-1]
        bound = lower_bound.strongest([bound, _proved((along, u), (across, v), boards)])
    return bound


class ScaledSide:
    """One direction: the size of every item in every way that it may lie, and the boards' sizes."""

    def __init__(
        self, items: Sequence[int], sizes: Sequence[int], demand: Sequence[int], boards: list[int]
    ) -> None:
        self.items, self.sizes, self.demand = list(items), list(sizes), list(demand)
        self.boards, self.longest = boards, max(boards)
        self.most = [demand[item] for item in items]
        self.scale, _ = scales(self.sizes, self.longest)
        rough = rough_scale(self.sizes, self.longest, CELLS)
        self._rough = rough if self.scale.line(self.longest) > 2 * CELLS else self.scale
        self._alone = np.bincount(items, minlength=len(demand)) == 1
        self._loads: list[list[Entry]] = [
            [(row, float(min(self.most[row], self.longest // size)))]
            for row, size in enumerate(self.sizes)
        ]

    def best(self, other: Floats, budget: Budget) -> tuple[float, Floats]:
        """The scale that is best beside `other`, and the boards that the two ask for."""
        program = self._program(other)
        program.add([1.0] * len(self._loads), self._loads)
        value, scale = 0.0, np.zeros(len(self.sizes))
        for _ in range(ROUNDS):
            answer = program.solve(budget.deadline.left)
            if answer is None:
                break
            work_counter.spend(
                work_counter.of_program(answer.steps, len(self.sizes), program.columns)
            )
            duals = np.maximum(answer.duals[: len(self.sizes)], 0.0)
            weights = [int(w) for w in duals * FULL]
            fresh = list(self._overfull(self._rough, weights))
            if not fresh:
                heaviest = max(1.0, self._carries(self.scale, weights)[1] / FULL)
                if answer.value / heaviest > value:
                    value, scale = answer.value / heaviest, duals / heaviest
                fresh = list(self._overfull(self.scale, weights))
            if not fresh or budget.over:
                break
            self._loads.extend(fresh)
            program.add([1.0] * len(fresh), fresh)
        return value, scale

    def carried(self, weights: list[int]) -> list[int]:
        """What a line of each board carries at most."""
        table, most = self._carries(self.scale, weights)
        dust = most - int(table.value[-1])
        return [int(table.value[self.scale.line(size)]) + dust for size in self.boards]

    def _carries(self, scale: RoundedSizes, weights: list[int]) -> tuple[KnapsackTable, int]:
        """The table of loads; the most on the longest line, with what is too small to measure."""
        table = knapsack(scale.sizes, weights, self.most, scale.line(self.longest))
        rows = zip(weights, self.most, scale.sizes, strict=True)
        return table, int(table.value[-1]) + sum(w * n for w, n, size in rows if size == 0)

    def _overfull(self, scale: RoundedSizes, weights: list[int]) -> Iterator[list[Entry]]:
        """The heaviest load that is more than a full line, then some of what it leaves."""
        dust = [(row, float(n)) for row, n in enumerate(self.most) if scale.sizes[row] == 0]
        rest = list(weights)
        for _ in range(MORE_LOADS):
            table, most = self._carries(scale, rest)
            if most <= FULL * (1 + _NEAR):
                return
            found = table.load(len(table.value) - 1)
            yield [(row, float(n)) for row, n in found] + dust
            if not found:
                return
            for row, _n in found:
                rest[row] = 0

    def _program(self, other: Floats) -> LinearProgram:
        """Rows of ways, asking for what `other` says; an item with two ways may mix them."""
        several = [i for i in range(len(self.demand)) if not self._alone[i]]
        low = [
            float(other[row] * self.most[row]) if self._alone[item] else 0.0
            for row, item in enumerate(self.items)
        ]
        low += [float(self.demand[i]) for i in several]
        program = LinearProgram(low, [np.inf] * len(low))
        mixed: list[list[Entry]] = [
            [(row, -float(other[row])), (len(self.items) + several.index(item), 1.0)]
            for row, item in enumerate(self.items)
            if not self._alone[item]
        ]
        program.add([0.0] * len(mixed), mixed)
        return program


def _improved(first: ScaledSide, second: ScaledSide, budget: Budget) -> tuple[Floats, Floats]:
    """The two scales, each in turn the best for the other, from the plain sizes of `first` on."""
    one = other = np.array(first.sizes) / first.longest
    most = 0.0
    for turn in range(TURNS):
        if turn % 2 == 0:
            value, other = second.best(one, budget)
        else:
            value, one = first.best(other, budget)
        if value < most + _GAIN:
            break
        most = value
    return one, other


def _proved(
    along: tuple[ScaledSide, Floats], across: tuple[ScaledSide, Floats], boards: Sequence[BoardKind]
) -> lower_bound.LowerBound:
    """The bound of two scales, in whole numbers."""
    (line, u), (other, v) = along, across
    lengths, widths = [int(x) for x in u * FULL], [int(x) for x in v * FULL]
    most = [a * b for a, b in zip(line.carried(lengths), other.carried(widths), strict=True)]
    weights: list[int | None] = [None] * len(line.demand)
    for row, item in enumerate(line.items):
        weight, known = lengths[row] * widths[row], weights[item]
        weights[item] = weight if known is None else min(known, weight)
    whole = [weight or 0 for weight in weights]
    total = sum(w * n for w, n in zip(whole, line.demand, strict=True))
    return lower_bound.farley_bound(total, most, boards)

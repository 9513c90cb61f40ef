"""One direction of a pair of conservative scales, and the best scale for it beside the other's.

For a given scale across the boards, the best one along them is the dual of a cutting stock problem
in one dimension: parts' lengths on the board's length, as often as their scaled widths say. It is
solved by column generation (Gilmore and Gomory 1961, "A linear programming approach to the
cutting-stock problem"), the columns being loads of a line. Floats search; whole numbers decide.
"""

from collections.abc import Iterator, Sequence

import numpy as np
from numpy.typing import NDArray

from fronts.cutting import work_counter
from fronts.cutting.budget import Budget
from fronts.cutting.knapsack import KnapsackTable, RoundedSizes, knapsack, rough_scale, scales
from fronts.solver import Entry, LinearProgram

Floats = NDArray[np.float64]
ROUNDS = 200
CELLS = 1_500
"""Of the line that is tried before the exact one."""
MORE_LOADS = 6
FULL = 1 << 22
"""The whole weight that stands for a full line."""
_NEAR = 1e-7


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

    @property
    def exact(self) -> bool:
        """Whether lines are measured to the whole unit."""
        return self.scale.up

    @property
    def line(self) -> int:
        """The longest line, on the scale of the sizes."""
        return self.scale.line(self.longest)

    def best_loads(self, weights: list[int]) -> NDArray[np.int64]:
        """The heaviest load of every line up to the longest."""
        return self._carries(self.scale, weights)[0].value

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
            load = table.load(len(table.value) - 1)
            yield [(row, float(n)) for row, n in load] + dust
            if not load:
                return
            for row, _n in load:
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

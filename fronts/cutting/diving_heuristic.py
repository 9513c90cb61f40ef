"""The diving heuristic: from fractions to whole boards.

Patterns that the linear program is surest of are fixed, what is left is solved again, and so on
down; every descent ends in a whole plan. Further descents each differ from the first at few steps
(limited discrepancy search), as in Sadykov, Vanderbeck, Pessoa, Tahiri and Uchoa 2019, "Primal
heuristics for branch and price: the assets of diving methods". It proves nothing.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from itertools import product
from math import inf

import numpy as np

from fronts.cutting import patterns
from fronts.cutting.budget import Budget
from fronts.cutting.column_generation import ColumnGeneration, Relaxation
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.patterns import Packing, Pattern

Finish = Callable[[list[int], list[int | None]], list[tuple[Pattern, int]]]
"""Packs what is left on the boards that are left, quickly."""

FIRST: tuple[tuple[int, ...], ...] = (
    (), (1,), (0, 1), (2,), (0, 0, 1), (1, 1), (0, 2), (3,), (0, 0, 0, 1), (1, 0, 1),
)  # fmt: skip
SKIPS = (*FIRST, *sorted(product(range(4), repeat=4), key=lambda skip: (sum(skip), skip)))
"""Which candidates each descent passes over, so that no two go the same way."""
_WHOLE = 1e-6


@dataclass(slots=True)
class DivingHeuristic:
    """One descent; `skip[k]` passes over that many candidates at the k-th doubtful step.

    Columns are priced only while the relaxed cost is less than `ease` below that of the best;
    what is asked for `sure` times or more is fixed along with the surest.
    """

    generation: ColumnGeneration
    finish: Finish
    target: int
    budget: Budget
    skip: Sequence[int] = ()
    rounds: int = 30
    ease: float = inf
    sure: float = inf
    best: Packing = field(default_factory=lambda: Packing(()))
    _fixed: list[tuple[Pattern, int]] = field(default_factory=list)

    def run(self, incumbent: Packing) -> Packing:
        """The best packing seen: the incumbent, or one that this descent came upon."""
        problem = self.generation.problem
        self.best = incumbent
        left = [item.demand for item in problem.items]
        open_boards = [board.limit for board in problem.boards]
        step = 0
        while any(left) and not self.budget.over:
            relaxed = self._relax(left, open_boards)
            before = len(self._fixed)
            if relaxed is None:
                break
            step += self._fix(relaxed, left, open_boards, step)
            if len(self._fixed) == before:
                break
            self._try(left, open_boards)
            if self._value() <= self.target:
                break
        self.generation.ask([i.demand for i in problem.items], [b.limit for b in problem.boards])
        return self.best

    def _value(self) -> int:
        problem = self.generation.problem
        return patterns.cost(self.best, problem.boards) + (10**12 if self.best.short else 0)

    def _relax(self, left: list[int], open_boards: list[int | None]) -> Relaxation | None:
        """The linear program for what is left, or None where it cannot beat the best any more."""
        self.generation.ask(left, open_boards)
        spent = sum(self.generation.costs[c.board] * n for c, n in self._fixed)
        room = self._value() - spent
        relaxed = self.generation.solve(self.budget, self.rounds, room, room - self.ease)
        return None if relaxed is None or relaxed.bound.cost >= room else relaxed

    def _fix(
        self, relaxed: Relaxation, left: list[int], open_boards: list[int | None], step: int
    ) -> int:
        """Fix the whole parts; where there are none, round one up. Whether that was doubtful."""
        amounts = relaxed.amounts
        whole = np.flatnonzero(amounts >= 1 - _WHOLE)
        for index in whole:
            self._take(int(index), int(amounts[index] + _WHOLE), left, open_boards)
        if len(whole):
            return 0
        order = [int(i) for i in np.argsort(-amounts, kind="stable") if amounts[i] > _WHOLE]
        if order:
            skip = self.skip[step] if step < len(self.skip) else 0
            chosen = order.pop(min(skip, len(order) - 1))
            self._take(chosen, 1, left, open_boards)
            for other in order:
                if amounts[other] >= self.sure and self._fits(other, left):
                    self._take(other, 1, left, open_boards)
        return 1

    def _fits(self, index: int, left: Sequence[int]) -> bool:
        return all(left[item] >= n for item, n in self.generation.columns[index].yields)

    def _take(self, index: int, times: int, left: list[int], open_boards: list[int | None]) -> None:
        column = self.generation.columns[index]
        limit = open_boards[column.board]
        often = times if limit is None else min(times, limit)
        if often <= 0:
            return
        for item, n in column.yields:
            left[item] = max(0, left[item] - n * often)
        if limit is not None:
            open_boards[column.board] = limit - often
        self._fixed.append((column, often))

    def _try(self, left: list[int], open_boards: list[int | None]) -> None:
        """Finish quickly from here, and keep that where it is better."""
        problem: IntegerProblem = self.generation.problem
        rest = self.finish(list(left), list(open_boards))
        finished = patterns.packing([*self._fixed, *rest], problem)
        if patterns.rank(finished, problem) < patterns.rank(self.best, problem):
            self.best = finished

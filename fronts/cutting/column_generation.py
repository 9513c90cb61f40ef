"""Column generation: the least cost in fractions of boards, and the bound that it proves.

The linear program over all patterns is never written down: starting from a few, the patterns that
its duals price best are added until none is left that would help (Gilmore and Gomory 1961, "A
linear programming approach to the cutting-stock problem"). Its value is close under the least
number of boards, mostly less than one board (Scheithauer and Terno 1995, "The modified integer
round-up property of the one-dimensional cutting stock problem").

The duals are floats. They are rounded down to whole weights, and exact pricing says in whole
numbers what a board can carry of them at most: that makes a bound, however far the floats are off
(`bounds/lower_bound.py`). Heuristic pricing proves nothing.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from math import ceil
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from fronts.cutting import work_counter
from fronts.cutting.bounds import lower_bound
from fronts.cutting.budget import Budget
from fronts.cutting.integer_problem import BoardKind, IntegerProblem
from fronts.cutting.patterns import Pattern
from fronts.solver import Answer, LinearProgram

WEIGHT = 1 << 36
"""The whole weight that stands for the dearest board's cost."""
_NEAR = 1e-7


@dataclass(frozen=True, slots=True)
class PricingResult:
    """Columns worth adding, and the most weight that each board can carry (None: not known)."""

    columns: list[Pattern]
    most: list[int] | None


class Pricer(Protocol):
    """Finds columns of much weight; `left` bounds how many of each item a column may yield."""

    def price(
        self, weights: list[int], wanted: list[int], left: Sequence[int], budget: Budget
    ) -> PricingResult:
        """Columns that carry more than `wanted[board]`."""


@dataclass(frozen=True, slots=True)
class Relaxation:
    """`amounts` follow the columns; `settled` when no column would improve it."""

    value: float
    amounts: NDArray[np.float64]
    weights: list[int]
    bound: lower_bound.LowerBound
    settled: bool


class ColumnGeneration:
    """The linear program over the columns known so far, for any part of the demand."""

    def __init__(self, problem: IntegerProblem, pricer: Pricer) -> None:
        self.problem, self.pricer = problem, pricer
        self.costs = [board.cost for board in problem.boards]
        self.boards, self.items = problem.boards, problem.items
        self.columns: list[Pattern] = []
        self.known: set[tuple[int, tuple[tuple[int, int], ...]]] = set()
        self._limited = [b for b, board in enumerate(self.boards) if board.limit is not None]
        self._dearest = max(*self.costs, 1)
        rows = [(float(i.demand), np.inf) for i in self.items]
        rows += [(-np.inf, float(self.boards[b].limit or 0)) for b in self._limited]
        self._program = LinearProgram([r[0] for r in rows], [r[1] for r in rows])
        lacking = [20.0 * self._dearest] * len(self.items)
        self._program.add(lacking, [[(i, 1.0)] for i in range(len(self.items))])
        self._first = self._program.columns
        self._asked = [item.demand for item in self.items]
        self._open = [board.limit for board in self.boards]
        self._yields: list[NDArray[np.int32]] = []

    def exchange(self, pairs: Iterable[tuple[int, int]]) -> None:
        """Before any pattern: let the first of each pair stand in for the second (same or smaller).

        These dual cuts steady the prices; the least cost stays what it was (Valério de Carvalho
        2005, "Using extra dual cuts to accelerate column generation").
        """
        columns = [[(larger, -1.0), (smaller, 1.0)] for larger, smaller in pairs]
        self._program.add([0.0] * len(columns), columns)
        self._first = self._program.columns

    def add(self, columns: Iterable[Pattern]) -> int:
        """Add the columns that are new; how many those were."""
        fresh = []
        for column in columns:
            key = column.board, column.yields
            if key not in self.known and column.yields:
                self.known.add(key)
                fresh.append(column)
        if fresh:
            self._program.add([self.costs[c.board] for c in fresh], [self._rows(c) for c in fresh])
            self.columns.extend(fresh)
            self._yields.extend(self._dense(c) for c in fresh)
        return len(fresh)

    def ask(self, left: Sequence[int], open_boards: Sequence[int | None]) -> None:
        """Ask for this part of the demand from these boards; unfit columns are shut."""
        for item, n in enumerate(left):
            if n != self._asked[item]:
                self._program.demand(item, float(n))
        for row, board in enumerate(self._limited, len(self.items)):
            limit = open_boards[board]
            if limit != self._open[board] and limit is not None:
                self._program.demand(row, -np.inf, float(limit))
        self._asked, self._open = list(left), list(open_boards)
        most = np.full(self._program.columns, np.inf)
        if self._yields:
            over = (np.stack(self._yields) > np.array(left, np.int32)).any(axis=1)
            most[self._first :][over] = 0.0
        most[len(self.items) : self._first] = 0.0 if self._first > len(self.items) else np.inf
        self._program.limit(most)

    def solve(
        self,
        budget: Budget,
        rounds: int,
        enough: int | None = None,
        content: float = -np.inf,
        *,
        hasty: bool = False,
    ) -> Relaxation | None:
        """Add columns until none helps, or `rounds` are done.

        It ends sooner where the bound reaches `enough`, the value comes down to `content`, or, if
        `hasty`, where further columns would prove no more.
        """
        bound, answer, settled, weights = lower_bound.NOTHING, None, False, []
        for _ in range(rounds):
            latest = self._program.solve(budget.deadline.left)
            if latest is None:
                break
            rows = len(self.items) + len(self._limited)
            work_counter.spend(work_counter.of_program(latest.steps, rows, self._program.columns))
            answer = latest
            weights = self._weights(answer)
            if answer.value <= content:
                break
            priced = self.pricer.price(weights, self._wanted(answer), self._asked, budget)
            if priced.most is not None:
                total = sum(w * n for w, n in zip(weights, self._asked, strict=True))
                bound = lower_bound.strongest(
                    [bound, lower_bound.farley_bound(total, priced.most, self._current())]
                )
            if enough is not None and bound.cost >= enough:
                break
            if hasty and bound.cost >= ceil(answer.value - _NEAR):
                break
            settled = self.add(priced.columns) == 0
            if settled or budget.over:
                break
        if answer is None:
            return None
        amounts = np.zeros(len(self.columns))
        used = answer.amounts[self._first :]
        amounts[: len(used)] = used
        return Relaxation(answer.value, amounts, weights, bound, settled)

    def _current(self) -> list[BoardKind]:
        return [
            replace(board, limit=limit)
            for board, limit in zip(self.boards, self._open, strict=True)
        ]

    def _weights(self, answer: Answer) -> list[int]:
        count = len(self.items)
        scaled = answer.duals[:count] * (WEIGHT / self._dearest)
        return [max(0, int(dual)) for dual in scaled]

    def _wanted(self, answer: Answer) -> list[int]:
        """What a column must carry to be worth adding, for each board."""
        dues = {b: -answer.duals[len(self.items) + i] for i, b in enumerate(self._limited)}
        scale = WEIGHT / self._dearest
        return [
            int((cost * (1 + _NEAR) + max(0.0, dues.get(b, 0.0))) * scale)
            for b, cost in enumerate(self.costs)
        ]

    def _rows(self, column: Pattern) -> list[tuple[int, float]]:
        rows = [(item, float(n)) for item, n in column.yields]
        if column.board in self._limited:
            rows.append((len(self.items) + self._limited.index(column.board), 1.0))
        return rows

    def _dense(self, column: Pattern) -> NDArray[np.int32]:
        row = np.zeros(len(self.items), np.int32)
        for item, n in column.yields:
            row[item] = n
        return row

"""The restricted master heuristic: the best whole choice among the patterns seen so far.

A general solver picks whole numbers of the pool's patterns that cover all parts (Sadykov and
others 2019, as in `diving_heuristic.py`). What it picks is the least of the pool, not of all
patterns.
"""

from collections.abc import Iterable, Sequence
from math import inf

from fronts.cutting import patterns, work_counter
from fronts.cutting.column_generation import WEIGHT
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.patterns import Packing, Pattern
from fronts.solver import IntegerLimits, solve_integer

MOST_COLUMNS = 20_000
TRIED = 900
TRIED_OF_FEW = 3_000
FEW = 40
"""Columns that one integer program chooses from: more where there are few items."""


class PatternPool:
    """Columns, each kept once."""

    def __init__(self, problem: IntegerProblem) -> None:
        self.problem = problem
        self._tried = TRIED_OF_FEW if len(problem.items) <= FEW else TRIED
        self._settled = False
        self.columns: dict[tuple[int, tuple[tuple[int, int], ...]], Pattern] = {}

    def add(self, columns: Iterable[Pattern]) -> None:
        """Keep the columns that are new, as long as there is room."""
        for column in columns:
            if column.yields and len(self.columns) < MOST_COLUMNS:
                self.columns.setdefault((column.board, column.yields), column)

    def cover(
        self, best: Packing, target: int, limits: IntegerLimits, weights: Sequence[int] = ()
    ) -> Packing:
        """The best of `best` and the least choice of columns that covers all parts.

        `weights` (the last prices of the parts) pick the columns that are worth trying.
        """
        problem = self.problem
        self.add(column for column, _ in best.chosen)
        columns = self._promising(weights, [column for column, _ in best.chosen])
        limited = [b for b, board in enumerate(problem.boards) if board.limit is not None]
        base = len(problem.items)
        rows = [(float(item.demand), inf) for item in problem.items]
        rows += [(0.0, float(problem.boards[b].limit or 0)) for b in limited]
        entries = []
        for column in columns:
            entry = [(item, float(n)) for item, n in column.yields]
            if column.board in limited:
                entry.append((base + limited.index(column.board), 1.0))
            entries.append(entry)
        costs = [float(problem.boards[c.board].cost) for c in columns]
        if not best.short:
            for entry, price in zip(entries, costs, strict=True):
                entry.append((len(rows), price))
            rows.append((float(target), float(patterns.cost(best, problem.boards) - 1)))
        answer = solve_integer(costs, entries, rows, limits)
        work = work_counter.of_program(answer.steps, len(rows), len(columns))
        work_counter.spend(limits.seconds if answer.late else min(work, limits.seconds))
        self._settled = not answer.late
        if answer.amounts is None:
            return best
        picked = [(c, round(n)) for c, n in zip(columns, answer.amounts, strict=True) if n > 0.5]
        chosen = patterns.packing(
            sorted(picked, key=lambda pair: -patterns.area_of(pair[0].spots)), problem
        )
        return min(best, chosen, key=lambda p: patterns.rank(p, problem))

    def widen(self) -> bool:
        """Try twice as many columns from now on; whether there is any use in that."""
        if not self._settled or self._tried >= len(self.columns):
            return False
        self._tried *= 2
        return True

    def _promising(self, weights: Sequence[int], must: Sequence[Pattern]) -> list[Pattern]:
        columns = list(self.columns.values())
        if len(columns) > self._tried:
            unit = WEIGHT if weights else max(b.length * b.width for b in self.problem.boards)
            weights = weights or [item.area for item in self.problem.items]
            boards, dearest = self.problem.boards, max(b.cost for b in self.problem.boards) or 1

            def lack(column: Pattern) -> float:
                carried = sum(weights[item] * n for item, n in column.yields)
                return boards[column.board].cost / dearest - carried / unit

            columns = sorted(columns, key=lack)[: self._tried]
        known = {(c.board, c.yields) for c in columns}
        return columns + [
            self.columns.get((c.board, c.yields), c)
            for c in must
            if (c.board, c.yields) not in known
        ]

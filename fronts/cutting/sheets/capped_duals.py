"""The bound of column generation over all patterns that cuts can make, exactly priced.

Farley's bound needs the weight of the heaviest of all patterns ("A note on bounding a class of
linear programming problems", 1990), which is hard to know where every part is wanted once. Here the
duals are kept near weights that are valid already: those of a pair of conservative scales. In
the linear program a part may also be had by itself at its weight times a little more than one; so
no dual is over that (a boxed dual, as in du Merle, Villeneuve, Desrosiers and Hansen 1999,
"Stabilized column generation"). Near valid weights few rectangles can belong to a heavy pattern, so
that all heavy patterns are found (`heavy_patterns.py`). How much more than one follows from what
is to be proved: just so much that the program's value passes one board less than the plan.
"""

from collections.abc import Iterable

import numpy as np

from fronts.cutting import work_counter
from fronts.cutting.bounds.conservative_scales import ScalePair
from fronts.cutting.bounds.lower_bound import NOTHING, LowerBound, farley_bound
from fronts.cutting.budget import Budget
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.patterns import Pattern
from fronts.cutting.sheets.heavy_patterns import HeavyPatterns
from fronts.cutting.sheets.rest_bound import worth_of
from fronts.solver import LinearProgram

ROUNDS = 40
LEAST_SLACK, MOST_SLACK, STEP = 0.002, 2.0, 1.25
"""How far duals may pass the scales' weights: from, to, and how much wider at a time."""
MARGIN = 0.005
"""How far over the boards that it is to pass the program's value must be, for what is rounded."""
ADDED = 100
"""Heavy patterns added at a time."""


class CappedDuals:
    """The linear program with capped duals, over the patterns known and the heavy ones found."""

    @staticmethod
    def serves(problem: IntegerProblem, pair: ScalePair) -> bool:
        """Boards of one kind, measured to the whole unit both ways; scales that weigh at all."""
        whole = len(problem.boards) == 1 and pair.along.exact and pair.across.exact
        return whole and worth_of(pair) > 0

    def __init__(
        self,
        problem: IntegerProblem,
        pair: ScalePair,
        known: Iterable[Pattern],
        budget: Budget,
    ) -> None:
        self._problem, self._pair, self._budget = problem, pair, budget
        count = len(problem.items)
        demand = [float(item.demand) for item in problem.items]
        self._program = LinearProgram(demand, [np.inf] * count)
        self._program.add([1.0] * count, [[(item, 1.0)] for item in range(count)])
        self._add(known)
        full = pair.carried()[0]
        self._alone = np.array([weight / full for weight in pair.weights()])
        self._worth = worth_of(pair)

    def bound(self, cost: int) -> LowerBound:
        """The bound on cost, where it may reach this."""
        board = self._problem.boards[0]
        target = cost / max(board.cost, 1) - 1 + MARGIN
        slack = LEAST_SLACK
        for _ in range(ROUNDS):
            duals = self._duals(slack)
            while duals is not None and duals[1] < target and slack < MOST_SLACK:
                slack *= STEP
                duals = self._duals(slack)
            if duals is None or duals[1] < target or self._budget.over:
                break
            heavy = HeavyPatterns(self._problem, self._pair, duals[0], self._budget)
            patterns = list(heavy.heavy(ADDED))
            if heavy.complete:
                total = sum(
                    w * item.demand for w, item in zip(duals[0], self._problem.items, strict=True)
                )
                proved = farley_bound(total, [heavy.heaviest], self._problem.boards)
                if proved.cost >= cost or not patterns:
                    return proved
            if not patterns:
                break
            self._add(patterns)
        return NOTHING

    def _add(self, patterns: Iterable[Pattern]) -> None:
        columns = [[(item, float(n)) for item, n in pattern.yields] for pattern in patterns]
        self._program.add([1.0] * len(columns), columns)

    def _duals(self, slack: float) -> tuple[list[int], float] | None:
        """Whole weights of the items and the program's value, with the duals' caps so far over."""
        self._program.price(0, self._alone * (1 + slack))
        answer = self._program.solve(self._budget.deadline.left)
        if answer is None:
            return None
        work_counter.spend(
            work_counter.of_program(answer.steps, len(self._alone), self._program.columns)
        )
        capped = np.minimum(answer.duals, self._alone * (1 + slack))
        return [max(0, int(dual * self._worth)) for dual in capped], answer.value

"""Exact pricing of sticks: the heaviest load is a knapsack, and one table serves every length.

Gilmore and Gomory 1963, "A linear programming approach to the cutting stock problem, part II".
"""

from collections.abc import Sequence

from fronts.cutting.budget import Budget
from fronts.cutting.column_generation import PricingResult
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.knapsack import KnapsackTable, RoundedSizes, knapsack, rough_scale, scales
from fronts.cutting.patterns import Pattern, stick_pattern

MORE_COLUMNS = 3
ROUGH = 2_000
"""Cells of the line that is tried before the exact one, where that has more than `FINE`."""
FINE = 20_000


class KnapsackPricer:
    """Prices sticks; exact wherever the whole unit is not absurdly fine.

    In a hurry it looks on its rough scale only, and proves nothing.
    """

    def __init__(self, problem: IntegerProblem) -> None:
        self.problem = problem
        self.sizes = [item.length for item in problem.items]
        self.longest = max(board.length for board in problem.boards)
        self.hurried = False
        self.low, self.high = scales(self.sizes, self.longest)
        fine = self.high.line(self.longest) > FINE
        self.rough = rough_scale(self.sizes, self.longest, ROUGH) if fine else None

    def price(
        self, weights: list[int], wanted: list[int], left: Sequence[int], budget: Budget
    ) -> PricingResult:
        """The best column of each board, then some that share no item with it."""
        if self.rough is not None:
            table = knapsack(self.rough.sizes, weights, left, self.rough.line(self.longest))
            if priced := self._columns(table, wanted, self.rough):
                return PricingResult(
                    self._more(priced, weights, wanted, left, self.rough, budget), None
                )
            if self.hurried:
                return PricingResult([], None)
        table, most = self._most(weights, left)
        if self.low is not self.high:
            table = knapsack(self.high.sizes, weights, left, self.high.line(self.longest))
        priced = self._columns(table, wanted, self.high)
        if self.rough is not None:
            return PricingResult(priced, most)
        return PricingResult(self._more(priced, weights, wanted, left, self.high, budget), most)

    def _more(
        self,
        priced: list[Pattern],
        weights: list[int],
        wanted: list[int],
        left: Sequence[int],
        scale: RoundedSizes,
        budget: Budget,
    ) -> list[Pattern]:
        """Further columns, each time without the items of those before."""
        rest, latest = list(left), priced
        for _ in range(MORE_COLUMNS):
            if not latest or budget.over:
                break
            for column in latest:
                for item, _n in column.yields:
                    rest[item] = 0
            table = knapsack(scale.sizes, weights, rest, scale.line(self.longest))
            latest = self._columns(table, wanted, scale)
            priced = priced + latest
        return priced

    def _most(self, weights: list[int], left: Sequence[int]) -> tuple[KnapsackTable, list[int]]:
        """What each board can carry at most: what is too small to weigh counts in full."""
        sizes = self.low.sizes
        table = knapsack(sizes, weights, left, self.low.line(self.longest))
        dust = sum(w * n for w, n, s in zip(weights, left, sizes, strict=True) if s == 0)
        boards = self.problem.boards
        return table, [int(table.value[self.low.line(b.length)]) + dust for b in boards]

    def _columns(
        self, table: KnapsackTable, wanted: list[int], scale: RoundedSizes
    ) -> list[Pattern]:
        heavier = []
        for board, size in enumerate(self.problem.boards):
            line = scale.line(size.length)
            if int(table.value[line]) > wanted[board]:
                heavier.append(stick_pattern(board, table.load(line), self.problem))
        return heavier

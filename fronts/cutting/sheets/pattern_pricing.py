"""Heuristic pricing of sheets: bottom-up packing, and strips both ways where parts are small."""

from collections.abc import Sequence

from fronts.cutting.budget import Budget
from fronts.cutting.column_generation import PricingResult
from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.patterns import Pattern, pattern_of
from fronts.cutting.sheets.bottom_up_packing import BottomUpPacker
from fronts.cutting.sheets.candidates import Candidates
from fronts.cutting.sheets.strip_packing import StripPacker

NARROW, WIDE = 140, 560
"""How many rectangles a round keeps: few at first, more once few find nothing."""
HURRIED, LOW = 8_000, 60
"""In a hurry: rectangles kept times parts left, and the least kept."""
MANY = 20
"""Parts on a sheet from which strips are worth trying too."""
MOST = 40
"""Sheets that one pricing hands over, of each board."""


class PatternPricer:
    """Finds sheets by quick fillings; it proves nothing."""

    def __init__(self, problem: IntegerProblem) -> None:
        self.problem = problem
        boards = range(len(problem.boards))
        self.keep = NARROW
        self.hurried = False
        mean = sum(i.area * i.demand for i in problem.items) / sum(i.demand for i in problem.items)
        self.small = max(b.length * b.width for b in problem.boards) > MANY * mean
        self.packers = [BottomUpPacker(problem, board) for board in boards]
        self.strips = [
            [StripPacker(problem, b, across=across) for across in (False, True)] for b in boards
        ]

    def price(
        self, weights: list[int], wanted: list[int], left: Sequence[int], budget: Budget
    ) -> PricingResult:
        """Sheets that carry more than wanted, the best of each board."""
        heavy: list[Pattern] = []
        if self.hurried:
            live = sum(w > 0 and n > 0 for w, n in zip(weights, left, strict=True))
            self.keep = max(LOW, min(WIDE, HURRIED // max(live, 1)))
        while not budget.over:
            for board in range(len(self.problem.boards)):
                spots = self._by_strips(board, weights, wanted[board], left) if self.small else []
                spots += self.packers[board].sheets(
                    weights, left, max(wanted[board], 1), self.keep, MOST
                )
                heavy.extend(pattern_of(board, placed) for placed in spots)
            if heavy or self.hurried or self.keep >= WIDE:
                break
            self.keep *= 2
        return PricingResult(heavy, None)

    def _by_strips(
        self, board: int, weights: Sequence[int], wanted: int, left: Sequence[int]
    ) -> list[list[Spot]]:
        items = self.problem.items
        live = [i for i in range(len(items)) if left[i] > 0 and weights[i] > 0]
        dense = sorted(live, key=lambda i: -weights[i] / items[i].area)
        choice = Candidates(self.problem, board, dense)
        filled = [strips.fill(weights, left, choice) for strips in self.strips[board]]
        return [spots for spots in filled if sum(weights[s.item] for s in spots) > wanted]

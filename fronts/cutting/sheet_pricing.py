"""Good sheets for given weights: strips both ways, and corners in the order of worth."""

from collections.abc import Sequence

from fronts.cutting.budget import Budget
from fronts.cutting.columns import Column, column
from fronts.cutting.generation import Priced
from fronts.cutting.lattice import Lattice
from fronts.cutting.placing import Choice
from fronts.cutting.sheet_filling import Manner, fill
from fronts.cutting.strips import Strips
from fronts.cutting.tree import Spot

MANNERS = (
    Manner("first", "big"),
    Manner("first", "rip"),
    Manner("first", "cross"),
    Manner("first", "short"),
    Manner("first", "long"),
)


class SheetPricer:
    """Finds sheets by quick fillings; it proves nothing."""

    def __init__(self, lattice: Lattice) -> None:
        self.lattice = lattice
        boards = range(len(lattice.boards))
        self.strips = [
            [Strips(lattice, b, across=across) for across in (False, True)] for b in boards
        ]

    def price(
        self, weights: list[int], wanted: list[int], left: Sequence[int], budget: Budget
    ) -> Priced:
        """Sheets that carry more than wanted, the best few of each board."""
        found: list[Column] = []
        for board in range(len(self.lattice.boards)):
            worth = []
            for spots in self.sheets(board, weights, left, budget):
                weight = sum(weights[spot.item] for spot in spots)
                if weight > wanted[board]:
                    worth.append((weight, spots))
            worth.sort(key=lambda pair: -pair[0])
            found.extend(column(board, spots) for _, spots in worth[:8])
        return Priced(found, None)

    def sheets(
        self, board: int, weights: Sequence[int], left: Sequence[int], budget: Budget
    ) -> list[list[Spot]]:
        """Sheets of much weight, by every quick way."""
        items = self.lattice.items
        live = [i for i in range(len(items)) if left[i] > 0 and weights[i] > 0]
        dense = sorted(live, key=lambda i: -weights[i] / items[i].area)
        heavy = sorted(live, key=lambda i: -weights[i])
        choices = [Choice(self.lattice, board, order) for order in (dense, heavy)]
        found = [strips.fill(weights, left, choices[0]) for strips in self.strips[board]]
        size = self.lattice.boards[board]
        for choice in choices:
            for manner in MANNERS:
                if budget.over:
                    return found
                found.append(fill(size, choice, left, manner))
        return found

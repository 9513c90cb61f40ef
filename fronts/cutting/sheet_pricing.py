"""Good sheets for given weights: strips both ways, and corners in the order of worth."""

from collections.abc import Sequence
from random import Random

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


SHAKES = 150


class SheetPricer:
    """Finds sheets by quick fillings; it proves nothing."""

    def __init__(self, lattice: Lattice) -> None:
        self.lattice = lattice
        self.random = Random(5)  # noqa: S311 (same each time)
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
        density = {i: weights[i] / items[i].area for i in live}
        dense = sorted(live, key=lambda i: -density[i])
        choice = Choice(self.lattice, board, dense)
        found = [strips.fill(weights, left, choice) for strips in self.strips[board]]
        size = self.lattice.boards[board]
        for turn in range(SHAKES):
            if budget.over:
                break
            spread = (0.05, 0.15, 0.4)[turn % 3]
            power = (0.0, 0.3, 0.6, 1.0)[turn % 4]
            worth = {
                i: density[i] ** (1 - power)
                * weights[i] ** power
                * (1 + self.random.uniform(-spread, spread))
                for i in live
            }
            choice = Choice(self.lattice, board, sorted(live, key=lambda i: -worth[i]))
            found.append(fill(size, choice, left, MANNERS[turn % len(MANNERS)]))
        return found

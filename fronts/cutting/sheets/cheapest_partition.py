"""The cheapest way to share parts out over boards, where it is known what each board can hold.

Dynamic programming over multisets: a multiset goes onto one board, or parts into two that are
shared out by themselves. What is used of limited stock is told apart, so that no limit is passed.
"""

from collections.abc import Iterator, Sequence

import numpy as np

from fronts.cutting import work_counter
from fronts.cutting.budget import Budget
from fronts.cutting.integer_problem import BoardKind
from fronts.cutting.patterns import Pattern, pattern_of
from fronts.cutting.sheets.multisets import Ints, Multisets
from fronts.cutting.sheets.shape_functions import BudgetSpentError, ShapeFunctions

Use = tuple[int, ...]
"""How many boards of each scarce kind are used."""
AREA_STEPS = 1_000
"""Of equal costs the least area is taken, told apart in so many steps of the largest board."""
_NEVER = 1 << 60


def scarce_kinds(boards: Sequence[BoardKind], parts: int) -> dict[int, int]:
    """The kinds of board of which fewer can be had than there are parts, with how many."""
    return {
        kind: board.limit
        for kind, board in enumerate(boards)
        if board.limit is not None and board.limit < parts
    }


class Sharing:
    """The least price of every multiset for every use of scarce boards.

    `shapes[kind]` is None for boards that are not to be had.
    """

    def __init__(
        self,
        multisets: Multisets,
        boards: Sequence[BoardKind],
        shapes: Sequence[ShapeFunctions | None],
        budget: Budget,
    ) -> None:
        self._multisets, self._shapes = multisets, shapes
        parts = int(multisets.size[-1])
        largest = max(board.length * board.width for board in boards)
        self._dearer = (parts + 1) * AREA_STEPS
        self._price = [
            board.cost * self._dearer + AREA_STEPS * board.length * board.width // largest
            for board in boards
        ]
        scarce = scarce_kinds(boards, parts)
        self._uses: list[Use] = list(np.ndindex(*(limit + 1 for limit in scarce.values())))
        self._one = [tuple(int(kind == s) for s in scarce) for kind in range(len(boards))]
        self._least: dict[Use, Ints] = {}
        self._fill(budget)

    def cheapest(self) -> tuple[int, list[Pattern]] | None:
        """The least cost of all parts, and the boards; None where they cannot all be placed."""
        everything = self._multisets.everything
        price, use = min((int(self._least[use][everything]), use) for use in self._uses)
        if price >= _NEVER:
            return None
        return price // self._dearer, list(self._boards(everything, use))

    def _fill(self, budget: Budget) -> None:
        for use in self._uses:
            self._least[use] = np.full(self._multisets.count, _NEVER, np.int64)
        for kind, shapes in enumerate(self._shapes):
            if shapes is not None:
                least, holds = self._least[self._one[kind]], shapes.known > 0
                least[holds] = np.minimum(least[holds], self._price[kind])
        for first, second in self._multisets.levels():
            if budget.over:
                raise BudgetSpentError
            work_counter.spend(work_counter.of_shapes(len(first) * len(self._uses) ** 2))
            together = first + second
            starts = np.flatnonzero(np.diff(together, prepend=-1))
            for use, one, other in self._use_splits():
                prices = self._least[one][first] + self._least[other][second]
                whole, least = together[starts], np.minimum.reduceat(prices, starts)
                self._least[use][whole] = np.minimum(self._least[use][whole], least)

    def _use_splits(self) -> Iterator[tuple[Use, Use, Use]]:
        for use in self._uses:
            for one in self._uses:
                other = tuple(a - b for a, b in zip(use, one, strict=True))
                if min(other, default=0) >= 0:
                    yield use, one, other

    def _boards(self, held: int, use: Use) -> Iterator[Pattern]:
        """The boards of the cheapest sharing out of a multiset with this use."""
        price = self._least[use][held]
        for kind, shapes in enumerate(self._shapes):
            fits = shapes is not None and shapes.known[held] > 0 and self._one[kind] == use
            if shapes is not None and fits and price == self._price[kind]:
                yield pattern_of(kind, shapes.spots(held))
                return
        together = self._multisets.first + self._multisets.second == held
        first, second = self._multisets.first[together], self._multisets.second[together]
        for whole, one, other in self._use_splits():
            prices = self._least[one][first] + self._least[other][second]
            if whole == use and (prices == price).any():
                pair = int((prices == price).argmax())
                yield from self._boards(int(first[pair]), one)
                yield from self._boards(int(second[pair]), other)
                return

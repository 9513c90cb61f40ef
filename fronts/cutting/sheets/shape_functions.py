"""The shape function of every multiset of parts: the least rectangles from which it can be cut.

What a cut right across parts lies side by side or one above the other; so the least rectangles of
a multiset come from those of two that it parts into, and only those that no other undercuts in
both sides are kept (Stockmeyer 1983, "Optimal orientations of cells in slicing floorplan
designs"; built up from single parts as in Wang 1983, "Two algorithms for constrained
two-dimensional cutting stock problems"). All that is cut from a board can be pushed together into
such rectangles, so nothing is lost: what is not found here cannot be cut.
"""

from collections.abc import Sequence

import numpy as np

from fronts.cutting import work_counter
from fronts.cutting.budget import Budget
from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import BoardKind, Orientation
from fronts.cutting.sheets.multisets import Ints, Multisets
from fronts.cutting.sheets.rectangles import Rectangles
from fronts.cutting.sheets.remaining_room import RemainingRoom

CHUNK = 1_000_000
"""Joins that are worked out at once."""


class BudgetSpentError(Exception):
    """The search was ended before it had tried everything."""


class ShapeFunctions:
    """The least rectangles of every multiset that one board can hold.

    Rectangles that waste more than `spare` are left out, and, where a plan is to be of one board
    `alone`, those beside which the rest finds no room.
    """

    def __init__(
        self,
        multisets: Multisets,
        board: BoardKind,
        ways: Sequence[tuple[Orientation, ...]],
        spare: int,
        budget: Budget,
        *,
        alone: bool,
    ) -> None:
        self._board, self._spare, self._budget = board, spare, budget
        self._ways = [(item, way) for item, ways in enumerate(ways) for way in ways]
        self._room = RemainingRoom(multisets, board, ways, spare, alone=alone)
        self._start = np.zeros(multisets.count, np.int64)
        self._waste = np.zeros(multisets.count, np.int64)
        self.known = np.zeros(multisets.count, np.int64)
        """How many least rectangles a multiset has; none where it cannot be cut from the board."""
        self._all = self._singles(multisets)
        self._note(self._all, 0)
        for first, second in multisets.levels():
            self._grow(first, second)

    def spots(self, held: int) -> list[Spot]:
        """Places on the board for all that a multiset holds."""
        return self._all.spots(int(self._start[held]), self._ways)

    def _singles(self, multisets: Multisets) -> Rectangles:
        held = np.array([multisets.strides[item] for item, _ in self._ways], np.int64)
        return self._room.sifted(Rectangles.singles(self._ways, held)).undominated()

    def _note(self, fresh: Rectangles, start: int) -> None:
        held, at, count = np.unique(fresh.held, return_index=True, return_counts=True)
        self._start[held], self.known[held] = start + at, count
        if len(held):
            waste = fresh.length * fresh.width - self._room.area[fresh.held]
            self._waste[held] = np.minimum.reduceat(waste, at)

    def _grow(self, first: Ints, second: Ints) -> None:
        """The least rectangles of all multisets of one size."""
        live = (self.known[first] > 0) & (self.known[second] > 0)
        live &= self._waste[first] + self._waste[second] <= self._spare
        first, second = first[live], second[live]
        ends = np.cumsum(self.known[first] * self.known[second])
        chunks, low, before = [], 0, 0
        while low < len(first):
            high = max(low + 1, int(np.searchsorted(ends, before + CHUNK)))
            chunks.append(self._joined(first[low:high], second[low:high]).undominated())
            low, before = high, int(ends[high - 1])
        if chunks:
            fresh = chunks[0].and_more(chunks[1:]).undominated()
            self._note(fresh, len(self._all.length))
            self._all = self._all.and_more([fresh])

    def _joined(self, first: Ints, second: Ints) -> Rectangles:
        """Every rectangle of `first` beside and above every one of `second`, where it fits."""
        if self._budget.over:
            raise BudgetSpentError
        joins = self.known[first] * self.known[second]
        total = int(joins.sum())
        work_counter.spend(work_counter.of_shapes(total))
        pair = np.repeat(np.arange(len(first)), joins)
        place = np.arange(total) - np.repeat(np.cumsum(joins) - joins, joins)
        row, column = np.divmod(place, self.known[second][pair])
        one, other = self._start[first][pair] + row, self._start[second][pair] + column
        held = (first + second)[pair]
        halves = []
        for beside in (True, False):
            add, larger = (np.add, np.maximum) if beside else (np.maximum, np.add)
            length = add(self._all.length[one], self._all.length[other])
            width = larger(self._all.width[one], self._all.width[other])
            fits = (length <= self._board.length) & (width <= self._board.width)
            fits &= length * width - self._room.area[held] <= self._spare
            halves.append(
                Rectangles(
                    length[fits], width[fits], held[fits], one[fits], other[fits],
                    np.full(int(fits.sum()), beside),
                )
            )  # fmt: skip
        return self._room.sifted(halves[0].and_more(halves[1:]))

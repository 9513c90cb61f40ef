"""Exact pricing of sheets whose parts repeat: the heaviest that cuts make, of any number of each.

Gilmore and Gomory's recursion ("Multistage cutting stock problems of two and more dimensions",
1965) over normal patterns (as in Cintra, Miyazawa, Wakabayashi and Xavier 2008, "Algorithms for
two-dimensional cutting stock and strip packing problems using dynamic programming and column
generation"): the best of a rectangle is a part, or the best of two rectangles. As parts may repeat
more often than they are wanted, its value bounds every real sheet; where they do not, it is one.
"""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from fronts.cutting import work_counter
from fronts.cutting.budget import Budget
from fronts.cutting.column_generation import PricingResult
from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import IntegerProblem, Orientation
from fronts.cutting.patterns import Pattern, pattern_of

MOST_POINTS = 26_000
"""Rectangles in the table; a larger one would take too long."""
MOST_LINE = 2_000


class GuillotineKnapsack:
    """Prices every board with one table; `usable` says whether the table is small enough."""

    def __init__(self, problem: IntegerProblem) -> None:
        self.problem = problem
        self.usable = all(
            item.orientations == item.bound_orientations for item in problem.items
        ) and all(
            len({ways for ways in item.bound_orientations if ways}) == 1 for item in problem.items
        )
        self.orientations = [
            next((ways for ways in i.bound_orientations if ways), ()) for i in problem.items
        ]
        self.length = max(board.length for board in problem.boards)
        self.width = max(board.width for board in problem.boards)
        self.across: list[int] = []
        self.along = _points(
            [way.length for ways in self.orientations for way in ways], self.length
        )
        self.usable = self.usable and len(self.along) <= MOST_LINE
        if self.usable:
            self.across = _points(
                [way.width for ways in self.orientations for way in ways], self.width
            )
            self.usable = len(self.along) * len(self.across) <= MOST_POINTS
        self.packed: list[Pattern] = []
        if self.usable:
            self._cuts_along = _cuts(self.along)
            self._cuts_across = _cuts(self.across)
            along, across = len(self.along), len(self.across)
            self._work = across * sum(len(a) for a, _ in self._cuts_along)
            self._work += along * sum(len(a) for a, _ in self._cuts_across)

    def price(
        self, weights: list[int], wanted: list[int], left: Sequence[int], budget: Budget
    ) -> PricingResult:
        """The heaviest sheet of each board, and its weight as what the board carries at most."""
        best, which = self._start(weights)
        self._fill(best)
        work_counter.spend(work_counter.of_cuts(len(self.along) * len(self.across), self._work))
        priced, most = [], []
        for index, board in enumerate(self.problem.boards):
            x, y = _floor(self.along, board.length), _floor(self.across, board.width)
            most.append(int(best[x, y]))
            if best[x, y] > wanted[index]:
                spots: list[Spot] = []
                self._lay(best, which, (x, y), (0, 0), spots)
                made = pattern_of(index, spots)
                priced.append(made)
                if all(n <= left[item] for item, n in made.yields):
                    self.packed.append(made)
        return PricingResult(priced, most)

    def _start(self, weights: list[int]) -> tuple[NDArray[np.int64], NDArray[np.int32]]:
        """The heaviest single part of every rectangle, and which it is."""
        shape = len(self.along), len(self.across)
        best, which = np.zeros(shape, np.int64), np.full(shape, -1, np.int32)
        self._rows: list[tuple[int, Orientation]] = [
            (item, way) for item, ways in enumerate(self.orientations) for way in ways
        ]
        for row, (item, way) in enumerate(self._rows):
            if way.length > self.length or way.width > self.width:
                continue
            x, y = _floor(self.along, way.length), _floor(self.across, way.width)
            room, names = best[x:, y:], which[x:, y:]
            names[room < weights[item]] = row
            np.maximum(room, weights[item], out=room)
        self._single = best.copy()
        return best, which

    def _fill(self, best: NDArray[np.int64]) -> None:
        for x in range(len(self.along)):
            first, second = self._cuts_along[x]
            line = best[x]
            if len(first):
                np.maximum(line, (best[first] + best[second]).max(axis=0), out=line)
            for y in range(len(self.across)):
                below, above = self._cuts_across[y]
                if len(below):
                    most = (line[below] + line[above]).max()
                    if most > line[y]:
                        line[y] = most

    def _lay(
        self,
        best: NDArray[np.int64],
        which: NDArray[np.int32],
        size: tuple[int, int],
        corner: tuple[int, int],
        spots: list[Spot],
    ) -> None:
        x, y = size
        value = best[x, y]
        if value == 0:
            return
        if value == self._single[x, y]:
            item, way = self._rows[int(which[x, y])]
            spots.append(Spot(item, *corner, way))
            return
        for axis, (first, second) in enumerate((self._cuts_along[x], self._cuts_across[y])):
            if not len(first):
                continue
            sums = (
                best[first, y] + best[second, y] if axis == 0 else best[x, first] + best[x, second]
            )
            k = int(sums.argmax())
            if sums[k] == value:
                one, other = int(first[k]), int(second[k])
                if axis == 0:
                    self._lay(best, which, (one, y), corner, spots)
                    moved = corner[0] + self.along[one], corner[1]
                    self._lay(best, which, (other, y), moved, spots)
                else:
                    self._lay(best, which, (x, one), corner, spots)
                    moved = corner[0], corner[1] + self.across[one]
                    self._lay(best, which, (x, other), moved, spots)
                return


def _points(sizes: Sequence[int], line: int) -> list[int]:
    """Nothing, and every sum of sizes that fits the line; too many end early."""
    reached = {0}
    for size in sorted(set(sizes)):
        if len(reached) > MOST_LINE:
            break
        fresh = set(reached)
        while fresh and len(reached) <= MOST_LINE:
            fresh = {at + size for at in fresh if at + size <= line} - reached
            reached |= fresh
    return sorted(reached)


def _floor(points: Sequence[int], at: int) -> int:
    return int(np.searchsorted(np.array(points), at, side="right")) - 1


def _cuts(points: Sequence[int]) -> list[tuple[NDArray[np.int64], NDArray[np.int64]]]:
    """For every size, the pairs of points that a cut divides it into."""
    places = np.array(points, np.int64)
    pairs = []
    for size in points:
        last = int(np.searchsorted(places, size // 2, side="right"))
        first = np.arange(1, last)
        second = np.searchsorted(places, size - places[1:last], side="right") - 1
        pairs.append((first, second))
    return pairs

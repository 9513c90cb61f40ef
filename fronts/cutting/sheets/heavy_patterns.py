"""Every pattern that is heavier than a board is worth, for given weights: exact pricing.

Rectangles are joined to larger ones as in Wang 1983 ("Two algorithms for constrained
two-dimensional cutting stock problems"), but nothing is dropped that a heavy pattern may need:
where a rectangle's weight and all that has room beside it (`rest_bound.py`) come to no more than
the board's worth, no heavy pattern holds it. If the search comes to its end, then no pattern is
heavier than the heaviest found, or than the worth.
"""

from collections.abc import Iterator, Sequence

import numpy as np
from numpy.typing import NDArray

from fronts.cutting import work_counter
from fronts.cutting.bounds.conservative_scales import ScalePair
from fronts.cutting.budget import Budget
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.patterns import Pattern, pattern_of
from fronts.cutting.sheets.multisets import Ints
from fronts.cutting.sheets.packed_counts import PackedCounts
from fronts.cutting.sheets.rectangles import Rectangles
from fronts.cutting.sheets.rest_bound import RestBound

CHUNK = 1_000_000
"""Pairs that are looked at at once."""
MOST_RECTANGLES, MOST_JOINED = 60_000, 1_000_000
"""Beyond so many the search is given up."""
ENOUGH = 60
"""Heavy patterns that are worth adding before more are looked for."""


class HeavyPatterns:
    """Patterns of the first board; `complete` says that none that is heavier was missed."""

    def __init__(
        self, problem: IntegerProblem, pair: ScalePair, weights: Sequence[int], budget: Budget
    ) -> None:
        self._board, self._budget = problem.boards[0], budget
        self._rest = RestBound(pair, weights)
        self.worth = self._rest.worth
        self._unit = pair.along.scale.bottom, pair.across.scale.bottom
        self._counts = PackedCounts([item.demand for item in problem.items])
        self._ways = [
            (index, way)
            for index, item in enumerate(problem.items)
            for way in item.bound_orientations[0]
            if weights[index] > 0
        ]
        self._weight = np.array([weights[item] for item, _ in self._ways], np.int64)
        self._all = self._singles()
        self.complete = True
        fresh = self._live = np.flatnonzero(self._promising(self._all, self._weight))
        while len(fresh):
            fresh = self._grow(fresh)
            if self.complete and np.count_nonzero(self._weight > self.worth) >= ENOUGH:
                self.complete = not len(fresh)
                break

    @property
    def heaviest(self) -> int:
        """The weight of the heaviest pattern found, or the worth of a board."""
        return max(self.worth, int(self._weight.max(initial=0)))

    def heavy(self, most: int) -> Iterator[Pattern]:
        """Patterns heavier than the worth, the heaviest first, each set of parts once."""
        heavy = self._live[self._weight[self._live] > self.worth]
        seen: set[bytes] = set()
        for which in heavy[np.argsort(-self._weight[heavy], kind="stable")]:
            held = self._all.held[which].tobytes()
            if held not in seen and len(seen) < most:
                seen.add(held)
                yield pattern_of(0, self._all.spots(int(which), self._ways))

    def _singles(self) -> Rectangles:
        held = np.array([self._counts.single(item) for item, _ in self._ways], np.int64)
        return Rectangles.singles(self._ways, held.reshape(len(self._ways), self._counts.words))

    def _promising(self, made: Rectangles, weight: Ints) -> NDArray[np.bool_]:
        """Whether a heavy pattern may hold these."""
        length, width = made.length // self._unit[0], made.width // self._unit[1]
        return np.asarray(weight + self._rest.beside(length, width) > self.worth)

    def _grow(self, fresh: Ints) -> Ints:
        """Join what is fresh with all there is; the rectangles worth keeping that come of it."""
        joined: list[tuple[Rectangles, Ints]] = []
        rows = max(1, CHUNK // len(self._live))
        for low in range(0, len(fresh), rows):
            joined.extend(self._joined(fresh[low : low + rows]))
            tried = sum(len(weight) for _, weight in joined)
            if self._budget.over or tried > MOST_JOINED:
                self.complete = False
                break
        start = len(self._all.length)
        self._all = self._all.and_more([made for made, _ in joined])
        self._weight = np.concatenate([self._weight, *(weight for _, weight in joined)])
        known = np.concatenate([self._live, np.arange(start, len(self._all.length))])
        self._live = known[self._all.picked(known).undominated_rows()]
        if not self.complete or len(self._live) > MOST_RECTANGLES:
            self.complete = False
            return self._live[:0]
        return self._live[self._live >= start]

    def _joined(self, fresh: Ints) -> Iterator[tuple[Rectangles, Ints]]:
        """Fresh rectangles beside and above all live ones, where they fit and may be needed."""
        live, every = self._live, self._all
        once = live[None, :] <= fresh[:, None]
        work_counter.spend(work_counter.of_pairs(once.size, 0))
        for beside in (True, False):
            sizes, room = (
                (every.length, self._board.length) if beside else (every.width, self._board.width)
            )
            fits = once & (sizes[fresh][:, None] + sizes[live][None, :] <= room)
            one, other = np.nonzero(fits)
            one, other = fresh[one], live[other]
            held = every.held[one] + every.held[other]
            within = self._counts.within(held)
            one, other, held = one[within], other[within], held[within]
            work_counter.spend(work_counter.of_pairs(0, len(one)))
            add, larger = (np.add, np.maximum) if beside else (np.maximum, np.add)
            made = Rectangles(
                add(every.length[one], every.length[other]),
                larger(every.width[one], every.width[other]),
                held, one, other, np.full(len(one), beside),
            )  # fmt: skip
            weight = self._weight[one] + self._weight[other]
            keep = self._promising(made, weight)
            yield made.picked(keep), weight[keep]

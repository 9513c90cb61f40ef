"""Bottom-up packing: parts joined to rectangles, and those joined again, for given weights.

Wang's way ("Two algorithms for constrained two-dimensional cutting stock problems", 1983), as a
beam search: of each round's rectangles only the most promising stay, those of most weight for
their area. A join side by side or one above the other is a cut right across, so all that comes out
can be sawn. It is heuristic pricing: what it does not find may exist.
"""

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from fronts.cutting import work_counter
from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.sheets.rectangles import Rectangles

Ints = NDArray[np.int64]
Floats = NDArray[np.float64]
ROUNDS = 5
"""Doublings: a sheet of up to 2**ROUNDS parts."""
MOST_PARTS = 1_200
"""Ways for single parts to lie, of the densest."""
CANDIDATES = 10
"""Joins that are looked at for each one that is kept."""

SAMPLE = 2_000
"""Joins by which the least promise worth looking at is judged."""
_ROUGH = 1e-4


class BottomUpPacker:
    """Builds sheets of one board."""

    def __init__(self, problem: IntegerProblem, board: int) -> None:
        self.size = problem.boards[board]
        self.area = self.size.length * self.size.width
        self.ways = [
            (i, way) for i, item in enumerate(problem.items) for way in item.orientations[board]
        ]
        self.item = np.array([item for item, _ in self.ways], np.int64)
        none = np.zeros((len(self.ways), 0), np.int16)
        self.singles = Rectangles.singles(self.ways, none)

    def sheets(
        self,
        weights: Sequence[int],
        left: Sequence[int],
        full: int,
        keep: int,
        most: int,
    ) -> list[list[Spot]]:
        """Up to `most` sheets of more than `full` weight, the heaviest first.

        A board is worth `full`; each round keeps `keep` rectangles.
        """
        worth = np.array(weights, float)[self.item] / full if len(self.item) else np.empty(0)
        live = np.flatnonzero((worth > 0) & (np.array(left)[self.item] > 0))
        if len(live) > MOST_PARTS:
            density = worth[live] / (self.singles.length[live] * self.singles.width[live])
            live = live[np.argsort(-density, kind="stable")[:MOST_PARTS]]
        if not len(live):
            return []
        names, column = np.unique(self.item[live], return_inverse=True)
        demand = np.minimum(np.array(left)[names], 30_000).astype(np.int16)
        counts = np.zeros((len(live), len(names)), np.int16)
        counts[np.arange(len(live)), column] = 1
        built = replace(self.singles.picked(live), held=counts)
        return self._heaviest(*self._grown(built, worth[live], demand, keep), most)

    def _grown(
        self, built: Rectangles, weight: Floats, demand: NDArray[np.int16], keep: int
    ) -> tuple[Rectangles, Floats]:
        key = np.random.default_rng(1).integers(1, 1 << 40, len(demand))
        start = 0
        for _ in range(ROUNDS):
            end = len(built.length)
            more = self._joined(built, weight, np.arange(start, end), demand, key, keep)
            if more is None:
                break
            start = end
            built = built.and_more([more[0]])
            weight = np.concatenate([weight, more[1]])
        return built, weight

    def _joined(
        self,
        built: Rectangles,
        weights: Floats,
        fresh: Ints,
        demand: NDArray[np.int16],
        key: Ints,
        keep: int,
    ) -> tuple[Rectangles, Floats] | None:
        """The most promising joins of what is fresh with all there is."""
        work_counter.spend(work_counter.of_joins(len(fresh) * len(built.length), keep, len(demand)))
        first, second, beside = self._pairs(built, weights, fresh, keep * CANDIDATES)
        if not len(first):
            return None
        both = built.length[first] + built.length[second], built.width[first] + built.width[second]
        larger = (
            np.maximum(built.length[first], built.length[second]),
            np.maximum(built.width[first], built.width[second]),
        )
        length, width = np.where(beside, both[0], larger[0]), np.where(beside, larger[1], both[1])
        weight = weights[first] + weights[second]
        counts = built.held[first] + built.held[second]
        fits = (counts <= demand).all(axis=1)
        fits &= (length <= self.size.length) & (width <= self.size.width)
        top = np.flatnonzero(fits)
        promise = weight[top] - length[top] * width[top] / self.area
        top = top[np.argsort(-promise, kind="stable")]
        same = (counts[top] @ key) * 31 + length[top] * 7 + width[top]
        top = top[np.sort(np.unique(same, return_index=True)[1])[:keep]]
        if not len(top):
            return None
        made = Rectangles(length, width, counts, first, second, beside)
        return made.picked(top), weight[top]

    def _pairs(
        self, built: Rectangles, carried: Floats, fresh: Ints, most: int
    ) -> tuple[Ints, Ints, NDArray[np.bool_]]:
        """About `most` pairs that promise most: rough figures, to be looked at again."""
        weight = carried.astype(np.float32)
        sides = [
            (built.length / self.size.length).astype(np.float32),
            (built.width / self.size.width).astype(np.float32),
        ]
        start = int(fresh[0])
        weights = weight[start:, None] + weight[None, :]
        weights[:, start:][np.triu_indices(len(fresh), 1)] = -np.inf
        promises = []
        for one, other in (sides, sides[::-1]):
            along = one[start:, None] + one[None, :]
            promise = np.maximum(other[start:, None], other[None, :])
            promise *= along
            np.subtract(weights, promise, out=promise)
            promise[along > 1 + _ROUGH] = -np.inf
            promises.append(promise.ravel())
        flat = np.concatenate(promises)
        least = -np.inf
        if len(flat) > most:
            sample = flat[:: -(-len(flat) // SAMPLE)]
            cut = max(1, most * len(sample) // len(flat))
            least = float(np.partition(sample, -cut)[-cut])
        picked = np.flatnonzero((flat >= least) & (flat > -np.inf))[: 2 * most]  # ties may be many
        pair, half = picked % len(promises[0]), picked < len(promises[0])
        return start + pair // len(weight), pair % len(weight), half

    def _heaviest(self, built: Rectangles, weight: Floats, most: int) -> list[list[Spot]]:
        over = np.flatnonzero(weight > 1)
        order = over[np.argsort(-weight[over], kind="stable")]
        seen: set[bytes] = set()
        sheets: list[list[Spot]] = []
        for node in order:
            counts = built.held[node].tobytes()
            if counts in seen:
                continue
            seen.add(counts)
            sheets.append(built.spots(int(node), self.ways))
            if len(sheets) == most:
                break
        return sheets

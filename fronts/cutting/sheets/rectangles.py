"""Rectangles that hold parts, as arrays, and which of them are worth keeping."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import Orientation
from fronts.cutting.sheets.multisets import Ints


@dataclass(slots=True)
class Rectangles:
    """Sizes, the multiset that each holds, and the two rectangles that it is joined of.

    A multiset is a whole number, or a row of them.

    `second` is -1 for a single part; `first` then says which, and which way it lies.
    """

    length: Ints
    width: Ints
    held: NDArray[np.signedinteger[Any]]
    first: Ints
    second: Ints
    beside: NDArray[np.bool_]

    @classmethod
    def singles(
        cls, ways: Sequence[tuple[int, Orientation]], held: NDArray[np.signedinteger[Any]]
    ) -> "Rectangles":
        """Single parts in their ways to lie, with the multiset that each is."""
        count = len(ways)
        return cls(
            np.array([way.length for _, way in ways], np.int64),
            np.array([way.width for _, way in ways], np.int64),
            held, np.arange(count), np.full(count, -1, np.int64), np.zeros(count, np.bool_),
        )  # fmt: skip

    def picked(self, which: NDArray[np.bool_] | Ints) -> "Rectangles":
        """Some of them."""
        return Rectangles(*(getattr(self, name)[which] for name in self.__slots__))

    def and_more(self, more: Sequence["Rectangles"]) -> "Rectangles":
        """These, and others after them."""
        return Rectangles(
            *(
                np.concatenate([getattr(rectangles, name) for rectangles in (self, *more)])
                for name in self.__slots__
            )
        )

    def undominated(self) -> "Rectangles":
        """Those that no other of the same multiset undercuts, multiset by multiset."""
        return self.picked(self.undominated_rows())

    def undominated_rows(self) -> Ints:
        """The places of those; of equal rectangles, that of the first."""
        held = self.held if self.held.ndim > 1 else self.held[:, None]
        order = np.lexsort((self.width, self.length, *held.T))
        other = np.ones(len(order), np.bool_)
        other[1:] = (held[order[1:]] != held[order[:-1]]).any(axis=1)
        step = int(self.width.max(initial=0)) + 1
        width = self.width[order] - np.cumsum(other) * step  # later multisets lie lower
        least = np.ones(len(order), np.bool_)
        least[1:] = width[1:] < np.minimum.accumulate(width)[:-1]
        return np.asarray(order[least])

    def spots(self, which: int, ways: Sequence[tuple[int, Orientation]]) -> list[Spot]:
        """Places for all that a rectangle holds; `ways` are the items and how single parts lie."""
        spots: list[Spot] = []
        waiting = [(which, 0, 0)]
        while waiting:
            at, x, y = waiting.pop()
            first, second = int(self.first[at]), int(self.second[at])
            if second < 0:
                item, way = ways[first]
                spots.append(Spot(item, x, y, way))
                continue
            beside = bool(self.beside[at])
            right, up = int(self.length[first]), int(self.width[first])
            waiting.append((second, x + right if beside else x, y if beside else y + up))
            waiting.append((first, x, y))
        return spots

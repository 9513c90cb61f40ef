"""Rectangles that hold parts, as arrays, and which of them are worth keeping."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from fronts.cutting.sheets.multisets import Ints


@dataclass(slots=True)
class Rectangles:
    """Sizes, the multiset that each holds, and the two rectangles that it is joined of.

    `second` is -1 for a single part; `first` then says which, and which way it lies.
    """

    length: Ints
    width: Ints
    held: Ints
    first: Ints
    second: Ints
    beside: NDArray[np.bool_]

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
        order = np.lexsort((self.width, self.length, self.held))
        _, group = np.unique(self.held[order], return_inverse=True)
        step = int(self.width.max(initial=0)) + 1
        width = self.width[order] - group * step  # later groups lie lower: one running minimum
        least = np.ones(len(order), np.bool_)
        least[1:] = width[1:] < np.minimum.accumulate(width)[:-1]
        return self.picked(order[least])

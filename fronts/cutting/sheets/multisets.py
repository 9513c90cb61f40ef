"""Every multiset of the parts, and every way to part one in two, as arrays.

A multiset is a number in mixed radix: `count * stride`, summed over the items. What two disjoint
multisets hold together is then the sum of their numbers.
"""

from collections.abc import Iterator, Sequence
from math import prod

import numpy as np
from numpy.typing import NDArray

Ints = NDArray[np.int64]


def splits_of(demand: Sequence[int]) -> int:
    """How many pairs of disjoint multisets there are, the order of the two counting."""
    return prod((n + 1) * (n + 2) // 2 for n in demand)


class Multisets:
    """The multisets of at most `demand[i]` of each item; `size` says how many parts each holds."""

    def __init__(self, demand: Sequence[int]) -> None:
        self.demand = list(demand)
        self.strides: list[int] = []
        self.count = 1
        self.size = np.zeros(1, np.int64)
        first, second = np.zeros(1, np.int64), np.zeros(1, np.int64)
        for n in demand:
            stride = self.count
            self.strides.append(stride)
            self.count *= n + 1
            self.size = (np.arange(n + 1)[:, None] + self.size).ravel()
            counts = [(one, other) for one in range(n + 1) for other in range(n + 1 - one)]
            one, other = np.array(counts, np.int64).T * stride
            first = (one[:, None] + first).ravel()
            second = (other[:, None] + second).ravel()
        once = (first > 0) & (first <= second)
        first, second = first[once], second[once]
        order = np.lexsort((first + second, self.size[first + second]))
        self.first, self.second = first[order], second[order]

    @property
    def everything(self) -> int:
        """The multiset of all parts."""
        return self.count - 1

    def held(self, item: int) -> Ints:
        """How many of an item each multiset holds."""
        stride = self.strides[item]
        return np.arange(self.count) // stride % (self.demand[item] + 1)

    def levels(self) -> Iterator[tuple[Ints, Ints]]:
        """The pairs that make a multiset of two parts, then those of three, and so on."""
        sizes = self.size[self.first + self.second]
        for size in range(2, int(self.size[-1]) + 1):
            low, high = np.searchsorted(sizes, [size, size + 1])
            yield self.first[low:high], self.second[low:high]

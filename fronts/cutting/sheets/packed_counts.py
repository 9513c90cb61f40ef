"""Multisets packed into a few whole numbers: a field of bits for each item's count.

Each field has one bit more than its demand needs. Two multisets are added by adding the numbers;
with an offset added too, that bit of a field is set just where its demand is passed.
"""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from fronts.cutting.sheets.multisets import Ints

WORD = 62


class PackedCounts:
    """The fields of the items; a multiset is a row of `words` numbers."""

    def __init__(self, demand: Sequence[int]) -> None:
        self._fields: list[tuple[int, int]] = []
        offsets, guards = [0], [0]
        used = 0
        for most in demand:
            bits = most.bit_length()
            if used + bits + 1 > WORD:
                offsets.append(0)
                guards.append(0)
                used = 0
            self._fields.append((len(guards) - 1, used))
            offsets[-1] += ((1 << bits) - 1 - most) << used
            guards[-1] += 1 << (used + bits)
            used += bits + 1
        self.words = len(guards)
        self._offset, self._guard = np.array(offsets), np.array(guards)

    def single(self, item: int) -> Ints:
        """One of an item."""
        word, shift = self._fields[item]
        row = np.zeros(self.words, np.int64)
        row[word] = 1 << shift
        return row

    def within(self, counts: Ints) -> NDArray[np.bool_]:
        """Whether sums of two multisets pass no demand."""
        return np.asarray((((counts + self._offset) & self._guard) == 0).all(axis=-1))

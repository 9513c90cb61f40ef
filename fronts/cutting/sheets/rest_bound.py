"""How much weight there is room for on a board beside a rectangle that is cut from it.

Let conservative scales weigh a board 1. Of a line, a rectangle leaves what the heaviest load of the
rest of it weighs; taking for its own weight what is then missing to a full line keeps both scales
conservative. So whatever lies on the board beside it has a product of scales of at most 1 less the
rectangle's (Fekete and Schepers 2004, as in `bounds/conservative_scales.py`), and a weight of at
most that times the greatest ratio of weight to product among what fits beside or above.
"""

from collections.abc import Sequence

import numpy as np

from fronts.cutting.bounds.conservative_scales import ScalePair
from fronts.cutting.sheets.multisets import Ints

SHIFT = 8
"""Bits dropped of a product of two scales, so that products with a ratio stay whole numbers."""
RATIO = 20
"""Bits after the point of a ratio."""


def worth_of(pair: ScalePair) -> int:
    """What a board is worth beside these scales, in whole weight."""
    return pair.carried()[0] >> SHIFT


class RestBound:
    """For weights of which a board is worth `worth`; all is rounded so that the bound holds."""

    def __init__(self, pair: ScalePair, weights: Sequence[int]) -> None:
        along, across = pair.along, pair.across
        self._length, self._width = along.line, across.line
        self._loads_along, self._loads_across = (
            along.best_loads(pair.lengths),
            across.best_loads(pair.widths),
        )
        self._full = pair.carried()[0]
        self.worth = worth_of(pair)
        self._ratio_along = np.zeros(self._length + 1, np.int64)
        self._ratio_across = np.zeros(self._width + 1, np.int64)
        for row, item in enumerate(along.items):
            product = pair.lengths[row] * pair.widths[row]
            if weights[item] == 0:
                continue
            ratio = -((-weights[item] * self._full << RATIO) // (self.worth * product))
            size = along.scale.sizes[row], across.scale.sizes[row]
            for table, at in zip((self._ratio_along, self._ratio_across), size, strict=True):
                table[at] = max(int(table[at]), ratio)
        self._ratio_along = np.maximum.accumulate(self._ratio_along)
        self._ratio_across = np.maximum.accumulate(self._ratio_across)

    def beside(self, length: Ints, width: Ints) -> Ints:
        """The weight of all that may lie on the board with rectangles of these sizes."""
        along, across = self._length - length, self._width - width
        own = self._loads_along[-1] - self._loads_along[along]
        own = own * (self._loads_across[-1] - self._loads_across[across])
        share = ((self._full - own) >> SHIFT) + 1
        ratio = np.maximum(self._ratio_along[along], self._ratio_across[across])
        return np.asarray((ratio * share >> RATIO) + 1)

"""What no plan can be completed from: rectangles that waste too much of a board already.

The rest of the board beside and above a rectangle is waste as far as no part that is left can lie
there. A plan may waste no more than its boards' area less the parts' (`spare`); where one board
must do, all that is left must find room beside or above.
"""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from fronts.cutting.integer_problem import BoardKind, Orientation
from fronts.cutting.sheets.multisets import Multisets
from fronts.cutting.sheets.rectangles import Rectangles

_FAR = 1 << 60


class RemainingRoom:
    """Judges the rectangles of one board; `alone` where no second board is to be used."""

    def __init__(
        self,
        multisets: Multisets,
        board: BoardKind,
        ways: Sequence[tuple[Orientation, ...]],
        spare: int,
        *,
        alone: bool,
    ) -> None:
        self._board, self._spare, self._alone = board, spare, alone
        areas = [ways[0].length * ways[0].width if ways else 0 for ways in ways]
        shortest = [min((way.length for way in ways), default=_FAR) for ways in ways]
        narrowest = [min((way.width for way in ways), default=_FAR) for ways in ways]
        self._items = list(zip(areas, shortest, narrowest, strict=True))
        self.area = np.zeros(multisets.count, np.int64)
        """The area of the parts that a multiset holds."""
        self._left = []
        self._shortest = np.full(multisets.count, _FAR)
        self._narrowest = np.full(multisets.count, _FAR)
        for item, (area, short, narrow) in enumerate(self._items):
            held = multisets.held(item)
            left = multisets.demand[item] - held
            self._left.append(left)
            self.area += held * area
            self._shortest[left > 0] = np.minimum(self._shortest[left > 0], short)
            self._narrowest[left > 0] = np.minimum(self._narrowest[left > 0], narrow)

    def sifted(self, made: Rectangles) -> Rectangles:
        """What a plan may still be completed from, with the room that is waste taken in."""
        taken = self._board.length - made.length < self._shortest[made.held]
        made.length[taken] = self._board.length
        taken = self._board.width - made.width < self._narrowest[made.held]
        made.width[taken] = self._board.width
        made = made.picked(made.length * made.width - self.area[made.held] <= self._spare)
        return made.picked(self._rest_fits(made)) if self._alone else made

    def _rest_fits(self, made: Rectangles) -> NDArray[np.bool_]:
        """Whether each part left fits beside or above, and those that fit there only, together."""
        beside, above = self._board.length - made.length, self._board.width - made.width
        only_beside, only_above = np.zeros_like(beside), np.zeros_like(above)
        fits = np.ones(len(beside), np.bool_)
        for (area, shortest, narrowest), left in zip(self._items, self._left, strict=True):
            needed = left[made.held] * area
            goes_beside, goes_above = shortest <= beside, narrowest <= above
            fits &= goes_beside | goes_above | (needed == 0)
            only_beside += np.where(goes_above, 0, needed)
            only_above += np.where(goes_beside, 0, needed)
        fits &= only_beside <= beside * self._board.width
        return np.asarray(fits & (only_above <= above * self._board.length))

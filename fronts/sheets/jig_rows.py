"""A cabinet's jigs beside one another, each drawn as far as its heading does not say it.

A block without a slot looks the same all along, so its side says what it is; the whole of it
is on the sheet of jigs.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from fronts.drawings.jig import jig_height
from fronts.drawings.svg import Px
from fronts.rules.fitting_results import Jig
from fronts.sheets.drawing_rooms import SPACE
from fronts.sheets.fitting_drawings import CabinetDrawings, Drawn
from fronts.sheets.page_height import HEADING

_WITH_SLOT: tuple[Px, Px] = (300_00, 130_00)
_SIDE: tuple[Px, Px] = (154_00, 80_00)
ASIDE: Px = _SIDE[0] + SPACE
"""What a column of sides takes."""
_SIDE_HEADING = 2
"""Lines over a side's drawing."""


@dataclass(frozen=True, slots=True)
class JigRows:
    """Rows of jigs, one over another."""

    rows: tuple[tuple[Jig, ...], ...] = ()

    @property
    def height(self) -> Px:
        """About how high they come out with their headings."""
        return sum(max(_height(jig) for jig in row) for row in self.rows)

    @property
    def wide(self) -> bool:
        """Whether one of them takes half a page."""
        return any(jig.slot for row in self.rows for jig in row)

    def drawn(self, of: CabinetDrawings) -> Iterator[tuple[Drawn, ...]]:
        for row in self.rows:
            yield tuple(of.jig(jig, _room(jig), side_only=jig.slot is None) for jig in row)


def jig_rows(jigs: Sequence[Jig], width: Px) -> JigRows:
    """As many in a row as the width holds."""
    rows: list[list[Jig]] = []
    left = 0
    for jig in jigs:
        wide = _room(jig)[0] + SPACE
        if left < wide:
            rows.append([])
            left = width
        rows[-1].append(jig)
        left -= wide
    return JigRows(tuple(tuple(row) for row in rows))


def _room(jig: Jig) -> tuple[Px, Px]:
    return _SIDE if jig.slot is None else _WITH_SLOT


def _height(jig: Jig) -> Px:
    side_only = jig.slot is None
    heading = HEADING * (_SIDE_HEADING if side_only else 1)
    return heading + jig_height(jig, _room(jig), side_only=side_only)

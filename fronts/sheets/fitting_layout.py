"""Where a fitting sheet's drawings go, so that the cabinet is drawn as large as its page allows.

What stands beside them in words is as high as it is; drawings take what is left. On one page
the cabinet stands at the left, the backs of its fronts in a grid at its right. Where that would
leave too little to read, the cabinet's own drawing fills a first page, and the backs stand on
the second, over the figures; beside a tall cabinet there is room for them on the first.
"""

from dataclasses import dataclass, replace
from functools import partial
from typing import TypeAlias

from fronts.drawings.svg import Px
from fronts.sheets.drawing_rooms import (
    LEAST_BACK,
    SPACE,
    Arranged,
    Backs,
    backs_in_rows,
    one_over_another,
    side_by_side,
)
from fronts.sheets.fitting_drawings import CabinetDrawings, Drawn
from fronts.sheets.jig_rows import ASIDE, JigRows, jig_rows
from fronts.sheets.page_height import HEADING, PAGE, WIDTH, Above, Below

_LEAST_HEIGHT: Px = 160_00
"""Of a drawing, whatever else its page holds."""

_TALL = 2
"""A cabinet so many times as high as wide leaves room beside it on a page of its own, which is
used where the words alone fill most of the second."""


Rows: TypeAlias = tuple[tuple[Drawn, ...], ...]


@dataclass(frozen=True, slots=True)
class Drawings:
    """What is drawn: the cabinet, what stands beside it, what follows, and one box's jigs.

    With `two_pages`, what follows begins the second. `jigs_wide` take half a page. `aside` is
    at the right of all.
    """

    cabinet: Drawn
    beside: Rows = ()
    aside: Rows = ()
    after: Rows = ()
    jigs: Rows = ()
    jigs_wide: bool = False
    two_pages: bool = False


def lay_out(of: CabinetDrawings, above: Above, below: Below) -> Drawings:
    """All drawings of a cabinet, in the rooms that the words leave them."""
    one_box = below.one_box
    if below.jig_aside:
        words = below.height(0, wide=False)
        sheet = _Sheet(of, above.height, words, JigRows(), jig_rows(of.jigs, ASIDE))
        return sheet.on_one_page() or sheet.on_two_pages()
    rows = jig_rows(of.jigs, WIDTH)
    words = below.height(rows.height if one_box else 0, wide=rows.wide)
    several, alone = (JigRows(), rows) if one_box else (rows, JigRows())
    sheet = _Sheet(of, above.height, words, several, JigRows())
    found = sheet.on_one_page() or sheet.on_two_pages()
    return replace(found, jigs=tuple(alone.drawn(of)), jigs_wide=alone.wide)


@dataclass(frozen=True, slots=True)
class _Sheet:
    of: CabinetDrawings
    above: Px
    below: Px
    rows: JigRows
    aside: JigRows

    def on_one_page(self) -> Drawings | None:
        """All of it, where it can still be read."""
        height = PAGE - self.above - self.below
        if not self.of.bored:
            if height < _LEAST_HEIGHT:
                return None
            return Drawings(self._cabinet(height))
        beside, under = self._ways(height)
        if self.aside.rows:
            found = replace(self._beside(under, jigs_beside=False), aside=self._aside())
            return found if under.readable and height >= self.aside.height else None
        over = one_over_another(self.of.cabinet, self.of.bored, height - self.rows.height)
        best = max(beside, under, over, key=Arranged.merit)
        if not best.readable:
            return None
        if best is over:
            return self._over(over.cabinet, over.backs)
        return self._beside(best, jigs_beside=best is beside)

    def on_two_pages(self) -> Drawings:
        """The cabinet on the first page, and the backs where there is more room for them."""
        if self.aside.rows:
            return replace(self, rows=self.aside, aside=JigRows()).on_two_pages()
        first, second = PAGE - self.above, PAGE - self.below - self.rows.height
        if not self.of.bored:
            return Drawings(self._cabinet(first), two_pages=True)
        backs = backs_in_rows(self.of.bored, WIDTH, second)
        tall = self.of.cabinet.height >= _TALL * self.of.cabinet.width
        if (tall and self.below > PAGE // 2) or backs.scale < LEAST_BACK:
            beside, _ = self._ways(max(first, _LEAST_HEIGHT))
            return replace(self._beside(beside, jigs_beside=True), two_pages=True)
        room = WIDTH, max(first, _LEAST_HEIGHT) - HEADING
        return replace(self._over(room, backs), two_pages=True)

    def _ways(self, height: Px) -> tuple[Arranged, Arranged]:
        """With the jigs of several boxes under the backs, or under all of it."""
        reckon = partial(side_by_side, self.of.cabinet, self.of.bored)
        jigs = self.of.jigs if self.rows.rows else ()
        width = WIDTH - ASIDE - SPACE if self.aside.rows else WIDTH
        return (
            reckon(height, lambda wide: jig_rows(jigs, wide).height),
            reckon(height - self.rows.height, lambda _: 0, width),
        )

    def _beside(self, best: Arranged, *, jigs_beside: bool) -> Drawings:
        jigs = self.of.jigs if self.rows.rows else ()
        under = jig_rows(jigs, best.column) if jigs_beside else JigRows()
        after = JigRows() if jigs_beside else self.rows
        return Drawings(
            self.of.elevation(best.cabinet),
            beside=(*self._backs(best.backs), *under.drawn(self.of)),
            after=tuple(after.drawn(self.of)),
        )

    def _aside(self) -> Rows:
        return tuple(self.aside.drawn(self.of))

    def _over(self, room: tuple[Px, Px], backs: Backs) -> Drawings:
        after = (*self._backs(backs), *self.rows.drawn(self.of))
        return Drawings(self.of.elevation(room), after=after)

    def _cabinet(self, height: Px) -> Drawn:
        return self.of.elevation((WIDTH, max(height, _LEAST_HEIGHT) - HEADING))

    def _backs(self, backs: Backs) -> Rows:
        return tuple(tuple(self.of.back(*place) for place in row) for row in backs.rows)

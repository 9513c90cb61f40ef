"""What an opening measures: its sizes on site where they were taken, and how far it leans.

A front that laps is sized against the greatest sizes, so that it covers; one that lies inside
against the least, so that it goes in.
"""

from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect


def widths_of(opening: Opening) -> tuple[Mm, ...]:
    """The opening's widths: those measured on site, else the nominal one."""
    taken = (opening.measured.width_top, opening.measured.width_bottom)
    return tuple(width for width in taken if width is not None) or (opening.width,)


def heights_of(opening: Opening) -> tuple[Mm, ...]:
    """The opening's heights: those measured on site, else the nominal one."""
    taken = (opening.measured.height_left, opening.measured.height_right)
    return tuple(height for height in taken if height is not None) or (opening.height,)


def widths_at_ends(opening: Opening) -> tuple[Mm, Mm]:
    """Its widths at the top and at the bottom; measured at one end only, the same at the other."""
    widths = widths_of(opening)
    return widths[0], widths[-1]


def heights_at_ends(opening: Opening) -> tuple[Mm, Mm]:
    """Its heights at the left and at the right; measured at one end only, alike at the other."""
    heights = heights_of(opening)
    return heights[0], heights[-1]


def opening_rect(cabinet: Cabinet, opening: Opening, *, greatest: bool) -> Rect:
    """The opening on its wall, by its greatest sizes (overlay) or its least (inset)."""
    pick = max if greatest else min
    width, height = pick(widths_of(opening)), pick(heights_of(opening))
    return Rect(cabinet.left + opening.x, cabinet.y + opening.y, width, height)


def lean_of(opening: Opening, width: Mm) -> Mm | None:
    """The lean of an opening, None where its diagonals were not taken."""
    taken = opening.measured
    if taken.diagonal_1 is None or taken.diagonal_2 is None:
        return None
    return lean(width, taken.diagonal_1, taken.diagonal_2)


def lean(width: Mm, diagonal_1: Mm, diagonal_2: Mm) -> Mm:
    """How far the opening leans over its height: (d1² - d2²) / (4·w)."""
    return (diagonal_1 * diagonal_1 - diagonal_2 * diagonal_2) / (width * 2 * 2)

"""Glass in a five-piece door: how large a pane, and what it weighs.

    glass = the opening in the frame + 2 × (rabbet - play)     each way

Its weight is 2.5 kg/m² for each millimetre of thickness: a density of 2,500 kg/m³ (EN 572-1,
soda-lime silicate glass). Thickness, rabbet and play are common practice, no source.
"""

from fractions import Fraction

from fronts.rules.lengths import Mm
from fronts.rules.parts import has_middle_rail
from fronts.rules.practice import Practice

DENSITY = Fraction(2500)
"""kg/m³ (EN 572-1)."""


def pane(across: Mm, up: Mm, practice: Practice) -> tuple[Mm, Mm]:
    """Width and height of the pane for an opening in the frame that is so wide and high."""
    more = 2 * (practice.glass_rabbet - practice.glass_play)
    return across + more, up + more


def pane_in(width: Mm, height: Mm, stile: Mm, rail: Mm, practice: Practice) -> tuple[Mm, Mm]:
    """Width and height of each pane in a frame; a middle rail parts a high one into two."""
    panes = panes_in(height, practice)
    return pane(width - 2 * stile, (height - (1 + panes) * rail) / panes, practice)


def panes_in(height: Mm, practice: Practice) -> int:
    """How many panes a frame of this height holds."""
    return 2 if has_middle_rail(height, practice) else 1


def stops_round(across: Mm, up: Mm) -> Mm:
    """How long the stops are in all that hold one pane."""
    return 2 * (across + up)


def pane_weight(width: Mm, height: Mm, thickness: Mm) -> Fraction:
    """Kilograms of a pane."""
    return width * height * thickness * DENSITY / 10**9

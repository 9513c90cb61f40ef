"""An offcut on the sheet or stick that is usual, to one scale for all of a list."""

from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.scale import Scale, fitted
from fronts.drawings.svg import Px
from fronts.rules.lengths import Mm
from fronts.rules.offcuts import OffcutFacts
from fronts.rules.usual_stock import USUAL_SHEET

_ROOM: tuple[Px, Px] = (96_00, 48_00)
_GRAIN = 3
"""So many lines show which way the grain runs."""


def offcut_drawing(facts: OffcutFacts, label: str, unit: str) -> str:
    """The piece in the corner of a usual sheet, with its grain, as an `<svg>`."""
    length, width = USUAL_SHEET[unit]
    scale = Scale(fitted(length, width, room=_ROOM))
    drawing = Drawing(SCREEN)
    nothing = Mm(0)
    if not facts.is_stick:
        drawing.rect("opening", scale.area(nothing, nothing, length, width))
    drawing.rect("front", scale.area(nothing, nothing, facts.length, facts.width))
    if facts.is_grained and not facts.is_stick:
        for line in range(1, _GRAIN + 1):
            y = scale.y(facts.width * line / (_GRAIN + 1))
            ends = scale.x(facts.length / 6), scale.x(facts.length * 5 / 6)
            drawing.line("dimension", ends[0], y, ends[1], y)
    return drawing.svg(f"Offcut {label}, to scale", "offcut")

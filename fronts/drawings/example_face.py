"""What closes a cabinet, by itself: the openings of a face in a cabinet of a usual size."""

from collections.abc import Iterator, Mapping

from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.geometry import Area
from fronts.drawings.svg import Px
from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.lengths import NOTHING, Mm

_PX_A_MM = 12
"""Hundredths of a pixel to the millimetre."""
_LETTERS: Px = 11_00
_WORDS: Mapping[ClosedBy, str] = {"pair": "door", "drawers": "drawer"}
"""What one front is called where several close an opening."""


def example_face(cabinet: Cabinet) -> str:
    """The cabinet's openings as an `<svg>`, each front with the word for what it is."""
    drawing = Drawing(SCREEN)
    high = cabinet.height
    drawing.rect("cabinet", _area(NOTHING, NOTHING, cabinet.width, high, high))
    for hole in cabinet.openings:
        for area in _fronts(hole, high):
            drawing.rect("front", area)
            drawing.text(*area.middle, _word(hole), _LETTERS)
    words = ", ".join(_word(hole) for hole in cabinet.openings)
    return drawing.svg(f"What closes it: {words}", "cabinet")


def _fronts(hole: Opening, high: Mm) -> Iterator[Area]:
    """An area for each front, beside each other or from the top; one for what stays open."""
    count = max(1, len(hole.fronts))
    if hole.closing.across:
        wide = hole.width / count
        for place in range(count):
            yield _area(hole.x + place * wide, hole.y, wide, hole.height, high)
        return
    top = hole.y + hole.height
    for part in _heights(hole, count):
        top -= part
        yield _area(hole.x, top, hole.width, part, high)


def _heights(hole: Opening, count: int) -> list[Mm]:
    """How high each front of a stack is; those that don't say share what is left."""
    own = [front.own_height for front in hole.fronts] or [None]
    left = hole.height - sum((height for height in own if height is not None), NOTHING)
    shares = own.count(None)
    return [left / shares if height is None else height for height in own][:count]


def _area(x: Mm, y: Mm, width: Mm, height: Mm, high: Mm) -> Area:
    left, top, right, bottom = x, high - y - height, x + width, high - y
    return Area(*(round(side * _PX_A_MM) for side in (left, top, right, bottom)))


def _word(hole: Opening) -> str:
    if hole.closing.hinged and hole.fronts:
        return f"{hole.closed_by} {hole.fronts[0].hinged}"
    return _WORDS.get(hole.closed_by, hole.closed_by)

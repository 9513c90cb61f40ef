"""An opening as it is measured on site: the size that is taken is thick, with its name.

Beside it the whole cabinet, small, with the same opening marked, so that one knows which it is.
"""

from dataclasses import dataclass

from fronts.drawings.drawing import PAPER, Anchor, Drawing, Ink, text_area
from fronts.drawings.geometry import Area, Place
from fronts.drawings.lettering import text_width
from fronts.drawings.scale import Scale, fitted
from fronts.drawings.svg import Px
from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.lengths import Mm, show
from fronts.rules.site_sizes import SITE_SIZES, SiteSize, length_of

_NAME: Px = 15_00
_FIGURE: Px = 12_00
_APART: Px = 26_00
_INSET: Px = 14_00
_LEAST: Px = 56_00
"""So wide and high an opening is drawn at least: six lines must be told apart."""
_ARROW: Px = 11_00
_HALF_ARROW: Px = 5_00
_CLEAR: Px = 6_00
_CABINET_PART = 4
"""The cabinet has this part of the room's width."""


@dataclass(frozen=True, slots=True)
class _View:
    drawing: Drawing
    area: Area
    opening: Opening
    unit: str


def measured_opening(
    cabinet: Cabinet,
    opening: Opening,
    name: str,
    *,
    unit: str,
    ink: Ink = PAPER,
    room: tuple[Px, Px] = (340_00, 190_00),
) -> str:
    """The opening with its six sizes as an `<svg>` about `room` in size."""
    drawing = Drawing(ink)
    right = _cabinet(drawing, cabinet, opening, (room[0] // _CABINET_PART, room[1]))
    left = right + _APART
    area = _opening_area(opening, left, (room[0] - left, room[1]))
    drawing.rect("front", area)
    view, asked = _View(drawing, area, opening, unit), SITE_SIZES[name]
    for size in SITE_SIZES.values():
        if size != asked:
            drawing.line("dimension", *_ends(area, size)[0], *_ends(area, size)[1])
    _asked(view, asked)
    for size in SITE_SIZES.values():
        length = length_of(opening.measured, size.name)
        if size != asked and length is not None:
            _figure(view, size, length)
    return drawing.svg(f"Opening {cabinet.label}.{opening.label}: {asked.says}", "on-site")


def _cabinet(drawing: Drawing, cabinet: Cabinet, opening: Opening, room: tuple[Px, Px]) -> Px:
    """The cabinet with its openings, the one that is measured hatched; where it ends."""
    scale = Scale(fitted(cabinet.width, cabinet.height, room=room))
    nothing = Mm(0)
    outline = scale.area(nothing, nothing, cabinet.width, cabinet.height)
    drawing.rect("cabinet", outline)
    for hole in cabinet.openings:
        area = scale.area(hole.x, hole.y, hole.width, hole.height)
        if hole.label == opening.label:
            drawing.rect("stop", area)
            drawing.lines("dimension", _crossed(area))
        else:
            drawing.rect("opening", area)
    return outline.right


def _crossed(area: Area) -> list[tuple[Px, Px, Px, Px]]:
    return [
        (area.left, area.bottom, area.right, area.top),
        (area.left, area.top, area.right, area.bottom),
    ]


def _opening_area(opening: Opening, left: Px, room: tuple[Px, Px]) -> Area:
    """As large as there is room; a very flat or narrow one is drawn less so."""
    scale = Scale(fitted(opening.width, opening.height, room=room))
    width = max(scale.length(opening.width), _LEAST)
    height = max(scale.length(opening.height), _LEAST)
    return Area(left, -height, left + width, 0)


def _ends(area: Area, size: SiteSize) -> tuple[Place, Place]:
    """Between which places a size is taken."""
    left, right, top, bottom = area.left, area.right, area.top, area.bottom
    return {
        "width_top": ((left, top + _INSET), (right, top + _INSET)),
        "width_bottom": ((left, bottom - _INSET), (right, bottom - _INSET)),
        "height_left": ((left + _INSET, bottom), (left + _INSET, top)),
        "height_right": ((right - _INSET, bottom), (right - _INSET, top)),
        "diagonal_1": ((left, bottom), (right, top)),
        "diagonal_2": ((left, top), (right, bottom)),
    }[size.name]


def _asked(view: _View, size: SiteSize) -> None:
    start, end = _ends(view.area, size)
    view.drawing.line("measured", *start, *end)
    for tip, other in ((start, end), (end, start)):
        _arrow(view.drawing, tip, other)
    words = size.across if size.across == "diagonal" else size.says
    x, y, anchor = _name_place(view.area, size, words)
    view.drawing.text(x, y, words, _NAME, anchor, bold=True, kind="name")


def _name_place(area: Area, size: SiteSize, words: str) -> tuple[Px, Px, Anchor]:
    """Within the opening where it has the width, else beside it."""
    middle_x, middle_y = area.middle
    fits = text_width(words, _NAME, bold=True) + 2 * (_INSET + _CLEAR) <= area.width
    y = {
        "width_top": area.top + 2 * _INSET + _CLEAR,
        "width_bottom": area.bottom - 2 * _INSET - _CLEAR,
    }.get(size.name, middle_y)
    if not fits:
        return area.right + _CLEAR, y, "start"
    if size.name == "height_left":
        return area.left + _INSET + _CLEAR, y, "start"
    if size.name == "height_right":
        return area.right - _INSET - _CLEAR, y, "end"
    return middle_x, y, "middle"


def _figure(view: _View, size: SiteSize, length: Mm) -> None:
    """What was measured, on its line where there is room for it."""
    (x1, y1), (x2, y2) = _ends(view.area, size)
    text, third = show(length, view.unit), size.across == "diagonal"
    x, y = (x1 + (x2 - x1) // 4, y1 + (y2 - y1) // 4) if third else ((x1 + x2) // 2, (y1 + y2) // 2)
    area = text_area(x, y, text, _FIGURE)
    if view.drawing.free(area, view.area.grown(_INSET)):
        view.drawing.text(x, y, text, _FIGURE)


def _arrow(drawing: Drawing, tip: Place, other: Place) -> None:
    """An arrowhead at the tip of a line that comes from `other`."""
    along, across = other[0] - tip[0], other[1] - tip[1]
    length = max(round((along * along + across * across) ** 0.5), 1)
    x, y = tip[0] + along * _ARROW // length, tip[1] + across * _ARROW // length
    aside = (-across * _HALF_ARROW // length, along * _HALF_ARROW // length)
    drawing.solid([tip, (x + aside[0], y + aside[1]), (x - aside[0], y - aside[1])])

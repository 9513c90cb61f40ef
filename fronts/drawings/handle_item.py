"""What the numbers of a knob or pull mean: on its front, from the front and from the side."""

from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.geometry import Area
from fronts.drawings.scale import Scale
from fronts.rules.items import HandleItem
from fronts.rules.lengths import NOTHING, Mm, write

WIDE, HIGH, THICK = Mm(96), Mm(56), Mm(12)
APART, OUT, ROUND = Mm(52), Mm(16), Mm(5)
"""A front and a handle as they are drawn: not to scale with the figures."""
_BESIDE = Mm(34)
_SIZE = 11_00
_ROW = 12_00
_HOLE = Mm(2)


def handle_item_drawing(handle: HandleItem, unit: str) -> str:
    """Both views as an `<svg>`, with the figures that it has."""
    drawing, scale = Drawing(SCREEN), Scale(2_600)
    pull = handle.centres is not None
    front = scale.area(NOTHING, NOTHING, WIDE, HIGH)
    drawing.rect("front", front)
    middle = WIDE / 2
    holes = [middle - APART / 2, middle + APART / 2] if pull else [middle]
    if pull:
        drawing.rect("box", scale.area(holes[0] - ROUND, HIGH / 2 - ROUND / 2, APART + 2 * ROUND,
                                       ROUND))  # fmt: skip
    else:
        drawing.circle("box", *front.middle, scale.length(2 * ROUND))
    for x in holes:
        drawing.circle("hidden", scale.x(x), scale.y(HIGH / 2), scale.length(_HOLE))
    if pull:
        text = _figure("hole centres", handle.centres, unit)
        chain = Chain("x", front.bottom + _ROW, 1, front.bottom, _SIZE)
        dimension_chain(drawing, chain, [Piece(scale.x(holes[0]), scale.x(holes[-1]), text)])
    else:
        note = front.bottom + _ROW
        drawing.text(front.middle[0], note, "one screw in its middle", _SIZE, kind="note")
    _from_side(drawing, scale, handle, unit)
    return drawing.svg(f"Knob or pull {handle.code}", "handle")


def _from_side(drawing: Drawing, scale: Scale, handle: HandleItem, unit: str) -> None:
    """The front's edge with the handle standing out of it."""
    back = WIDE + _BESIDE
    face = back + THICK
    drawing.rect("front", scale.area(back, NOTHING, THICK, HIGH))
    stem = scale.area(face, HIGH / 2 - _HOLE, OUT - ROUND, 2 * _HOLE)
    drawing.rect("box", stem)
    drawing.rect("box", scale.area(face + OUT - ROUND, HIGH / 2 - ROUND, ROUND, 2 * ROUND))
    thread = handle.thread or "screw"
    level = scale.y(HIGH / 2)
    drawing.line("hand", scale.x(back) - _ROW, level, scale.x(face + OUT), level)
    area = Area(scale.x(back), scale.y(HIGH), scale.x(face), scale.y(NOTHING))
    drawing.text(area.left - 2 * _ROW, level - _SIZE, thread, _SIZE, kind="note")
    text = _figure("stands out", handle.projection, unit)
    chain = Chain("x", area.bottom + _ROW, 1, area.bottom, _SIZE)
    dimension_chain(drawing, chain, [Piece(scale.x(face), scale.x(face + OUT), text)])


def _figure(says: str, length: Mm | None, unit: str) -> str:
    return says if length is None else f"{says} {write(length, unit)}"

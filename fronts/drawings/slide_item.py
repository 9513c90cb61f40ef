"""What the numbers of a slide mean: a box in its opening, seen from the front."""

from dataclasses import dataclass

from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.scale import Scale
from fronts.rules.items import SlideItem
from fronts.rules.kinds import SlideKind
from fronts.rules.lengths import NOTHING, Mm, write

WIDE, HIGH, SIDE, BOTTOM = Mm(130), Mm(84), Mm(9), Mm(4)
"""An opening and the stock of a box as they are drawn: not to scale with the figures."""
_CLEAR, _INSIDE, _BELOW, _ABOVE, _RECESS = Mm(9), Mm(26), Mm(11), Mm(10), Mm(12)
_SIZE = 11_00
_ROW = 12_00


@dataclass(frozen=True, slots=True)
class _Box:
    """The box as it is drawn."""

    left: Mm
    low: Mm
    wide: Mm
    high: Mm
    floor: Mm


def slide_item_drawing(slide: SlideItem, unit: str) -> str:
    """The box in its opening as an `<svg>`, with the figures that the slide has."""
    drawing, scale = Drawing(SCREEN), Scale(2_600)
    kind, box = slide.kind, _box(slide.kind)
    drawing.rect("opening", scale.area(NOTHING, NOTHING, WIDE, HIGH))
    for x in (box.left, box.left + box.wide - SIDE):
        drawing.rect("front", scale.area(x, box.low, SIDE, box.high))
    inside = box.wide - 2 * SIDE
    drawing.rect("box", scale.area(box.left + SIDE, box.low + box.floor, inside, BOTTOM))
    _slides(drawing, scale, kind, box)
    drawing.text(*scale.area(box.left, box.low, box.wide, box.high).middle, "box", 12_00,
                 kind="note")  # fmt: skip
    _across(drawing, scale, slide, kind, box, unit)
    _upright(drawing, scale, slide, kind, box, unit)
    return drawing.svg(f"Slide {slide.code}", "slide")


def _box(kind: SlideKind) -> _Box:
    left = _INSIDE / 2 - SIDE if kind == "under" else _CLEAR
    floor = _RECESS if kind == "under" else BOTTOM
    return _Box(left, _BELOW, WIDE - 2 * left, HIGH - _BELOW - _ABOVE, floor)


def _slides(drawing: Drawing, scale: Scale, kind: SlideKind, box: _Box) -> None:
    """Where the slide lies: beside the box, under its bottom, or in the middle below it."""
    if kind == "side":
        for x in (NOTHING, box.left + box.wide):
            drawing.rect("hidden", scale.area(x, box.low + box.high / 3, box.left, box.high / 4))
    elif kind == "under":
        for x in (box.left + SIDE, box.left + box.wide - SIDE - _RECESS):
            drawing.rect("hidden", scale.area(x, box.low, _RECESS, box.floor))
    else:
        middle = box.left + box.wide / 2
        drawing.rect("hidden", scale.area(middle - _RECESS, NOTHING, 2 * _RECESS, box.low))


def _across(
    drawing: Drawing, scale: Scale, slide: SlideItem, kind: SlideKind, box: _Box, unit: str
) -> None:
    below = scale.y(NOTHING)
    chain = Chain("x", below + _ROW, 1, below, _SIZE)
    if kind == "under":
        text = _figure("opening less", slide.inside_clearance, unit)
        inner, outer = box.left + SIDE, box.left + box.wide - SIDE
        out = dimension_chain(
            drawing, chain, [Piece(scale.x(inner), scale.x(outer), "inside of the box")]
        )
        whole = Chain("x", out + _ROW // 2, 1, below, _SIZE)
        dimension_chain(drawing, whole, [Piece(0, scale.x(WIDE), f"opening; inside = {text}")])
        return
    text = _figure("clearance", slide.clearance, unit)
    right = box.left + box.wide
    dimension_chain(drawing, chain, [
        Piece(0, scale.x(box.left), text),
        Piece(scale.x(box.left), scale.x(right), "box, outside"),
        Piece(scale.x(right), scale.x(WIDE), text),
    ])  # fmt: skip


def _upright(
    drawing: Drawing, scale: Scale, slide: SlideItem, kind: SlideKind, box: _Box, unit: str
) -> None:
    right = scale.x(WIDE)
    chain = Chain("y", right + _ROW, 1, right, _SIZE)
    foot, top = scale.y(box.low), scale.y(box.low + box.high)
    lowest = "slide’s height" if kind == "bottom" else "below"
    known = slide.height if kind == "bottom" else slide.below
    dimension_chain(drawing, chain, [
        Piece(scale.y(HIGH), top, _figure("above", slide.above, unit)),
        Piece(top, foot, "box"),
        Piece(foot, scale.y(NOTHING), _figure(lowest, known, unit)),
    ])  # fmt: skip
    if kind != "under":
        return
    left = Chain("y", -_ROW, -1, 0, _SIZE)
    dimension_chain(drawing, left, [
        Piece(scale.y(box.low + box.floor), foot, _figure("recess", slide.recess, unit)),
    ])  # fmt: skip


def _figure(says: str, length: Mm | None, unit: str) -> str:
    return says if length is None else f"{says} {write(length, unit)}"

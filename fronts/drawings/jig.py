"""A fitting jig seen from the front and from the side, with the front and the box on it.

Both views are to one scale; a long block is broken off in between and its figure holds.
"""

from dataclasses import dataclass

from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import PAPER, Drawing, Ink, text_area
from fronts.drawings.geometry import Area
from fronts.drawings.lettering import text_width
from fronts.drawings.svg import Px
from fronts.rules.fitting_results import Jig
from fronts.rules.lengths import Mm, show

_FIGURE: Px = 12_00
_NOTE: Px = 11_00
_ROW: Px = 9_00
_LEDGE_DRAWN = Mm(38)
"""How wide a ledge is drawn: its width is the maker's to choose."""

_STANDS: Px = 20_00
"""How much of the front and the box is shown above the block."""

_APART: Px = 24_00
_BREAK: Px = 4_00
_LEAST, _MOST = 1_600, 2_000
"""Scales between which a ledge's figures have room, in thousandths of a pixel to the mm."""

_AROUND: Px = 80_00
"""What stands above and the dimensions below take of the height."""

_WHOLE: Px = 22_00
"""What the ledges' whole length takes of that."""


@dataclass(frozen=True, slots=True)
class _View:
    drawing: Drawing
    jig: Jig
    unit: str
    thousandths: int

    def length(self, mm: Mm) -> Px:
        return round(mm * self.thousandths / 10)

    def show(self, mm: Mm) -> str:
        return show(mm, self.unit)


def jig_drawing(
    jig: Jig,
    front_thickness: Mm,
    *,
    unit: str,
    ink: Ink = PAPER,
    room: tuple[Px, Px] = (600_00, 260_00),
    side_only: bool = False,
) -> str:
    """The jig as an `<svg>` about `room` in size: from the front, and beside it from the side.

    `side_only` is enough where block and ledges look the same all along, and their lengths are
    said beside it.
    """
    view = _View(Drawing(ink), jig, unit, _size(jig, room))
    _from_side(view, front_thickness, whole=not side_only)
    if not side_only:
        _from_front(view, room[0] - view.drawing.bounds().width - _APART)
    seen = "the side" if side_only else "the front and the side"
    name = f"Jig {view.show(jig.thickness)} × {view.show(jig.length)}"
    return view.drawing.svg(f"{name} from {seen}", "jig")


def jig_height(jig: Jig, room: tuple[Px, Px], *, side_only: bool = False) -> Px:
    """About how high the jig's drawing comes out."""
    around = _AROUND - _WHOLE if side_only else _AROUND
    return around + round((jig.thickness + jig.ledges.thickness) * _size(jig, room) / 10)


def _size(jig: Jig, room: tuple[Px, Px]) -> int:
    high = jig.thickness + jig.ledges.thickness
    return max(_LEAST, min(_MOST, (room[1] - _AROUND) * 10 // max(1, round(high))))


def _from_side(view: _View, front_thickness: Mm, *, whole: bool) -> None:
    """Front at the left; the block's front face at x = 0, the ledge's top at y = 0."""
    drawing, ledges = view.drawing, view.jig.ledges
    thick, over = view.length(view.jig.thickness), view.length(ledges.overhang)
    deep, ledge = view.length(ledges.block_depth), view.length(ledges.thickness)
    front = view.length(front_thickness)
    drawing.rect("front", Area(0, -thick, deep, 0))
    drawing.rect("front", Area(-over, 0, deep, ledge))
    top = -thick - _STANDS
    drawing.path("hidden", [(-front, top), (-front, 0), (0, 0), (0, top)])
    drawing.path("hidden", [(0, -thick), (deep, -thick), (deep, top)])
    _named(drawing, Area(-front, top, 0, 0), "front")
    _named(drawing, Area(0, top, deep, -thick), "box")
    _named(drawing, Area(0, -thick, deep, 0), "block")
    below = Chain("x", ledge + _ROW, 1, ledge, _FIGURE)
    pieces = [
        Piece(-over, 0, view.show(ledges.overhang)),
        Piece(0, deep, view.show(ledges.block_depth)),
    ]
    outer = dimension_chain(drawing, below, pieces)
    if whole:
        chain = Chain("x", outer + _ROW // 2, 1, outer, _FIGURE)
        dimension_chain(drawing, chain, [Piece(-over, deep, view.show(ledges.length))])
    beside = Chain("y", deep + _ROW, 1, deep, _FIGURE)
    pieces = [
        Piece(-thick, 0, view.show(view.jig.thickness), bold=True),
        Piece(0, ledge, view.show(ledges.thickness)),
    ]
    dimension_chain(drawing, beside, pieces)


def _named(drawing: Drawing, area: Area, name: str) -> None:
    if drawing.free(text_area(*area.middle, name, _NOTE), area.grown(-1_00)):
        drawing.text(*area.middle, name, _NOTE, kind="note")


def _from_front(view: _View, room: Px) -> None:
    """The block from the front, left of the side view, broken off where it is too long."""
    drawing, jig = view.drawing, view.jig
    full, end = view.length(jig.length), drawing.bounds().left - _APART
    figure = text_width(view.show(jig.thickness), _FIGURE, bold=True)
    wide = min(full, max(room - figure - 2 * _ROW, 90_00))
    thick, ledge = view.length(jig.thickness), view.length(jig.ledges.thickness)
    left = end - wide
    _block(view, Area(left, -thick, end, 0), broken=wide < full)
    foot = min(view.length(_LEDGE_DRAWN), wide // 4)
    for start in (left, end - foot):
        drawing.rect("front", Area(start, 0, start + foot, ledge))
    _meets(view, Area(left, -thick, end, 0), foot)
    chain = Chain("x", ledge + _ROW, 1, ledge, _FIGURE)
    dimension_chain(drawing, chain, [Piece(left, end, view.show(jig.length), bold=True)])
    chain = Chain("y", left - _ROW, -1, left, _FIGURE)
    dimension_chain(drawing, chain, [Piece(-thick, 0, view.show(jig.thickness), bold=True)])


def _meets(view: _View, block: Area, foot: Px) -> None:
    """Say what rests where: the box on the block, the front on the ledges."""
    drawing = view.drawing
    middle = block.middle[0]
    box = (block.left + 4_00, block.top - _NOTE)
    if view.jig.slot is None:
        box = (middle - 30_00, block.top - _NOTE)
    if drawing.free(text_area(*box, "box stands here", _NOTE, "start").grown(4_00)):
        drawing.text(*box, "box stands here", _NOTE, "start", kind="note")
    if block.width - 2 * foot > 150_00:
        drawing.text(middle, block.bottom + _NOTE, "front stands on ledges", _NOTE, kind="note")


def _block(view: _View, area: Area, *, broken: bool) -> None:
    drawing, slot = view.drawing, view.jig.slot
    middle = area.middle[0]
    if slot is None:
        drawing.rect("front", area)
    else:
        half = min(view.length(slot.width) // 2, area.width * 3 // 20)
        deep = min(view.length(slot.depth), area.height)
        drawing.path("front", [
            (middle - half, area.top), (area.left, area.top), (area.left, area.bottom),
            (area.right, area.bottom), (area.right, area.top), (middle + half, area.top),
            (middle + half, area.top + deep), (middle - half, area.top + deep),
            (middle - half, area.top),
        ])  # fmt: skip
        text = f"slot {view.show(slot.width)} × {view.show(slot.depth)} deep"
        drawing.text(middle, area.top - _NOTE * 5 // 2, text, _FIGURE, kind="dimension")
        lift = area.top - _NOTE * 3 // 2
        drawing.line("dimension", middle, lift, middle, area.top + deep // 2)
        drawing.taken.append(Area(middle, lift, middle, area.top))
    if broken:
        for x in (area.left + area.width * 11 // 50, area.left + area.width * 39 // 50):
            _broken(drawing, x, area)


def _broken(drawing: Drawing, x: Px, area: Area) -> None:
    """A long break after ISO 128-2: a thin line with a zigzag in it."""
    top, bottom, middle = area.top - 3_00, area.bottom + 3_00, area.middle[1]
    drawing.path("dimension", [
        (x, top), (x, middle - _BREAK), (x - _BREAK, middle - _BREAK // 3),
        (x + _BREAK, middle + _BREAK // 3), (x, middle + _BREAK), (x, bottom),
    ])  # fmt: skip

"""A sheet or stick cut up, to scale: parts, grain, offcuts, and the cuts by their number."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from django.utils.safestring import SafeString

from fronts.cutting.blocks_on_sheet import block_boxes
from fronts.cutting.model import Cut, Layout, Offcut, Placement
from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import PAPER, SCREEN, Drawing, Ink
from fronts.drawings.geometry import Area
from fronts.drawings.lettering import line_height, shortened, text_width
from fronts.drawings.scale import Scale, fitted
from fronts.drawings.svg import Px
from fronts.rules.lengths import Mm, show

STICK = Mm(100)
"""A stick is drawn this wide where its width is not known: room for two lines."""
_NAME: Px = 13_00
_FIGURE: Px = 11_00
_SMALL: Px = 9_00
_ROUND: Px = 7_00
_ROW: Px = 14_00
_INSET: Px = 2_00
_ARROW: Px = 26_00
_HEAD: Px = 3_00
_PROUD: Px = 1_50
"""A block's outline runs so far outside its parts'."""
_STEPS = 12
"""A cut's number is tried at so many places along the cut."""

_ON_SCREEN: tuple[Px, Px] = (920_00, 470_00)
_ON_PAPER: tuple[Px, Px] = (640_00, 400_00)
"""As wide as an A4 page, without what the dimensions take."""

Line = tuple[str, Px, bool]


@dataclass(frozen=True, slots=True)
class _View:
    drawing: Drawing
    scale: Scale
    layout: Layout
    unit: str

    @property
    def width(self) -> Mm:
        return STICK if self.layout.stock.width is None else self.layout.stock.width

    def area(self, thing: Placement | Offcut) -> Area:
        across = self.width if thing.width is None else thing.width
        return self.scale.area(thing.x, thing.y, thing.length, across)


def screen_layouts(unit: str) -> Callable[[Layout], SafeString]:
    """How layouts are drawn on the page."""
    return lambda layout: SafeString(layout_drawing(layout, unit=unit, ink=SCREEN, room=_ON_SCREEN))


def paper_layouts(unit: str) -> Callable[[Layout], SafeString]:
    """How layouts are drawn on the sheet."""
    return lambda layout: SafeString(layout_drawing(layout, unit=unit, ink=PAPER, room=_ON_PAPER))


def layout_drawing(layout: Layout, *, unit: str, room: tuple[Px, Px], ink: Ink = SCREEN) -> str:
    """The layout as an `<svg>`: x along the stock's length, from its lower left corner.

    The stock itself is no larger than `room`; its dimensions stand outside.
    """
    stock = layout.stock
    width = STICK if stock.width is None else stock.width
    view = _View(Drawing(ink), Scale(fitted(stock.length, width, room=room)), layout, unit)
    view.drawing.rect("cabinet", view.scale.area(Mm(0), Mm(0), stock.length, width))
    for placed in layout.placed:
        view.drawing.rect("front", view.area(placed))
    for _, box in block_boxes(layout):
        high = width if box[3] is None else box[3]
        view.drawing.rect("block", view.scale.area(*box[:3], high).grown(_PROUD))
    for placed in layout.placed:
        _name(view, view.area(placed), list(_said(view, placed)))
    for offcut in layout.offcuts:
        if offcut.usable:
            _offcut(view, offcut)
    for placed in layout.placed:
        _grain(view, placed)
    for cut in layout.cuts:
        if cut.kind != "trim":
            _number(view, cut)
    _sizes(view)
    parts = len(layout.placed)
    what = "stick" if stock.width is None else "sheet"
    title = f"One {what} with {parts} part{'' if parts == 1 else 's'}"
    return view.drawing.svg(title, "cut-layout")


def _said(view: _View, placed: Placement) -> Iterator[list[Line]]:
    """The label and the size, as large as they go; then less."""
    long = show(placed.length, view.unit)
    wide = "" if placed.width is None else show(placed.width, view.unit)
    size = f"{long} × {wide}" if wide else long
    part = placed.part if placed.sequence is None else f"{placed.order}·{placed.part}"
    for name, figure in ((_NAME, _FIGURE), (_FIGURE, _SMALL), (_SMALL, _SMALL)):
        yield [(part, name, True), (size, figure, False)]
        yield [(f"{part}  {size}", figure, False)]
    if wide:
        yield [(part, _SMALL, True), (f"{long} ×", _SMALL, False), (wide, _SMALL, False)]
    if placed.sequence is not None:
        yield [(f"{placed.order}", _SMALL, True), (placed.part, _SMALL, True)]
    if wide:
        yield [(part, _SMALL, True)]


def _name(view: _View, area: Area, ways: Sequence[list[Line]]) -> None:
    inside = area.grown(-_INSET)
    for lines in [*ways, *_cut_short(ways, inside)]:
        high = sum(line_height(size) for _, size, _ in lines)
        wide = max(text_width(text, size, bold=bold) for text, size, bold in lines)
        if high <= inside.height and wide <= inside.width:
            _letter(view, area, lines, high)
            return


def _cut_short(ways: Sequence[list[Line]], inside: Area) -> Iterator[list[Line]]:
    """Rather less of the name than no size."""
    name, *rest = ways[0]
    size = [(text, _SMALL, False) for text, _, _ in rest]
    short = shortened(name[0], _SMALL, inside.width, bold=True)
    if short and size:
        yield [(short, _SMALL, True), *size]
    if short:
        yield [(short, _SMALL, True)]


def _letter(view: _View, area: Area, lines: Sequence[Line], high: Px) -> None:
    x, y = area.middle
    y -= high // 2
    for text, size, bold in lines:
        view.drawing.text(x, y + line_height(size) // 2, text, size, bold=bold, kind="part")
        y += line_height(size)


def _offcut(view: _View, offcut: Offcut) -> None:
    """What goes back to stock: a dashed outline, its size, and that it is to be kept."""
    area = view.area(offcut)
    view.drawing.rect("opening", area.grown(-1_00))
    sizes = [offcut.length] if offcut.width is None else [offcut.length, offcut.width]
    size = " × ".join(show(each, view.unit) for each in sizes)
    keep = ("keep", _SMALL, False)
    _name(view, area, [[keep, (size, _SMALL, False)], [(f"keep {size}", _SMALL, False)], [keep]])


def _grain(view: _View, placed: Placement) -> None:
    """An arrow along the grain, low in the part, where nothing else stands."""
    if placed.grain is None or placed.width is None:
        return
    across = (placed.grain == "width") != placed.turned
    area, half = view.area(placed), _ARROW // 2
    if across:
        x, y = area.right - 8_00, area.middle[1]
        taken = Area(x - _HEAD, y - half, x + _HEAD, y + half)
        ends = ((x, y - half), (x, y + half))
    else:
        x, y = area.middle[0], area.bottom - 8_00
        taken = Area(x - half, y - _HEAD, x + half, y + _HEAD)
        ends = ((x - half, y), (x + half, y))
    if not view.drawing.free(taken, area.grown(-_INSET)):
        return
    view.drawing.line("dimension", *ends[0], *ends[1])
    for (end_x, end_y), towards in zip(ends, (1, -1), strict=True):
        _head(view.drawing, end_x, end_y, towards, upright=across)
    view.drawing.taken.append(taken)


def _head(drawing: Drawing, x: Px, y: Px, towards: int, *, upright: bool) -> None:
    """An arrowhead whose tip is at x, y; `towards` is where its back lies."""
    back, side = towards * 2 * _HEAD, _HEAD * 2 // 3
    if upright:
        drawing.solid([(x, y), (x - side, y + back), (x + side, y + back)])
    else:
        drawing.solid([(x, y), (x + back, y - side), (x + back, y + side)])


def _number(view: _View, cut: Cut) -> None:
    """The cut's number in a ring beside its line, where it covers no other figure."""
    drawing, text = view.drawing, str(cut.number)
    for x, y in _places(view, cut):
        ring = Area(x, y, x, y).grown(_ROUND)
        if drawing.free(ring):
            drawing.circle("dimension", x, y, _ROUND)
            drawing.text(x, y, text, _SMALL, kind="cut")
            drawing.taken.append(ring)
            return


def _places(view: _View, cut: Cut) -> Iterator[tuple[Px, Px]]:
    """Along the cut from where it starts: on the side that is kept, else beyond."""
    scale, off = view.scale, _ROUND + 1_00
    if view.layout.stock.width is None:
        yield scale.x(cut.at), scale.y(view.width) - off
        return
    start, end = cut.start, cut.end if cut.end > cut.start else view.width
    steps = [start + (end - start) * step / _STEPS for step in range(1, _STEPS)]
    for side in (-1, 1):
        for at in steps:
            if cut.along == "length":
                yield scale.x(at), scale.y(cut.at) - side * off
            else:
                yield scale.x(cut.at) + side * off, scale.y(at)


def _sizes(view: _View) -> None:
    """The stock's own size, below and at the left."""
    scale, stock = view.scale, view.layout.stock
    bottom, left = scale.y(Mm(0)), scale.x(Mm(0))
    along = Piece(left, scale.x(stock.length), show(stock.length, view.unit))
    dimension_chain(view.drawing, Chain("x", bottom + _ROW, 1, bottom, _FIGURE), [along])
    if stock.width is not None:
        upright = Piece(scale.y(stock.width), bottom, show(stock.width, view.unit))
        dimension_chain(view.drawing, Chain("y", left - _ROW, -1, left, _FIGURE), [upright])

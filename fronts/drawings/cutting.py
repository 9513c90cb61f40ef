"""A sheet or stick as it is cut, to scale, as SVG.

Thick outlines for the board and its parts, thin lines for cuts, hatching for what is left over;
nothing depends on colour, and every look is a class for the page's style sheet.
"""

from collections.abc import Iterator
from fractions import Fraction
from html import escape

from fronts.cutting.model import Cut, Layout, Offcut, Placed, Way
from fronts.rules.lengths import Mm, show

MARGIN = Mm(60)
STICK_WIDTH = Mm(90)
"""How wide a stick is drawn: its real width is not known to the plan."""
SMALLEST_TEXT = Mm(14)
LARGEST_TEXT = Mm(52)
_CUT_ROOM = Mm(34)


def sheet_svg(layout: Layout, unit: str, *, name: str) -> str:
    """One layout; `unit` is how sizes are written, `name` makes ids on a page its own."""
    stock = layout.stock
    height = STICK_WIDTH if stock.width is None else stock.width
    box = stock.length + 2 * MARGIN, height + 2 * MARGIN
    lines = [
        f'<svg class="cutting-plan" xmlns="http://www.w3.org/2000/svg" role="img" '
        f'viewBox="0 0 {_n(box[0])} {_n(box[1])}" aria-labelledby="{escape(name)}-title">',
        f'<title id="{escape(name)}-title">{escape(_title(layout, unit))}</title>',
        _hatching(name),
        _rect("board", Mm(0), Mm(0), stock.length, height, height),
    ]
    lines += [_offcut(o, unit, name, height) for o in layout.offcuts]
    for placed in layout.placed:
        lines += _part(placed, unit, height, stock.grain)
    lines += _cuts(layout, height)
    return "\n".join([*lines, "</svg>"])


def _title(layout: Layout, unit: str) -> str:
    stock = layout.stock
    size = show(stock.length, unit)
    if stock.width is not None:
        size = f"{size} × {show(stock.width, unit)}"
    kinds = len({placed.part for placed in layout.placed})
    return f"{stock.label}, {size} {unit}: {len(layout.placed)} parts of {kinds} kinds"


def _hatching(name: str) -> str:
    return (
        f'<defs><pattern id="{escape(name)}-hatch" class="hatch" width="24" height="24" '
        'patternUnits="userSpaceOnUse" patternTransform="rotate(45)">'
        '<line class="hatch-line" x1="0" y1="0" x2="0" y2="24"/></pattern></defs>'
    )


def _part(placed: Placed, unit: str, height: Mm, grain: Way | None) -> Iterator[str]:
    width = STICK_WIDTH if placed.width is None else placed.width
    yield _rect("part", placed.x, placed.y, placed.length, width, height)
    yield from _label(placed, width, unit, height)
    if placed.width is not None and grain is not None and placed.grain is not None:
        yield _grain(placed, grain, height)


def _label(placed: Placed, width: Mm, unit: str, height: Mm) -> Iterator[str]:
    """Label and size, along the part's longer side, in letters that fit it."""
    size = show(placed.length, unit)
    if placed.width is not None:
        size = f"{size} × {show(placed.width, unit)}"
    upright = width > placed.length * Fraction(3, 2)
    long, short = (width, placed.length) if upright else (placed.length, width)
    letters = max(len(placed.part), len(size), 1)
    text = min(LARGEST_TEXT, short / 3, long / letters * Fraction(3, 2))
    if text < SMALLEST_TEXT:
        text, size = min(LARGEST_TEXT, short * Fraction(3, 5), long / max(len(placed.part), 1)), ""
    x, y = _at(placed.x + placed.length / 2, placed.y + width / 2, height)
    turn = f' transform="rotate(-90 {_n(x)} {_n(y)})"' if upright else ""
    first = y - text / 6 if size else y + text / 3
    yield (
        f'<text class="part-label" x="{_n(x)}" y="{_n(first)}" font-size="{_n(text)}" '
        f'text-anchor="middle"{turn}>{escape(placed.part)}</text>'
    )
    if size:
        yield (
            f'<text class="part-size" x="{_n(x)}" y="{_n(y + text)}" '
            f'font-size="{_n(text * Fraction(4, 5))}" text-anchor="middle"{turn}>'
            f"{escape(size)}</text>"
        )


def _grain(placed: Placed, grain: Way, height: Mm) -> str:
    """A double arrow along the grain, near the part's edge."""
    width = placed.width or Mm(0)
    head = min(Mm(14), placed.length / 10, width / 10)
    if grain == "length":
        x1, y1 = _at(placed.x + placed.length / 10, placed.y + width / 8, height)
        x2, y2 = x1 + placed.length * Fraction(4, 5), y1
        heads = (
            f"M{_n(x1 + head)} {_n(y1 - head)}L{_n(x1)} {_n(y1)}L{_n(x1 + head)} {_n(y1 + head)}"
            f"M{_n(x2 - head)} {_n(y2 - head)}L{_n(x2)} {_n(y2)}L{_n(x2 - head)} {_n(y2 + head)}"
        )
    else:
        x1, y1 = _at(placed.x + placed.length / 8, placed.y + width * Fraction(9, 10), height)
        x2, y2 = x1, y1 + width * Fraction(4, 5)
        heads = (
            f"M{_n(x1 - head)} {_n(y1 + head)}L{_n(x1)} {_n(y1)}L{_n(x1 + head)} {_n(y1 + head)}"
            f"M{_n(x2 - head)} {_n(y2 - head)}L{_n(x2)} {_n(y2)}L{_n(x2 + head)} {_n(y2 - head)}"
        )
    return f'<path class="grain" d="M{_n(x1)} {_n(y1)}L{_n(x2)} {_n(y2)}{heads}"/>'


def _offcut(offcut: Offcut, unit: str, name: str, height: Mm) -> str:
    """Hatched; its size is written where it goes back to stock."""
    width = STICK_WIDTH if offcut.width is None else offcut.width
    kind = "offcut usable" if offcut.usable else "offcut waste"
    fill = f' fill="url(#{escape(name)}-hatch)"'
    shown = _rect(kind, offcut.x, offcut.y, offcut.length, width, height, fill)
    if not offcut.usable:
        return shown
    size = show(offcut.length, unit)
    if offcut.width is not None:
        size = f"{size} × {show(offcut.width, unit)}"
    upright = width > offcut.length * Fraction(3, 2)
    long, short = (width, offcut.length) if upright else (offcut.length, width)
    text = min(LARGEST_TEXT, short / 2, long / len(size) * Fraction(3, 2))
    x, y = _at(offcut.x + offcut.length / 2, offcut.y + width / 2, height)
    turn = f' transform="rotate(-90 {_n(x)} {_n(y)})"' if upright else ""
    return shown + (
        f'<text class="offcut-size" x="{_n(x)}" y="{_n(y + text / 3)}" font-size="{_n(text)}" '
        f'text-anchor="middle"{turn}>{escape(size)}</text>'
    )


def _cuts(layout: Layout, height: Mm) -> Iterator[str]:
    """Each cut as a thin line with its number at the end that it starts from."""
    for cut in layout.cuts:
        start, end, x, y = _line(cut, layout, height)
        yield (
            f'<line class="cut {cut.kind}" x1="{_n(start[0])}" y1="{_n(start[1])}" '
            f'x2="{_n(end[0])}" y2="{_n(end[1])}"/>'
        )
        text = min(Mm(30), _CUT_ROOM)
        yield (
            f'<text class="cut-number" x="{_n(x)}" y="{_n(y)}" font-size="{_n(text)}" '
            f'text-anchor="middle">{cut.number}</text>'
        )


def _line(cut: Cut, layout: Layout, height: Mm) -> tuple[tuple[Mm, Mm], tuple[Mm, Mm], Mm, Mm]:
    """Where a cut runs on the drawing, and where its number stands."""
    if cut.along == "length":
        start, end = _at(cut.start, cut.at, height), _at(cut.end, cut.at, height)
        outside = cut.start <= layout.stock.length / 100
        x = MARGIN / 2 if outside else start[0] + _CUT_ROOM / 2
        return start, end, x, start[1] + _CUT_ROOM / 3
    low, high = (Mm(0), height) if layout.stock.width is None else (cut.start, cut.end)
    start, end = _at(cut.at, low, height), _at(cut.at, high, height)
    outside = low <= height / 100
    y = start[1] + MARGIN * Fraction(2, 3) if outside else start[1] - _CUT_ROOM / 4
    return start, end, start[0], y


def _rect(kind: str, x: Mm, y: Mm, length: Mm, width: Mm, height: Mm, extra: str = "") -> str:
    left, top = _at(x, y + width, height)
    return (
        f'<rect class="{kind}" x="{_n(left)}" y="{_n(top)}" '
        f'width="{_n(length)}" height="{_n(width)}"{extra}/>'
    )


def _at(x: Mm, y: Mm, height: Mm) -> tuple[Mm, Mm]:
    """From the board's lower left corner to the drawing's upper left one."""
    return MARGIN + x, MARGIN + height - y


def _n(value: Mm) -> str:
    """A drawing's number: two places are far finer than any printer."""
    return f"{float(value):.2f}".rstrip("0").rstrip(".")

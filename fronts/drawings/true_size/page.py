"""A page of templates at true size, with a bar along two of its sides to check the printer by."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from fronts.drawings.drawing import PAPER, Drawing
from fronts.drawings.geometry import Area
from fronts.drawings.lettering import line_height, text_width
from fronts.drawings.svg import Px
from fronts.drawings.true_size.card import NAME, PAD, Card
from fronts.drawings.true_size.outline import FIGURE, Outline, Span, Stroke, px
from fronts.drawings.true_size.tiles import Register
from fronts.rules.kinds import Unit
from fronts.rules.lengths import INCH, NOTHING, Mm, show_with_unit

ROOM = Mm(172), Mm(226)
"""For cards. With the bars it fits A4 (ISO 216: 210 × 297 mm) and Letter (ANSI/ASME Y14.1, size A:
8 1/2 × 11 in) alike, inside the sheets' margins: what fits one is not made anew for the other."""
_BARS = Mm(10)
"""Beside the room and under it."""
BAR: dict[Unit, Mm] = {"in": INCH * 4, "mm": Mm(100)}
"""How long each bar is."""
_MARKS: dict[Unit, Mm] = {"in": INCH, "mm": Mm(10)}
_HALF_TICK, _HALF_END = Mm(1), Mm(3)
_CROSS, _RING = Mm(4), Mm(4)
_BAR_AWAY = Mm(6)


@dataclass(frozen=True, slots=True)
class PlacedCard:
    """A card on its page, its upper left corner from the page's, with its template's number."""

    card: Card
    number: int
    x: Mm
    y: Mm


def template_page(cards: Sequence[PlacedCard], unit: Unit) -> str:
    """The page as an `<svg>`, always of one size."""
    drawing = Drawing(PAPER)
    drawing.seen.append(Area(0, 0, px(ROOM[0] + _BARS), px(ROOM[1] + _BARS)))
    for placed in cards:
        _frame(drawing, placed)
        _words(drawing, placed)
        _drawn(drawing, placed)
    _bars(drawing, unit)
    names = ", ".join(dict.fromkeys(f"T{placed.number}" for placed in cards))
    return drawing.svg(f"Templates at true size: {names}", "templates")


def _frame(drawing: Drawing, placed: PlacedCard) -> None:
    left, top = px(placed.x), px(placed.y)
    area = Area(left, top, px(placed.x + placed.card.width), px(placed.y + placed.card.height))
    drawing.rect("cut", area)


def _words(drawing: Drawing, placed: PlacedCard) -> None:
    x, top = px(placed.x + PAD), px(placed.y + PAD)
    title = f"T{placed.number} {placed.card.title}"
    drawing.text(x, top + line_height(NAME) // 2, title, NAME, "start", bold=True, kind="name")
    y = top + line_height(NAME)
    for line in placed.card.lines:
        drawing.text(x, y + line_height(FIGURE) // 2, line, FIGURE, "start", kind="note")
        y += line_height(FIGURE)


@dataclass(frozen=True, slots=True)
class _Place:
    """From a template's millimetres to the page, y down."""

    span: Span
    left: Mm
    top: Mm

    def x(self, x: Mm) -> Px:
        return px(self.left + x - self.span.left)

    def y(self, y: Mm) -> Px:
        return px(self.top + self.span.top - y)


def _drawn(drawing: Drawing, placed: PlacedCard) -> None:
    card = placed.card
    place = _Place(card.tile.span, placed.x + PAD, placed.y + PAD + card.words_height)
    _outline(drawing, place, card.tile.outline)
    for register in card.tile.registers:
        _register(drawing, place, register, f"T{placed.number} {register.name}")


def _outline(drawing: Drawing, place: _Place, outline: Outline) -> None:
    kinds = dict.fromkeys(each.kind for each in outline.strokes)
    for kind in kinds:
        same = (each for each in outline.strokes if each.kind == kind)
        drawing.lines(kind, (_ends(place, each) for each in same))
    for ring in outline.rings:
        drawing.circle(ring.kind, place.x(ring.x), place.y(ring.y), px(ring.diameter / 2))
    for each in outline.figures:
        x, y = place.x(each.x), place.y(each.y)
        drawing.text(x, y, each.text, FIGURE, each.anchor, kind="dimension")


def _ends(place: _Place, stroke: Stroke) -> tuple[Px, Px, Px, Px]:
    return place.x(stroke.x1), place.y(stroke.y1), place.x(stroke.x2), place.y(stroke.y2)


def _register(drawing: Drawing, place: _Place, register: Register, name: str) -> None:
    x, y, reach = place.x(register.x), place.y(register.y), px(_CROSS)
    drawing.lines("box", [(x - reach, y, x + reach, y), (x, y - reach, x, y + reach)])
    drawing.circle("box", x, y, px(_RING / 2))
    left, over = x - text_width(name, FIGURE, bold=True) // 2, y - reach - line_height(FIGURE) // 2
    drawing.text(left, over, name, FIGURE, "start", bold=True, kind="note")


def _bars(drawing: Drawing, unit: Unit) -> None:
    """One along the foot, one up the right: a printer may be true along one way alone."""
    long, says = BAR[unit], show_with_unit(BAR[unit], unit)
    foot, right = ROOM[1] + _BAR_AWAY, ROOM[0] + _BAR_AWAY
    ends = [(NOTHING, foot, long, foot)]
    ends += [(x, foot - half, x, foot + half) for x, half in _ticks(long, unit)]
    top = ROOM[1] - long
    ends += [(right, top, right, ROOM[1])]
    ends += [(right - half, top + y, right + half, top + y) for y, half in _ticks(long, unit)]
    drawing.lines("edge", ((px(x1), px(y1), px(x2), px(y2)) for x1, y1, x2, y2 in ends))
    beside = px(long + _HALF_END)
    words = f"Both bars must measure {says}: here and at the right."
    drawing.text(beside, px(foot), words, FIGURE, "start", bold=True, kind="note")
    drawing.text(px(right), px(top) - line_height(FIGURE), says, FIGURE, bold=True, kind="note")


def _ticks(long: Mm, unit: Unit) -> Iterator[tuple[Mm, Mm]]:
    """Where the bar's marks are, and how far each reaches to either side."""
    count = int(long / _MARKS[unit])
    for at in range(count + 1):
        yield _MARKS[unit] * at, _HALF_END if at in (0, count) else _HALF_TICK

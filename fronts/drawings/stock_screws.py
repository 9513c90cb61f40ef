"""What the lengths of screws on the shelf mean: a mounting screw and a knob screw, cut along."""

from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.scale import Scale
from fronts.drawings.svg import Px
from fronts.rules.job_facts import Stock
from fronts.rules.lengths import NOTHING, Mm, write

BOX, FRONT, HIGH, HEAD, SHANK = Mm(24), Mm(36), Mm(34), Mm(5), Mm(5)
"""A box's front and a front as they are drawn: not to scale with the figures."""
_KNOB, _THREAD = Mm(30), Mm(16)
_SIZE: Px = 11_00
_ROW: Px = 12_00
_APART = Mm(46)


def stock_screws_drawing(stock: Stock, unit: str) -> str:
    """Both screws as an `<svg>`; the first length of each that is kept stands for all."""
    drawing, scale = Drawing(SCREEN), Scale(2_600)
    _mounting(drawing, scale, stock, unit)
    _knob(drawing, scale, stock, unit)
    return drawing.svg("A mounting screw and a knob screw, cut along", "stock")


def _mounting(drawing: Drawing, scale: Scale, stock: Stock, unit: str) -> None:
    bottom, middle = HIGH + _APART, HIGH + _APART + HIGH / 2
    box = scale.area(NOTHING, bottom, BOX, HIGH)
    front = scale.area(BOX, bottom, FRONT, HIGH)
    tip = BOX + FRONT * 2 / 3
    drawing.rect("cabinet", box)
    drawing.rect("front", front)
    drawing.rect("box", scale.area(-HEAD, middle - SHANK, HEAD, 2 * SHANK))
    drawing.rect("box", scale.area(NOTHING, middle - SHANK / 2, tip, SHANK))
    drawing.text(box.left + 4_00, box.top - _ROW, "mounting screw", 12_00, "start", kind="note")
    chain = Chain("x", front.bottom + _ROW, 1, front.bottom, _SIZE)
    words = _lengths("length", stock.screw_lengths, unit)
    dimension_chain(drawing, chain, [Piece(scale.x(NOTHING), scale.x(tip), words)])


def _knob(drawing: Drawing, scale: Scale, stock: Stock, unit: str) -> None:
    middle, right = HIGH / 2, BOX + FRONT
    box = scale.area(NOTHING, NOTHING, BOX, HIGH)
    drawing.rect("cabinet", box)
    drawing.rect("front", scale.area(BOX, NOTHING, FRONT, HIGH))
    drawing.rect("cabinet", scale.area(right, middle - 2 * SHANK, _KNOB, 4 * SHANK))
    drawing.rect("box", scale.area(-HEAD, middle - SHANK, HEAD, 2 * SHANK))
    drawing.rect("box", scale.area(NOTHING, middle - SHANK / 2, right + _THREAD, SHANK))
    note = f"knob screw, thread {stock.knob_thread}"
    drawing.text(box.left + 4_00, box.top - _ROW, note, 12_00, "start", kind="note")
    base = scale.y(NOTHING)
    words = _lengths("length", stock.knob_screw_lengths, unit)
    end = dimension_chain(drawing, Chain("x", base + _ROW, 1, base, _SIZE), [
        Piece(scale.x(NOTHING), scale.x(right + _THREAD), words),
    ])  # fmt: skip
    depth = f"thread's depth {write(stock.knob_thread_depth, unit)}"
    dimension_chain(drawing, Chain("x", end + _ROW // 2, 1, base, _SIZE), [
        Piece(scale.x(right), scale.x(right + _THREAD), depth),
    ])  # fmt: skip


def _lengths(words: str, lengths: tuple[Mm, ...], unit: str) -> str:
    """`length 1, or 3 others`."""
    if not lengths:
        return words
    others = len(lengths) - 1
    more = f", or {others} other{'' if others == 1 else 's'}" if others else ""
    return f"{words} {write(lengths[0], unit)}{more}"

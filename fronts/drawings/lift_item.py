"""What the numbers of a stay or lift mean: a door raised on it, its weight and its height."""

from collections.abc import Mapping
from fractions import Fraction

from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.lettering import line_height
from fronts.drawings.scale import Scale
from fronts.rules.finding_words import FindingWords
from fronts.rules.items import LiftItem
from fronts.rules.kinds import Unit
from fronts.rules.lengths import NOTHING, Mm, terminating
from fronts.rules.lifts import METRE
from fronts.rules.practice import inches

DEEP, HIGH, THICK, BOARD = Mm(60), Mm(76), Mm(5), Mm(5)
"""A wall cabinet from the side and its door as they are drawn: not to scale with the figures."""
_SHOWN: Mapping[str, tuple[Mm, ...]] = {
    "in": (inches(12), inches(18), inches(24)), "mm": (Mm(300), Mm(450), Mm(600)),
}  # fmt: skip
"""Heights of doors that the weights are told for (our own choice)."""
_SIZE, _NOTE, _ROW = 11_00, 12_00, 12_00


def lift_item_drawing(lift: LiftItem, unit: Unit) -> str:
    """The cabinet cut along as an `<svg>`, and what weights the item serves at some heights."""
    drawing, scale = Drawing(SCREEN), Scale(2_600)
    drawing.rect("cabinet", scale.area(NOTHING, NOTHING, DEEP, HIGH))
    drawing.rect("cabinet", scale.area(NOTHING, HIGH - BOARD, DEEP, BOARD))
    shut = scale.area(-THICK, NOTHING, THICK, HIGH)
    drawing.rect("hidden", shut)
    drawing.rect("front", scale.area(-HIGH, HIGH - THICK, HIGH, THICK))
    ends = [(DEEP / 2, HIGH / 2), (-HIGH / 3, HIGH - THICK)]
    drawing.path("box", [(scale.x(x), scale.y(y)) for x, y in ends])
    for x, y in ends:
        drawing.circle("box", scale.x(x), scale.y(y), 3_00)
    middle, arm = scale.x(-HIGH / 2), scale.y(HIGH - THICK)
    _pull(drawing, middle, arm, arm + scale.length(HIGH / 3))
    drawing.text(middle, arm + scale.length(HIGH / 3) + _ROW, "weight", _SIZE, kind="note")
    drawing.text(scale.x(DEEP / 2), scale.y(HIGH / 4), "cabinet", _NOTE, kind="note")
    above = Chain("x", scale.y(HIGH) - _ROW, -1, scale.y(HIGH), _SIZE)
    dimension_chain(drawing, above, [Piece(scale.x(-HIGH), 0, "door’s height")])
    _range(drawing, lift, unit)
    return drawing.svg(f"Stay or lift {lift.code}", "lift")


def _pull(drawing: Drawing, x: int, start: int, end: int) -> None:
    """An arrow downwards from the door's middle."""
    drawing.line("dimension", x, start, x, end)
    drawing.solid([(x, end), (x - 2_50, end - 7_00), (x + 2_50, end - 7_00)])


def _range(drawing: Drawing, lift: LiftItem, unit: Unit) -> None:
    """Weight × height from least to most, and what that is at heights one meets."""
    bounds, words = drawing.bounds(), FindingWords(unit)
    least = f"from {_number(lift.least)} " if lift.least else ""
    lines = [f"serves weight × height {least}up to {_number(lift.most)} kg·m"]
    for height in _SHOWN[unit]:
        weights = [words.say_weight(_at(moment, height)) for moment in (lift.least, lift.most)]
        lightest = f"from about {weights[0]} " if lift.least else ""
        lines.append(f"a door {words.say(height)} high: {lightest}up to about {weights[1]}")
    for row, text in enumerate(lines, start=2):
        y = bounds.bottom + row * line_height(_NOTE)
        drawing.text(bounds.left, y, text, _NOTE, "start", kind="note")


def _at(moment: Fraction, height: Mm) -> Fraction:
    """The weight that makes this moment with a door so high."""
    return moment * METRE / height


def _number(moment: Fraction) -> str:
    return terminating(moment) or f"{float(moment):.2f}"

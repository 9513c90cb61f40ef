"""A template for holes: edges of the wood, lines to lay it along, and a cross at each centre.

Its level edge is below, an upright one at the left, the right or both. Where there is no edge
a chain line, which is marked on the wood first, runs through the middle of the holes.
"""

from itertools import pairwise

from fronts.drawings.drawing import Anchor
from fronts.drawings.true_size.measured import (
    along_centres,
    centre_mark,
    level_edge,
    level_size,
    upright_edge,
    upright_size,
)
from fronts.drawings.true_size.outline import Figure, Outline, turned
from fronts.figures.templates import EdgeWords, in_both_units
from fronts.rules.kitchen import Point
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.template_results import HoleTemplate

_START: Anchor = "start"
_END: Anchor = "end"
_AROUND = Mm(10)
"""How far edges and lines run on past the holes."""
_OVER = Mm(3)
_BELOW = Mm(5)
_ROOM = Mm(8)
"""Between the edge and a hole, for a figure."""


def hole_outline(template: HoleTemplate, words: EdgeWords, unit: str) -> Outline:
    """The template as it is printed, the corner of its edges at 0, 0."""
    drawn = _Drawn(template, words, unit)
    drawn.edges()
    drawn.lines()
    for mark in drawn.marks:
        centre_mark(drawn.outline, mark.x, mark.y, template.diameter)
    drawn.across()
    drawn.upwards()
    return turned(drawn.outline) if template.upside_down else drawn.outline


class _Drawn:
    def __init__(self, template: HoleTemplate, words: EdgeWords, unit: str) -> None:
        self.outline, self.words, self.unit = Outline(), words, unit
        self.level_edge, self.hands = template.level_edge, template.hands
        self.mirrored = self.hands == ("right",)
        self.marks = [
            Point(-mark.x if self.mirrored else mark.x, mark.y) for mark in template.marks
        ]
        self.radius = (template.diameter or NOTHING) / 2
        self.xs = sorted({mark.x for mark in self.marks})
        self.ys = sorted({mark.y for mark in self.marks})
        self.both = len(self.hands) > 1
        self.left, self.right = self._sides()
        self.bottom = NOTHING if self.level_edge else self.ys[0] - self.radius - _AROUND
        self.top = self.ys[-1] + self.radius + _AROUND

    def _sides(self) -> tuple[Mm, Mm]:
        reach = self.radius + _AROUND
        left, right = self.xs[0] - reach, self.xs[-1] + reach
        if self.both:
            return NOTHING, self.xs[0] * 2
        if "left" in self.hands:
            left = NOTHING
        if "right" in self.hands:
            right = NOTHING
        return left, right

    def edges(self) -> None:
        """Each with its name, where the eye looks for it."""
        if self.level_edge:
            level_edge(self.outline, NOTHING, self.left, self.right)
            at, side = (self.right, _END) if self.mirrored else (self.left, _START)
            self.outline.figures.append(Figure(at, -_BELOW, self.words.level, side))
        for hand in self.hands:
            left = hand == "left"
            at, out, side = (self.left, -1, _START) if left else (self.right, 1, _END)
            upright_edge(self.outline, at, self.bottom, self.top, out=out)
            word = self.words.left if left else self.words.right
            self.outline.figures.append(Figure(at - out, self.top - 1, word, side))

    def lines(self) -> None:
        """Lines that are marked on the wood first."""
        if not self.level_edge:
            self.outline.stroke("centre", self.left, NOTHING, self.right, NOTHING)
        if not self.hands:
            self.outline.stroke("centre", NOTHING, self.bottom, NOTHING, self.top)

    def across(self) -> None:
        """How far the holes are from the upright edge, and from each other, over them all."""
        stops = sorted([NOTHING, *self.xs] if self.hands else self.xs, key=abs)
        y = self.ys[-1] + self.radius + _OVER
        for start, end in pairwise(stops):
            level_size(self.outline, y, start, end, in_both_units(abs(end - start), self.unit))
        if self.both:
            level_size(self.outline, y, self.right, self.xs[0], "")

    def upwards(self) -> None:
        """How far they are from the level edge: on their own line, or where there is room."""
        stops = [NOTHING, *self.ys] if self.level_edge else self.ys
        for start, end in pairwise(stops):
            text = in_both_units(end - start, self.unit)
            if end - start - self.radius >= _ROOM:
                along_centres(self.outline, self.xs[-1], start, end, text)
            else:
                upright_size(self.outline, self.right + _ROOM, start, end, text)

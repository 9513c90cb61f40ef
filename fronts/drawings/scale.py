"""From millimetres on the wall, y up, to places on paper, y down."""

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from fronts.drawings.drawing import EDGE, Drawing
from fronts.drawings.geometry import Area
from fronts.drawings.svg import Px
from fronts.rules.lengths import Mm

_FINEST = 1000
"""A scale is a whole number of thousandths of a pixel to the millimetre."""

ORIGIN = Mm(0)
_MOST_TRIES = 40


@dataclass(frozen=True, slots=True)
class Scale:
    """`thousandths` of a pixel to a millimetre; the origin at the lower left of what is drawn."""

    thousandths: int
    left: Mm = ORIGIN
    bottom: Mm = ORIGIN

    def length(self, mm: Mm) -> Px:
        # Half up, in whole numbers: ten times as quick as rounding a Fraction.
        return (2 * mm.numerator * self.thousandths + 10 * mm.denominator) // (20 * mm.denominator)

    def x(self, mm: Mm) -> Px:
        return self.length(mm) - self.length(self.left)

    def y(self, mm: Mm) -> Px:
        return self.length(self.bottom) - self.length(mm)

    def area(self, x: Mm, y: Mm, width: Mm, height: Mm) -> Area:
        return Area(self.x(x), self.y(y + height), self.x(x + width), self.y(y))


def fitted(width: Mm, height: Mm, *, room: tuple[Px, Px], most: int = 2_000, least: int = 1) -> int:
    """The thousandths of a pixel to a millimetre at which width × height fits into the room."""
    fits = [
        Fraction(space, 100) / size * _FINEST
        for size, space in ((width, room[0]), (height, room[1]))
        if size > 0
    ]
    return max(least, min([most, *(int(each) for each in fits)]))


def largest(draw: Callable[[int], Drawing], first: int, room: tuple[Px, Px]) -> tuple[int, Drawing]:
    """The largest scale tried, from `first` down, at which the drawing stays inside the room.

    What the dimensions take around the drawn thing depends on the scale itself, so it is tried.
    """
    size = first
    drawing = draw(size)
    for _ in range(_MOST_TRIES):
        taken = drawing.bounds().grown(EDGE)
        if taken.width <= room[0] and taken.height <= room[1]:
            break
        size = max(1, size * 19 // 20)
        drawing = draw(size)
    return size, drawing

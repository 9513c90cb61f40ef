"""From millimetres on the wall, y up, to places on paper, y down."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from fronts.drawings.drawing import EDGE, Drawing
from fronts.drawings.geometry import Area
from fronts.drawings.svg import Px
from fronts.rules.lengths import Mm

_FINEST = 1000
"""A scale is a whole number of thousandths of a pixel to the millimetre."""

ORIGIN = Mm(0)
_MOST_STEPS = 40


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


def largest(
    draw: Callable[[int], Drawing], first: int, room: tuple[Px, Px], thing: tuple[Mm, Mm]
) -> Drawing:
    """The drawing at the largest scale, of steps from `first` down, at which it keeps its room.

    What dimensions take around the `thing` (its width and height) hardly depends on the scale:
    from what they take in one trial follows the scale of the next, and a few find it. The last
    step is taken however large it is.
    """
    sizes = _steps(first)
    return _fitting(draw, sizes, room, thing) or draw(sizes[-1])


def largest_of(
    ways: Sequence[Callable[[int], Drawing]],
    first: int,
    room: tuple[Px, Px],
    thing: tuple[Mm, Mm],
    *,
    least: Fraction,
) -> Drawing:
    """The first of several ways to draw it that comes out no smaller than `least`, else the last
    of them as large as that goes."""
    *others, last = ways
    sizes = [size for size in _steps(first) if size >= least]
    for draw in others:
        drawing = _fitting(draw, sizes, room, thing)
        if drawing is not None:
            return drawing
    return largest(last, first, room, thing)


def _fitting(
    draw: Callable[[int], Drawing],
    sizes: Sequence[int],
    room: tuple[Px, Px],
    thing: tuple[Mm, Mm],
) -> Drawing | None:
    """The drawing at the first of the sizes, from large to small, at which it keeps its room."""
    found: Drawing | None = None
    too_large, small_enough, at = -1, len(sizes), 0
    while small_enough - too_large > 1:
        drawing = draw(sizes[at])
        taken = drawing.bounds().grown(EDGE)
        if taken.width <= room[0] and taken.height <= room[1]:
            found, small_enough = drawing, at
        else:
            too_large = at
        spaces = ((taken.width, room[0], thing[0]), (taken.height, room[1], thing[1]))
        size = min(sizes[at] + (space - took) * 10 / own for took, space, own in spaces)
        at = sum(each > size for each in sizes)
        at = min(max(at, too_large + 1), small_enough - 1)
    return found


def _steps(first: int) -> list[int]:
    """Each a twentieth smaller than the one before."""
    sizes = [first]
    while len(sizes) <= _MOST_STEPS and sizes[-1] > 1:
        sizes.append(max(1, sizes[-1] * 19 // 20))
    return sizes

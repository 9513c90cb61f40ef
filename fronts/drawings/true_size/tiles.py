"""A template that is larger than the paper, in parts that are taped together.

Neighbouring parts overlap, and both bear the same crosses, two to a seam: where those lie over
each other, the parts lie as they would on one sheet. No seam runs through a hole or a figure.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise, product

from fronts.drawings.true_size.outline import Outline, Span
from fronts.rules.lengths import NOTHING, Mm

OVERLAP = Mm(8)
"""How far a part runs on past its seam, so that the crosses on it are whole."""
_INSET = Mm(12)
_QUARTERS = 4
"""How far from a seam's ends its crosses are: at least, and at most which part of it."""
_LEAST_SEAM = Mm(64)
_REACH = Mm(7)
"""What a cross takes around its centre, with its name."""


@dataclass(frozen=True, slots=True)
class Register:
    """A cross that two parts share, where it is, and what it is called on both."""

    name: str
    x: Mm
    y: Mm


@dataclass(frozen=True, slots=True)
class Tile:
    """One part: what it shows, and the crosses on its seams. `number` counts from 1."""

    span: Span
    outline: Outline
    registers: tuple[Register, ...]
    number: int
    count: int


def tiles_of(outline: Outline, most: tuple[Mm, Mm]) -> list[Tile]:
    """The template in parts no larger than `most`, from the lower left, row by row."""
    bounds, whole = outline.bounds(), list(outline.whole())
    if bounds.width > most[0] or bounds.height > most[1]:
        bounds = _roomy(bounds)
    xs = _seams(bounds.left, bounds.right, most[0], [(each.left, each.right) for each in whole])
    ys = _seams(bounds.bottom, bounds.top, most[1], [(each.bottom, each.top) for each in whole])
    places = [(x, y) for y, x in product(pairwise(ys), pairwise(xs))]
    crosses = list(_registers(xs, ys, whole))
    return [
        _tile(outline, Span(x[0], y[0], x[1], y[1]), bounds, crosses, number, len(places))
        for number, (x, y) in enumerate(places, 1)
    ]


def _roomy(bounds: Span) -> Span:
    """So wide and high that the crosses on a seam stand well apart."""
    across = max(_LEAST_SEAM - bounds.width, NOTHING) / 2
    up = max(_LEAST_SEAM - bounds.height, NOTHING) / 2
    return Span(bounds.left - across, bounds.bottom - up, bounds.right + across, bounds.top + up)


def _tile(
    outline: Outline, core: Span, bounds: Span, crosses: Sequence[Register], number: int,
    count: int,
) -> Tile:  # fmt: skip
    wide = core.grown(OVERLAP)
    span = Span(
        max(wide.left, bounds.left), max(wide.bottom, bounds.bottom),
        min(wide.right, bounds.right), min(wide.top, bounds.top),
    )  # fmt: skip
    own = tuple(each for each in crosses if core.holds(each.x, each.y))
    shown = outline.within(span)
    shown.rings = [each for each in shown.rings if core.holds(each.x, each.y)]
    return Tile(span, shown, own, number, count)


def _seams(low: Mm, high: Mm, most: Mm, whole: Sequence[tuple[Mm, Mm]]) -> list[Mm]:
    """Where the parts meet, with both ends: as far apart as the paper allows."""
    found = [low]
    while high - found[-1] > _core(most, first=len(found) == 1, last=True):
        found.append(_clear(found[-1], found[-1] + _core(most, first=len(found) == 1), whole))
    return [*found, high]


def _core(most: Mm, *, first: bool, last: bool = False) -> Mm:
    """What a part holds between its seams."""
    return most - OVERLAP * ((not first) + (not last))


def _clear(start: Mm, wanted: Mm, whole: Sequence[tuple[Mm, Mm]]) -> Mm:
    """The last place up to the wanted one where a seam cuts nothing that must stay whole."""
    at = wanted
    for low, high in sorted(whole, key=lambda each: each[1], reverse=True):
        if low - OVERLAP < at < high + OVERLAP:
            at = low - OVERLAP
    return at if at > start + OVERLAP * 2 else wanted


def _registers(xs: Sequence[Mm], ys: Sequence[Mm], whole: Sequence[Span]) -> Iterator[Register]:
    """Two to each seam between two parts, lettered seam by seam."""
    seams = [
        *(((x, low), (x, high)) for x in xs[1:-1] for low, high in pairwise(ys)),
        *(((low, y), (high, y)) for y in ys[1:-1] for low, high in pairwise(xs)),
    ]
    for number, (start, end) in enumerate(seams):
        for place, (near, far) in enumerate(((start, end), (end, start)), 1):
            x, y = _free_place(near, far, whole)
            yield Register(f"{_letter(number)}{place}", x, y)


def _free_place(near: tuple[Mm, Mm], far: tuple[Mm, Mm], whole: Sequence[Span]) -> tuple[Mm, Mm]:
    """Near one end of a seam, where a cross with its name covers nothing; else at a quarter."""
    long = abs(far[0] - near[0]) + abs(far[1] - near[1])
    away = min(_INSET, long / _QUARTERS)
    while away <= long / _QUARTERS:
        x, y = (start + (end - start) * away / long for start, end in zip(near, far, strict=True))
        taken = Span(x, y, x, y).grown(_REACH)
        if not any(taken.meets(each) for each in whole):
            return x, y
        away += 1
    x, y = (start + (end - start) / _QUARTERS for start, end in zip(near, far, strict=True))
    return x, y


def _letter(number: int) -> str:
    return chr(ord("A") + number)

"""Wood that is cut through: an outline, and thin lines at 45° across it (ISO 128-3)."""

from collections.abc import Iterator, Sequence
from typing import Literal, TypeAlias

from fronts.drawings.drawing import Drawing
from fronts.drawings.geometry import Area, Place
from fronts.drawings.svg import Px

Leaning: TypeAlias = Literal[-1, 1]

_PITCH: Px = 5_00


def draw_cut(
    drawing: Drawing, outline: Sequence[Place], areas: Sequence[Area], leaning: Leaning = 1
) -> None:
    """One piece cut through: the areas are what it consists of.

    Neighbouring pieces lean the other way.
    """
    lines = (line for area in areas for line in hatching(area, leaning))
    drawing.lines("dimension", lines)
    drawing.path("box", [*outline, outline[0]])


def draw_cut_block(drawing: Drawing, area: Area, leaning: Leaning = 1) -> None:
    """A piece that is cut through square."""
    left, top, right, bottom = area.left, area.top, area.right, area.bottom
    draw_cut(drawing, [(left, top), (right, top), (right, bottom), (left, bottom)], [area], leaning)


def hatching(area: Area, leaning: Leaning) -> Iterator[tuple[Px, Px, Px, Px]]:
    """Lines inside the area; they run on from one area of a piece into the next.

    Leaning by 1 x + y is the same along a line, else x - y.
    """
    low = area.left + min(leaning * area.top, leaning * area.bottom)
    high = area.right + max(leaning * area.top, leaning * area.bottom)
    for along in range(-(-low // _PITCH) * _PITCH, high + 1, _PITCH):
        ys = sorted(leaning * (along - x) for x in (area.left, area.right))
        top, bottom = max(ys[0], area.top), min(ys[1], area.bottom)
        if top < bottom:
            yield along - leaning * top, top, along - leaning * bottom, bottom


def draw_grooved(
    drawing: Drawing, area: Area, grooves: Sequence[tuple[Px, Px]], depth: Px, face: Leaning
) -> None:
    """A piece standing upright, cut through, with grooves so deep in its right face, or with
    -1 in its left one; each groove from its upper edge to its lower one, downwards."""
    near, far = (area.right, area.left) if face == 1 else (area.left, area.right)
    within = near - face * depth
    outline: list[Place] = [(far, area.top), (near, area.top)]
    areas, top = [], area.top
    for upper, lower in sorted(grooves):
        outline += [(near, upper), (within, upper), (within, lower), (near, lower)]
        areas += [
            Area(area.left, top, area.right, upper),
            Area(min(far, within), upper, max(far, within), lower),
        ]
        top = lower
    outline += [(near, area.bottom), (far, area.bottom)]
    draw_cut(drawing, outline, [*areas, Area(area.left, top, area.right, area.bottom)])

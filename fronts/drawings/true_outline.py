"""The true outline of an opening that tapers or leans, exaggerated behind its square front.

A lean of 1/8 in would be less than the line that draws it. Gaps of an inset front are drawn
larger, all in one proportion; laps keep their size and differ more than they do. Which end is
wider, and a front that would touch, are as they are.
"""

from collections.abc import Iterator

from fronts.drawings.dimension import Axis, small_gap
from fronts.drawings.drawing import Drawing
from fronts.drawings.geometry import Area
from fronts.drawings.scale import Scale
from fronts.drawings.svg import Px
from fronts.rules.kinds import SIDES, Side, is_inset
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front
from fronts.rules.standard_keys import Sides
from fronts.rules.wall_results import OpeningEnds

_FARTHEST: Px = 11_00
_LEAST_LAP: Px = 6_00
_NEAR, _FAR = (14, 20, 8, 26), (86, 80, 92, 74)
"""Where along a side the figure of its first end is tried, and of its last, in hundredths."""


def draw_true_outline(
    drawing: Drawing, scale: Scale, area: Area, front: Front, opening: OpeningEnds,
    *, unit: str, size: Px,
) -> None:  # fmt: skip
    """Draw the opening round its front's area, with its gaps or laps at both ends of each side."""
    laps = laps_at_ends(front, opening)
    within = Sides(*(_drawn(laps, scale, laps[side]) for side in SIDES))
    corners = [
        (area.left + within.left[0], area.top + within.top[0]),
        (area.right - within.right[0], area.top + within.top[1]),
        (area.right - within.right[1], area.bottom - within.bottom[1]),
        (area.left + within.left[1], area.bottom - within.bottom[0]),
    ]
    drawing.path("opening", [*corners, corners[0]])
    _figures(drawing, area, within, opening, unit=unit, size=size)


def _figures(
    drawing: Drawing, area: Area, within: Sides[tuple[Px, Px]], opening: OpeningEnds,
    *, unit: str, size: Px,
) -> None:  # fmt: skip
    """Both figures of each side, where there is room: all of them stand in words too."""
    for axis, side, end in _places():
        off, last = within[side][end], end == 1
        edge = getattr(area, side)
        inner = edge + off if side in ("left", "top") else edge - off
        low, high = (area.top, area.bottom) if axis == "x" else (area.left, area.right)
        small_gap(
            drawing,
            axis=axis,
            start=min(edge, inner),
            end=max(edge, inner),
            tries=[low + (high - low) * at // 100 for at in (_FAR if last else _NEAR)],
            text=show(abs(opening.ends[side][end]), unit),
            size=size,
            rooms=(None, area) if side in ("left", "top") else (area, None),
        )


def _places() -> Iterator[tuple[Axis, Side, int]]:
    for side in SIDES:
        for end in (0, 1):
            yield ("x" if side in ("left", "right") else "y"), side, end


def laps_at_ends(front: Front, opening: OpeningEnds) -> Sides[tuple[Mm, Mm]]:
    """Below zero they are gaps: an inset front has those."""
    sign = -1 if is_inset(front.plane) else 1
    return Sides(*(
        (sign * opening.ends[side][0], sign * opening.ends[side][1]) for side in SIDES
    ))  # fmt: skip


def _drawn(laps: Sides[tuple[Mm, Mm]], scale: Scale, here: tuple[Mm, Mm]) -> tuple[Px, Px]:
    every = [lap for side in SIDES for lap in laps[side]]
    greatest, mean = max(abs(lap) for lap in every), sum(every, Mm(0)) / len(every)
    if min(every) <= 0:
        larger = _FARTHEST / greatest if scale.length(greatest) < _FARTHEST else Mm(0)
        first, last = (round(lap * larger) if larger else scale.length(lap) for lap in here)
        return first, last
    base = max(scale.length(mean), _LEAST_LAP)
    widest = max(abs(lap - mean) for lap in every)
    first, last = (base + round((lap - mean) * base * 3 / 4 / widest) for lap in here)
    return first, last

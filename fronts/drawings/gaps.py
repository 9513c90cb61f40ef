"""The gaps between neighbouring fronts, each dimensioned once where there is room."""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.drawings.dimension import Axis, small_gap
from fronts.drawings.drawing import Drawing
from fronts.drawings.front_marks import front_area
from fronts.drawings.geometry import Area
from fronts.drawings.scale import Scale
from fronts.drawings.svg import Px
from fronts.rules.lengths import Mm, show
from fronts.rules.planned_gap import is_gap
from fronts.rules.results import Front

_PLACES = (30, 70, 20, 80, 40, 60, 50)
"""Where along the shared side a gap's figure is tried, in hundredths."""


@dataclass(frozen=True, slots=True)
class Gap:
    """A gap from one front to the front that faces it at its right or above it."""

    axis: Axis
    width: Mm
    before: Front
    after: Front


def gaps_between(fronts: Sequence[Front], farthest: Mm) -> list[Gap]:
    """Every gap between these fronts that is no wider than `farthest`, once."""
    known = {each.label: each for each in fronts}
    found: list[Gap] = []
    for front in fronts:
        sides: tuple[tuple[Axis, str], ...] = (("x", "right"), ("y", "top"))
        for axis, side in sides:
            edge = front.edges.right if side == "right" else front.edges.top
            other = known.get(edge.faces or "")
            if other is not None and edge.gap and is_gap(edge.gap, farthest):
                found.append(Gap(axis, edge.gap, front, other))
    return found


def draw_gaps(
    drawing: Drawing, scale: Scale, gaps: Sequence[Gap], *, unit: str, size: Px
) -> list[Gap]:
    """Draw the gaps that find a free place; gives those that found none."""
    left_out: list[Gap] = []
    for gap in gaps:
        before, after = front_area(scale, gap.before), front_area(scale, gap.after)
        across = gap.axis == "x"
        low, high = _shared(before, after, across=across)
        done = small_gap(
            drawing,
            axis=gap.axis,
            start=before.right if across else after.bottom,
            end=after.left if across else before.top,
            tries=[low + (high - low) * each // 100 for each in _PLACES],
            text=show(gap.width, unit),
            size=size,
            rooms=(before, after) if across else (after, before),
        )
        if not done:
            left_out.append(gap)
    return left_out


def _shared(one: Area, other: Area, *, across: bool) -> tuple[Px, Px]:
    if across:
        return max(one.top, other.top), min(one.bottom, other.bottom)
    return max(one.left, other.left), min(one.right, other.right)

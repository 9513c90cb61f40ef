"""Which spaces round a front are planned, and how wide each is to be.

What an installer looks at is a gap inside the opening, else the gap to the front that faces
the side, else what shows of the cabinet beside the front. A space wider than the shop still
calls one run is none of these.
"""

from dataclasses import dataclass
from typing import Literal

from fronts.rules.cabinet_edges import to_cabinet_edges
from fronts.rules.fits import Gaps
from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect
from fronts.rules.results import Front


@dataclass(frozen=True, slots=True)
class PlannedGap:
    """A space to be expected at a side: a gap, or what shows of the cabinet up to its edge."""

    width: Mm
    to: Literal["gap", "edge"]


def is_gap(space: Mm, farthest: Mm) -> bool:
    """Whether a space is a gap that one looks at and plans, or too wide to be one."""
    return 0 <= space <= farthest


def planned_gap(front: Front, side: Side, kitchen: Kitchen) -> PlannedGap | None:
    """The space that is planned at a side of a front; None where there is nothing to plan."""
    edge, farthest = front.edges[side], kitchen.practice.filler
    if edge.overlay is not None and edge.overlay < 0:
        return PlannedGap(-edge.overlay, "gap")
    if edge.gap is not None and is_gap(edge.gap, farthest):
        return PlannedGap(edge.gap, "gap")
    outline = Rect(front.x, front.y, front.width, front.height)
    shows = to_cabinet_edges(outline, kitchen.cabinet(front.cabinet))[side]
    return PlannedGap(shows, "edge") if is_gap(shows, farthest) else None


def planned_gaps(front: Front, kitchen: Kitchen) -> Gaps:
    """The gaps that are planned round a front, None where there is nothing to plan."""
    planned = {side: planned_gap(front, side, kitchen) for side in SIDES}
    return Gaps(**{side: gap.width for side, gap in planned.items() if gap is not None})

"""Which gaps round a front are worth planning, and how wide each is to be."""

from dataclasses import dataclass
from typing import Literal

from fronts.drawings.gaps import within_reach
from fronts.rules.kitchen import Cabinet, Kitchen, Side
from fronts.rules.lengths import Mm
from fronts.rules.results import Front


@dataclass(frozen=True, slots=True)
class Planned:
    """A space to be expected at a side: a gap, or what shows of the cabinet up to its edge."""

    width: Mm
    to: Literal["gap", "edge"]


def planned_gap(front: Front, side: Side, kitchen: Kitchen) -> Planned | None:
    """The gap inside the opening, else to the front that faces the side, else what shows beside it.

    None where even that is farther than the shop still calls one run.
    """
    edge, farthest = front.edges[side], kitchen.practice.filler
    if edge.overlay is not None and edge.overlay < 0:
        return Planned(-edge.overlay, "gap")
    if edge.gap is not None and within_reach(edge.gap, farthest):
        return Planned(edge.gap, "gap")
    cabinet = next(each for each in kitchen.cabinets if each.label == front.cabinet)
    shows = _to_edge(front, side, cabinet)
    return Planned(shows, "edge") if within_reach(shows, farthest) else None


def _to_edge(front: Front, side: Side, cabinet: Cabinet) -> Mm:
    match side:
        case "left":
            return front.x - cabinet.x
        case "right":
            return cabinet.x + cabinet.width - front.right
        case "top":
            return cabinet.y + cabinet.height - front.top
        case "bottom":
            return front.y - cabinet.y

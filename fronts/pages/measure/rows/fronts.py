"""The front schedule as rows of a table."""

from collections.abc import Callable, Collection
from dataclasses import dataclass

from fronts.drawings.svg import safe_id
from fronts.figures.fronts import FrontLine, front_line
from fronts.figures.own_standard import differing_fronts
from fronts.pages.shared.choice_words import HAND
from fronts.rules.kinds import SIDES, name_of
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front, Schedule

NOTHING = "–"


@dataclass(frozen=True, slots=True)
class FrontRow:
    """One front; overlays and gaps run left, right, top, bottom. `anchor` is in the drawing.

    `differs` is what it, its opening or its cabinet says for itself.
    """

    line: FrontLine
    href: str
    anchor: str
    kind: str
    overlays: tuple[str, ...]
    gaps: tuple[str, ...]
    hinged: str
    differs: str


def front_rows(
    schedule: Schedule, kitchen: Kitchen, way: Callable[[str], str], walls: Collection[str]
) -> list[FrontRow]:
    """The fronts on these walls, as scheduled; a gap wider than the shop fills is none."""
    unit, farthest = kitchen.job.unit, kitchen.practice.filler
    there = tuple(cabinet for cabinet in kitchen.cabinets if cabinet.wall in walls)
    differs = differing_fronts(there, kitchen)
    return [
        _row(front, unit, way(front.label), farthest, differs.get(front.label, ""))
        for front in schedule.fronts
        if front.wall in walls
    ]


def _row(front: Front, unit: str, href: str, farthest: Mm, differs: str) -> FrontRow:
    edges = [front.edges[side] for side in SIDES]
    return FrontRow(
        line=front_line(front, unit),
        href=href,
        anchor=safe_id("front", front.label),
        kind=name_of(front.kind),
        overlays=tuple(_said(each.overlay, unit) for each in edges),
        gaps=tuple(_said(_near(each.gap, farthest), unit) for each in edges),
        hinged=HAND[front.hinged] if front.hinged else NOTHING,
        differs=differs,
    )


def _near(gap: Mm | None, farthest: Mm) -> Mm | None:
    return None if gap is None or gap > farthest else gap


def _said(length: Mm | None, unit: str) -> str:
    return NOTHING if length is None else show(length, unit).replace("-", "−")

"""The front schedule as rows of a table."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from fronts.drawings.svg import safe_id
from fronts.pages.shared.choice_words import HAND
from fronts.rules.kitchen import SIDES
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front, Schedule

NOTHING = "–"


@dataclass(frozen=True, slots=True)
class FrontRow:
    """One front; overlays and gaps run left, right, top, bottom. `anchor` is in the drawing."""

    label: str
    href: str
    anchor: str
    kind: str
    width: str
    height: str
    thickness: str
    overlays: tuple[str, ...]
    gaps: tuple[str, ...]
    hinged: str
    made_from: str


def front_rows(
    schedule: Schedule, unit: str, way: Callable[[str], str], farthest: Mm
) -> list[FrontRow]:
    """The schedule's fronts in their order; a gap wider than `farthest` is none."""
    return [_row(front, unit, way(front.label), farthest) for front in schedule.fronts]


def _row(front: Front, unit: str, href: str, farthest: Mm) -> FrontRow:
    edges = [front.edges[side] for side in SIDES]
    return FrontRow(
        label=front.label,
        href=href,
        anchor=safe_id("front", front.label),
        kind=front.kind,
        width=show(front.width, unit),
        height=show(front.height, unit),
        thickness=show(front.thickness, unit),
        overlays=tuple(_said(each.overlay, unit) for each in edges),
        gaps=tuple(_said(_near(each.gap, farthest), unit) for each in edges),
        hinged=HAND[front.hinged] if front.hinged else NOTHING,
        made_from="; ".join(_made_from(front, unit)),
    )


def _made_from(front: Front, unit: str) -> Iterator[str]:
    if front.door_on_hand is None:
        yield "new" if front.is_new else "exists"
        return
    yield f"door {front.door_on_hand}"
    if front.trim_width or front.trim_height:
        trims = f"{show(front.trim_width, unit)} × {show(front.trim_height, unit)}"
        yield f"trim {trims}"


def _near(gap: Mm | None, farthest: Mm) -> Mm | None:
    return None if gap is None or gap > farthest else gap


def _said(length: Mm | None, unit: str) -> str:
    return NOTHING if length is None else show(length, unit).replace("-", "−")

"""Stickers for the parts: one for each piece, to go on as it leaves the saw."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from fronts.figures.bands import band_words, finished_words
from fronts.figures.findings import findings_of
from fronts.figures.parts import part_words, place_in_set
from fronts.figures.sizes import size
from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.lengths import show
from fronts.rules.materials import has_grain
from fronts.rules.parts import PANEL, SLAB
from fronts.rules.results import Front, Part, Schedule
from fronts.sheets.sheet_page import SheetSource, page

ACROSS = 3
"""Stickers side by side."""
MOST = 3_000
"""More stickers than this are a slip, and would take minutes to print."""


@dataclass(frozen=True, slots=True)
class Sticker:
    """What stands on one piece; `grain_set` is the set that it is one of, and its number there."""

    label: str
    piece: str
    size: str
    material: str
    cabinet: str
    grain: str
    grain_set: str
    band: str
    finished: str


def content(source: SheetSource) -> str:
    """The stickers of all parts, in the order of the cut list."""
    found = list(stickers_of(source.schedule))[:MOST]
    rows = [found[start : start + ACROSS] for start in range(0, len(found), ACROSS)]
    context = {"title": "Labels", "rows": rows, "stops": findings_of(source.schedule).stops}
    return page("labels.html", source, context)


def stickers_of(schedule: Schedule) -> Iterator[Sticker]:
    """A sticker for each piece: a part that is wanted twice has two."""
    fronts = {each.label: each for each in schedule.fronts}
    for group in cutting_groups(schedule.parts):
        yield from _stickers(group.parts, fronts, schedule.job.unit)


def _stickers(parts: Iterable[Part], fronts: dict[str, Front], unit: str) -> Iterator[Sticker]:
    for part in parts:
        front, piece = fronts[part.front], part_words(part.part)
        for number in range(1, part.count + 1):
            yield Sticker(
                label=part.front,
                piece=piece if part.count == 1 else f"{piece} {number} of {part.count}",
                size=size(unit, part.length, part.width),
                material=f"{part.material} {show(part.thickness, unit)}",
                cabinet=f"cabinet {front.cabinet}, wall {front.wall}",
                grain=_grain(part, front, unit),
                grain_set=_grain_set(part),
                band=band_words(part) or "no banding",
                finished=finished_words(part, unit),
            )


def _grain(part: Part, front: Front, unit: str) -> str:
    """Which side the grain runs along; on a front's face with an arrow, the front's top up."""
    if not has_grain(part.material):
        return ""
    arrow = ("↑ " if front.grain_upright else "→ ") if part.part in (SLAB, PANEL) else ""
    return f"grain {arrow}along {show(part.length, unit)}"


def _grain_set(part: Part) -> str:
    """`Run, 2 of 8`."""
    if part.grain is None or not has_grain(part.material):
        return ""
    return f"{part.grain.name}, {place_in_set(part.grain)}"

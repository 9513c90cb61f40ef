"""The front schedule and cut sheet: every front, then every piece by material and thickness."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

from django.utils.safestring import SafeString

from fronts.drawings.drawing import PAPER
from fronts.drawings.elevation import Sheet, wall_elevation
from fronts.drawings.front_marks import Letters
from fronts.figures import cautions
from fronts.figures.findings import findings_of
from fronts.figures.fronts import FrontLine, front_line
from fronts.figures.glass import glass_lines
from fronts.figures.parts import PartLine, part_lines
from fronts.figures.will_it_go import will_it_go
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.materials import has_grain
from fronts.rules.results import Front, Part, Schedule
from fronts.sheets.sheet_page import SheetSource, page

_ACROSS = Sheet(
    room=(860_00, 480_00), least=1, most=460, letters=Letters(12_00, 11_00), is_narrow=True
)
"""An elevation on a page turned on its side; no text of it is under 7 pt."""


@dataclass(frozen=True, slots=True)
class ScheduleRow:
    """A front in the front schedule; what is bought is not cut here."""

    line: FrontLine
    is_cut: bool
    from_left: str
    from_floor: str


@dataclass(frozen=True, slots=True)
class WallGroup:
    """The fronts of one wall, with its elevation."""

    wall: str
    rows: list[ScheduleRow]
    drawing: SafeString


@dataclass(frozen=True, slots=True)
class PartGroup:
    """The pieces that come from one material of one thickness."""

    material: str
    thickness: str
    pieces: str
    rows: list[PartLine]


def content(source: SheetSource) -> str:
    """The job's front schedule and cut sheet as HTML."""
    schedule = source.schedule
    findings = findings_of(schedule)
    context = {
        "title": "Front schedule and cut sheet",
        "walls": _walls(schedule, source.kitchen),
        "grained": any(has_grain(part.material) for part in schedule.parts),
        "glass": glass_lines(schedule),
        "groups": _groups(schedule.parts, schedule.job.unit),
        "outlook": will_it_go(schedule),
        "stops": findings.stops,
        "others": findings.others,
        "front_count": len(schedule.fronts),
        "cautions": cautions.at_bench(schedule.jigs, schedule.shims, schedule.fronts),
    }
    return page("front_schedule.html", source, context)


def _walls(schedule: Schedule, kitchen: Kitchen) -> list[WallGroup]:
    unit = schedule.job.unit
    groups = []
    for wall in kitchen.wall_names:
        svg = wall_elevation(schedule, kitchen, wall, unit=unit, ink=PAPER, sheet=_ACROSS)
        rows = [_front_row(each, unit) for each in schedule.fronts if each.wall == wall]
        groups.append(WallGroup(wall, rows, SafeString(svg)))
    return groups


def _front_row(front: Front, unit: str) -> ScheduleRow:
    return ScheduleRow(
        line=front_line(front, unit),
        is_cut=not front.bought,
        from_left=show(front.x, unit),
        from_floor=show(front.y, unit),
    )


def _groups(parts: Iterable[Part], unit: str) -> list[PartGroup]:
    """Largest pieces first, so that a sheet or a board is broken down in order."""
    grouped: dict[tuple[str, Mm], list[Part]] = defaultdict(list)
    for part in parts:
        grouped[part.material, part.thickness].append(part)
    found = []
    for (material, thickness), pieces in sorted(grouped.items()):
        count = str(sum(each.count for each in pieces))
        rows = part_lines(pieces, unit)
        found.append(PartGroup(material, show(thickness, unit), count, rows))
    return found

"""The fitting sheet: a page for each cabinet, with all that an installer needs at it."""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.figures import cautions
from fronts.figures.findings import findings_of, places_at
from fronts.figures.fronts import FrontLine, front_line
from fronts.figures.sizes import signed, size
from fronts.figures.work_steps import Work, work_for
from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.planned_gap import PlannedGap, planned_gap
from fronts.rules.results import Finding, Front, Schedule
from fronts.sheets import page_height
from fronts.sheets.comparison_table import Boxes, ComparisonTable, boxes_of, doors_of
from fronts.sheets.fitting_drawings import Block, Layout, lay_out
from fronts.sheets.sheet_page import SheetSource, page


@dataclass(frozen=True, slots=True)
class FrontRow:
    """A front as its cabinet's table lists it; `laps` are left, right, top, bottom."""

    line: FrontLine
    laps: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class MeasuredRow:
    """Where the installer writes a front's gaps; `planned` are left, right, top, bottom."""

    label: str
    planned: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class CabinetPage:
    """Everything on one cabinet's page."""

    label: str
    title: str
    about: str
    stops: tuple[Finding, ...]
    others: tuple[Finding, ...]
    fronts: list[FrontRow]
    blocks: list[Block]
    boxes: Boxes | None
    doors: ComparisonTable | None
    works: list[Work]
    measured: list[MeasuredRow]
    cautions: list[str]


def content(source: SheetSource, labels: Sequence[str] | None = None) -> str:
    """The fitting sheets of the cabinets with these labels, or of all that have fronts."""
    wanted = fitted_cabinets(source) if labels is None else labels
    known = {cabinet.label: cabinet for cabinet in source.kitchen.cabinets}
    pages = [_page(source.schedule, source.kitchen, known[label]) for label in wanted]
    title = f"Fitting sheet {wanted[0]}" if len(wanted) == 1 else "Fitting sheets"
    return page("fitting.html", source, {"title": title, "pages": pages})


def fitted_cabinets(source: SheetSource) -> list[str]:
    """The cabinets that have a front or a finding, in the kitchen's order."""
    having = {front.cabinet for front in source.schedule.fronts}
    places = {place for finding in source.schedule.findings for place in finding.where}
    return [
        cabinet.label
        for cabinet in source.kitchen.cabinets
        if cabinet.label in having or not places.isdisjoint(places_at(cabinet))
    ]


def _page(schedule: Schedule, kitchen: Kitchen, cabinet: Cabinet) -> CabinetPage:
    fronts = schedule.fronts_of(cabinet.label)
    fittings = schedule.fittings_of(fronts)
    findings = findings_of(schedule, places_at(cabinet, fronts))
    unit = schedule.job.unit
    rows = [_front_row(each, unit) for each in fronts]
    doors = doors_of(fronts, kitchen)
    works = work_for(fronts, fittings, kitchen)
    care = cautions.at_cabinet(cabinet, fronts, list(fittings.values()))
    height = page_height.left_over(
        page_height.rows_height([(each.line.made_from, "".join(each.laps)) for each in rows]),
        page_height.findings_height(findings.stops, findings.others),
    )
    below = page_height.below_height(len(fittings), doors, works, care, len(rows))
    layout = Layout(schedule, kitchen, cabinet, fronts, fittings, height, below)
    return CabinetPage(
        label=cabinet.label,
        title=f"Fitting sheet {cabinet.label}",
        about=_about(cabinet, unit),
        stops=findings.stops,
        others=findings.others,
        fronts=rows,
        blocks=lay_out(layout),
        boxes=boxes_of(fronts, fittings, kitchen),
        doors=doors,
        works=works,
        measured=[_measured_row(each, kitchen) for each in fronts],
        cautions=care,
    )


def _about(cabinet: Cabinet, unit: str) -> str:
    sizes = size(unit, cabinet.width, cabinet.height, cabinet.depth)
    place = f"{show(cabinet.x, unit)} from the left, {show(cabinet.y, unit)} above the floor"
    return f"{cabinet.kind}, {cabinet.build}, {sizes}; wall {cabinet.wall}, {place}"


def _front_row(front: Front, unit: str) -> FrontRow:
    return FrontRow(
        line=front_line(front, unit),
        laps=tuple(_lap(front.edges[side].overlay, unit) for side in SIDES),
    )


def _lap(overlay: Mm | None, unit: str) -> str:
    return "—" if overlay is None else signed(overlay, unit)


def _measured_row(front: Front, kitchen: Kitchen) -> MeasuredRow:
    unit = kitchen.job.unit
    planned = (planned_gap(front, side, kitchen) for side in SIDES)
    return MeasuredRow(front.label, tuple(_planned(each, unit) for each in planned))


def _planned(planned: PlannedGap | None, unit: str) -> str:
    if planned is None:
        return ""
    return f"{'plan' if planned.to == 'gap' else 'to edge'} {show(planned.width, unit)}"

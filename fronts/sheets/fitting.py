"""The fitting sheet: a page for each cabinet, with all that an installer needs at it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.figures import cautions
from fronts.figures.boxes import box_figures
from fronts.figures.findings import findings_of, places_at
from fronts.figures.hinges import hinge_figures
from fronts.figures.knobs import Line
from fronts.figures.measured import measured_openings
from fronts.figures.opening_ends import opening_ends
from fronts.figures.sizes import size
from fronts.figures.special_fronts import special_figures
from fronts.figures.work_steps import Work, work_for
from fronts.rules.fitting_results import Fitting
from fronts.rules.kinds import FRONT_KINDS
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import show
from fronts.rules.results import Finding, Front, Schedule
from fronts.sheets.figure_list import BESIDE_JIG, NARROW, SIDE_BY_SIDE, FigureList, figure_list
from fronts.sheets.fitting_drawings import CabinetDrawings
from fronts.sheets.fitting_layout import Drawings, lay_out
from fronts.sheets.front_rows import FrontRow, front_row, laps_of
from fronts.sheets.hole_tables import HoleTable, hole_table
from fronts.sheets.page_height import Above, Below
from fronts.sheets.sheet_page import SheetSource, page


@dataclass(frozen=True, slots=True)
class CabinetPage:
    """Everything on one cabinet's page, or on its two pages.

    With `one_box` its figures stand beside its jig, and the doors' under that; with `jig_aside`
    beside the doors', and the jig beside the drawings.
    """

    label: str
    title: str
    about: str
    stops: tuple[Finding, ...]
    others: tuple[Finding, ...]
    fronts: list[FrontRow]
    laps: list[tuple[str, str]]
    measured: list[tuple[str, str]]
    ends: list[tuple[str, str]]
    drawings: Drawings
    one_box: bool
    jig_aside: bool
    boxes: FigureList | None
    holes: HoleTable | None
    doors: FigureList | None
    works: list[Work]
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
    fronts, unit = schedule.fronts_of(cabinet.label), schedule.job.unit
    fittings = schedule.fittings_of(fronts)
    findings = findings_of(schedule, places_at(cabinet, fronts))
    rows, laps = [front_row(each, kitchen) for each in fronts], laps_of(fronts, unit)
    measured = measured_openings(cabinet, unit)
    drawings = CabinetDrawings(schedule, kitchen, cabinet, fronts, fittings)
    aside = _jig_aside(drawings)
    boxes = _boxes(fronts, fittings, kitchen, SIDE_BY_SIDE if aside else BESIDE_JIG)
    doors = _doors(fronts, fittings, kitchen, SIDE_BY_SIDE if aside else NARROW)
    holes = hole_table([each for each in fronts if each.label in fittings], fittings, unit)
    works = work_for(fronts, fittings, kitchen)
    care = cautions.at_cabinet(cabinet, fronts, list(fittings.values()))
    ends = opening_ends(schedule, fronts, unit)
    above = Above(rows, laps, measured, ends, findings)
    below = Below(boxes, holes, doors, works, care, one_box=len(fittings) == 1, jig_aside=aside)
    return CabinetPage(
        label=cabinet.label,
        title=f"Fitting sheet {cabinet.label}",
        about=_about(cabinet, unit),
        stops=findings.stops,
        others=findings.others,
        fronts=rows,
        laps=laps,
        measured=measured,
        ends=ends,
        drawings=lay_out(drawings, above, below),
        one_box=below.one_box,
        jig_aside=aside,
        boxes=boxes,
        holes=holes,
        doors=doors,
        works=works,
        cautions=care,
    )


def _jig_aside(of: CabinetDrawings) -> bool:
    """Whether one box's narrow jig stands beside the drawings, since doors have figures too."""
    hinged = any(front.hinge_centres for front in of.fronts)
    return len(of.boxed) == 1 and hinged and [jig.slot for jig in of.jigs] == [None]


def _boxes(
    fronts: Sequence[Front], fittings: Mapping[str, Fitting], kitchen: Kitchen, letters: int
) -> FigureList | None:
    """The figures of the fronts on boxes; those of one alone in so many letters' room."""
    boxed = [each for each in fronts if each.label in fittings]
    if not boxed:
        return None
    labels = [each.label for each in boxed]
    heading = f"{', '.join(labels)} on {'its box' if len(boxed) == 1 else 'their boxes'}"
    figures = [box_figures(each, fittings[each.label], kitchen) for each in boxed]
    return figure_list(heading, labels, figures, letters=letters if len(boxed) == 1 else 0)


def _doors(
    fronts: Sequence[Front], fittings: Mapping[str, Fitting], kitchen: Kitchen, letters: int
) -> FigureList | None:
    """The figures of the hinged doors, and of all else that stands on no box."""
    said = {each.label: _unboxed(each, kitchen) for each in fronts if each.label not in fittings}
    labels, figures = [label for label in said if said[label]], [*filter(None, said.values())]
    if not labels:
        return None
    swing = all(FRONT_KINDS[each.kind].swings for each in fronts if each.label in labels)
    how = f"on {'its' if len(labels) == 1 else 'their'} hinges" if swing else "hung and fixed"
    heading = f"{', '.join(labels)} {how}"
    return figure_list(heading, labels, figures, letters=letters if len(fittings) == 1 else 0)


def _unboxed(front: Front, kitchen: Kitchen) -> list[Line]:
    """What a front on no box needs; one whose box is not measured yet says nothing here."""
    traits = FRONT_KINDS[front.kind]
    if traits.swings:
        return hinge_figures(front, kitchen)
    on_nothing = front.fixed_by is None and front.machine is None and not traits.tips_out
    return [] if on_nothing else special_figures(front, kitchen)


def _about(cabinet: Cabinet, unit: str) -> str:
    sizes = size(unit, cabinet.width, cabinet.height, cabinet.depth)
    place = f"{show(cabinet.left, unit)} from the left, {show(cabinet.y, unit)} above the floor"
    return f"{cabinet.kind}, {cabinet.build}, {sizes}; wall {cabinet.wall}, {place}"

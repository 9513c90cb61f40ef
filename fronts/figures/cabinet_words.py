"""All that is said of one cabinet where its fronts are fitted, worked out once."""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.figures import cautions
from fronts.figures.boxes import HolePlace, box_figures, hole_places
from fronts.figures.findings import Findings, findings_of, places_at
from fronts.figures.front_rows import FrontRow, front_row, laps_of
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
from fronts.rules.merged_jigs import JigPlan
from fronts.rules.results import Front, Schedule


@dataclass(frozen=True, slots=True)
class CabinetWords:
    """The words and figures; `boxes`, `holes` and `unboxed` by the labels of their fronts."""

    kitchen: Kitchen
    cabinet: Cabinet
    fronts: list[Front]
    fittings: Mapping[str, Fitting]
    about: str
    rows: list[FrontRow]
    laps: list[tuple[str, str]]
    measured: list[tuple[str, str]]
    ends: list[tuple[str, str]]
    findings: Findings
    boxes: Mapping[str, list[Line]]
    holes: Mapping[str, list[HolePlace]]
    unboxed: Mapping[str, list[Line]]
    works: list[Work]
    cautions: list[str]


def cabinet_words(
    schedule: Schedule, kitchen: Kitchen, cabinet: Cabinet, jigs: JigPlan
) -> CabinetWords:
    """Those of a cabinet that stands in the kitchen, by its schedule and the jigs made for it."""
    fronts, unit = schedule.fronts_of(cabinet.label), schedule.job.unit
    fittings = schedule.fittings_of(fronts)
    unboxed = {each.label: _unboxed(each, kitchen) for each in fronts
               if each.label not in fittings}  # fmt: skip
    boxed = [each for each in fronts if each.label in fittings]
    return CabinetWords(
        kitchen=kitchen,
        cabinet=cabinet,
        fronts=fronts,
        fittings=fittings,
        about=_about(cabinet, unit),
        rows=[front_row(each, kitchen) for each in fronts],
        laps=laps_of(fronts, unit),
        measured=measured_openings(cabinet, unit),
        ends=opening_ends(schedule, fronts, unit),
        findings=findings_of(schedule, places_at(cabinet, fronts)),
        boxes={
            each.label: box_figures(each, fittings[each.label], kitchen, jigs) for each in boxed
        },
        holes={each.label: hole_places(each, fittings[each.label], unit) for each in boxed},
        unboxed={label: lines for label, lines in unboxed.items() if lines},
        works=work_for(fronts, fittings, kitchen),
        cautions=cautions.at_cabinet(cabinet, fronts, list(fittings.values())),
    )


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

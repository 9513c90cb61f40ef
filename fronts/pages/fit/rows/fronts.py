"""One cabinet at the wall: each of its fronts with what is needed to hang it."""

from collections.abc import Sequence
from dataclasses import dataclass

from django.forms import BoundField, Form
from django.utils.safestring import SafeString

from fronts.drawings.cabinet import cabinet_elevation
from fronts.drawings.drawing import SCREEN
from fronts.drawings.front_back import front_from_back
from fronts.drawings.front_view import Bores
from fronts.drawings.jig import jig_drawing
from fronts.drawings.svg import Px, safe_id
from fronts.facts.rows import columns_of, from_row
from fronts.figures.boxes import HolePlace, box_figures, hole_places
from fronts.figures.fronts import FrontLine, front_line
from fronts.figures.hinges import hinge_figures
from fronts.figures.knobs import Line
from fronts.figures.opening_ends import opening_ends
from fronts.figures.sizes import signed
from fronts.figures.special_fronts import special_figures
from fronts.figures.weights import needs_two_people, weight
from fronts.models import FitRecord
from fronts.rules.fits import DONE, ENDS, FitFacts, Gaps, hangs_still, hung_as
from fronts.rules.fitting_results import Fitting
from fronts.rules.kinds import FRONT_KINDS, SIDES, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.planned_gap import PlannedGap, planned_gap, planned_gaps
from fronts.rules.results import Front, Schedule
from fronts.rules.truing import errors_at

_ROOM: tuple[Px, Px] = (358_00, 420_00)
"""What a phone is wide; at a desk the drawing is shown larger."""
_BACK: tuple[Px, Px] = (340_00, 400_00)
_JIG: tuple[Px, Px] = (340_00, 240_00)


@dataclass(frozen=True, slots=True)
class Gap:
    """One side's gap: as planned, as measured, and by how much they differ; "" where none is.

    A side that was measured at both its ends says so: `top 3/16, bottom 1/8`.
    """

    side: Side
    planned: str
    measured: str
    difference: str


@dataclass(frozen=True, slots=True)
class Recorded:
    """The last record of a front, beside what was planned then, or is now where nobody noted it.

    `another`: the front is made or hung otherwise since, so that it has to be fitted anew.
    `state` is said where the front is not done.
    """

    record: FitRecord
    state: str
    gaps: tuple[Gap, ...]
    planned_then: bool
    outdated: bool
    another: bool


@dataclass(frozen=True, slots=True)
class FrontToFit:
    """A front with its figures, its drawings, its planned gaps, and its form.

    `measure` leads to its opening's form, "" where there is none; `ends` says how it lies in
    an opening that tapers or leans. `hung` is the short name of the front as it is shown.
    """

    key: str
    line: FrontLine
    weight: str
    two_people: bool
    ends: str
    opening: str
    measure: str
    lines: tuple[Line, ...]
    holes: tuple[HolePlace, ...]
    moved: bool
    back: SafeString
    jig: SafeString
    gaps: tuple[tuple[BoundField, str], ...]
    recorded: Recorded | None
    form: Form
    hung: str


def elevation_of(schedule: Schedule, kitchen: Kitchen, label: str) -> SafeString:
    """The cabinet from the front, in the page's own ink."""
    unit = schedule.job.unit
    svg = cabinet_elevation(schedule, kitchen, label, unit=unit, ink=SCREEN, room=_ROOM)
    return SafeString(svg)


def front_to_fit(
    schedule: Schedule,
    kitchen: Kitchen,
    front: Front,
    record: FitRecord | None,
    now: str,
    form: Form,
    measure: str,
) -> FrontToFit:
    """Everything about one front; `now` is the fingerprint of the schedule."""
    fitting, unit = schedule.fitting(front.label), schedule.job.unit
    return FrontToFit(
        key=record_key(front.label),
        hung=hung_as(front),
        line=front_line(front, unit),
        weight=weight(front, unit),
        two_people=needs_two_people(front),
        ends="".join(words for _, words in opening_ends(schedule, [front], unit)),
        opening=front.opening,
        measure=measure,
        lines=tuple(figures_of(front, fitting, kitchen)),
        holes=() if fitting is None else tuple(hole_places(front, fitting, unit)),
        moved=fitting is not None and any(each.moved for each in fitting.holes),
        back=_back(front, fitting, kitchen),
        jig=_jig(schedule, front, fitting),
        gaps=tuple(
            (form[f"gap_{side}"], _in_words(planned_gap(front, side, kitchen), unit))
            for side in SIDES
        ),
        recorded=None if record is None else _recorded(front, record, kitchen, now),
        form=form,
    )


def figures_of(front: Front, fitting: Fitting | None, kitchen: Kitchen) -> list[Line]:
    """What the front needs on its box, on its hinges, or however else it is fixed."""
    if fitting is not None:
        return box_figures(front, fitting, kitchen)
    if FRONT_KINDS[front.kind].swings:
        return hinge_figures(front, kitchen)
    return special_figures(front, kitchen)


def record_key(label: str) -> str:
    """The id of the part of the page in which a front's fit is recorded."""
    return safe_id("record", label)


def as_recorded(record: FitRecord | None) -> dict[str, Mm | str | None]:
    """What a form to measure again starts from."""
    if record is None:
        return {}
    return columns_of(from_row(FitFacts, record))


def _recorded(front: Front, record: FitRecord, kitchen: Kitchen, now: str) -> Recorded:
    facts = from_row(FitFacts, record)
    planned = facts.planned.filled_from(planned_gaps(front, kitchen))
    return Recorded(
        record=record,
        state="" if facts.state == DONE else facts.state,
        gaps=tuple(_gap(side, planned, facts.gaps, kitchen.job.unit) for side in SIDES),
        planned_then=facts.planned != Gaps(),
        outdated=record.fingerprint != now,
        another=not hangs_still(record.hung, front),
    )


def _gap(side: Side, planned: Gaps, measured: Gaps, unit: str) -> Gap:
    off = [signed(error, unit) for error in errors_at(measured, planned, side)]
    wanted, found = (
        [show(figure, unit) for figure in gaps.figures(side)] for gaps in (planned, measured)
    )
    return Gap(side, *(_at_ends(side, figures) for figures in (wanted, found, off)))


def _at_ends(side: Side, figures: Sequence[str]) -> str:
    """One figure as it is; two with the ends at which they are."""
    if len(figures) < 2:
        return "".join(figures)
    return ", ".join(f"{end} {figure}" for end, figure in zip(ENDS[side], figures, strict=True))


def _in_words(planned: PlannedGap | None, unit: str) -> str:
    """`planned 1/8`, or up to the cabinet's edge where no front is near."""
    if planned is None:
        return ""
    to_edge = " to the edge" if planned.to == "edge" else ""
    return f"planned {show(planned.width, unit)}{to_edge}"


def _back(front: Front, fitting: Fitting | None, kitchen: Kitchen) -> SafeString:
    if fitting is None and not front.hinge_centres:
        return SafeString("")
    practice = kitchen.practice
    bores = Bores(practice.knob_hole, practice.cup_diameter)
    svg = front_from_back(front, fitting, bores, unit=kitchen.job.unit, ink=SCREEN, room=_BACK)
    return SafeString(svg)


def _jig(schedule: Schedule, front: Front, fitting: Fitting | None) -> SafeString:
    if fitting is None or fitting.method != "jig":
        return SafeString("")
    jig = next((each for each in schedule.jigs if front.label in each.fronts), None)
    if jig is None:
        return SafeString("")
    svg = jig_drawing(jig, front.thickness, unit=schedule.job.unit, ink=SCREEN, room=_JIG)
    return SafeString(svg)

"""One cabinet at the wall: each of its fronts with what is needed to hang it."""

from dataclasses import dataclass

from django.forms import BoundField, Form
from django.utils.safestring import SafeString

from fronts.drawings.cabinet import cabinet_elevation
from fronts.drawings.drawing import SCREEN
from fronts.drawings.front_back import front_from_back
from fronts.drawings.front_view import Bores
from fronts.drawings.jig import jig_drawing
from fronts.drawings.svg import Px, safe_id
from fronts.figures.after_cut import cut_todo
from fronts.figures.boxes import HolePlace, box_figures, hole_places
from fronts.figures.fronts import FrontLine, front_line
from fronts.figures.hinges import hinge_figures
from fronts.figures.knobs import Line
from fronts.figures.opening_ends import opening_ends
from fronts.figures.sizes import size
from fronts.figures.special_fronts import special_figures
from fronts.figures.weights import needs_two_people, weight
from fronts.pages.fit.rows.at_front import AtFront
from fronts.pages.fit.rows.recorded import Recorded, recorded_of
from fronts.pages.fit.rows.work import WorkOnFront, work_on
from fronts.rules.fits import UPRIGHT, end_names, hung_as
from fronts.rules.fitting_results import Fitting
from fronts.rules.front_states import TO_ADJUST, FrontState
from fronts.rules.kinds import FRONT_KINDS, SIDES, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.merged_jigs import JigPlan
from fronts.rules.planned_gap import PlannedGap, planned_gap
from fronts.rules.results import Front, Schedule

_ROOM: tuple[Px, Px] = (358_00, 300_00)
"""What a phone is wide, and leaves room under it for the figures of a front."""
_BACK: tuple[Px, Px] = (340_00, 400_00)
_JIG: tuple[Px, Px] = (340_00, 240_00)


@dataclass(frozen=True, slots=True)
class GapField:
    """A gap's field, what is planned there in words, and as the field would say it."""

    field: BoundField
    says: str
    planned: str


@dataclass(frozen=True, slots=True)
class FrontToFit:
    """A front with its figures, its drawings, the work on it, its planned gaps, and its form.

    `measure` leads to its opening's form, "" where there is none; `ends` says how it lies in
    an opening that tapers or leans. `hung` is the short name of the front as it is shown.
    `cut_to` is the size that it was cut to, `cut_todo` what that needs now. `others` are the
    fields for the ends of a side that was measured at both.
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
    gaps: tuple[GapField, ...]
    others: tuple[BoundField, ...]
    state: FrontState
    recorded: Recorded | None
    work: WorkOnFront | None
    cut_to: str
    cut_todo: str
    form: Form
    hung: str

    @property
    def is_off(self) -> bool:
        """Whether what is not as planned is being said."""
        return bool(self.form.errors) or self.state is TO_ADJUST

    @property
    def at_ends(self) -> bool:
        """Whether something was measured at the ends of a side."""
        return any(field.value() not in (None, "") for field in self.others)


def elevation_of(schedule: Schedule, kitchen: Kitchen, label: str) -> SafeString:
    """The cabinet from the front, in the page's own ink."""
    unit = schedule.job.unit
    svg = cabinet_elevation(schedule, kitchen, label, unit=unit, ink=SCREEN, room=_ROOM)
    return SafeString(svg)


def front_to_fit(at: AtFront, form: Form) -> FrontToFit:
    """Everything about one front, and the form in which its fit is recorded."""
    schedule, kitchen, front = at.schedule, at.kitchen, at.front
    fitting, unit = schedule.fitting(front.label), schedule.job.unit
    return FrontToFit(
        key=record_key(front.label),
        hung=hung_as(front),
        line=front_line(front, unit),
        weight=weight(front, unit),
        two_people=needs_two_people(front),
        ends="".join(words for _, words in opening_ends(schedule, [front], unit)),
        opening=front.opening,
        measure=at.measure,
        lines=tuple(figures_of(front, fitting, kitchen, at.jigs)),
        holes=() if fitting is None else tuple(hole_places(front, fitting, unit)),
        moved=fitting is not None and any(each.moved for each in fitting.holes),
        back=_back(front, fitting, kitchen),
        jig=_jig(at.jigs, front, unit),
        gaps=tuple(_gap_field(form, front, side, kitchen) for side in SIDES),
        others=tuple(form[f"gap_{name}"] for side in UPRIGHT for name in end_names(side)),
        state=at.state,
        recorded=recorded_of(at),
        work=work_on(front, fitting, kitchen, at.ticks),
        cut_to="" if at.cut is None else size(unit, at.cut.width, at.cut.height),
        cut_todo=cut_todo(at.cut, front, kitchen),
        form=form,
    )


def figures_of(
    front: Front, fitting: Fitting | None, kitchen: Kitchen, jigs: JigPlan
) -> list[Line]:
    """What the front needs on its box, on its hinges, or however else it is fixed."""
    if fitting is not None:
        return box_figures(front, fitting, kitchen, jigs)
    if FRONT_KINDS[front.kind].swings:
        return hinge_figures(front, kitchen)
    return special_figures(front, kitchen)


def record_key(label: str) -> str:
    """The id of the part of the page in which a front's fit is recorded."""
    return safe_id("record", label)


def _gap_field(form: Form, front: Front, side: Side, kitchen: Kitchen) -> GapField:
    planned, unit = planned_gap(front, side, kitchen), kitchen.job.unit
    figure = "" if planned is None else show(planned.width, unit)
    return GapField(form[f"gap_{side}"], _in_words(planned, unit), figure)


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


def _jig(jigs: JigPlan, front: Front, unit: str) -> SafeString:
    jig = jigs.jig_of(front.label)
    if jig is None:
        return SafeString("")
    svg = jig_drawing(jig, front.thickness, unit=unit, ink=SCREEN, room=_JIG)
    return SafeString(svg)

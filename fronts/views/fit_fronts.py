"""One cabinet at the wall: each of its fronts with what is needed to hang it."""

from collections.abc import Mapping
from dataclasses import dataclass

from django.forms import BoundField
from django.utils.safestring import SafeString

from fronts.drawings.cabinet import cabinet_elevation
from fronts.drawings.drawing import SCREEN
from fronts.drawings.front_back import Bores, front_from_back
from fronts.drawings.jig import jig_drawing
from fronts.drawings.svg import Px, safe_id
from fronts.forms.work_fit import FitForm
from fronts.models import FitRecord
from fronts.rules.kitchen import SIDES, Kitchen, Side
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Fitting, Front, Schedule
from fronts.sheets.box_figures import HolePlace, Line, box_figures, hole_places
from fronts.sheets.fitting import made_from, what
from fronts.sheets.imprint import size
from fronts.sheets.steps import Way

_ROOM: tuple[Px, Px] = (358_00, 420_00)
"""What a phone is wide; at a desk the drawing is shown larger."""
_BACK: tuple[Px, Px] = (340_00, 400_00)
_JIG: tuple[Px, Px] = (340_00, 240_00)


@dataclass(frozen=True, slots=True)
class Gap:
    """One gap: as planned, as measured, and by how much they differ; "" where there is none."""

    side: Side
    planned: str
    measured: str
    difference: str


@dataclass(frozen=True, slots=True)
class Recorded:
    """The last record of a front, beside what is planned today."""

    record: FitRecord
    gaps: tuple[Gap, ...]
    outdated: bool


@dataclass(frozen=True, slots=True)
class Hinges:
    """A door's hinges: their centres from its bottom, or from its left where it swings up."""

    count: int
    centres: str
    upright: bool
    cup: str
    cup_inset: str
    edge: str


@dataclass(frozen=True, slots=True)
class FrontToFit:
    """A front with its figures, its drawings, its planned gaps, and its form."""

    key: str
    label: str
    what: str
    size: str
    thickness: str
    made_from: str
    lines: tuple[Line, ...]
    holes: tuple[HolePlace, ...]
    hinges: Hinges | None
    back: SafeString
    jig: SafeString
    gaps: tuple[tuple[BoundField, str], ...]
    recorded: Recorded | None
    form: FitForm


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
    form: FitForm | None = None,
) -> FrontToFit:
    """Everything about one front; `now` is the fingerprint of the schedule."""
    fitting, unit = schedule.fitting(front.label), schedule.job.unit
    key = record_key(front.label)
    form = form or FitForm(unit=unit, initial={"front": front.label}, auto_id=f"{key}-%s")
    return FrontToFit(
        key=key,
        label=front.label,
        what=what(front),
        size=size(unit, front.width, front.height),
        thickness=show(front.thickness, unit),
        made_from=made_from(front, unit),
        lines=() if fitting is None else tuple(box_figures(fitting, kitchen)),
        holes=() if fitting is None else tuple(hole_places(front, fitting, unit)),
        hinges=_hinges(front, kitchen),
        back=_back(front, fitting, kitchen),
        jig=_jig(schedule, front, fitting),
        gaps=tuple(
            (form[f"gap_{side}"], _shown(planned_gap(front, side, kitchen.practice.filler), unit))
            for side in SIDES
        ),
        recorded=None if record is None else _recorded(front, record, kitchen, now),
        form=form,
    )


def way_of(front: Front, fitting: Fitting | None) -> Way:
    """How the front is hung, and so which order of work holds."""
    if fitting is not None:
        return fitting.method
    return "hinges" if front.kind == "door" else "fixed"


def record_key(label: str) -> str:
    """The id of the part of the page in which a front's fit is recorded."""
    return safe_id("record", label)


def planned_gap(front: Front, side: Side, farthest: Mm) -> Mm | None:
    """The gap to be expected: inside the opening, or to the front that faces the side.

    What is farther than `farthest` is no gap that one looks at.
    """
    edge = front.edges[side]
    if edge.overlay is not None and edge.overlay < 0:
        return -edge.overlay
    return edge.gap if edge.gap is not None and edge.gap <= farthest else None


def _recorded(front: Front, record: FitRecord, kitchen: Kitchen, now: str) -> Recorded:
    unit, farthest = kitchen.job.unit, kitchen.practice.filler
    measured: Mapping[Side, Mm | None] = {
        "left": record.gap_left,
        "right": record.gap_right,
        "top": record.gap_top,
        "bottom": record.gap_bottom,
    }
    gaps = tuple(
        _gap(side, planned_gap(front, side, farthest), measured[side], unit) for side in SIDES
    )
    return Recorded(record, gaps, record.fingerprint != now)


def _gap(side: Side, planned: Mm | None, measured: Mm | None, unit: str) -> Gap:
    difference = ""
    if planned is not None and measured is not None:
        off = measured - planned
        sign = "+" if off > 0 else "−"
        difference = f"{sign}{show(abs(off), unit)}" if off else "as planned"
    return Gap(side, _shown(planned, unit), _shown(measured, unit), difference)


def _shown(length: Mm | None, unit: str) -> str:
    return "" if length is None else show(length, unit)


def _hinges(front: Front, kitchen: Kitchen) -> Hinges | None:
    """Cups and their inset are in millimetres in every shop: so are the bits."""
    if not front.hinge_centres:
        return None
    unit, practice = kitchen.job.unit, kitchen.practice
    return Hinges(
        count=front.hinges,
        centres=" · ".join(show(each, unit) for each in front.hinge_centres),
        upright=front.hinged in ("left", "right"),
        cup=show(practice.cup_diameter, "mm"),
        cup_inset=show(practice.cup_from_edge, "mm"),
        edge=front.hinged or "",
    )


def _back(front: Front, fitting: Fitting | None, kitchen: Kitchen) -> SafeString:
    if fitting is None and not front.hinge_centres:
        return SafeString("")
    practice = kitchen.practice
    bores = Bores(practice.knob_hole, practice.cup_diameter, practice.cup_from_edge)
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

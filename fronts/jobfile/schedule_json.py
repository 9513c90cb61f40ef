"""A schedule as JSON: lengths are decimal millimetres as text, exact."""

from collections.abc import Iterable
from decimal import Decimal
from fractions import Fraction
from math import floor

from fronts.jobfile.bought_json import bought_line
from fronts.jobfile.errors_json import error_json
from fronts.jobfile.front_kinds_json import Json, of_kind
from fronts.jobfile.needs_json import need_json
from fronts.jobfile.parts_json import grain_sets_json, part_json
from fronts.rules.box_results import BoxOnSlide
from fronts.rules.fingerprint import fingerprint
from fronts.rules.fits import Gaps, at_ends
from fronts.rules.fitting_results import Fitting, Hole, Jig, KnobScrew, Ledges, Shim, Slot
from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm, as_output
from fronts.rules.results import DoorUse, Finding, Front, Movement, Schedule
from fronts.rules.truing import Truing
from fronts.rules.wall_results import OpeningEnds, WallRuns

HALF = Fraction(1, 2)


def schedule_json(schedule: Schedule, truings: Iterable[Truing] = ()) -> Json:
    """The whole schedule as plain values, ready for `json.dumps`; `truings` as records say."""
    job = schedule.job
    return {
        "job": {"number": job.number, "unit": job.unit, "step": as_output(job.step)},
        "fingerprint": fingerprint(schedule),
        "fronts": [_front(each, schedule.fitting(each.label)) for each in schedule.fronts],
        "boxes": [_box(each) for each in schedule.boxes],
        "fittings": [_fitting(each) for each in schedule.fittings],
        "jigs": [_jig(each) for each in schedule.jigs],
        "shims": [_shim(each) for each in schedule.shims],
        "doors_on_hand": [_door_use(each) for each in schedule.doors_on_hand],
        "hardware": [need_json(each) for each in schedule.hardware],
        "parts": [part_json(each) for each in schedule.parts],
        "findings": [_finding(each) for each in schedule.findings],
        "cabinets": [{"label": one.label, **_lengths(one, "x", "y")} for one in schedule.cabinets],
        "walls": [_wall(each) for each in schedule.walls],
        "openings": [_opening_ends(each) for each in schedule.openings],
        "grain_sets": grain_sets_json(schedule),
        "bought": [bought_line(each) for each in schedule.bought],
        "errors_to_expect": [error_json(each) for each in schedule.errors],
        "truing": [_truing(each) for each in truings],
    }


def _front(front: Front, fitting: Fitting | None) -> Json:
    return {
        "label": front.label,
        "cabinet": front.cabinet,
        "opening": front.opening,
        "wall": front.wall,
        "kind": front.kind,
        "plane": front.plane,
        "hinged": front.hinged,
        **_lengths(front, "width", "height", "thickness", "x", "y"),
        "edges": {
            side: {
                "overlay": _maybe(front.edges[side].overlay),
                "gap": _maybe(front.edges[side].gap),
                "faces": front.edges[side].faces,
            }
            for side in SIDES
        },
        "door_on_hand": front.door_on_hand,
        **_lengths(front, "trim_width", "trim_height"),
        "new": front.is_new,
        "build": front.build,
        "material": front.material,
        **_lengths(front, "stile", "rail", "panel_thickness"),
        "frame": _lengths(front.frame, *SIDES),
        "handles": _handles(front, fitting),
        "knobs": _points(front.knobs),
        "knob_screw": _maybe(front.knob_screw),
        "bores": _points(front.bores),
        "hinges": front.hinges,
        "hinge_centres": [as_output(each) for each in front.hinge_centres],
        "hinge": _hinge(front),
        "plugged": _points(front.plugged),
        "weight_kg": kilograms(front.weight_kg),
        "lean": _maybe(front.lean),
        "movement": _movement(front.movement),
        **of_kind(front),
    }


def _handles(front: Front, fitting: Fitting | None) -> list[Json]:
    """The knobs and pulls; a screw's length as the box behind makes it, null where none fits."""
    if fitting is None:
        screw = front.knob_screw
    else:
        screw = fitting.knob_screw.length if fitting.knob_screw else None
    return [
        {
            "code": handle.code,
            **_lengths(handle, "x", "y"),
            "holes": _points(handle.holes),
            "through": handle.through,
            "screw": _maybe(screw),
            "screws": handle.screws,
        }
        for handle in front.handles
    ]


def _hinge(front: Front) -> Json | None:
    hinge = front.hinge
    if hinge is None:
        return None
    return {
        "code": hinge.code,
        "plate": _maybe(hinge.plate),
        **_lengths(hinge, "bore_from_edge", "shift", "cup_diameter", "cup_depth"),
        "centres": [as_output(centre) for centre in front.hinge_centres],
        "in_old_bores": hinge.in_old_bores,
        "screws": hinge.screws,
        "why": hinge.reason,
    }


def _movement(movement: Movement | None) -> Json | None:
    if movement is None:
        return None
    return {"across": movement.across, **_lengths(movement, "shrinks", "grows", "least_gap")}


def _box(box: BoxOnSlide) -> Json:
    return {
        "front": box.front,
        "made": box.made,
        **_lengths(box, "width", "height"),
        "depth": _maybe(box.depth),
        **_lengths(box, "side_thickness", "rise"),
        "slide": box.slide,
        "slide_length": _maybe(box.slide_length),
        "load_kg": _halves_up(box.load_kg),
        "class_kg": None if box.class_kg is None else _halves_up(box.class_kg),
    }


def _fitting(fitting: Fitting) -> Json:
    shims, screw = fitting.shims, fitting.screw
    return {
        "front": fitting.front,
        "method": fitting.method,
        **_lengths(fitting, "side_offset", "side_clearance"),
        "side_offset_right": as_output(fitting.right_offset),
        **_lengths(fitting, "jig_thickness", "jig_length", "box_height"),
        "ledges": _ledges(fitting.ledges),
        "slot": _slot(fitting.slot),
        "shims": _lengths(shims, "side", "bottom") if shims else None,
        "right_shim": as_output(shims.right) if shims else None,
        "tape": {"suggested": fitting.tape.suggested, "why": fitting.tape.why},
        "holes": [_hole(each) for each in fitting.holes],
        "screw": {"length": as_output(screw.length), "count": screw.count} if screw else None,
        "pilot": _lengths(fitting.pilot, "diameter", "depth") if fitting.pilot else None,
        "knob_screw": _knob_screw(fitting.knob_screw),
        **_lengths(fitting, "drill_stop", "play"),
        "slide": fitting.slide,
        "slide_length": _maybe(fitting.slide_length),
    }


def _hole(hole: Hole) -> Json:
    places = _lengths(hole, "box_x", "box_y", "front_x", "front_y", "diameter")
    return {**places, "moved": hole.moved}


def _ledges(ledges: Ledges | None) -> Json | None:
    if ledges is None:
        return None
    sizes = _lengths(ledges, "thickness", "length", "overhang", "block_depth")
    return {**sizes, "count": ledges.count}


def _slot(slot: Slot | None) -> Json | None:
    return _lengths(slot, "width", "depth") if slot else None


def _knob_screw(screw: KnobScrew | None) -> Json | None:
    if screw is None:
        return None
    return {
        "length": as_output(screw.length),
        "through_box": screw.through_box,
        "recess": _lengths(screw.recess, "width", "depth") if screw.recess else None,
        "count": screw.count,
    }


def _jig(jig: Jig) -> Json:
    return {
        **_lengths(jig, "thickness", "length"),
        "ledges": _ledges(jig.ledges),
        "slot": _slot(jig.slot),
        "fronts": list(jig.fronts),
    }


def _shim(shim: Shim) -> Json:
    thick, fronts = as_output(shim.thickness), list(shim.fronts)
    return {"thickness": thick, "side": shim.side, "bottom": shim.bottom, "fronts": fronts}


def _door_use(use: DoorUse) -> Json:
    return {
        "door": use.door,
        "front": use.front,
        **_lengths(use, "trim_width", "trim_height"),
        "trim": _lengths(use.trim, *SIDES),
    }


def _finding(finding: Finding) -> Json:
    return {
        "level": finding.level,
        "code": finding.code,
        "where": list(finding.where),
        "message": finding.message,
    }


def _wall(wall: WallRuns) -> Json:
    runs = {
        run: {"length": as_output(reached.length), "left_over": _maybe(reached.left_over)}
        for run, reached in wall.runs.items()
    }
    return {"label": wall.label, "runs": runs}


def _opening_ends(opening: OpeningEnds) -> Json:
    ends = {
        side: at_ends(side, [as_output(figure) for figure in opening.ends[side]]) for side in SIDES
    }
    return {"opening": opening.opening, "ends": ends}


def _truing(truing: Truing) -> Json:
    return {
        "front": truing.front,
        "planned": {side: _gap(truing.planned, side) for side in SIDES},
        "shift_right": _maybe(truing.shift_right),
        "shift_up": _maybe(truing.shift_up),
        "wide_by": _maybe(truing.wide_by),
        "high_by": _maybe(truing.high_by),
        "tilt": _maybe(truing.tilt),
        "within_play": truing.within_play,
    }


def _gap(gaps: Gaps, side: Side) -> str | dict[str, str] | None:
    """One figure, or one at each end; None where nothing is known."""
    return at_ends(side, [as_output(figure) for figure in gaps.figures(side)])


def kilograms(mass: Fraction) -> str:
    """A mass to the gram."""
    return format(Decimal(round(mass * 1000)).scaleb(-3), "f")


def _halves_up(mass: Fraction) -> str:
    """A load to the gram, as job files have it: a half is one more."""
    return format(Decimal(floor(mass * 1000 + HALF)).scaleb(-3), "f")


def _lengths(thing: object, *names: str) -> Json:
    return {name: as_output(getattr(thing, name)) for name in names}


def _maybe(length: Mm | None) -> str | None:
    return None if length is None else as_output(length)


def _points(points: Iterable[Point]) -> list[Json]:
    return [_lengths(each, "x", "y") for each in points]

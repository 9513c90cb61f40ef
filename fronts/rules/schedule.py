"""The whole kitchen worked out: measured facts in, schedule out.

It reads like the job itself: lay the fronts out, pick the doors on hand, look along each
wall, make and hang each front, fix those that have a box, then share jigs, list parts and
hardware, and say what is wrong.
"""

from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import replace

from fronts.rules.along_wall import (
    meeting_findings,
    overlapping_cabinets,
    placed,
    run_end_findings,
)
from fronts.rules.checks import cabinet_findings, front_findings, lean_of, opening_findings
from fronts.rules.doors_on_hand import choose, knob_off_centre, shows
from fronts.rules.findings import FindingWriter
from fronts.rules.fixing import fit
from fronts.rules.hardware import hardware_needs
from fronts.rules.jigs import shared_jigs
from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import CHOOSE, Box, Kitchen
from fronts.rules.laying import Laid, LaidOpening, lay_cabinet
from fronts.rules.lengths import Mm
from fronts.rules.making import Make, hang, make_findings, make_of, weigh
from fronts.rules.neighbours import Facing, facing
from fronts.rules.parts import parts_of
from fronts.rules.practice import Practice
from fronts.rules.results import (
    DoorUse,
    Edge,
    Finding,
    Fitting,
    Front,
    Movement,
    Part,
    Schedule,
)
from fronts.rules.screws import knob_screw_alone, thread_diameter
from fronts.rules.seasons import movements
from fronts.rules.shims import shared_shims
from fronts.rules.standard_keys import Sides

LEVELS = ("stop", "check", "note")


def schedule(kitchen: Kitchen) -> Schedule:
    """Everything that follows from a kitchen's measurements and decisions."""
    writer = FindingWriter(kitchen.job.unit)
    doors = {door.label: door for door in kitchen.doors_on_hand}
    openings = [lay_cabinet(cabinet, kitchen, doors) for cabinet in kitchen.cabinets]
    laid, unserved = _pick_doors(openings, kitchen)
    findings = _laying_findings(openings, laid, kitchen, writer)
    findings += _door_findings(laid, unserved, writer, kitchen.practice)

    faced = facing([placed(front) for front in laid])
    findings += meeting_findings(laid, faced, writer, kitchen.practice)
    findings += run_end_findings(laid, kitchen.cabinets, writer, kitchen.practice)
    findings += overlapping_cabinets(kitchen.cabinets, writer)

    makes = [make_of(front, front.door, kitchen.practice) for front in laid]
    moves = movements(laid, makes, faced, kitchen.practice)
    fronts, making = _make_fronts(laid, makes, moves, faced, kitchen, writer)
    fittings, boxes, fixing = _fix_fronts(fronts, laid, kitchen, writer)
    hardware, lacking = hardware_needs(
        fronts, {fitting.front: fitting for fitting in fittings}, boxes, kitchen, writer
    )
    return Schedule(
        job=kitchen.job,
        fronts=tuple(fronts),
        fittings=tuple(fittings),
        jigs=shared_jigs(fittings, fronts, kitchen.practice),
        shims=shared_shims(fittings),
        doors_on_hand=_door_uses(fronts),
        hardware=hardware,
        parts=_parts(fronts, laid, kitchen),
        findings=_in_order([*findings, *making, *fixing, *lacking]),
    )


def _pick_doors(
    openings: Sequence[Sequence[LaidOpening]], kitchen: Kitchen
) -> tuple[list[Laid], set[str]]:
    """All fronts in order, those to be chosen with their doors; and those left without."""
    laid = [front for cabinet in openings for opening in cabinet for front in opening.fronts]
    named = {
        front.door_on_hand
        for cabinet in kitchen.cabinets
        for opening in cabinet.openings
        for front in opening.fronts
    }
    free = [door for door in kitchen.doors_on_hand if door.label not in named]
    wanting = [index for index, front in enumerate(laid) if front.decided.door_on_hand == CHOOSE]
    wanted = [
        (front.width, front.height, front.standard.trim_limit, front.standard.least_stile)
        for front in (laid[index] for index in wanting)
    ]
    chosen = choose(wanted, free, kitchen.practice)
    for place, door in chosen.items():
        index = wanting[place]
        laid[index] = replace(laid[index], door=free[door])
    return laid, {laid[index].label for index in wanting if laid[index].door is None}


def _laying_findings(
    openings: Sequence[Sequence[LaidOpening]],
    laid: Sequence[Laid],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> list[Finding]:
    findings: list[Finding] = []
    for cabinet in openings:
        for opening in cabinet:
            findings += opening_findings(opening, writer, kitchen.practice)
        findings += cabinet_findings(list(cabinet), writer)
    for front in laid:
        findings += front_findings(front, writer, kitchen.job.step)
    if laid and thread_diameter(kitchen.stock.knob_thread) is None:
        findings.append(writer.thread_unknown(kitchen.stock.knob_thread))
    return findings


def _door_findings(
    laid: Sequence[Laid], unserved: set[str], writer: FindingWriter, practice: Practice
) -> list[Finding]:
    findings = []
    used: dict[str, list[str]] = defaultdict(list)
    for front in laid:
        if front.door:
            used[front.door.label].append(front.label)
            seen = shows(front.door, front.hinged)
            if seen:
                findings.append(writer.bore_shows(front.label, front.door.label, seen))
            off = knob_off_centre(front.door)
            if off > practice.lines_seen and front.opening.closing.on_box:
                findings.append(writer.knob_off_centre(front.label, front.door.label, off))
        elif front.label in unserved:
            findings.append(writer.no_door(front.label, front.width, front.height))
    findings += [writer.door_used_twice(door, many) for door, many in used.items() if len(many) > 1]
    return findings


def _make_fronts(
    laid: Sequence[Laid],
    makes: Sequence[Make],
    moves: Sequence[Movement | None],
    faced: Sequence[Mapping[Side, Facing]],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[list[Front], list[Finding]]:
    fronts, findings = [], []
    for index, (front, make) in enumerate(zip(laid, makes, strict=True)):
        weight = weigh(front, make, kitchen.practice)
        hanging = hang(front, weight, kitchen, writer)
        findings += [*hanging.findings, *make_findings(front, make, kitchen.practice, writer)]
        move = moves[index]
        if move and move.least_gap <= 0:
            findings.append(writer.gap_closes(front.label, move.grows))
        fronts.append(
            Front(
                label=front.label, cabinet=front.cabinet.label, opening=front.opening.label,
                wall=front.cabinet.wall, kind=make.kind, closed_by=front.opening.closed_by,
                plane=front.plane, hinged=front.hinged, width=front.width, height=front.height,
                thickness=make.thickness, x=front.x, y=front.y,
                edges=_edges(front, faced[index], laid), build=make.build, material=make.material,
                stile=make.stile, rail=make.rail, panel_thickness=make.panel_thickness,
                door_on_hand=front.door.label if front.door else None,
                trim_width=make.trim_width, trim_height=make.trim_height,
                is_new=front.door is None and not front.exists, knobs=make.knobs,
                knob_screw=_knob_screw(front, make, kitchen),
                bores=make.bores, hinges=hanging.count, hinge_centres=hanging.centres,
                weight_kg=weight, lean=lean_of(front.opening, front.rect.width), movement=move,
            )
        )  # fmt: skip
    return fronts, findings


def _knob_screw(laid: Laid, make: Make, kitchen: Kitchen) -> Mm | None:
    alone = make.knobs and laid.box is None
    return knob_screw_alone(kitchen.stock, make.thickness) if alone else None


def _edges(laid: Laid, faced: Mapping[Side, Facing], fronts: Sequence[Laid]) -> Sides[Edge]:
    edges = {}
    for side in SIDES:
        neighbour = faced.get(side)
        gap, faces = (
            (neighbour.gap, fronts[neighbour.fronts[0]].label) if neighbour else (None, None)
        )
        edges[side] = Edge(laid.overlays[side], gap, faces)
    return Sides(**edges)


def _fix_fronts(
    fronts: Sequence[Front], laid: Sequence[Laid], kitchen: Kitchen, writer: FindingWriter
) -> tuple[list[Fitting], dict[str, tuple[Box, Mm]], list[Finding]]:
    fittings, boxes = [], {}
    findings: list[Finding] = []
    for front, laid_front in zip(fronts, laid, strict=True):
        if not laid_front.opening.closing.on_box:
            continue
        box = laid_front.box
        if box is None:
            findings.append(writer.box_missing(front.label))
            continue
        fitting, wrong = fit(front, laid_front, box, kitchen, writer)
        fittings.append(fitting)
        boxes[front.label] = (box, laid_front.cabinet.depth)
        findings += wrong
    return fittings, boxes, findings


def _door_uses(fronts: Sequence[Front]) -> tuple[DoorUse, ...]:
    return tuple(
        DoorUse(front.door_on_hand, front.label, front.trim_width, front.trim_height)
        for front in fronts
        if front.door_on_hand
    )


def _parts(fronts: Sequence[Front], laid: Sequence[Laid], kitchen: Kitchen) -> tuple[Part, ...]:
    in_opening = Counter(front.opening_label for front in laid if front.opening.closing.stack)
    parts: list[Part] = []
    for front, laid_front in zip(fronts, laid, strict=True):
        if front.is_new:
            stack = laid_front.opening_label if in_opening[laid_front.opening_label] > 1 else None
            parts += parts_of(front, kitchen.practice, kitchen.job.step, stack=stack)
    return tuple(parts)


def _in_order(findings: Sequence[Finding]) -> tuple[Finding, ...]:
    return tuple(sorted(findings, key=lambda finding: LEVELS.index(finding.level)))

"""The whole kitchen worked out: measured facts in, schedule out.

It reads like the job itself: lay the fronts out, pick the doors on hand, look along each
wall, make and weigh each front, stand its box behind it, hang it or fix it, then share jigs,
list parts and hardware, and say what is wrong.
"""

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import chain

from fronts.rules.along_wall import (
    meeting_findings,
    overlap_findings,
    placed,
    run_end_findings,
)
from fronts.rules.blocked_fronts import blocked_findings
from fronts.rules.bought_fronts import bought_findings, bought_lines
from fronts.rules.box_parts import parts_of_box
from fronts.rules.boxes_on_slides import Standing, box_row, boxes_behind
from fronts.rules.checks import cabinet_findings, front_findings, opening_findings
from fronts.rules.doors_on_hand import choose, knob_off_centre, shows
from fronts.rules.edge_banding import band_needs, bandings_of
from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import Fitting
from fronts.rules.fixing import fit
from fronts.rules.front_rows import front_rows
from fronts.rules.grain_findings import grain_findings
from fronts.rules.grain_sets import SetOnWall, grain_sets
from fronts.rules.handle_findings import handle_findings
from fronts.rules.handle_settling import settle_handles
from fronts.rules.hardware import hardware_needs
from fronts.rules.jigs import shared_jigs
from fronts.rules.kinds import Side
from fronts.rules.kitchen import CHOOSE, Kitchen
from fronts.rules.laying import Laid, LaidOpening, lay_cabinet
from fronts.rules.making import Make, make_of, weigh
from fronts.rules.neighbours import Facing, facing
from fronts.rules.parts import parts_of
from fronts.rules.practice import Practice
from fronts.rules.results import DoorUse, Finding, Front, Level, Part, Schedule
from fronts.rules.run_lengths import cabinet_places, past_wall_findings, wall_runs
from fronts.rules.runs import Placed, on_walls, runs_of, stood
from fronts.rules.screws import thread_diameter
from fronts.rules.seasons import movements
from fronts.rules.shims import shared_shims
from fronts.rules.special_fronts import special_findings
from fronts.rules.tapering import taper_findings, tapering_or_leaning
from fronts.rules.usual_hinges import hinges_of

LEVELS: tuple[Level, ...] = ("stop", "check", "note")


def schedule(kitchen: Kitchen) -> Schedule:
    """Everything that follows from a kitchen's measurements and decisions."""
    kitchen = stood(kitchen)
    runs = runs_of(kitchen)
    walls, standing = wall_runs(kitchen, runs), on_walls(runs)
    writer = FindingWriter(kitchen.job.unit)
    doors = {door.label: door for door in kitchen.doors_on_hand}
    openings = [lay_cabinet(cabinet, kitchen, doors) for cabinet in kitchen.cabinets]
    laid, unserved = _pick_doors(openings, kitchen)
    findings = _laying_findings(openings, laid, kitchen, writer)
    hinges = hinges_of(kitchen.hardware.hinges, kitchen.practice)
    sets, makes = grain_sets(laid, [make_of(front, kitchen, hinges) for front in laid])
    findings += _door_findings(laid, makes, unserved, writer, kitchen.practice)

    faced = facing([placed(front) for front in laid])
    findings += _wall_findings(laid, faced, standing, kitchen, writer)
    findings += past_wall_findings(walls, writer)

    moves = movements(laid, makes, faced, kitchen.practice)
    weights = [weigh(make, kitchen.practice) for make in makes]
    thicknesses = [make.face.thickness for make in makes]
    boxes, boxing = boxes_behind(laid, thicknesses, weights, kitchen, writer)
    makes = settle_handles(laid, makes, boxes, kitchen.practice)
    fronts, making = front_rows(laid, makes, weights, boxes, moves, faced, kitchen, hinges, writer)
    findings += handle_findings(fronts, laid, makes, faced, kitchen, writer)
    making += _opening_findings(fronts, laid, standing, kitchen, writer)
    fittings, fixing = _fix_fronts(fronts, laid, boxes, kitchen, writer)
    fitted = {fitting.front: fitting for fitting in fittings}
    hardware, lacking = hardware_needs(fronts, fitted, boxes, kitchen, writer)
    parts, cutting = _parts(fronts, laid, boxes, sets, kitchen, writer)
    bought = bought_lines(fronts, laid, kitchen.practice)
    cutting += bought_findings(bought, writer)
    return Schedule(
        job=kitchen.job,
        fronts=tuple(fronts),
        boxes=tuple(box_row(front, standing) for front, standing in boxes.items()),
        fittings=tuple(fittings),
        jigs=shared_jigs(fittings, fronts, kitchen.practice),
        shims=shared_shims(fittings),
        doors_on_hand=_door_uses(fronts),
        hardware=(*hardware, *band_needs(parts, kitchen.job.unit, kitchen.practice.spares)),
        parts=parts,
        findings=_in_order([*findings, *making, *boxing, *fixing, *lacking, *cutting]),
        cabinets=cabinet_places(kitchen),
        walls=walls,
        openings=tuple(tapering_or_leaning(chain.from_iterable(openings))),
        grain_sets=tuple(one.shown for one in sets),
        bought=bought,
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
            findings += taper_findings(opening, kitchen.job.unit, writer)
        findings += cabinet_findings(list(cabinet), writer)
    for front in laid:
        findings += front_findings(front, writer, kitchen.job.step)
    if laid and thread_diameter(kitchen.stock.knob_thread) is None:
        findings.append(writer.thread_unknown(kitchen.stock.knob_thread))
    return findings


def _wall_findings(
    laid: Sequence[Laid],
    faced: Sequence[Mapping[Side, Facing]],
    standing: Sequence[Placed],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> Iterator[Finding]:
    yield from meeting_findings(laid, faced, writer, kitchen.practice)
    yield from run_end_findings(laid, standing, writer, kitchen.practice)
    yield from overlap_findings(standing, writer)


def _door_findings(
    laid: Sequence[Laid], makes: Sequence[Make], unserved: set[str], writer: FindingWriter,
    practice: Practice,
) -> list[Finding]:  # fmt: skip
    findings = []
    used: dict[str, list[str]] = defaultdict(list)
    for front, make in zip(laid, makes, strict=True):
        if make.door:
            used[make.door.label].append(front.label)
            seen = shows(make.door, front.hinged)
            if seen:
                findings.append(writer.bore_shows(front.label, make.door.label, seen))
            off = knob_off_centre(make.door)
            if off > practice.lines_seen and front.opening.closing.on_box:
                findings.append(writer.knob_off_centre(front.label, make.door.label, off))
        elif front.label in unserved:
            findings.append(writer.no_door(front.label, front.width, front.height))
    findings += [writer.door_used_twice(door, many) for door, many in used.items() if len(many) > 1]
    return findings


def _opening_findings(
    fronts: Sequence[Front],
    laid: Sequence[Laid],
    standing: Sequence[Placed],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> Iterator[Finding]:
    """What keeps fronts from opening, or from being what they are."""
    yield from blocked_findings(fronts, laid, standing, kitchen, writer)
    yield from special_findings(fronts, laid, standing, kitchen, writer)


def _fix_fronts(
    fronts: Sequence[Front],
    laid: Sequence[Laid],
    boxes: Mapping[str, Standing],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[list[Fitting], list[Finding]]:
    fittings, findings = [], []
    for front, laid_front in zip(fronts, laid, strict=True):
        standing = boxes.get(front.label)
        if standing is not None:
            fitting, wrong = fit(front, laid_front, standing, kitchen, writer)
            fittings.append(fitting)
            findings += wrong
    return fittings, findings


def _door_uses(fronts: Sequence[Front]) -> tuple[DoorUse, ...]:
    return tuple(
        DoorUse(front.door_on_hand, front.label, front.trim)
        for front in fronts
        if front.door_on_hand
    )


def _parts(
    fronts: Sequence[Front],
    laid: Sequence[Laid],
    boxes: Mapping[str, Standing],
    sets: Sequence[SetOnWall],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[tuple[Part, ...], list[Finding]]:
    """All that is cut, of fronts and boxes, and what is wrong with their bands and grain."""
    bandings, findings = bandings_of(fronts, laid, kitchen, writer)
    in_opening = Counter(front.opening_label for front in laid if front.opening.closing.stack)
    places = {label: place for one in sets for label, place in one.places.items()}
    parts: list[Part] = []
    for front, laid_front in zip(fronts, laid, strict=True):
        if front.is_new and not front.bought:
            stack = laid_front.opening_label if in_opening[laid_front.opening_label] > 1 else None
            parts += parts_of(
                front, kitchen.practice, kitchen.job.step, stack=stack,
                grain=places.get(front.label), banding=bandings.get(front.label),
            )  # fmt: skip
        standing = boxes.get(front.label)
        if standing is not None:
            parts += parts_of_box(front.label, standing.pieces, standing.material)
    findings += grain_findings(sets, parts, kitchen, writer)
    return tuple(parts), findings


def _in_order(findings: Sequence[Finding]) -> tuple[Finding, ...]:
    return tuple(sorted(findings, key=lambda finding: LEVELS.index(finding.level)))

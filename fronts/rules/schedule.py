"""The whole kitchen worked out: measured facts in, schedule out.

Pick the doors on hand, work out each group of walls by itself (`worked_walls` reads like the
job along a wall), then say what the whole kitchen shares: jigs, parts, hardware, and all
that is wrong.
"""

from collections import Counter, defaultdict
from collections.abc import Callable, Iterator, Sequence
from itertools import chain

from fronts.rules.bought_fronts import bought_findings, bought_lines
from fronts.rules.box_parts import parts_of_box
from fronts.rules.boxes_on_slides import box_row
from fronts.rules.edge_banding import band_needs, bandings_of
from fronts.rules.error_to_expect import doubtful_findings, errors_to_expect
from fronts.rules.findings import FindingWriter
from fronts.rules.grain_findings import grain_findings
from fronts.rules.grain_sets import SetOnWall, grain_sets
from fronts.rules.hardware import hardware_needs
from fronts.rules.jigs import shared_jigs
from fronts.rules.kitchen import Kitchen
from fronts.rules.parts import parts_of
from fronts.rules.picked_doors import picked_doors
from fronts.rules.results import DoorUse, Finding, Front, Level, Part, Schedule
from fronts.rules.run_lengths import cabinet_places, past_wall_findings, wall_runs
from fronts.rules.runs import runs_of, stood
from fronts.rules.screws import thread_diameter
from fronts.rules.shims import shared_shims
from fronts.rules.standard_items import standard_item_findings
from fronts.rules.tapering import tapering_or_leaning
from fronts.rules.usual_hinges import hinges_of
from fronts.rules.wall_groups import WallGroup, wall_groups
from fronts.rules.worked_walls import WorkedCabinet, WorkedFront, WorkedWalls, work_out

LEVELS: tuple[Level, ...] = ("stop", "check", "note")


def schedule(kitchen: Kitchen, work_out: Callable[[WallGroup], WorkedWalls] = work_out) -> Schedule:
    """Everything that follows from a kitchen's measurements and decisions.

    `work_out` may answer from memory for walls that are as they were.
    """
    kitchen = stood(kitchen)
    writer = FindingWriter(kitchen.job.unit)
    groups = wall_groups(kitchen, picked_doors(kitchen))
    walls = [work_out(group) for group in groups]
    cabinets = _in_kitchens_order(kitchen, groups, walls)
    worked = [front for cabinet in cabinets for front in cabinet.fronts]
    fronts, laid = [one.front for one in worked], [one.laid for one in worked]
    boxes = {one.front.label: one.box for one in worked if one.box}
    fitted = {one.front.label: one.fitting for one in worked if one.fitting}
    fittings = tuple(fitted.values())
    runs = wall_runs(kitchen, runs_of(kitchen))
    hardware, lacking = hardware_needs(fronts, fitted, boxes, kitchen, writer)
    sets = grain_sets(laid, [one.make for one in worked])
    parts, cutting = _parts(worked, sets, kitchen, writer)
    bought = bought_lines(fronts, laid, kitchen.practice)
    on_walls, errors = tuple(_of_walls(walls)), errors_to_expect(fronts, fitted, kitchen)
    found = chain(
        on_walls,
        _thread_findings(worked, kitchen, writer),
        _used_twice(worked, writer),
        _list_findings(worked, kitchen, writer),
        past_wall_findings(runs, writer),
        lacking,
        cutting,
        bought_findings(bought, writer),
        doubtful_findings(errors, fronts, on_walls, writer),
    )
    return Schedule(
        job=kitchen.job,
        fronts=tuple(fronts),
        boxes=tuple(box_row(front, standing) for front, standing in boxes.items()),
        fittings=fittings,
        jigs=shared_jigs(fittings, fronts, kitchen.practice),
        shims=shared_shims(fittings),
        doors_on_hand=_door_uses(fronts),
        hardware=(*hardware, *band_needs(parts, kitchen.job.unit, kitchen.practice.spares)),
        parts=parts,
        findings=tuple(sorted(found, key=lambda finding: LEVELS.index(finding.level))),
        cabinets=cabinet_places(kitchen),
        walls=runs,
        openings=tuple(tapering_or_leaning(chain.from_iterable(one.openings for one in cabinets))),
        grain_sets=tuple(one.shown for one in sets),
        bought=bought,
        errors=errors,
    )


def _in_kitchens_order(
    kitchen: Kitchen, groups: Sequence[WallGroup], walls: Sequence[WorkedWalls]
) -> list[WorkedCabinet]:
    """The cabinets of all groups as the kitchen lists them."""
    cabinets_on: dict[str, Iterator[WorkedCabinet]] = {}
    for group, worked in zip(groups, walls, strict=True):
        cabinets_on |= dict.fromkeys(group.kitchen.wall_names, iter(worked.cabinets))
    return [next(cabinets_on[cabinet.wall]) for cabinet in kitchen.cabinets]


def _of_walls(walls: Sequence[WorkedWalls]) -> Iterator[Finding]:
    """What was found on them, one thing looked at after the other."""
    for looked_at in zip(*(worked.findings for worked in walls), strict=True):
        yield from chain.from_iterable(looked_at)


def _thread_findings(
    worked: Sequence[WorkedFront], kitchen: Kitchen, writer: FindingWriter
) -> Iterator[Finding]:
    if worked and thread_diameter(kitchen.stock.knob_thread) is None:
        yield writer.thread_unknown(kitchen.stock.knob_thread)


def _list_findings(
    worked: Sequence[WorkedFront], kitchen: Kitchen, writer: FindingWriter
) -> Iterator[Finding]:
    """What the standard names and no list has."""
    laid, makes = [one.laid for one in worked], [one.make for one in worked]
    hinges = hinges_of(kitchen.hardware.hinges, kitchen.practice)
    return standard_item_findings(laid, makes, kitchen.hardware.handles, hinges, writer)


def _used_twice(worked: Sequence[WorkedFront], writer: FindingWriter) -> Iterator[Finding]:
    used: dict[str, list[str]] = defaultdict(list)
    for one in worked:
        if one.laid.door:
            used[one.laid.door.label].append(one.front.label)
    for door, many in used.items():
        if len(many) > 1:
            yield writer.door_used_twice(door, many)


def _door_uses(fronts: Sequence[Front]) -> tuple[DoorUse, ...]:
    return tuple(
        DoorUse(front.door_on_hand, front.label, front.trim)
        for front in fronts
        if front.door_on_hand
    )


def _parts(
    worked: Sequence[WorkedFront],
    sets: Sequence[SetOnWall],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[tuple[Part, ...], list[Finding]]:
    """All that is cut, of fronts and boxes, and what is wrong with their bands and grain."""
    fronts, laid = [one.front for one in worked], [one.laid for one in worked]
    bandings, findings = bandings_of(fronts, laid, kitchen, writer)
    in_opening = Counter(front.opening_label for front in laid if front.opening.closing.stack)
    places = {label: place for one in sets for label, place in one.places.items()}
    parts: list[Part] = []
    for one in worked:
        front, opening = one.front, one.laid.opening_label
        if front.is_new and not front.bought:
            parts += parts_of(
                front, kitchen.practice, kitchen.job.step,
                stack=opening if in_opening[opening] > 1 else None,
                grain=places.get(front.label), banding=bandings.get(front.label),
            )  # fmt: skip
        if one.box is not None:
            parts += parts_of_box(front.label, one.box.pieces, one.box.material)
    findings += grain_findings(sets, parts, kitchen, writer)
    return tuple(parts), findings

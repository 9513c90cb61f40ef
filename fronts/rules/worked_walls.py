"""All that is decided along one group of walls: from laying the fronts out to fixing them.

Lay them out, make and weigh each, look along the wall, stand its box behind it, hang it or
fix it, and say what is wrong.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import chain

from fronts.rules.along_wall import (
    meeting_findings,
    overlap_findings,
    placed,
    run_end_findings,
)
from fronts.rules.blocked_fronts import blocked_findings
from fronts.rules.boxes_on_slides import Standing, boxes_behind
from fronts.rules.checks import cabinet_findings, front_findings, opening_findings
from fronts.rules.doors_on_hand import knob_off_centre, shows
from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import Fitting
from fronts.rules.fixing import fit
from fronts.rules.front_rows import front_rows
from fronts.rules.grain_sets import grained
from fronts.rules.handle_findings import handle_findings
from fronts.rules.handle_settling import settle_handles
from fronts.rules.kitchen import CHOOSE, DoorOnHand, Kitchen
from fronts.rules.laying import Laid, LaidOpening, lay_cabinet
from fronts.rules.making import Make, make_of, weigh
from fronts.rules.neighbours import facing
from fronts.rules.practice import Practice
from fronts.rules.results import Finding, Front
from fronts.rules.runs import on_walls, runs_of
from fronts.rules.seasons import movements
from fronts.rules.special_fronts import special_findings
from fronts.rules.tapering import taper_findings
from fronts.rules.usual_hinges import hinges_of
from fronts.rules.wall_groups import WallGroup


@dataclass(frozen=True, slots=True)
class WorkedFront:
    """A front at every stage: laid out, made as it says itself, made as all is known, fixed."""

    laid: Laid
    make: Make
    front: Front
    box: Standing | None
    fitting: Fitting | None


@dataclass(frozen=True, slots=True)
class WorkedCabinet:
    """The openings of a cabinet, and their fronts in order."""

    openings: tuple[LaidOpening, ...]
    fronts: tuple[WorkedFront, ...]


@dataclass(frozen=True, slots=True)
class WorkedWalls:
    """The cabinets in the kitchen's order; what was found, a tuple for each thing looked at."""

    cabinets: tuple[WorkedCabinet, ...]
    findings: tuple[tuple[Finding, ...], ...]


def work_out(group: WallGroup) -> WorkedWalls:
    """Everything about these walls that needs no other wall."""
    kitchen, practice = group.kitchen, group.kitchen.practice
    writer = FindingWriter(kitchen.job.unit)
    openings = _laid_out(group)
    laid = [front for cabinet in openings for opening in cabinet for front in opening.fronts]
    hinges = hinges_of(kitchen.hardware.hinges, practice)
    own_makes = [make_of(front, kitchen, hinges) for front in laid]
    makes = grained(laid, own_makes)
    faced = facing([placed(front) for front in laid])
    moves = movements(laid, makes, faced, practice)
    weights = [weigh(make, practice) for make in makes]
    thicknesses = [make.face.thickness for make in makes]
    boxes, boxing = boxes_behind(laid, thicknesses, weights, kitchen, writer)
    makes = settle_handles(laid, makes, boxes, practice)
    fronts, making = front_rows(laid, makes, weights, boxes, moves, faced, kitchen, hinges, writer)
    fittings, fixing = _fixed(fronts, laid, boxes, kitchen, writer)
    standing = on_walls(runs_of(kitchen))
    findings: tuple[Iterable[Finding], ...] = (
        chain.from_iterable(_openings_looked_at(each, kitchen, writer) for each in openings),
        chain.from_iterable(front_findings(front, writer, kitchen.job.step) for front in laid),
        _door_findings(laid, makes, group.picked, writer, practice),
        meeting_findings(laid, faced, writer, practice),
        run_end_findings(laid, standing, writer, practice),
        overlap_findings(standing, writer),
        making,
        handle_findings(fronts, laid, makes, faced, kitchen, writer),
        blocked_findings(fronts, laid, standing, kitchen, writer),
        special_findings(fronts, laid, standing, kitchen, writer),
        boxing,
        fixing,
    )
    worked = [
        WorkedFront(one, make, front, boxes.get(front.label), fittings.get(front.label))
        for one, make, front in zip(laid, own_makes, fronts, strict=True)
    ]
    return WorkedWalls(
        tuple(_by_cabinet(openings, worked)), tuple(tuple(each) for each in findings)
    )


def _laid_out(group: WallGroup) -> list[list[LaidOpening]]:
    """The openings of each cabinet, their fronts with the doors that were picked for them."""
    doors = {door.label: door for door in group.kitchen.doors_on_hand}
    return [
        [
            replace(
                opening, fronts=tuple(_with_door(each, group.picked) for each in opening.fronts)
            )
            for opening in lay_cabinet(cabinet, group.kitchen, doors)
        ]
        for cabinet in group.kitchen.cabinets
    ]


def _with_door(front: Laid, picked: Mapping[str, DoorOnHand | None]) -> Laid:
    if front.decided.door_on_hand != CHOOSE:
        return front
    return replace(front, door=picked[front.label])


def _openings_looked_at(
    openings: Sequence[LaidOpening], kitchen: Kitchen, writer: FindingWriter
) -> Iterator[Finding]:
    """What is wrong with the openings of one cabinet, and then with all of them together."""
    for opening in openings:
        yield from opening_findings(opening, writer, kitchen.practice)
        yield from taper_findings(opening, kitchen.job.unit, writer)
    yield from cabinet_findings(openings, writer)


def _door_findings(
    laid: Sequence[Laid],
    makes: Sequence[Make],
    picked: Mapping[str, DoorOnHand | None],
    writer: FindingWriter,
    practice: Practice,
) -> Iterator[Finding]:
    """What of a door's past shows, and the fronts that no door serves."""
    for front, make in zip(laid, makes, strict=True):
        if make.door:
            seen = shows(make.door, front.hinged)
            if seen:
                yield writer.bore_shows(front.label, make.door.label, seen)
            off = knob_off_centre(make.door)
            if off > practice.lines_seen and front.opening.closing.on_box:
                yield writer.knob_off_centre(front.label, make.door.label, off)
        elif front.label in picked:
            yield writer.no_door(front.label, front.width, front.height)


def _fixed(
    fronts: Sequence[Front],
    laid: Sequence[Laid],
    boxes: Mapping[str, Standing],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[dict[str, Fitting], list[Finding]]:
    """How each front goes on its box, by its label, and what is wrong with that."""
    fittings: dict[str, Fitting] = {}
    findings: list[Finding] = []
    for front, laid_front in zip(fronts, laid, strict=True):
        standing = boxes.get(front.label)
        if standing is not None:
            fittings[front.label], wrong = fit(front, laid_front, standing, kitchen, writer)
            findings += wrong
    return fittings, findings


def _by_cabinet(
    openings: Sequence[Sequence[LaidOpening]], worked: Iterable[WorkedFront]
) -> Iterator[WorkedCabinet]:
    fronts = iter(worked)
    for cabinet in openings:
        count = sum(len(opening.fronts) for opening in cabinet)
        yield WorkedCabinet(tuple(cabinet), tuple(next(fronts) for _ in range(count)))

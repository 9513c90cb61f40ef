"""The hardware that the kitchen needs, item by item: how many, for which fronts, and why.

Companions come with their item: a hinge's screws, a slide's screws.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from fronts.rules.findings import FindingWriter
from fronts.rules.kinds import FRONT_KINDS, SLIDES
from fronts.rules.kitchen import Box, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.materials import PERCENT
from fronts.rules.results import Finding, Fitting, Front, Need, Schedule
from fronts.rules.screws import thread_diameter
from fronts.rules.slides import expected_load, slide_class

GROUPS = ("hinge", "slides", "knob", "mounting screw", "bumper")
"""The order in which a list of hardware reads."""


@dataclass(frozen=True, slots=True)
class _Line:
    group: str
    item: str
    front: str
    count: int
    why: str
    spared: bool = True


def hardware_needs(
    fronts: Sequence[Front],
    fittings: Mapping[str, Fitting],
    boxes: Mapping[str, tuple[Box, Mm]],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[tuple[Need, ...], list[Finding]]:
    """Needs, like things together; `boxes` with their cabinet's depth."""
    findings: list[Finding] = []
    lines: list[_Line] = []
    hinges = _hinge_whys(fronts, writer)
    for front in fronts:
        lines += _for_door(front, kitchen, hinges)
        fitting = fittings.get(front.label)
        if fitting:
            lines += _for_fitting(front, fitting, writer)
            more, finding = _slides(front, fitting, boxes[front.label], kitchen, writer)
            lines += more
            findings += finding
        more, finding = _knobs(front, fitting, kitchen, writer)
        lines += more
        findings += finding
        lines += _bumpers(front, kitchen)
    return _summed(lines, kitchen.practice.spares / PERCENT), findings


def _summed(lines: Sequence[_Line], share: Fraction) -> tuple[Need, ...]:
    counts: dict[str, dict[str, int]] = {}
    whys: dict[str, str] = {}
    spared: dict[str, Fraction] = {}
    for line in sorted(lines, key=lambda line: GROUPS.index(line.group)):
        per_front = counts.setdefault(line.item, {})
        per_front[line.front] = per_front.get(line.front, 0) + line.count
        whys.setdefault(line.item, line.why)
        spared[line.item] = share if line.spared else Fraction(0)
    return tuple(
        Need(
            item=item,
            need=(need := sum(per.values())),
            fronts=tuple(per),
            why=whys[item],
            per_front=per,
            spares=ceil(need * spared[item]),
        )
        for item, per in counts.items()
    )


def _hinge_whys(fronts: Sequence[Front], writer: FindingWriter) -> str:
    """How many hinges for which overlay: what tells one hinge from another."""
    counts: dict[str, int] = {}
    for front in fronts:
        overlay = front.edges[front.hinged].overlay if front.hinged else None
        if overlay is not None:
            lap = f"{writer.say(overlay)} overlay" if overlay >= 0 else "inset"
            counts[lap] = counts.get(lap, 0) + front.hinges
    told = ", ".join(f"{count} for {lap}" for lap, count in counts.items())
    return f"by each door's height and weight: {told}"


def _for_door(front: Front, kitchen: Kitchen, hinges: str) -> Iterator[_Line]:
    if not front.hinges:
        return
    screws = int(kitchen.practice.hinge_screws)
    yield _Line("hinge", "hinge", front.label, front.hinges, hinges)
    yield _Line(
        "hinge",
        "hinge screw",
        front.label,
        front.hinges * screws,
        f"{screws} a hinge, with its plate",
    )


def _for_fitting(front: Front, fitting: Fitting, writer: FindingWriter) -> Iterator[_Line]:
    if fitting.screw:
        item = f"#8 washer-head screw, {writer.say(fitting.screw.length)}"
        yield _Line(
            "mounting screw", item, front.label, fitting.screw.count, "one in each corner of a box"
        )


def _slides(
    front: Front, fitting: Fitting, box: tuple[Box, Mm], kitchen: Kitchen, writer: FindingWriter
) -> tuple[list[_Line], list[Finding]]:
    practice = kitchen.practice
    load = expected_load(box[0], box[1], front.weight_kg, practice)
    carries = slide_class(load, practice)
    if carries is None:
        return [], [writer.load_too_heavy(front.label, writer.say_weight(load))]
    if fitting.slide_length is None:
        return [], []
    length, rated = writer.say(fitting.slide_length), writer.say_weight(carries, places=0)
    kind = SLIDES[box[0].slide].item if box[0].slide else "slides, pair"
    item = f"{kind}, {length}, {rated}"
    screws = int(practice.slide_screws)
    why = "the longest stocked length that fits, for the box's expected load"
    return [
        _Line("slides", item, front.label, 1, why, spared=False),
        _Line("slides", "slide screw", front.label, screws, f"{screws} for each box's slides"),
    ], []


def _knobs(
    front: Front, fitting: Fitting | None, kitchen: Kitchen, writer: FindingWriter
) -> tuple[list[_Line], list[Finding]]:
    count = len(front.knobs)
    if not count:
        return [], []
    lines = [
        _Line(
            "knob",
            "knob or pull",
            front.label,
            count,
            "one a front, two on a wide drawer front",
            spared=False,
        )
    ]
    if fitting:
        length = fitting.knob_screw.length if fitting.knob_screw else None
    else:
        length = front.knob_screw
    if length is not None:
        item = f"knob screw {kitchen.stock.knob_thread}, {writer.say(length)}"
        lines.append(
            _Line("knob", item, front.label, count, "through what the knob sits on, and engaged")
        )
        return lines, []
    if fitting or thread_diameter(kitchen.stock.knob_thread) is None:
        return lines, []
    return lines, [writer.knob_screw_to_buy(front.label, front.thickness)]


def _bumpers(front: Front, kitchen: Kitchen) -> Iterator[_Line]:
    count = int(kitchen.practice.bumpers)
    if FRONT_KINDS[front.kind].opens and count:
        yield _Line(
            "bumper", "bumper", front.label, count, f"{count} a door, {count} a drawer front"
        )


def needs_by_item(schedule: Schedule) -> dict[str, int]:
    """How many of each item a schedule needs, in the order of its list."""
    return {need.item: need.need for need in schedule.hardware}

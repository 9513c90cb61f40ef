"""The hardware that the kitchen needs, item by item: how many, for which fronts, and why.

Companions come with their item: a hinge's screws, a slide's screws.
"""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from fronts.rules.boxes_on_slides import Standing
from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import Fitting
from fronts.rules.glass import pane_in, panes_in
from fronts.rules.handles import thinnest
from fronts.rules.kinds import FRONT_KINDS, SLIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.lifts import choose_lift, moment
from fronts.rules.materials import PERCENT
from fronts.rules.parts import has_panel
from fronts.rules.practice import Practice
from fronts.rules.results import Finding, Front, Need, Schedule
from fronts.rules.screws import thread_diameter

GROUPS = ("hinge", "lift", "slides", "knob", "mounting screw", "bumper", "glass")
"""The order in which a list of hardware reads."""


@dataclass(frozen=True, slots=True)
class _Line:
    group: str
    item: str
    front: str
    count: int
    why: str
    spared: bool = True
    code: str | None = None
    kind: str = ""


def hardware_needs(
    fronts: Sequence[Front],
    fittings: Mapping[str, Fitting],
    boxes: Mapping[str, Standing],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[tuple[Need, ...], list[Finding]]:
    """Needs, like things together."""
    findings: list[Finding] = []
    lines: list[_Line] = []
    hinges = _hinge_whys(fronts, writer)
    for front in fronts:
        lines += _for_door(front, hinges)
        more, finding = _lift(front, kitchen, writer)
        lines += [*more, *_glass(front, kitchen.practice, writer)]
        findings += finding
        fitting = fittings.get(front.label)
        if fitting:
            lines += _for_fitting(front, fitting, writer)
            lines += _slides(front, boxes[front.label], kitchen, writer)
        more, finding = _knobs(front, fitting, kitchen, writer)
        lines += more
        findings += finding
        lines += _bumpers(front, kitchen)
    return _summed(lines, kitchen.practice.spares / PERCENT), findings


def _summed(lines: Sequence[_Line], share: Fraction) -> tuple[Need, ...]:
    same: dict[str, list[_Line]] = defaultdict(list)
    for line in sorted(lines, key=lambda line: GROUPS.index(line.group)):
        same[line.item].append(line)
    return tuple(_need(item, of_it, share) for item, of_it in same.items())


def _need(item: str, lines: Sequence[_Line], share: Fraction) -> Need:
    per_front: dict[str, int] = defaultdict(int)
    for line in lines:
        per_front[line.front] += line.count
    first, need = lines[0], sum(per_front.values())
    return Need(
        item=item,
        need=need,
        fronts=tuple(per_front),
        why=first.why,
        per_front=dict(per_front),
        spares=ceil(need * share) if first.spared else 0,
        code=first.code,
        kind=first.kind,
    )


def _hinge_whys(fronts: Sequence[Front], writer: FindingWriter) -> dict[str | None, str]:
    """For each hinge by its code, how many for which overlay."""
    counts: dict[str | None, dict[str, int]] = {}
    for front in fronts:
        overlay = front.edges[front.hinged].overlay if front.hinged else None
        if overlay is not None:
            lap = f"{writer.say(overlay)} overlay" if overlay >= 0 else "inset"
            laps = counts.setdefault(front.hinge.code if front.hinge else None, {})
            laps[lap] = laps.get(lap, 0) + front.hinges
    told = {
        code: ", ".join(f"{count} for {lap}" for lap, count in laps.items())
        for code, laps in counts.items()
    }
    return {code: f"by each door's height and weight: {laps}" for code, laps in told.items()}


def _for_door(front: Front, hinges: Mapping[str | None, str]) -> Iterator[_Line]:
    """The hinges of a door, their plates and screws; a plain line where none of the shop's does."""
    if not front.hinges:
        return
    hinge, label, count = front.hinge, front.label, front.hinges
    if hinge is None:
        yield _Line("hinge", "hinge", label, count, hinges.get(None, "none of the shop's fits"))
        return
    named = f", {hinge.name}" if hinge.name else ""
    yield _Line(
        "hinge", f"hinge {hinge.code}{named}", label, count, hinges[hinge.code], code=hinge.code,
        kind="hinge",
    )  # fmt: skip
    if hinge.plate is not None:
        plate = f"hinge plate {show(hinge.plate, 'mm')} mm for {hinge.code}"
        yield _Line("hinge", plate, label, count, "one a hinge, as high as its overlay asks")
    if hinge.screws:
        screws = "as many a hinge, with its plate, as it takes"
        yield _Line("hinge", "hinge screw", label, count * hinge.screws, screws)


def _lift(
    front: Front, kitchen: Kitchen, writer: FindingWriter
) -> tuple[list[_Line], list[Finding]]:
    """What holds a front open that is hinged at its top."""
    traits, lifts = FRONT_KINDS[front.kind], kitchen.hardware.lifts
    if not traits.swings or front.hinged != "top":
        return [], []
    lift = choose_lift(moment(front.weight_kg, front.height), lifts)
    if lift is None:
        weight = writer.say_weight(front.weight_kg)
        stop = writer.no_lift(front.label, weight, front.height)
        return [], [stop] if traits.needs_lift else []
    said = f"{lift.code} {lift.name}".strip() if lift in lifts else lift.name
    why = "the first of the list that carries the front's weight × height"
    line = _Line("lift", said, front.label, 1, why, spared=False, code=lift.code, kind="lift")
    return [line], []


def _glass(front: Front, practice: Practice, writer: FindingWriter) -> Iterator[_Line]:
    """The panes of a new front."""
    if not front.glass or not front.is_new:
        return
    frame = front.width, front.height, front.stile, front.rail
    if not has_panel(*frame, practice):
        return
    across, up = (writer.say(side) for side in pane_in(*frame, practice))
    thick = writer.say(front.panel_thickness)
    why = "the opening in the frame + 2 × (rabbet - play), held by stops"
    count = panes_in(front.height, practice)
    yield _Line(
        "glass", f"glass {across} × {up}, {thick}", front.label, count, why, spared=False,
        kind="glass",
    )  # fmt: skip


def _for_fitting(front: Front, fitting: Fitting, writer: FindingWriter) -> Iterator[_Line]:
    if fitting.screw:
        item = f"#8 washer-head screw, {writer.say(fitting.screw.length)}"
        yield _Line(
            "mounting screw", item, front.label, fitting.screw.count, "one in each corner of a box"
        )


def _slides(
    front: Front, standing: Standing, kitchen: Kitchen, writer: FindingWriter
) -> Iterator[_Line]:
    slide, length = standing.slide, standing.length
    if slide is None or length is None:
        return
    name = slide.name or SLIDES[slide.kind].item
    said = f"{slide.code} {name}" if slide in kitchen.hardware.slides else name
    rated = writer.say_weight(slide.load_kg, places=0)
    yield _Line(
        "slides",
        f"{said}, {writer.say(length)}, {rated}",
        front.label,
        1,
        "the first of the list that is as long as the box wants, for its expected load",
        spared=False,
        code=slide.code,
    )
    screws = int(kitchen.practice.slide_screws)
    yield _Line("slides", "slide screw", front.label, screws, f"{screws} for each box's slides")


def _knobs(
    front: Front, fitting: Fitting | None, kitchen: Kitchen, writer: FindingWriter
) -> tuple[list[_Line], list[Finding]]:
    if not front.handles:
        return [], []
    first = front.handles[0]
    lines = [
        _Line(
            "knob",
            " ".join(filter(None, (first.code, first.name))) or "knob or pull",
            front.label,
            len(front.handles),
            "one a front, two on a wide drawer front",
            spared=False,
            code=first.code,
            kind="knob or pull",
        )
    ]
    if fitting:
        length = fitting.knob_screw.length if fitting.knob_screw else None
    else:
        length = front.knob_screw
    if length is not None:
        item = f"knob screw {first.thread}, {writer.say(length)}"
        lines.append(
            _Line(
                "knob", item, front.label, len(front.knobs),
                "through what the knob sits on, and engaged",
            )
        )  # fmt: skip
        return lines, []
    if fitting or thread_diameter(first.thread) is None:
        return lines, []
    return lines, [
        writer.knob_screw_to_buy(front.label, front.face.stack(thinnest(front.handles), None))
    ]


def _bumpers(front: Front, kitchen: Kitchen) -> Iterator[_Line]:
    count = int(kitchen.practice.bumpers)
    if FRONT_KINDS[front.kind].opens and count:
        yield _Line(
            "bumper", "bumper", front.label, count, f"{count} a door, {count} a drawer front"
        )


def needs_by_item(schedule: Schedule) -> dict[str, int]:
    """How many of each item a schedule needs, in the order of its list."""
    return {need.item: need.need for need in schedule.hardware}

"""The hardware that the kitchen needs, item by item: how many, for which fronts, and why.

Companions come with their item: a hinge's screws, a slide's screws.
"""

from collections.abc import Iterator, Mapping, Sequence

from fronts.rules.boxes_on_slides import Standing
from fronts.rules.buying_names import plate_name, slide_length
from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import Fitting
from fronts.rules.handles import thinnest
from fronts.rules.kinds import FRONT_KINDS, SLIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.lifts import choose_lift, moment
from fronts.rules.materials import PERCENT
from fronts.rules.need_lines import NeedLine, summed
from fronts.rules.needs_of_kinds import for_kind
from fronts.rules.results import Finding, Front, Need, Schedule
from fronts.rules.screws import screw_name, thread_diameter


def hardware_needs(
    fronts: Sequence[Front],
    fittings: Mapping[str, Fitting],
    boxes: Mapping[str, Standing],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[tuple[Need, ...], list[Finding]]:
    """Needs, like things together."""
    findings: list[Finding] = []
    lines: list[NeedLine] = []
    hinges = _hinge_whys(fronts, writer)
    for front in fronts:
        lines += _for_door(front, hinges)
        more, finding = _lift(front, kitchen, writer)
        lines += more
        findings += finding
        fitting = fittings.get(front.label)
        lines += for_kind(front, fitting, kitchen, writer)
        if fitting:
            lines += _for_fitting(front, fitting, kitchen, writer)
            lines += _slides(front, boxes[front.label], kitchen, writer)
        more, finding = _knobs(front, fitting, kitchen, writer)
        lines += more
        findings += finding
        lines += _bumpers(front, kitchen)
    return summed(lines, kitchen.practice.spares / PERCENT), findings


def _hinge_whys(fronts: Sequence[Front], writer: FindingWriter) -> dict[str | None, str]:
    """For each hinge by its code, how many for which overlay."""
    counts: dict[str | None, dict[str, int]] = {}
    for front in fronts:
        overlay = front.edges[front.hinged].overlay if front.hinged else None
        if overlay is not None and front.hinges:
            lap = f"{writer.say(overlay)} overlay" if overlay >= 0 else "inset"
            laps = counts.setdefault(front.hinge.code if front.hinge else None, {})
            laps[lap] = laps.get(lap, 0) + front.hinges
    told = {
        code: ", ".join(f"{count} for {lap}" for lap, count in laps.items())
        for code, laps in counts.items()
    }
    return {code: f"by each door's height and weight: {laps}" for code, laps in told.items()}


def _for_door(front: Front, hinges: Mapping[str | None, str]) -> Iterator[NeedLine]:
    """The hinges of a door, their plates and screws; a plain line where none of the shop's does."""
    if not front.hinges:
        return
    hinge, label, count = front.hinge, front.label, front.hinges
    if hinge is None:
        yield NeedLine("hinge", "hinge", label, count, hinges.get(None, "none of the shop's fits"))
        return
    named = f", {hinge.name}" if hinge.name else ""
    yield NeedLine(
        "hinge", f"hinge {hinge.code}{named}", label, count, hinges[hinge.code], code=hinge.code,
        kind="hinge",
    )  # fmt: skip
    if hinge.plate is not None:
        plate = plate_name(hinge.plate, hinge.code)
        yield NeedLine("hinge", plate, label, count, "one a hinge, as high as its overlay asks")
    if hinge.screws:
        screws = "as many a hinge, with its plate, as it takes"
        yield NeedLine("hinge", "hinge screw", label, count * hinge.screws, screws, is_screw=True)


def _lift(
    front: Front, kitchen: Kitchen, writer: FindingWriter
) -> tuple[list[NeedLine], list[Finding]]:
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
    line = NeedLine("lift", said, front.label, 1, why, spared=False, code=lift.code, kind="lift")
    return [line], []


def _for_fitting(
    front: Front, fitting: Fitting, kitchen: Kitchen, writer: FindingWriter
) -> Iterator[NeedLine]:
    if fitting.screw:
        name = screw_name(kitchen.practice.screw_diameter)
        item = f"{name} washer-head screw, {writer.say(fitting.screw.length)}"
        yield NeedLine(
            "mounting screw",
            item,
            front.label,
            fitting.screw.count,
            "one in each corner of a box",
            is_screw=True,
        )


def _slides(
    front: Front, standing: Standing, kitchen: Kitchen, writer: FindingWriter
) -> Iterator[NeedLine]:
    slide, length = standing.slide, standing.length
    if slide is None or length is None:
        return
    name = slide.name or SLIDES[slide.kind].item
    said = f"{slide.code} {name}" if slide in kitchen.hardware.slides else name
    rated = writer.say_weight(slide.load_kg, places=0)
    yield NeedLine(
        "slides",
        f"{said}, {writer.say(length)}, {rated}",
        front.label,
        1,
        "the first of the list that is as long as the box wants, for its expected load",
        spared=False,
        code=slide.code,
        length=slide_length(length),
    )
    screws = int(kitchen.practice.slide_screws)
    why = f"{screws} for each box's slides"
    yield NeedLine("slides", "slide screw", front.label, screws, why, is_screw=True)


def _knobs(
    front: Front, fitting: Fitting | None, kitchen: Kitchen, writer: FindingWriter
) -> tuple[list[NeedLine], list[Finding]]:
    if not front.handles:
        return [], []
    first = front.handles[0]
    lines = [
        NeedLine(
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
            NeedLine(
                "knob", item, front.label, len(front.knobs),
                "through what the knob sits on, and engaged", is_screw=True,
            )
        )  # fmt: skip
        return lines, []
    if fitting or thread_diameter(first.thread) is None:
        return lines, []
    return lines, [
        writer.knob_screw_to_buy(front.label, front.face.stack(thinnest(front.handles), None))
    ]


def _bumpers(front: Front, kitchen: Kitchen) -> Iterator[NeedLine]:
    count = int(kitchen.practice.bumpers)
    if FRONT_KINDS[front.kind].opens and count:
        yield NeedLine(
            "bumper", "bumper", front.label, count, f"{count} a door, {count} a drawer front"
        )


def needs_by_item(schedule: Schedule) -> dict[str, int]:
    """How many of each item a schedule needs, in the order of its list."""
    return {need.item: need.need for need in schedule.hardware}

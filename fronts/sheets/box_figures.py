"""What an installer needs to hang one front on its box, in words and figures."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.drawings.front_back import mirrored
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.results import Fitting, Front
from fronts.sheets.imprint import size


@dataclass(frozen=True, slots=True)
class Line:
    """A figure with its name; a `key` figure is printed large."""

    name: str
    figure: str
    more: str = ""
    key: bool = False


@dataclass(frozen=True, slots=True)
class HolePlace:
    """A mounting hole: on the box front from before it, on the front's back from behind it."""

    number: str
    box_x: str
    box_y: str
    back_x: str
    back_y: str
    moved: bool


def hole_places(front: Front, fitting: Fitting, unit: str) -> list[HolePlace]:
    """Every place measured from the lower left corner of the face that one looks at."""
    return [
        HolePlace(
            str(number),
            show(hole.box_x, unit),
            show(hole.box_y, unit),
            show(mirrored(front, hole.front_x), unit),
            show(hole.front_y, unit),
            hole.moved,
        )
        for number, hole in enumerate(fitting.holes, 1)
    ]


def box_figures(fitting: Fitting, kitchen: Kitchen) -> list[Line]:
    """The figures in the order in which they are needed."""
    unit = kitchen.job.unit
    return [*_hanging(fitting, kitchen, unit), *_boring(fitting, kitchen, unit)]


def _hanging(fitting: Fitting, kitchen: Kitchen, unit: str) -> Iterator[Line]:
    yield _side_offset(fitting, unit)
    if fitting.method == "jig" and fitting.ledges is not None:
        block = f"thick, {show(fitting.jig_length, unit)} long"
        yield Line("Jig", show(fitting.jig_thickness, unit), block, key=True)
        ledges = fitting.ledges
        yield Line(
            "Ledges",
            f"{ledges.count} × {show(ledges.thickness, unit)}",
            f"{show(ledges.length, unit)} long, {show(ledges.overhang, unit)} proud",
        )
    if fitting.method == "jig" and fitting.slot is not None:
        slot = fitting.slot
        yield Line("Slot", size(unit, slot.width, slot.depth), "deep")
    if fitting.shims is not None:
        shims = fitting.shims
        sides = show(shims.side, unit)
        if shims.right != shims.side:
            sides += f" left, {show(shims.right, unit)} right"
        yield Line("Side shims", sides, "one each side", key=True)
        about = show(kitchen.practice.bottom_shim_length, unit)
        yield Line("Bottom shims", f"2 × {show(shims.bottom, unit)}", f"{about} long", key=True)
    tape = kitchen.practice
    width = size(unit, tape.tape_width, tape.tape_thickness)
    yield Line("Foam tape", width if fitting.tape.suggested else "not here", fitting.tape.why)


def _side_offset(fitting: Fitting, unit: str) -> Line:
    left, right = show(fitting.side_offset, unit), show(fitting.right_offset, unit)
    if left == right:
        return Line("Side offset", left, "past the box", key=True)
    return Line("Side offset", f"{left} | {right}", "left | right, from before", key=True)


def _boring(fitting: Fitting, kitchen: Kitchen, unit: str) -> Iterator[Line]:
    if fitting.holes:
        bit = show(fitting.holes[0].diameter, unit)
        stop = f"stop at {show(fitting.drill_stop, unit)}"
        yield Line("Drill", f"⌀ {bit}", stop, key=True)
    if fitting.screw is not None:
        screw = fitting.screw
        play = f"#8, play {show(fitting.play, unit, finest=64)}"
        yield Line("Screws", f"{screw.count} × {show(screw.length, unit)}", play, key=True)
    if fitting.knob_screw is not None:
        yield _knob(fitting, kitchen, unit)
    if fitting.slide is not None:
        length = "" if fitting.slide_length is None else show(fitting.slide_length, unit)
        yield Line("Slide", length or "none fits", f"{fitting.slide} slide")


def _knob(fitting: Fitting, kitchen: Kitchen, unit: str) -> Line:
    screw = fitting.knob_screw
    if screw is None:
        raise ValueError(f"{fitting.front} has no knob screw")
    figure = f"{screw.count} × {show(screw.length, unit)}"
    thread = kitchen.stock.knob_thread
    if screw.recess is not None:
        wide, deep = show(screw.recess.width, unit), show(screw.recess.depth, unit)
        return Line(
            "Knob screw",
            figure,
            f"{thread}; front alone, recess ⌀ {wide} × {deep} deep in box front",
            key=True,
        )
    through = "through box" if screw.through_box else "front alone"
    return Line("Knob screw", figure, f"{thread}, {through}", key=True)

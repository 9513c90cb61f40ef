"""What an installer needs to hang one front on its box, in words and figures."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.figures.knobs import Line, knob_lines
from fronts.figures.sizes import size
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Fitting, Front


@dataclass(frozen=True, slots=True)
class HolePlace:
    """A mounting hole: on the box front from before it, on the front's back from behind it.

    `corner` is where it is on the box, seen from the front.
    """

    number: str
    corner: str
    box_x: str
    box_y: str
    back_x: str
    back_y: str
    moved: bool


def hole_places(front: Front, fitting: Fitting, unit: str) -> list[HolePlace]:
    """Every place measured from the lower left corner of the face that one looks at."""
    middle = fitting.jig_length / 2, fitting.box_height / 2
    return [
        HolePlace(
            str(number),
            f"{'upper' if hole.box_y > middle[1] else 'lower'} "
            f"{'right' if hole.box_x > middle[0] else 'left'}",
            show(hole.box_x, unit),
            show(hole.box_y, unit),
            show(mirrored(front, hole.front_x), unit),
            show(hole.front_y, unit),
            hole.moved,
        )
        for number, hole in enumerate(fitting.holes, 1)
    ]


def mirrored(front: Front, x: Mm) -> Mm:
    """A place across the front's face, as it lies from the left when seen from the back."""
    return front.width - x


def box_figures(front: Front, fitting: Fitting, kitchen: Kitchen) -> list[Line]:
    """The figures in the order in which they are needed."""
    unit = kitchen.job.unit
    return [
        *_hanging(fitting, kitchen, unit),
        *_boring(fitting, unit),
        *knob_lines(front, fitting, kitchen),
        *_slide(fitting, unit),
    ]


def _hanging(fitting: Fitting, kitchen: Kitchen, unit: str) -> Iterator[Line]:
    yield _side_offset(fitting, unit)
    if fitting.method != "jig" and fitting.shims is None:
        above = show(-fitting.jig_thickness, unit)
        yield Line("Front's bottom", above, "above the box's bottom", key=True)
    if fitting.method == "jig" and fitting.ledges is not None:
        block = f"thick, {show(fitting.jig_length, unit)} long"
        yield Line("Jig", show(fitting.jig_thickness, unit), block, key=True)
        ledges = fitting.ledges
        yield Line(
            "Ledges",
            f"{ledges.count}, each {show(ledges.thickness, unit)} thick,",
            f"{show(ledges.length, unit)} front to back, {show(ledges.overhang, unit)} proud",
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
        below = f"thick, about {about} long" + (
            "; only where no jig is used" if fitting.method == "jig" else ""
        )
        figure = f"2, each {show(shims.bottom, unit)}"
        yield Line("Bottom shims", figure, below, key=fitting.method != "jig")
    if not fitting.tape.suggested:
        yield Line("Foam tape", "not here", fitting.tape.why)


def _side_offset(fitting: Fitting, unit: str) -> Line:
    left, right = show(fitting.side_offset, unit), show(fitting.right_offset, unit)
    if left == right:
        return Line("Side offset", left, "past the box", key=True)
    return Line("Side offset", f"{left} | {right}", "left | right, from before", key=True)


def _boring(fitting: Fitting, unit: str) -> Iterator[Line]:
    if fitting.holes:
        bit = show(fitting.holes[0].diameter, unit)
        stop = f"stop at {show(fitting.drill_stop, unit)}, front behind"
        yield Line("Drill", f"⌀ {bit}", stop, key=True)
    if fitting.screw is not None:
        screw = fitting.screw
        play = f"#8, play {show(fitting.play, unit, finest=64)}"
        yield Line("Screws", f"{screw.count} × {show(screw.length, unit)}", play, key=True)


def _slide(fitting: Fitting, unit: str) -> Iterator[Line]:
    if fitting.slide is not None:
        length = "" if fitting.slide_length is None else show(fitting.slide_length, unit)
        yield Line("Slide", length or "none fits", f"{fitting.slide} slide")

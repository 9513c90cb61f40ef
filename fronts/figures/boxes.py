"""What an installer needs to hang one front on its box, in words and figures."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.figures.knobs import Line, knob_lines, pieces
from fronts.figures.set_ups import off_by
from fronts.figures.sizes import size
from fronts.rules.fitting_results import Fitting
from fronts.rules.kinds import SLIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.merged_jigs import JigPlan
from fronts.rules.results import Front
from fronts.rules.screws import screw_name


@dataclass(frozen=True, slots=True)
class HolePlace:
    """A mounting hole: on the box front from before it, on the front's back from behind it.

    `number` is the one that it bears in every drawing and table; `corner` is where it is on
    the box, seen from the front.
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
            _corner(hole.box_x - middle[0], hole.box_y - middle[1]),
            show(hole.box_x, unit),
            show(hole.box_y, unit),
            show(mirrored(front, hole.front_x), unit),
            show(hole.front_y, unit),
            hole.moved,
        )
        for number, hole in enumerate(fitting.holes, 1)
    ]


def _corner(right: Mm, up: Mm) -> str:
    """`upper left`; `left` at mid-height."""
    level = "upper " if up > 0 else "lower " if up < 0 else ""
    return level + ("right" if right > 0 else "left")


def mirrored(front: Front, x: Mm) -> Mm:
    """A place across the front's face, as it lies from the left when seen from the back."""
    return front.width - x


def box_figures(front: Front, fitting: Fitting, kitchen: Kitchen, jigs: JigPlan) -> list[Line]:
    """The figures in the order in which they are needed: slide, drill, jig, screws, knob.

    Jigs and packers are those that are made; where the front sits off on one, it says so.
    """
    unit = kitchen.job.unit
    return [
        *_slide(fitting, unit),
        *_boring(fitting, unit),
        *_hanging(fitting, kitchen, jigs, unit),
        *_screws(fitting, kitchen, unit),
        *knob_lines(front, fitting, kitchen),
    ]


def _hanging(fitting: Fitting, kitchen: Kitchen, jigs: JigPlan, unit: str) -> Iterator[Line]:
    yield _side_offset(fitting, unit)
    thick, off = show(jigs.thickness_under(fitting), unit), off_by(jigs, fitting.front, unit)
    sits = f"; {off}" if off else ""
    if fitting.method == "packers" and fitting.shims is None:
        yield Line("Packers", thick, f"thick, under the box{sits}", key=True)
    if fitting.method == "shims" and fitting.shims is None:
        above = show(-fitting.jig_thickness, unit)
        yield Line("Front's bottom", above, "above the box's bottom", key=True)
    if fitting.method == "jig" and fitting.ledges is not None:
        block = f"thick, {show(fitting.jig_length, unit)} long{sits}"
        yield Line("Jig", thick, block, key=True)
        ledges = fitting.ledges
        sizes = size(unit, ledges.thickness, ledges.length)
        proud = f"{show(ledges.overhang, unit)} proud"
        yield Line("Ledges", f"{ledges.count} of {sizes}", proud)
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


def _slide(fitting: Fitting, unit: str) -> Iterator[Line]:
    if fitting.slide is None:
        return
    length = "" if fitting.slide_length is None else f"{show(fitting.slide_length, unit)} long"
    yield Line("Slide", length or "none fits", SLIDES[fitting.slide].item, key=True)


def _boring(fitting: Fitting, unit: str) -> Iterator[Line]:
    if fitting.holes:
        bit = show(fitting.holes[0].diameter, unit)
        stop = f"stop at {show(fitting.drill_stop, unit)}, front behind"
        yield Line("Drill", f"⌀ {bit}", stop, key=True)


def _screws(fitting: Fitting, kitchen: Kitchen, unit: str) -> Iterator[Line]:
    if fitting.screw is not None:
        name = screw_name(kitchen.practice.screw_diameter)
        figure = pieces(fitting.screw.count, name, show(fitting.screw.length, unit))
        play = f"play {show(fitting.play, unit, finest=64)}"
        yield Line("Screws", figure, f"{_pilot(fitting, unit)}{play}", key=True)


def _pilot(fitting: Fitting, unit: str) -> str:
    """The pilot hole in the front, which is drilled before its screw is driven."""
    if fitting.pilot is None:
        return ""
    wide, deep = (
        show(size, unit, finest=64) for size in (fitting.pilot.diameter, fitting.pilot.depth)
    )
    return f"pilot ⌀ {wide}, {deep} deep; "

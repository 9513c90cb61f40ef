"""A figure with its name, and what every front's figures say of its knob."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from fronts.figures.sizes import on_one_line, size
from fronts.rules.fitting_results import Fitting, KnobScrew
from fronts.rules.handles import Handle
from fronts.rules.kitchen import Kitchen, Point
from fronts.rules.knob_fixing import has_own_hole
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front


@dataclass(frozen=True, slots=True)
class Line:
    """A figure with its name; a `key` figure is printed large."""

    name: str
    figure: str
    more: str = ""
    key: bool = False


def place(at: Point, unit: str) -> str:
    """`→ 1 1/8 ↑ 25`, from a lower left corner, on one line."""
    return on_one_line(f"→ {show(at.x, unit)} ↑ {show(at.y, unit)}")


def pieces(count: int, what: str, length: str) -> str:
    """`4 pc, #8 × 1 1/8`: the count stands apart from the sizes."""
    return f"{count} pc, {what} × {length}"


def handle_word(handles: Sequence[Handle]) -> str:
    """`knob`, or `pull`: a pull has two screws; `knob or pull` where there are both."""
    return " or ".join(sorted({"knob" if each.screws == 1 else "pull" for each in handles}))


def knob_lines(front: Front, fitting: Fitting | None, kitchen: Kitchen) -> Iterator[Line]:
    """Where a front's knobs go, and the screw that holds each."""
    if front.knobs:
        yield _knobs(front, kitchen)
    screw = _knob_screw(front, fitting, kitchen)
    if screw is not None:
        yield screw


def _knobs(front: Front, kitchen: Kitchen) -> Line:
    """A hole that is there is where it is; one to be drilled is marked to the shop's step."""
    unit, step, key = kitchen.job.unit, kitchen.job.step, len(front.knobs) == 1
    name = handle_word(front.handles).capitalize()
    more = "from lower left, seen from the front"
    if has_own_hole(front, kitchen):
        places = " · ".join(place(each, unit) for each in front.knobs)
        return Line(name, places, f"{more}, its own hole", key=key)
    marked = [Point(_nearest(each.x, step), _nearest(each.y, step)) for each in front.knobs]
    if marked != list(front.knobs):
        more += f", to the nearest {show(step, unit)}"
    return Line(name, " · ".join(place(each, unit) for each in marked), more, key=key)


def _nearest(length: Mm, step: Mm) -> Mm:
    """The whole number of steps nearest to a length, the greater of two as near."""
    return (2 * length + step) // (2 * step) * step


def _knob_screw(front: Front, fitting: Fitting | None, kitchen: Kitchen) -> Line | None:
    screw = fitting.knob_screw if fitting is not None else None
    length = front.knob_screw if screw is None else screw.length
    if length is None:
        return None
    unit, count = kitchen.job.unit, len(front.knobs) if screw is None else screw.count
    figure = pieces(count, front.handles[0].thread, show(length, unit))
    return Line("Knob screw", figure, _through(screw, unit), key=True)


def _through(screw: KnobScrew | None, unit: str) -> str:
    if screw is not None and screw.recess is not None:
        recess = f"⌀ {size(unit, screw.recess.width, screw.recess.depth)} deep in box front"
        return f"front alone, recess {recess}"
    return "through box" if screw is not None and screw.through_box else "front alone"

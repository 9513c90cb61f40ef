"""A figure with its name, and what every front's figures say of its knob."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.figures.sizes import size
from fronts.rules.kitchen import Kitchen, Point
from fronts.rules.lengths import show
from fronts.rules.results import Fitting, Front


@dataclass(frozen=True, slots=True)
class Line:
    """A figure with its name; a `key` figure is printed large."""

    name: str
    figure: str
    more: str = ""
    key: bool = False


def place(at: Point, unit: str) -> str:
    """`→ 1 1/8 ↑ 25`, from a lower left corner."""
    across, up = show(at.x, unit), show(at.y, unit)
    return " ".join(each.replace(" ", "\u00a0") for each in (f"→ {across}", f"↑ {up}"))


def has_own_hole(front: Front, kitchen: Kitchen) -> bool:
    """Whether the door that the front is made from brings its knob's hole."""
    door = next((each for each in kitchen.doors_on_hand if each.label == front.door_on_hand), None)
    return bool(front.knobs) and door is not None and door.knob_hole is not None


def knob_lines(front: Front, fitting: Fitting | None, kitchen: Kitchen) -> Iterator[Line]:
    """Where a front's knobs go, and the screw that holds each."""
    unit = kitchen.job.unit
    if front.knobs:
        places = " · ".join(place(each, unit) for each in front.knobs)
        own = ", its own hole" if has_own_hole(front, kitchen) else ""
        more = f"from lower left, seen from the front{own}"
        yield Line("Knob", places, more, key=len(front.knobs) == 1)
    screw = _knob_screw(front, fitting, kitchen)
    if screw is not None:
        yield screw


def _knob_screw(front: Front, fitting: Fitting | None, kitchen: Kitchen) -> Line | None:
    unit, thread = kitchen.job.unit, kitchen.stock.knob_thread
    screw = fitting.knob_screw if fitting is not None else None
    if screw is None:
        if front.knob_screw is None:
            return None
        figure = f"{len(front.knobs)} × {show(front.knob_screw, unit)}"
        return Line("Knob screw", figure, f"{thread}, front alone", key=True)
    figure = f"{screw.count} × {show(screw.length, unit)}"
    if screw.recess is not None:
        recess = f"⌀ {size(unit, screw.recess.width, screw.recess.depth)} deep in box front"
        return Line("Knob screw", figure, f"{thread}; front alone, recess {recess}", key=True)
    through = "through box" if screw.through_box else "front alone"
    return Line("Knob screw", figure, f"{thread}, {through}", key=True)

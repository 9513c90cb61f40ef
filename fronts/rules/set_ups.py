"""What an installer sets up for a cabinet: jigs, shims, bits, their stops, screws.

A tool is one that is fetched, or set, before a front can be worked on: a jig, packers or shims
of a thickness, a bit of a diameter, its stop at a depth, screws of a length. Two cabinets that
use the same tool need it set up once where one follows the other.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Literal, TypeAlias, get_args

from fronts.rules.fitting_results import Fitting
from fronts.rules.hanging_method import hanging_method
from fronts.rules.hinge_drilling import hinge_to_bore
from fronts.rules.kitchen import Kitchen
from fronts.rules.knob_fixing import has_own_hole
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.merged_jigs import JigPlan
from fronts.rules.results import Front, Schedule

ToolKind: TypeAlias = Literal[
    "jig", "packers", "side shims", "bottom shims", "bit", "stop", "flat bit", "flat stop",
    "mounting screw", "knob screw",
]  # fmt: skip
TOOL_KINDS: tuple[ToolKind, ...] = get_args(ToolKind)
"""In the order in which they are used."""
Use: TypeAlias = Literal["box", "pilot", "knob", "recess", "cup", ""]
"""What a bit bores: the box's front, the front for its screws or its knob, the box for a knob
screw's head, a hinge's cup."""


@dataclass(frozen=True, slots=True)
class Tool:
    """One tool to set up; `sizes` are thickness and length, diameter and depth, or a length.

    A flat bit leaves a flat bottom; `thread` is a knob screw's.
    """

    kind: ToolKind
    sizes: tuple[Mm, ...]
    thread: str = ""

    @property
    def rank(self) -> tuple[int, tuple[Mm, ...], str]:
        """By what kind it is, then by its sizes."""
        return TOOL_KINDS.index(self.kind), self.sizes, self.thread


@dataclass(frozen=True, slots=True)
class Used:
    """A tool that a front uses, and what for."""

    tool: Tool
    front: str
    use: Use = ""


def tools_used(schedule: Schedule, kitchen: Kitchen, plan: JigPlan) -> tuple[Used, ...]:
    """Everything that the kitchen's fronts use, front by front; jigs as the plan makes them."""
    found: list[Used] = []
    for front in schedule.fronts:
        fitting = schedule.fitting(front.label)
        if fitting is not None:
            found += _set_with(front, fitting, plan)
            found += _into_the_box(front, fitting)
        found += _cups(front)
        found += _fixed(front)
        found += _knob(front, fitting, kitchen)
    return tuple(found)


def set_ups(schedule: Schedule, used: tuple[Used, ...]) -> Mapping[str, frozenset[Tool]]:
    """What each cabinet that has fronts needs set up, by its label."""
    cabinet_of = {front.label: front.cabinet for front in schedule.fronts}
    found: dict[str, set[Tool]] = {front.cabinet: set() for front in schedule.fronts}
    for each in used:
        found[cabinet_of[each.front]].add(each.tool)
    return {label: frozenset(tools) for label, tools in found.items()}


def _set_with(front: Front, fitting: Fitting, plan: JigPlan) -> Iterator[Used]:
    """What holds the front in its place while it is fixed."""
    method, shims = hanging_method(front, fitting), fitting.shims
    jig, packers = plan.jig_of(front.label), plan.packers_of(front.label)
    if jig is not None:
        yield Used(Tool("jig", (jig.thickness, jig.length)), front.label)
    if packers is not None:
        yield Used(Tool("packers", (packers.thickness,)), front.label)
    if shims is None:
        return
    for thickness in sorted({shims.side, shims.right} - {NOTHING}):
        yield Used(Tool("side shims", (thickness,)), front.label)
    if method == "shims" and shims.bottom > 0:
        yield Used(Tool("bottom shims", (shims.bottom,)), front.label)


def _into_the_box(front: Front, fitting: Fitting) -> Iterator[Used]:
    """The holes in the box and in the front, and the screws through both."""
    for diameter in sorted({hole.diameter for hole in fitting.holes}):
        yield Used(Tool("bit", (diameter,)), front.label, "box")
        yield Used(Tool("stop", (diameter, fitting.drill_stop)), front.label, "box")
    if fitting.screw is None:
        return
    if fitting.pilot is not None:
        diameter, depth = fitting.pilot.diameter, fitting.pilot.depth
        yield Used(Tool("bit", (diameter,)), front.label, "pilot")
        yield Used(Tool("stop", (diameter, depth)), front.label, "pilot")
    yield Used(Tool("mounting screw", (fitting.screw.length,)), front.label)


def _cups(front: Front) -> Iterator[Used]:
    """New hinge cups; a door maker bores what is bought."""
    hinge = hinge_to_bore(front)
    if hinge is None or not front.hinges:
        return
    yield Used(Tool("flat bit", (hinge.cup_diameter,)), front.label, "cup")
    yield Used(Tool("flat stop", (hinge.cup_diameter, hinge.cup_depth)), front.label, "cup")


def _fixed(front: Front) -> Iterator[Used]:
    screws = front.fixed_by
    if screws is not None and screws.count and screws.length is not None:
        yield Used(Tool("mounting screw", (screws.length,)), front.label)


def _knob(front: Front, fitting: Fitting | None, kitchen: Kitchen) -> Iterator[Used]:
    """The knob's hole, where it has none yet, the recess for its screw's head, the screw."""
    if not front.handles:
        return
    screw = fitting.knob_screw if fitting is not None else None
    length = front.knob_screw if screw is None else screw.length
    if not has_own_hole(front, kitchen):
        yield Used(Tool("bit", (kitchen.practice.knob_hole,)), front.label, "knob")
    if screw is not None and screw.recess is not None:
        width, depth = screw.recess.width, screw.recess.depth
        yield Used(Tool("flat bit", (width,)), front.label, "recess")
        yield Used(Tool("flat stop", (width, depth)), front.label, "recess")
    if length is not None:
        yield Used(Tool("knob screw", (length,), front.handles[0].thread), front.label)

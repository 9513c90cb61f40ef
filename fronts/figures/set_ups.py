"""What is taken along for the whole kitchen, and the order of its cabinets, in words."""

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass

from fronts.figures.sizes import size
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.merged_jigs import JigPlan
from fronts.rules.order_of_cabinets import Order, Step
from fronts.rules.results import Schedule
from fronts.rules.set_ups import Tool, ToolKind, Use, Used

_WORDS: Mapping[ToolKind, str] = {
    "jig": "jig", "packers": "packers", "side shims": "side shims",
    "bottom shims": "bottom shims", "mounting screw": "screws", "knob screw": "knob screws",
}  # fmt: skip
BORES: Mapping[Use, str] = {
    "box": "box front, the front behind it",
    "pilot": "pilot in the front, for its screws",
    "knob": "for knobs and pulls, right through",
    "recess": "recess in the box, for a knob screw’s head",
    "cup": "hinge cups",
}
"""What a bit is for, in working order."""
_BIT_OF: Mapping[ToolKind, ToolKind] = {"stop": "bit", "flat stop": "flat bit"}
_SUPPORTS: tuple[ToolKind, ...] = ("jig", "packers", "side shims", "bottom shims")
PAIR = 2
"""Packers under a box, or shims under a front: one at each end."""


@dataclass(frozen=True, slots=True)
class Sits:
    """A front that a jig serves; `off` says how far it sits from where it is planned."""

    front: str
    off: str


@dataclass(frozen=True, slots=True)
class Support:
    """Jigs, packers or shims to take along: how many, of which size, for which fronts."""

    what: str
    count: int
    size: str
    fronts: tuple[Sits, ...]


@dataclass(frozen=True, slots=True)
class Bore:
    """What a bit bores, at which cabinets; `stop` "" where it goes right through."""

    what: str
    stop: str
    cabinets: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Bit:
    """A bit, and all that it bores."""

    diameter: str
    bores: tuple[Bore, ...]


@dataclass(frozen=True, slots=True)
class StepRow:
    """A step of the order: its cabinets by their walls, what is set up for it, what stays."""

    number: int
    walls: tuple[tuple[str, tuple[str, ...]], ...]
    new: tuple[str, ...]
    stays: tuple[str, ...]


def supports(used: Sequence[Used], schedule: Schedule, plan: JigPlan) -> list[Support]:
    """All jigs, packers and shims; of shims as many as the front that takes most of them."""
    unit = schedule.job.unit
    beside = {shim.thickness: shim.side for shim in schedule.shims}
    fronts: dict[Tool, list[str]] = {}
    for each in used:
        if each.tool.kind in _SUPPORTS:
            fronts.setdefault(each.tool, []).append(each.front)
    found = []
    for tool in sorted(fronts, key=lambda tool: tool.rank):
        pair = beside[tool.sizes[0]] if tool.kind == "side shims" else PAIR
        found.append(
            Support(
                what=_WORDS[tool.kind],
                count=1 if tool.kind == "jig" else pair,
                size=size(unit, *tool.sizes),
                fronts=tuple(Sits(front, off_by(plan, front, unit)) for front in fronts[tool]),
            )
        )
    return found


def off_by(plan: JigPlan, front: str, unit: str) -> str:
    """`sits 1/64 higher`; "" where the front sits as planned."""
    shift = plan.shifts.get(front)
    if not shift:
        return ""
    return f"sits {show(abs(shift), unit)} {'higher' if shift > 0 else 'lower'}"


def spared_jigs(plan: JigPlan, unit: str) -> list[str]:
    """What need not be made, thickness × length."""
    return [
        f"packers {show(thick, unit)}" if length is None else size(unit, thick, length)
        for thick, length in plan.spared
    ]


def bits(used: Sequence[Used], schedule: Schedule) -> list[Bit]:
    """Every bit with what it bores, in the order in which they are used at a front."""
    cabinet_of = {front.label: front.cabinet for front in schedule.fronts}
    stopped = {(each.front, each.use) for each in used if each.tool.kind in _BIT_OF}
    found: dict[tuple[ToolKind, Mm], dict[tuple[Use, Tool], dict[str, None]]] = {}
    for each in used:
        kind, through = each.tool.kind, (each.front, each.use) not in stopped
        if each.use and (kind in _BIT_OF or through):
            of_bit = found.setdefault((_BIT_OF.get(kind, kind), each.tool.sizes[0]), {})
            of_bit.setdefault((each.use, each.tool), {})[cabinet_of[each.front]] = None
    made = [_bit(bores, schedule.job.unit) for bores in found.values()]
    return [bit for _, bit in sorted(made, key=lambda one: one[0])]


def _bit(
    bores: Mapping[tuple[Use, Tool], Mapping[str, None]], unit: str
) -> tuple[tuple[int, Mm], Bit]:
    """The bit, and what it is sorted by."""
    order = sorted(bores, key=lambda key: (list(BORES).index(key[0]), key[1].rank))
    (first, tool), *_ = order
    said = [
        (use, [_bored(length, unit, metric=use == "cup") for length in each.sizes])
        for use, each in order
    ]
    rows = tuple(
        Bore(BORES[use], "".join(deep), tuple(bores[key]))
        for key, (use, (_, *deep)) in zip(order, said, strict=True)
    )
    return (list(BORES).index(first), tool.sizes[0]), Bit(f"⌀ {said[0][1][0]}", rows)


def _bored(length: Mm, unit: str, *, metric: bool) -> str:
    """Hinge cups are metric wherever they are sold."""
    return f"{show(length, 'mm')} mm" if metric else show(length, unit, finest=64)


def step_rows(
    order: Order[Tool], used: Sequence[Used], schedule: Schedule, kitchen: Kitchen
) -> list[StepRow]:
    """The order's steps; in each what is set up anew, then what stays from the step before."""
    cups = frozenset(each.tool for each in used if each.use == "cup")
    return [
        StepRow(
            number,
            tuple(_by_wall(step, kitchen)),
            tuple(_said(step.new, cups, schedule.job.unit)),
            tuple(_said(step.tools - step.new, cups, schedule.job.unit)),
        )
        for number, step in enumerate(order.steps, 1)
    ]


def _by_wall(step: Step[Tool], kitchen: Kitchen) -> Iterator[tuple[str, tuple[str, ...]]]:
    walls: dict[str, list[str]] = {}
    for label in step.cabinets:
        walls.setdefault(kitchen.cabinet(label).wall, []).append(label)
    yield from ((wall, tuple(labels)) for wall, labels in walls.items())


def _said(tools: Collection[Tool], cups: Collection[Tool], unit: str) -> Iterator[str]:
    """Each tool in words; a bit that is named with its stop is not named by itself."""
    with_stop = {(_BIT_OF[tool.kind], tool.sizes[0]) for tool in tools if tool.kind in _BIT_OF}
    for tool in sorted(tools, key=lambda tool: tool.rank):
        if (tool.kind, tool.sizes[0]) not in with_stop:
            yield _tool(tool, unit, metric=tool in cups)


def _tool(tool: Tool, unit: str, *, metric: bool) -> str:
    said = [_bored(length, unit, metric=metric) for length in tool.sizes]
    match tool.kind:
        case "stop" | "flat stop":
            return f"⌀ {said[0]} stop {said[1]}"
        case "bit" | "flat bit":
            return f"⌀ {said[0]}"
        case "knob screw":
            return f"{_WORDS[tool.kind]} {tool.thread} × {said[0]}"
        case "jig":
            return f"jig {size(unit, *tool.sizes)}"
        case _:
            return f"{_WORDS[tool.kind]} {said[0]}"

"""The knob or pull of a front: which item, its screw holes, and what its screws go through.

A pull has two holes, so far apart as its item says, one over the other on what opens like a
door and side by side on a drawer front, unless the item says otherwise.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeAlias

from fronts.rules.face import Face, Through
from fronts.rules.item_kinds import HandleWay
from fronts.rules.items import HandleItem
from fronts.rules.kinds import FRONT_KINDS, FrontKind
from fronts.rules.kitchen import Kitchen, Point
from fronts.rules.lengths import NOTHING, Mm

HalfSpan: TypeAlias = tuple[Mm, Mm]
"""How far a handle's holes lie from its middle: across, and up."""
_WEAKEST_FIRST: tuple[Through, ...] = ("panel", "rail", "stile", "slab")


@dataclass(frozen=True, slots=True)
class Handle:
    """A knob or pull in its place; x, y of its middle, from the front's lower left corner.

    `screws` is how many it takes; `through` the thinnest wood that one of them goes through.
    """

    code: str | None
    name: str
    thread: str
    x: Mm
    y: Mm
    holes: tuple[Point, ...]
    through: Through

    @property
    def screws(self) -> int:
        return len(self.holes)


def handle_of(code: str | None, kitchen: Kitchen) -> HandleItem | None:
    """The handle of this code, else the shop's first; None where it has entered none."""
    items = kitchen.hardware.handles
    chosen = (item for item in items if item.code == code)
    return next(chosen, items[0] if items else None)


def handles_at(
    middles: Sequence[Point], item: HandleItem | None, kind: FrontKind, face: Face, thread: str
) -> tuple[Handle, ...]:
    """The handles whose middles are these; `thread` holds where the item has none of its own."""
    across, up = half_span(item, kind)
    handles = []
    for middle in middles:
        ends = Point(middle.x - across, middle.y - up), Point(middle.x + across, middle.y + up)
        holes = ends if across or up else (middle,)
        through = min((face.through(hole.x, hole.y) for hole in holes), key=_WEAKEST_FIRST.index)
        handles.append(
            Handle(
                code=item.code if item else None,
                name=item.name if item else "",
                thread=(item.thread if item else None) or thread,
                x=middle.x,
                y=middle.y,
                holes=holes,
                through=through,
            )
        )
    return tuple(handles)


def half_span(item: HandleItem | None, kind: FrontKind) -> HalfSpan:
    """That of an item on a front of this kind; nothing for a knob."""
    half = NOTHING if item is None or item.centres is None else item.centres / 2
    return (half, NOTHING) if _way(item, kind) == "across" else (NOTHING, half)


def _way(item: HandleItem | None, kind: FrontKind) -> HandleWay:
    if item is None:
        return "across"
    return item.door if FRONT_KINDS[kind].upright else item.drawer


def thinnest(handles: Sequence[Handle]) -> Through:
    """The thinnest wood that any of their screws goes through."""
    return min((handle.through for handle in handles), key=_WEAKEST_FIRST.index)

"""Fronts that an appliance keeps from opening: one deeper than the face beside it.

What stands out past a front's outside is in the way of a door that swings toward it, and of
what is pulled out past it. A handle that lies farther along its door than the appliance
stands out swings clear of it.
"""

from collections.abc import Iterator, Sequence

from fronts.rules.findings import FindingWriter
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.opening_past import HungFront, NearSide, blocked
from fronts.rules.practice import Practice
from fronts.rules.results import Finding
from fronts.rules.runs import Placed
from fronts.rules.thing_kinds import THING_KINDS
from fronts.rules.wall_facts import Thing


def appliance_findings(
    fronts: Sequence[HungFront],
    standing: Sequence[Placed],
    practice: Practice,
    writer: FindingWriter,
) -> Iterator[Finding]:
    """Each front and each appliance that is in its way."""
    appliances = [
        (placed, placed.what.depth)
        for placed in standing
        if isinstance(placed.what, Thing) and THING_KINDS[placed.what.kind].stands_out
    ]
    for hung in fronts:
        front = hung.front
        for placed, depth in appliances:
            if depth is None or placed.what.wall != front.wall or depth <= hung.face:
                continue
            if placed.beside(front.y, front.top, hung.run):
                yield from _blocked_by(hung, placed, depth, practice, writer)


def _blocked_by(
    hung: HungFront, placed: Placed, depth: Mm, practice: Practice, writer: FindingWriter
) -> Iterator[Finding]:
    cabinet = hung.laid.cabinet
    side: NearSide
    if placed.x >= cabinet.left + cabinet.width:
        side, free = "right", placed.x - hung.front.right
    elif placed.right <= cabinet.left:
        side, free = "left", hung.front.x - placed.right
    else:
        return
    handle = hung.projection if _handle_reach(hung) <= depth - hung.face else NOTHING
    found = blocked(hung, side, free, handle, practice)
    if found:
        yield writer.appliance_blocks(found.level, hung.front.label, placed.what.label, found.short)


def _handle_reach(hung: HungFront) -> Mm:
    """From the hinges to the nearest handle on the door."""
    front = hung.front
    return min(
        (knob.x if front.hinged == "left" else front.width - knob.x for knob in front.knobs),
        default=front.width,
    )

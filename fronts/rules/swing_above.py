"""What stands in the way of a front that is hinged at its top and opens upwards.

Open, it stands above its top edge by up to its height, or by as much of that as its lift says
(common practice, no source). Another front in its plane there, or anything that comes as far
out, is met. How high the ceiling is nobody has measured: it is told how high the front swings.
"""

from collections.abc import Iterator, Sequence

from fronts.rules.findings import FindingWriter
from fronts.rules.items import LiftItem
from fronts.rules.kinds import FRONT_KINDS
from fronts.rules.lengths import Mm
from fronts.rules.lifts import choose_lift, moment
from fronts.rules.materials import PERCENT
from fronts.rules.opening_past import HungFront
from fronts.rules.rect import Rect
from fronts.rules.results import Finding, Front
from fronts.rules.runs import Placed, is_solid


def swings_up(front: Front) -> bool:
    """Whether it opens upwards."""
    return FRONT_KINDS[front.kind].swings and front.hinged == "top"


def swing_top(front: Front, lifts: Sequence[LiftItem]) -> Mm:
    """How high above the floor it comes when it opens."""
    lift = choose_lift(moment(front.weight_kg, front.height), lifts)
    share = PERCENT if lift is None or lift.rise is None else lift.rise
    return front.top + front.height * share / PERCENT


def swing_findings(
    hung: HungFront,
    fronts: Sequence[HungFront],
    standing: Sequence[Placed],
    lifts: Sequence[LiftItem],
    writer: FindingWriter,
) -> Iterator[Finding]:
    """Everything within its swing, by name, and how high that goes."""
    front = hung.front
    if not swings_up(front):
        return
    top = swing_top(front, lifts)
    swing = Rect(front.x, front.top, front.width, top - front.top)
    in_plane = [other.front for other in fronts if _front_is_met(hung, other, swing)]
    named = {other.cabinet for other in in_plane}
    met = [other.label for other in in_plane]
    met += [
        placed.what.label
        for placed in standing
        if placed.what.label not in named and _is_met(hung, placed, swing)
    ]
    if met:
        yield writer.blocked_above(front.label, met, top - front.top)
    yield writer.room_above(front.label, top)


def _front_is_met(hung: HungFront, other: HungFront, swing: Rect) -> bool:
    """Another front of its wall, no farther back than its own cabinet's face."""
    front = other.front
    if other is hung or front.wall != hung.front.wall or other.face < hung.laid.cabinet.depth:
        return False
    return _overlap(swing, Rect(front.x, front.y, front.width, front.height))


def _is_met(hung: HungFront, placed: Placed, swing: Rect) -> bool:
    """A cabinet or thing that comes out farther than its own cabinet's face, or maybe does."""
    what, depth = placed.what, placed.what.depth
    if what is hung.laid.cabinet or what.wall != hung.front.wall or not is_solid(what):
        return False
    if placed.y is None or what.height is None:
        return False
    if depth is not None and depth <= hung.laid.cabinet.depth:
        return False
    return _overlap(swing, Rect(placed.x, placed.y, what.width, what.height))


def _overlap(one: Rect, other: Rect) -> bool:
    level = one.x < other.right and other.x < one.right
    return level and one.y < other.top and other.y < one.top

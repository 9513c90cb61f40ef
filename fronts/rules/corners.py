"""Inside corners: what opens across the fronts of the next wall, in plan.

    wall A ---------------+ corner
              [A] front   |
               v opens    |          [B] stands out so far from wall B:
                      [B] |          cabinet's depth + front's thickness + handle
                          | wall B

One wall's right end is the next one's left end, as one stands in the room. At the corner's
angle a front that is pulled out by t lies, from the other wall, s·sin - t·cos where it lies s
from the corner along its own (at 90 degrees s, exactly).
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import cos, radians, sin

from fronts.rules.findings import FindingWriter
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import NOTHING, Mm, ceiling_to
from fronts.rules.opening_past import Blocked, HungFront, NearSide, blocked
from fronts.rules.results import Finding, Front
from fronts.rules.runs import Placed, is_solid
from fronts.rules.thing_kinds import Run
from fronts.rules.wall_facts import SQUARE, Wall

STRAIGHT = 2 * SQUARE
_PLACES = 10**9


@dataclass(frozen=True, slots=True)
class Corner:
    """An inside corner: the right end of one wall, which is as long as is known, at another."""

    before: str
    after: str
    length: Mm | None
    angle: Fraction


@dataclass(frozen=True, slots=True)
class _Obstacle:
    """What stands out from the other wall: so far, and from `near` to `far` of the corner.

    None: how far from the corner is not known, as that wall has no length.
    """

    label: str
    out: Mm
    near: Mm | None
    far: Mm | None
    beside: Callable[[Mm, Mm, Run], bool]


def inside_corners(walls: Sequence[Wall]) -> list[Corner]:
    """Each inside corner once, whichever of its walls tells of it."""
    lengths = {wall.label: wall.length for wall in walls}
    met: dict[tuple[str, str], Corner] = {}
    for wall in walls:
        for end, at_right in ((wall.right, True), (wall.left, False)):
            if end is None or end.corner != "inside" or end.wall is None:
                continue
            before, after = (wall.label, end.wall) if at_right else (end.wall, wall.label)
            if before != after and end.angle < STRAIGHT:
                corner = Corner(before, after, lengths.get(before), end.angle)
                met.setdefault((before, after), corner)
    return list(met.values())


def corner_findings(
    fronts: Sequence[HungFront],
    standing: Sequence[Placed],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> Iterator[Finding]:
    """Each front that does not open across the other wall of its corner, once a corner."""
    for corner in inside_corners(kitchen.walls):
        before = [hung for hung in fronts if hung.front.wall == corner.before]
        after = [hung for hung in fronts if hung.front.wall == corner.after]
        if corner.length is not None:
            in_way = _obstacles(after, standing, corner, "left")
            yield from _across(before, "right", corner, in_way, kitchen, writer)
        in_way = _obstacles(before, standing, corner, "right")
        yield from _across(after, "left", corner, in_way, kitchen, writer)


def _obstacles(
    fronts: Sequence[HungFront], standing: Sequence[Placed], corner: Corner, end: NearSide
) -> list[_Obstacle]:
    """Fronts with their handles; cabinets and things by their depth alone."""
    wall = corner.after if end == "left" else corner.before

    def at(left: Mm, right: Mm) -> tuple[Mm | None, Mm | None]:
        if end == "left":
            return left, right
        if corner.length is None:
            return None, None
        return corner.length - right, corner.length - left

    in_way = [
        _Obstacle(
            hung.front.label, hung.face + hung.projection,
            *at(hung.front.x, hung.front.right), _at_heights(hung.front),
        )
        for hung in fronts
    ]  # fmt: skip
    for placed in standing:
        what = placed.what
        if what.wall == wall and what.depth is not None and is_solid(what):
            span = at(placed.x, placed.right)
            in_way.append(_Obstacle(what.label, what.depth, *span, placed.beside))
    return in_way


def _at_heights(front: Front) -> Callable[[Mm, Mm, Run], bool]:
    return lambda bottom, top, _: front.y < top and bottom < front.top


def _across(
    fronts: Sequence[HungFront],
    side: NearSide,
    corner: Corner,
    in_way: Sequence[_Obstacle],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> Iterator[Finding]:
    for hung in fronts:
        worst: tuple[Blocked, str] | None = None
        for obstacle in in_way:
            if not _meets(hung, side, corner, obstacle):
                continue
            free = _from_corner(hung, side, corner) - _needed(hung, corner, obstacle.out)
            found = blocked(hung, side, free, hung.projection, kitchen.practice)
            if found and (worst is None or found.short > worst[0].short):
                worst = found, obstacle.label
        if worst:
            found, label = worst
            filler = ceiling_to(found.short, kitchen.job.step)
            yield writer.corner_blocks(
                found.level, hung.front.label, label, filler, kitchen.practice.corner_filler
            )


def _from_corner(hung: HungFront, side: NearSide, corner: Corner) -> Mm:
    if side == "left":
        return hung.front.x
    return (corner.length or NOTHING) - hung.front.right


def _needed(hung: HungFront, corner: Corner, out: Mm) -> Mm:
    """How far from the corner, along its wall, the front is clear of what stands out so far."""
    across, along = _sine_cosine(corner.angle)
    reach = hung.laid.cabinet.depth + (_travel(hung) if along > 0 else 0)
    return (out + reach * along) / across


def _meets(hung: HungFront, side: NearSide, corner: Corner, obstacle: _Obstacle) -> bool:
    """Whether the front, as it opens, comes past the obstacle, and at its height."""
    front = hung.front
    if not obstacle.beside(front.y, front.top, hung.run):
        return False
    if obstacle.near is None or obstacle.far is None:
        return True
    across, along = _sine_cosine(corner.angle)
    start = hung.laid.cabinet.depth * across + _from_corner(hung, side, corner) * along
    return start < obstacle.far and obstacle.near < start + _travel(hung) * across


def _travel(hung: HungFront) -> Mm:
    """How far it comes out of its cabinet's face: a door its width, what is pulled its depth."""
    return hung.front.width if hung.swings_sideways else hung.laid.cabinet.depth


def _sine_cosine(angle: Fraction) -> tuple[Fraction, Fraction]:
    """Exact at 90 degrees; else to nine places, far finer than anything is measured."""
    if angle == SQUARE:
        return Fraction(1), Fraction(0)
    turned = radians(angle)
    return Fraction(round(sin(turned) * _PLACES), _PLACES), Fraction(
        round(cos(turned) * _PLACES), _PLACES
    )

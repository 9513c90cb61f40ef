"""How far a front may be set higher or lower than planned without spoiling what is round it.

It keeps its least gap to what is above and below it, laps where it laps, stays within its
cabinet, and at most the half of what the seasons leave it is taken. Of what a gap between two
fronts on jigs has to spare each may take half, so that both may move whichever way. What makes
one line with its neighbours moves with them or not at all.
"""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from fronts.rules.cabinet_edges import to_cabinet_edges
from fronts.rules.kinds import FRONT_KINDS, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import LONGEST, NOTHING, Mm
from fronts.rules.neighbours import Placed, facing
from fronts.rules.rect import Rect
from fronts.rules.results import Front, Schedule
from fronts.rules.standard_levels import standard_at
from fronts.rules.tied import together

BESIDE: tuple[Side, ...] = ("left", "right")


@dataclass(frozen=True, slots=True)
class Room:
    """How far down and how far up, each at least nothing."""

    down: Mm
    up: Mm

    def within(self, other: "Room") -> "Room":
        """What both leave."""
        return Room(min(self.down, other.down), min(self.up, other.up))


def setting_rooms(
    schedule: Schedule, kitchen: Kitchen, reach: Mapping[str, Room]
) -> dict[str, Room]:
    """The room of each front of `reach`, which says how far the front could be set at all."""
    least = {front.label: standard_at(front, kitchen).least_gap for front in schedule.fronts}
    rooms = {}
    for front in schedule.fronts:
        if front.label in reach:
            keeps = least[front.label]
            room = reach[front.label].within(_in_its_opening(front, keeps))
            room = room.within(_in_its_cabinet(front, kitchen, keeps))
            rooms[front.label] = room.within(_by_the_seasons(front))
    for low, high in _over_another(schedule.fronts, least):
        spare = _spare(low, high, max(least[low.label], least[high.label]))
        share = spare / 2 if low.label in reach and high.label in reach else spare
        if low.label in reach:
            rooms[low.label] = rooms[low.label].within(Room(rooms[low.label].down, share))
        if high.label in reach:
            rooms[high.label] = rooms[high.label].within(Room(share, rooms[high.label].up))
    return rooms


def lines(schedule: Schedule, kitchen: Kitchen, most: Mm) -> list[frozenset[str]]:
    """All fronts by the lines that they make with those beside them; no two move more than `most`.

    Fronts are in one line whose tops, bottoms or knobs are level, or would come into sight as
    nearly so.
    """
    fronts = schedule.fronts
    ties = [
        (fronts[index].label, fronts[other].label)
        for index, sides in enumerate(facing([_placed(front) for front in fronts]))
        for other in {each for side in BESIDE if side in sides for each in sides[side].fronts}
        if _in_line(fronts[index], fronts[other], kitchen, 2 * most)
    ]
    return [frozenset(group) for group in together((front.label for front in fronts), ties)]


def _in_its_opening(front: Front, least: Mm) -> Room:
    """An inset edge keeps its least gap; one that laps goes on to lap.

    An opening that tapers is as low as it was measured: at its other end there is more room.
    """

    def room(side: Side) -> Room:
        overlay = front.edges[side].overlay
        if overlay is None:
            return _ANY
        if overlay >= 0:
            return _away(side, overlay)
        return _towards(side, max(-overlay - least, NOTHING))

    return room("top").within(room("bottom"))


def _in_its_cabinet(front: Front, kitchen: Kitchen, least: Mm) -> Room:
    """What shows of the cabinet above and below is a gap to what stands there."""
    outline = Rect(front.x, front.y, front.width, front.height)
    shows = to_cabinet_edges(outline, kitchen.cabinet(front.cabinet))
    top, bottom = (max(shows[side] - least, NOTHING) for side in ("top", "bottom"))
    return Room(bottom, top)


def _over_another(
    fronts: Sequence[Front], least: Mapping[str, Mm]
) -> Iterator[tuple[Front, Front]]:
    """Pairs of which one is over the other, or nearly so; the lower one first."""
    by_plane: dict[tuple[str, str], list[Front]] = defaultdict(list)
    for front in sorted(fronts, key=lambda front: front.x):
        by_plane[front.wall, front.plane].append(front)
    for members in by_plane.values():
        for index, front in enumerate(members):
            for other in members[index + 1 :]:
                wanted = max(least[front.label], least[other.label])
                if other.x < front.right + wanted:
                    low, high = sorted((front, other), key=lambda each: each.y + each.top)
                    yield low, high


def _spare(low: Front, high: Front, least: Mm) -> Mm:
    spare = high.y - low.top - least
    moves = [each.movement for each in (low, high) if each.movement is not None]
    left = [move.least_gap / 2 for move in moves if move.across == "height"]
    return max(min(spare, *left) if left else spare, NOTHING)


def _by_the_seasons(front: Front) -> Room:
    move = front.movement
    if move is None or move.across != "height":
        return _ANY
    left = max(move.least_gap / 2, NOTHING)
    return Room(left, left)


def _in_line(one: Front, other: Front, kitchen: Kitchen, most: Mm) -> bool:
    """Whether lines of both meet, or miss by so little that moving by `most` could be seen."""
    practice = kitchen.practice
    ends = (abs(one.top - other.top), abs(one.y - other.y))
    if any(miss < practice.lines_seen + most for miss in ends):
        return True
    upright = {FRONT_KINDS[front.kind].upright for front in (one, other)}
    if len(upright) > 1 or not (one.handles and other.handles):
        return False
    miss = abs(one.y + one.handles[0].y - other.y - other.handles[0].y)
    return miss == 0 or abs(miss - practice.knobs_line) <= most


def _placed(front: Front) -> Placed:
    return Placed((front.wall, front.plane), front.x, front.y, front.right, front.top)


_ANY = Room(LONGEST, LONGEST)


def _towards(side: Side, room: Mm) -> Room:
    """Room towards a side, any away from it."""
    return Room(LONGEST, room) if side == "top" else Room(room, LONGEST)


def _away(side: Side, room: Mm) -> Room:
    """Room away from a side, any towards it."""
    return Room(room, LONGEST) if side == "top" else Room(LONGEST, room)

"""Walls that are worked out together, since what is on one can change what comes of the other.

They meet in a corner, fronts of theirs are to read as one piece, or a thing on one follows
something on the other. All other walls are worked out each by itself.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from fronts.rules.corners import inside_corners
from fronts.rules.kitchen import Cabinet, DoorOnHand, FrontFacts, Kitchen
from fronts.rules.runs import standing_in
from fronts.rules.tied import together

Picked = Mapping[str, Mapping[str, DoorOnHand | None]]
"""By wall, the door picked for each front that may have any; None: none serves."""


@dataclass(frozen=True, slots=True)
class WallGroup:
    """Some walls of a kitchen with all that they depend on: equal ones come out alike.

    `kitchen` has these walls alone, and the doors on hand that fronts on them name.
    """

    kitchen: Kitchen
    picked: Mapping[str, DoorOnHand | None]


def wall_groups(kitchen: Kitchen, picked: Picked) -> list[WallGroup]:
    """Every wall that anything stands on, in one group, in the order of the first of each."""
    doors = {door.label: door for door in kitchen.doors_on_hand}
    walls = dict.fromkeys(what.wall for what in standing_in(kitchen))
    return [
        _group(kitchen, frozenset(group), doors, picked)
        for group in together(walls, _ties(kitchen))
    ]


def decided_in(cabinets: Iterable[Cabinet]) -> Iterator[FrontFacts]:
    """What is decided about every front of these cabinets."""
    for cabinet in cabinets:
        for opening in cabinet.openings:
            yield from opening.fronts


def _group(
    kitchen: Kitchen, walls: frozenset[str], doors: Mapping[str, DoorOnHand], picked: Picked
) -> WallGroup:
    cabinets = tuple(one for one in kitchen.cabinets if one.wall in walls)
    named = dict.fromkeys(front.door_on_hand for front in decided_in(cabinets))
    alone = replace(
        kitchen,
        cabinets=cabinets,
        others=tuple(one for one in kitchen.others if one.wall in walls),
        walls=tuple(one for one in kitchen.walls if one.label in walls),
        doors_on_hand=tuple(doors[label] for label in named if label and label in doors),
    )
    mine = {label: door for wall in walls for label, door in picked.get(wall, {}).items()}
    return WallGroup(alone, mine)


def _ties(kitchen: Kitchen) -> Iterator[Sequence[str]]:
    for corner in inside_corners(kitchen.walls):
        yield corner.before, corner.after
    sets: dict[str, list[str]] = defaultdict(list)
    for cabinet in kitchen.cabinets:
        for front in decided_in([cabinet]):
            if front.grain_set:
                sets[front.grain_set].append(cabinet.wall)
    yield from sets.values()
    wall_of = {what.label: what.wall for what in standing_in(kitchen)}
    for what in kitchen.others:
        if what.after and what.after in wall_of:
            yield what.wall, wall_of[what.after]

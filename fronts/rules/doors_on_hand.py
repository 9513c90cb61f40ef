"""A door on hand as a front: does it serve, what is trimmed, what shows.

A door that is used as it is laps the opening by (door - opening) / 2 a side; below zero it
is inset with that gap. A door that is chosen must be at least as large as the front that the
rules ask for and is trimmed to it (`door_trim`).
"""

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from math import lcm

from fronts.rules.assignment import assign
from fronts.rules.kinds import FRONT_BUILDS, Hinged
from fronts.rules.kitchen import DoorOnHand, KnobHole, Point
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.old_bores import at_hinge_side
from fronts.rules.practice import Practice


def surplus(
    door: DoorOnHand, width: Mm, height: Mm, trim_limit: Mm, least_stile: Mm, practice: Practice
) -> Mm | None:
    """What must be trimmed off a door in all to make a front of this size; None: it can't serve."""
    over, up = door.width - width, door.height - height
    if not (0 <= over <= trim_limit and 0 <= up <= trim_limit):
        return None
    if FRONT_BUILDS[door.build].framed:
        stile, rail = door.stile or practice.stile, door.rail or practice.rail
        if (over and stile - over / 2 < least_stile) or (up and rail - up / 2 < least_stile):
            return None
    return over + up


def choose(
    wanted: Sequence[tuple[Mm, Mm, Mm, Mm]], doors: Sequence[DoorOnHand], practice: Practice
) -> dict[int, int]:
    """Which door serves which wanted front: fewest left without, then least total surplus.

    `wanted` holds (width, height, trim_limit, least_stile).
    """
    order = sorted(range(len(doors)), key=lambda index: doors[index].width)
    widths = [doors[index].width for index in order]
    surpluses: dict[tuple[Mm, ...], dict[int, Mm]] = {}
    for front in dict.fromkeys(wanted):
        width, _, trim_limit, _ = front
        near = order[bisect_left(widths, width) : bisect_right(widths, width + trim_limit)]
        by_door = {index: surplus(doors[index], *front, practice) for index in near}
        surpluses[front] = {index: over for index, over in by_door.items() if over is not None}
    scale = lcm(*(over.denominator for row in surpluses.values() for over in row.values()))
    costs = {
        front: {door: int(over * scale) for door, over in row.items()}
        for front, row in surpluses.items()
    }
    return assign([costs[front] for front in wanted])


def shows(door: DoorOnHand, hinged: Hinged | None) -> list[str]:
    """What of a trimmed door's past is in the wrong place for a front hinged so (None: not)."""
    seen = []
    wrong = [
        bore for bore in door.hinge_bores if hinged is None or not at_hinge_side(bore, door, hinged)
    ]
    if wrong:
        seen.append(f"{len(wrong)} old hinge bore{'s' if len(wrong) > 1 else ''}")
    if door.knob_hole and hinged and at_hinge_side(_place(door.knob_hole), door, hinged):
        seen.append("the old knob hole, on the hinge side")
    return seen


def knob_off_centre(door: DoorOnHand) -> Mm:
    """How far a trimmed door's knob hole is off its upright middle; nothing where it has none."""
    return abs(door.knob_hole.x - door.width / 2) if door.knob_hole else NOTHING


def _place(hole: KnobHole) -> Point:
    return Point(hole.x, hole.y)


def brings_knob_hole(label: str | None, doors: Sequence[DoorOnHand]) -> bool:
    """Whether the door of this label has its knob's hole already."""
    return any(door.label == label and door.knob_hole is not None for door in doors)

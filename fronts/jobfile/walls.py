"""What must agree along walls in a job file: what things follow, and where walls meet."""

from fronts.jobfile.reader import Record
from fronts.rules.kitchen import Kitchen
from fronts.rules.limits import MOST_THINGS, MOST_WALLS
from fronts.rules.runs import followed_in_a_ring

_ENDS = ("left", "right")


def tell_wall_faults(root: Record, kitchen: Kitchen) -> None:
    """Tell each fault at its place: labels of things, what they follow, the walls at corners."""
    _tell_thing_faults(root, kitchen)
    known = {*(wall.label for wall in kitchen.walls), *kitchen.wall_names}
    for place, wall in zip(root.entries("walls", MOST_WALLS), kitchen.walls, strict=False):
        for end in _ENDS:
            found = getattr(wall, end)
            if found is not None and found.wall is not None and found.wall not in known:
                place.under(end, None).fault("a wall of this kitchen", f'"{found.wall}"')


def _tell_thing_faults(root: Record, kitchen: Kitchen) -> None:
    cabinets = {cabinet.label: cabinet.wall for cabinet in kitchen.cabinets}
    walls = cabinets | {thing.label: thing.wall for thing in kitchen.others}
    ring = followed_in_a_ring(kitchen)
    for place, thing in zip(root.entries("others", MOST_THINGS), kitchen.others, strict=False):
        if thing.label in cabinets:
            place.under("label", thing.label).fault("a label that no cabinet has")
        after = place.under("after", thing.after)
        if thing.after is None:
            continue
        if thing.after not in walls:
            after.fault("the label of a cabinet or of another entry")
        elif walls[thing.after] != thing.wall:
            after.fault(f"something on wall {thing.wall}")
        elif thing.label in ring:
            after.fault("something that does not follow this one in turn")

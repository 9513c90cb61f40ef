"""Which doors on hand go to the fronts that may have any: chosen over the whole kitchen."""

from collections import defaultdict

from fronts.rules.doors_on_hand import choose
from fronts.rules.kitchen import CHOOSE, DoorOnHand, Kitchen
from fronts.rules.laying import lay_cabinet
from fronts.rules.wall_groups import Picked, decided_in


def picked_doors(kitchen: Kitchen) -> Picked:
    """For every front that may have any door, the one picked for it; named doors are taken."""
    decided = list(decided_in(kitchen.cabinets))
    if not any(front.door_on_hand == CHOOSE for front in decided):
        return {}
    doors = {door.label: door for door in kitchen.doors_on_hand}
    wanting = [
        front
        for cabinet in kitchen.cabinets
        if any(front.door_on_hand == CHOOSE for front in decided_in([cabinet]))
        for opening in lay_cabinet(cabinet, kitchen, doors)
        for front in opening.fronts
        if front.decided.door_on_hand == CHOOSE
    ]
    named = {front.door_on_hand for front in decided}
    free = [door for door in kitchen.doors_on_hand if door.label not in named]
    wanted = [
        (front.width, front.height, front.standard.trim_limit, front.standard.least_stile)
        for front in wanting
    ]
    chosen = choose(wanted, free, kitchen.practice)
    picked: dict[str, dict[str, DoorOnHand | None]] = defaultdict(dict)
    for place, front in enumerate(wanting):
        door = free[chosen[place]] if place in chosen else None
        picked[front.cabinet.wall][front.label] = door
    return picked

"""A kitchen and its like, on walls of their own: what a job grows to."""

from dataclasses import replace

from fronts.rules.kitchen import CHOOSE, Cabinet, DoorOnHand, FrontFacts, Kitchen, Opening
from fronts.rules.wall_facts import Thing, Wall, WallEnd


def times_over(kitchen: Kitchen, times: int) -> Kitchen:
    """The kitchen so many times in one job, each with doors on hand of its own."""
    marks = ["", *(f"x{number}" for number in range(2, times + 1))]
    return replace(
        kitchen,
        job=replace(kitchen.job, number=f"{times} TIMES"),
        cabinets=tuple(_cabinet(one, mark) for mark in marks for one in kitchen.cabinets),
        others=tuple(_thing(one, mark) for mark in marks for one in kitchen.others),
        walls=tuple(_wall(one, mark) for mark in marks for one in kitchen.walls),
        doors_on_hand=tuple(_door(one, mark) for mark in marks for one in kitchen.doors_on_hand),
    )


def _cabinet(cabinet: Cabinet, mark: str) -> Cabinet:
    return replace(
        cabinet,
        label=f"{cabinet.label}{mark}",
        wall=f"{cabinet.wall}{mark}",
        openings=tuple(_opening(one, mark) for one in cabinet.openings),
    )


def _opening(opening: Opening, mark: str) -> Opening:
    return replace(opening, fronts=tuple(_front(one, mark) for one in opening.fronts))


def _front(front: FrontFacts, mark: str) -> FrontFacts:
    door, grain_set = front.door_on_hand, front.grain_set
    return replace(
        front,
        door_on_hand=door if door in (None, CHOOSE) else f"{door}{mark}",
        grain_set=grain_set and f"{grain_set}{mark}",
    )


def _thing(thing: Thing, mark: str) -> Thing:
    return replace(
        thing,
        label=f"{thing.label}{mark}",
        wall=f"{thing.wall}{mark}",
        after=thing.after and f"{thing.after}{mark}",
    )


def _wall(wall: Wall, mark: str) -> Wall:
    return replace(
        wall, label=f"{wall.label}{mark}", left=_end(wall.left, mark), right=_end(wall.right, mark)
    )


def _end(end: WallEnd | None, mark: str) -> WallEnd | None:
    return end and replace(end, wall=end.wall and f"{end.wall}{mark}")


def _door(door: DoorOnHand, mark: str) -> DoorOnHand:
    return replace(door, label=f"{door.label}{mark}")

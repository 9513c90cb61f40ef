"""Doors on hand, as a job file gives them."""

from collections.abc import Iterator

from fronts.jobfile.reader import Place, Record
from fronts.jobfile.stated import keys_of, stated
from fronts.rules.kitchen import CHOOSE, DoorOnHand
from fronts.rules.limits import MOST_BORES, MOST_DOORS
from fronts.rules.validity import door_faults, lies_on

_ON_IT = "a place on the door"
_OUTSIDE = "a place outside the door"


def doors(record: Record) -> tuple[DoorOnHand, ...]:
    """The doors of key `doors_on_hand`, each under a label of its own."""
    found: list[DoorOnHand] = []
    labels: set[str] = set()
    for place in record.entries("doors_on_hand", MOST_DOORS):
        entry = Record(place, keys_of(DoorOnHand))
        door = _door(entry)
        if entry.sound("label"):
            if door.label in labels:
                entry.fault("label", "a label that no other door has")
            labels.add(door.label)
        found.append(door)
    return tuple(found)


def _door(record: Record) -> DoorOnHand:
    door = stated(DoorOnHand, record)
    if door.label == CHOOSE:
        record.fault("label", f"a label other than the word {CHOOSE}")
    if record.sound("width", "height"):
        _check_on_door(record, door)
    return door


def _check_on_door(record: Record, door: DoorOnHand) -> None:
    """What is in the door lies on it, and its frame leaves a panel."""
    wrong = door_faults(door)
    if any(path.startswith("knob_hole.") for path in wrong):
        record.fault("knob_hole", _ON_IT, _OUTSIDE)
    for place in _bores_outside(record, door):
        place.fault(_ON_IT, _OUTSIDE)
    for key, size in (("stile", "width"), ("rail", "height")):
        if key in wrong and record.sound(key):
            record.fault(key, f"less than half the door's {size}")


def _bores_outside(record: Record, door: DoorOnHand) -> Iterator[Place]:
    places = record.entries("hinge_bores", MOST_BORES)
    for place, bore in zip(places, door.hinge_bores, strict=False):
        if not lies_on(door, bore):
            yield place

"""What is wrong with a door on hand in a job file, each fault at its place."""

from collections.abc import Iterator

from fronts.jobfile.reader import Place, Record
from fronts.rules.kitchen import CHOOSE, DoorOnHand
from fronts.rules.limits import MOST_BORES
from fronts.rules.validity import door_faults, lies_on

_ON_IT = "a place on the door"
_OUTSIDE = "a place outside the door"


def tell_door_faults(record: Record, door: DoorOnHand) -> None:
    """Its label is no word of ours, what is in it lies on it, and its frame leaves a panel."""
    if door.label == CHOOSE:
        record.fault("label", f"a label other than the word {CHOOSE}")
    if not record.sound("width", "height"):
        return
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

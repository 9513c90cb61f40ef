"""What must agree across a job file: labels, named doors, places.

A front whose overlay nobody gave is no fault of the file: the schedule says so.
"""

from collections.abc import Iterator

from fronts.jobfile.reader import Place, Record
from fronts.rules.kitchen import CHOOSE, Cabinet, DoorOnHand, Opening
from fronts.rules.labels import labels_taken
from fronts.rules.limits import MOST_FRONTS, MOST_FRONTS_IN_ALL
from fronts.rules.past_cabinet import ends_past


class Consistency:
    """Holds each cabinet and opening against what was read before it.

    Only keys without a fault of their own are compared, so that one slip is told once.
    """

    def __init__(self, doors: tuple[DoorOnHand, ...]) -> None:
        self._doors = {each.label for each in doors}
        self._cabinets: set[str] = set()
        self._fronts: set[str] = set()
        self._too_many = False

    def cabinet(self, record: Record, cabinet: Cabinet) -> None:
        record.once("label", cabinet.label, self._cabinets, "a label that no other cabinet has")

    def opening(self, record: Record, opening: Opening, around: Record, cabinet: Cabinet) -> None:
        if record.sound("label", "closed_by", "count") and around.sound("label"):
            self._check_labels(record, opening, cabinet)
        _check_within(record, opening, around, cabinet)
        if record.sound("closed_by"):
            self._check_doors(record, opening)

    def _check_labels(self, record: Record, opening: Opening, cabinet: Cabinet) -> None:
        labels = labels_taken(cabinet.label, opening.label, len(opening.fronts))
        taken = next((label for label in sorted(labels) if label in self._fronts), None)
        if taken is not None:
            record.fault("label", f"a label that no other opening has; “{taken}” is taken")
        self._fronts.update(labels)
        if len(self._fronts) > MOST_FRONTS_IN_ALL and not self._too_many:
            self._too_many = True
            record.fault("label", f"at most {MOST_FRONTS_IN_ALL:,} fronts in a kitchen", "more")

    def _check_doors(self, record: Record, opening: Opening) -> None:
        for at in _doors_named(record):
            if at.value == CHOOSE:
                continue
            if at.value not in self._doors:
                at.fault(f"the label of a door on hand, or {CHOOSE}")
            elif not opening.closing.single and opening.fronts:
                at.fault(f"{CHOOSE}: a door that is named serves a single front")


def _doors_named(record: Record) -> Iterator[Place]:
    """Where an opening names doors on hand: for all its fronts, or in an entry for one."""
    for place in (record.at("front"), *record.entries("fronts", MOST_FRONTS)):
        named = place.value.get("door_on_hand") if isinstance(place.value, dict) else None
        if isinstance(named, str):
            yield place.under("door_on_hand", named)


def _check_within(record: Record, opening: Opening, around: Record, cabinet: Cabinet) -> None:
    past = ends_past(opening, cabinet)
    for start, size in (("x", "width"), ("y", "height")):
        if size in past and record.sound(start, size, "measured") and around.sound(size):
            record.fault(size, f"an opening that ends within its cabinet's {size}")

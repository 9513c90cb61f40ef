"""What must agree across a job file: labels, named doors, places, overlays."""

from fronts.jobfile.place import Record
from fronts.rules.kitchen import CHOOSE, Cabinet, DoorOnHand, Opening, Standard

MOST_FRONTS_IN_ALL = 20_000


class Agreement:
    """Holds each cabinet and opening against what was read before it.

    Only keys without a fault of their own are compared, so that one slip is told once.
    """

    def __init__(self, job: Record, standard: Standard, doors: tuple[DoorOnHand, ...]) -> None:
        self._job = job
        self._standard = standard
        self._doors = {each.label for each in doors}
        self._cabinets: set[str] = set()
        self._fronts: set[str] = set()
        self._too_many = False

    def cabinet(self, record: Record, cabinet: Cabinet) -> None:
        if not record.sound("label"):
            return
        if cabinet.label in self._cabinets:
            record.fault("label", "a label that no other cabinet has")
        self._cabinets.add(cabinet.label)

    def opening(self, record: Record, opening: Opening, around: Record, cabinet: Cabinet) -> None:
        if record.sound("label", "closed_by", "count") and around.sound("label"):
            self._check_labels(record, opening, cabinet)
        _check_within(record, opening, around, cabinet)
        if record.sound("closed_by"):
            self._check_front(record, opening)
        sound = all(each.sound("standard") for each in (record, around, self._job))
        if sound and record.sound("closed_by", "front"):
            self._check_overlay(record, opening, cabinet)

    def _check_labels(self, record: Record, opening: Opening, cabinet: Cabinet) -> None:
        labels = front_labels(cabinet.label, opening)
        taken = next((each for each in labels if each in self._fronts), None)
        if taken is not None:
            record.fault("label", f"a label that no other opening has; “{taken}” is taken")
        self._fronts.update(labels)
        if len(self._fronts) > MOST_FRONTS_IN_ALL and not self._too_many:
            self._too_many = True
            record.fault("label", f"at most {MOST_FRONTS_IN_ALL:,} fronts in a kitchen", "more")

    def _check_front(self, record: Record, opening: Opening) -> None:
        door = opening.front.door_on_hand
        if door is None:
            return
        at = record.at("front").under("door_on_hand", door)
        if door == CHOOSE:
            return
        if door not in self._doors:
            at.fault(f"the label of a door on hand, or {CHOOSE}")
        elif opening.closed_by in ("pair", "drawers"):
            at.fault(f"{CHOOSE}: a door that is named serves a single front")

    def _check_overlay(self, record: Record, opening: Opening, cabinet: Cabinet) -> None:
        if opening.closed_by == "open" or not _is_sized_by_rule(opening):
            return
        levels = (opening.standard, cabinet.standard, self._standard)
        mount = next((each.mount for each in levels if each.mount), "overlay")
        if mount == "overlay" and not any(each.overlay or each.reveal for each in levels):
            record.place.fault(
                "overlay or reveal in the standard of this opening, its cabinet or the job",
                "a front to overlay and not by how much",
            )


def front_labels(cabinet: str, opening: Opening) -> list[str]:
    """The opening's own name and those of its fronts, from the left or from the top."""
    name = f"{cabinet}.{opening.label}"
    count = 2 if opening.closed_by == "pair" else opening.count
    several = range(1, count + 1) if count > 1 else ()
    return [name, *(f"{name}.{index}" for index in several)]


def _is_sized_by_rule(opening: Opening) -> bool:
    front = opening.front
    if front.door_on_hand is not None:
        return front.door_on_hand == CHOOSE
    return front.width is None or front.height is None


def _check_within(record: Record, opening: Opening, around: Record, cabinet: Cabinet) -> None:
    across = record.sound("x", "width", "measured") and around.sound("width")
    if across and opening.x + opening.width > cabinet.width:
        record.fault("width", "an opening that ends within its cabinet's width")
    upwards = record.sound("y", "height", "measured") and around.sound("height")
    if upwards and opening.y + opening.height > cabinet.height:
        record.fault("height", "an opening that ends within its cabinet's height")

"""Openings and what closes them, as a job file gives them."""

from typing import TypeVar

from fronts.jobfile import sizes, values, words
from fronts.jobfile.boxes import box
from fronts.jobfile.reader import Place, Record
from fronts.jobfile.standard import standard
from fronts.rules.kitchen import Box, FrontWish, Hinged, Measured, Opening
from fronts.rules.lengths import Mm

KEYS = (
    "label", "x", "y", "width", "height", "closed_by", "hinged", "count", "heights",
    "measured", "front", "box", "boxes", "standard",
)  # fmt: skip
FRONT_KEYS = (
    "door_on_hand", "width", "height", "thickness", "build", "material", "shift_x", "shift_y",
)  # fmt: skip
MEASURED_KEYS = (
    "width_top", "width_bottom", "height_left", "height_right", "diagonal_1", "diagonal_2",
)  # fmt: skip
MOST_FRONTS = 20
T = TypeVar("T")
_BELONGS = {
    "count": ("drawers",),
    "heights": ("drawers",),
    "boxes": ("drawers",),
    "box": ("pull-out", "drawer"),
}


def opening(record: Record) -> Opening:
    """One opening."""
    measured = record.take("measured", _measured) or Measured()
    closed_by = values.chosen(record, "closed_by", words.CLOSED_BY, "open")
    if record.sound("closed_by"):
        _check_belonging(record, closed_by)
    count = _count(record, closed_by)
    return Opening(
        label=record.need("label", values.label(), "", "a label"),
        x=sizes.needed(record, "x", sizes.OR_ZERO),
        y=sizes.needed(record, "y", sizes.OR_ZERO),
        width=_size(record, "width", measured.width_top, measured.width_bottom),
        height=_size(record, "height", measured.height_left, measured.height_right),
        closed_by=closed_by,
        hinged=_hinged(record, closed_by),
        count=count,
        heights=_heights(record, count) if closed_by == "drawers" else (),
        front=record.take("front", _front) or FrontWish(),
        boxes=_boxes(record, count) if closed_by == "drawers" else _box(record),
        measured=measured,
        standard=standard(record),
    )


def _check_belonging(record: Record, closed_by: str) -> None:
    for key, kinds in _BELONGS.items():
        if record.has(key) and closed_by not in kinds:
            record.fault(key, f"no {key} unless closed_by is {' or '.join(kinds)}")


def _size(record: Record, key: str, *measured: Mm | None) -> Mm:
    """The nominal size; the greater measured one stands in where it is left out."""
    taken = [each for each in measured if each is not None]
    if taken and not record.has(key):
        return max(taken)
    return sizes.needed(record, key)


def _hinged(record: Record, closed_by: str) -> Hinged | None:
    """The hinge side of a door; on anything else the word is read, and says nothing."""
    said: Hinged | None = record.take("hinged", values.one_of(words.HINGED))
    return (said or "left") if closed_by == "door" else None


def _count(record: Record, closed_by: str) -> int:
    if closed_by != "drawers":
        return 1
    wanted = f"how many drawers, 1 to {MOST_FRONTS}"
    return record.need("count", values.whole(1, MOST_FRONTS), 1, wanted)


def _heights(record: Record, count: int) -> tuple[Mm | None, ...]:
    places = record.entries("heights", MOST_FRONTS)
    _check_one_each(record, "heights", count)
    return _or_none(tuple(None if each.value is None else sizes.length(each) for each in places))


def _boxes(record: Record, count: int) -> tuple[Box | None, ...]:
    places = record.entries("boxes", MOST_FRONTS)
    _check_one_each(record, "boxes", count)
    return _or_none(tuple(None if each.value is None else box(each) for each in places))


def _or_none(entries: tuple[T | None, ...]) -> tuple[T | None, ...]:
    """A list of nothing but nulls says no more than no list."""
    return entries if any(each is not None for each in entries) else ()


def _check_one_each(record: Record, key: str, count: int) -> None:
    entries = record.at(key).value
    if isinstance(entries, list) and record.sound("count") and len(entries) != count:
        record.fault(key, f"one entry for each of the {count} drawers, null where it has none")


def _box(record: Record) -> tuple[Box, ...]:
    found = record.take("box", box)
    return () if found is None else (found,)


def _front(place: Place) -> FrontWish | None:
    record = Record(place, FRONT_KEYS)
    found = FrontWish(
        door_on_hand=record.take("door_on_hand", values.label()),
        width=sizes.given(record, "width"),
        height=sizes.given(record, "height"),
        thickness=sizes.given(record, "thickness"),
        build=record.take("build", values.one_of(words.FRONT_BUILDS)),
        material=record.take("material", values.text(values.LONGEST_MATERIAL)) or None,
        shift_x=sizes.given_or(record, "shift_x", Mm(0), sizes.PLACE),
        shift_y=sizes.given_or(record, "shift_y", Mm(0), sizes.PLACE),
    )
    return found if record.sound("door_on_hand", "width", "height") else None


def _measured(place: Place) -> Measured | None:
    record = Record(place, MEASURED_KEYS)
    found = Measured(**{key: sizes.given(record, key) for key in MEASURED_KEYS})
    for given, other in (("diagonal_1", "diagonal_2"), ("diagonal_2", "diagonal_1")):
        if record.has(given) and not record.has(other):
            record.fault(other, "both diagonals or neither", "nothing")
    return found if record.sound(*MEASURED_KEYS[:4]) else None

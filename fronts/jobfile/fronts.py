"""The fronts of an opening, as a job file gives them: one entry a front, or as version 1 did.

Version 1 decides about all fronts of an opening together (`front`, `hinged`), and about a
stack's one by one in lists (`heights`, `boxes`). What an entry of `fronts` says comes first.
"""

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from typing import Any, TypeVar

from fronts.jobfile import sizes, values
from fronts.jobfile.boxes import box, on_box
from fronts.jobfile.reader import Place, Record
from fronts.jobfile.stated import given, keys_of
from fronts.rules.kinds import HINGE_SIDES, Closing, Hinged
from fronts.rules.kitchen import FrontFacts
from fronts.rules.limits import MOST_FRONTS
from fronts.rules.machine_facts import Machine, machine_faults
from fronts.rules.validity import belongs, closings_with

OLDER_KEYS = ("hinged", "heights", "front", "box", "boxes")
_ELSEWHERE = ("own_height", "hinged", "box")
"""What version 1 says beside `front`."""
_OF_KINDS = ("machine", "room_behind")
"""What only some kinds of front have."""
T = TypeVar("T")


def fronts(record: Record, closing: Closing, count: int) -> tuple[FrontFacts, ...]:
    """Every front of the opening, as many as `count`."""
    together = record.take("front", partial(_together, closing=closing)) or FrontFacts()
    hinged: Hinged | None = record.take("hinged", _hinged)
    wanted = f"one entry for each of the {count} drawers, null where it has none"
    heights = _one_each(record, "heights", count, sizes.length, wanted)
    boxes = _one_each(record, "boxes", count, box, wanted)
    single = record.take("box", box)
    older = [
        replace(together, hinged=hinged, own_height=height, **on_box(single or own_box))
        for height, own_box in zip(heights, boxes, strict=True)
    ]
    return tuple(_entries(record, older, closing))


def _entries(record: Record, older: list[FrontFacts], closing: Closing) -> list[FrontFacts]:
    """What each entry of `fronts` says, over what the older keys say."""
    count = len(older)
    entry, wanted = partial(_entry, closing=closing), f"one entry a front, {count} in all"
    entries = _one_each(record, "fronts", count, entry, wanted)
    return [replace(front, **said or {}) for front, said in zip(older, entries, strict=True)]


def _entry(place: Place, closing: Closing) -> dict[str, Any]:
    record = Record(place, keys_of(FrontFacts, place.page.version))
    _check_belonging(record, ("own_height", "box", *_OF_KINDS), closing)
    said = given(FrontFacts, record, but=("box", "box_to_make"))
    _check_machine(record, said)
    if record.has("box"):
        said |= on_box(record.take("box", box))
    return _height_in_stack(said) if closing.stack else said


def _height_in_stack(said: dict[str, Any]) -> dict[str, Any]:
    """In a stack `height` alone is the front's own part of it; with a width, a front exists."""
    if "width" in said or "own_height" in said or "height" not in said:
        return said
    return {**{key: value for key, value in said.items() if key != "height"},
            "own_height": said["height"]}  # fmt: skip


def _check_belonging(record: Record, keys: tuple[str, ...], closing: Closing) -> None:
    for key in keys:
        if record.has(key) and not belongs(key, closing):
            kinds = " or ".join(closings_with(key))
            record.fault(key, f"no {key} unless closed_by is {kinds}")


def _check_machine(record: Record, said: dict[str, Any]) -> None:
    """Tell what a machine's limits can't be, each at its key."""
    if "machine" in said:
        machine = Record(record.at("machine"), keys_of(Machine))
        for key, wanted in machine_faults(said["machine"]).items():
            machine.fault(key, wanted)


def _together(place: Place, closing: Closing) -> FrontFacts | None:
    own = keys_of(FrontFacts, place.page.version)
    keys = tuple(key for key in own if key not in _ELSEWHERE)
    record = Record(place, keys)
    _check_belonging(record, _OF_KINDS, closing)
    said = given(FrontFacts, record, but=_ELSEWHERE)
    _check_machine(record, said)
    return FrontFacts(**said) if record.sound("door_on_hand", "width", "height") else None


_hinged = values.one_of({side: side for side in HINGE_SIDES})


def _one_each(
    record: Record, key: str, count: int, read: Callable[[Place], T | None], wanted: str
) -> list[T | None]:
    """A list with an entry for each front, null where it says nothing."""
    if not record.has(key):
        return [None] * count
    places = record.entries(key, MOST_FRONTS)
    if len(places) != count and record.sound("closed_by", "count", key):
        record.fault(key, wanted)
    said = [None if place.value is None else read(place) for place in places[:count]]
    return [*said, *[None] * (count - len(said))]

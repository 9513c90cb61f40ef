"""Fronts that were marked as cut, and steps that were ticked off, since version 2.

An entry of `cuts` says `front`, `at`, `by`, and what the front was cut as: `width`, `height`,
`thickness`, `left` and `bottom` (of its lower left corner in its cabinet); and where that was
noted `build`, `material`, `grain`, `frame`, `glass`, `hinged` and `on_hand`.

An entry of `ticks` says `front`, `step` (in its words as they were), `at` and `by`.

Both are of fronts that there are: they go with their fronts.
"""

from collections.abc import Iterator

from fronts.jobfile import values
from fronts.jobfile.reader import Record
from fronts.jobfile.stated import keys_of, stated
from fronts.rules.cut_fronts import CutTo, RecordedCut
from fronts.rules.limits import (
    LONGEST_FRONT_LABEL,
    LONGEST_NAME,
    LONGEST_STEP,
    MOST_FRONTS_IN_ALL,
    MOST_TICKS,
)
from fronts.rules.records import RecordedTick

_TICK_KEYS = ("front", "step", "at", "by")
_label = values.label(LONGEST_FRONT_LABEL)
_name = values.text(LONGEST_NAME)
_step = values.label(LONGEST_STEP)


def cuts(root: Record, fronts: frozenset[str] | None) -> Iterator[RecordedCut]:
    """What the key `cuts` says; `fronts` are those that there are, None where nobody can tell."""
    there: set[str] = set()
    for place in root.entries("cuts", MOST_FRONTS_IN_ALL):
        record = Record(place, ("front", "at", "by", *keys_of(CutTo)))
        front = _front(record, fronts)
        record.once("front", front, there, "a front that no other cut has")
        yield RecordedCut(
            front=front,
            at=record.need("at", values.moment, values.SOME_TIME, values.WHEN),
            by=record.take("by", _name) or "",
            facts=stated(CutTo, record),
        )


def ticks(root: Record, fronts: frozenset[str] | None) -> Iterator[RecordedTick]:
    """What the key `ticks` says, likewise."""
    there: set[str] = set()
    for place in root.entries("ticks", MOST_TICKS):
        record = Record(place, _TICK_KEYS)
        front = _front(record, fronts)
        step = record.need("step", _step, "", "the step's words")
        if record.sound("front"):
            record.once("step", f"{front}\n{step}", there, "a step that no other tick is of")
        yield RecordedTick(
            front=front,
            step=step,
            at=record.need("at", values.moment, values.SOME_TIME, values.WHEN),
            by=record.take("by", _name) or "",
        )


def _front(record: Record, fronts: frozenset[str] | None) -> str:
    front = record.need("front", _label, "", "the front's label")
    if fronts is not None and record.sound("front") and front not in fronts:
        record.fault("front", "the label of a front of this kitchen")
    return front

"""Openings and what closes them, as a job file gives them."""

from fronts.jobfile import sizes, values
from fronts.jobfile.fronts import OLDER_KEYS, fronts
from fronts.jobfile.reader import Place, Record
from fronts.jobfile.standard import standard
from fronts.jobfile.stated import keys_of, stated
from fronts.rules.kinds import CLOSINGS, ClosedBy, Closing
from fronts.rules.kitchen import Measured, Opening
from fronts.rules.lengths import Mm
from fronts.rules.limits import MOST_FRONTS
from fronts.rules.validity import belongs, closings_with, measured_faults, tidied

_BOXED = closings_with("box")
_BELONGS = {
    "count": closings_with("count"),
    "heights": closings_with("own_height"),
    "boxes": tuple(kind for kind in _BOXED if CLOSINGS[kind].stack),
    "box": tuple(kind for kind in _BOXED if not CLOSINGS[kind].stack),
}
"""Keys that only some ways of closing have a use for."""


def opening_keys(version: int) -> tuple[str, ...]:
    """The keys of an opening: version 2 says `fronts`, version 1 what they were before."""
    own = [key for key in keys_of(Opening) if key != "fronts"]
    return (*own, "count", *OLDER_KEYS, *(("fronts",) if version > 1 else ()))


def closings_of(version: int) -> dict[str, ClosedBy]:
    """The ways to close an opening that a file of this version knows."""
    return {word: word for word, closing in CLOSINGS.items() if version > 1 or not closing.is_newer}


def opening(record: Record) -> Opening:
    """One opening."""
    taken = record.take("measured", _measured) or Measured()
    closed_by = values.chosen(record, "closed_by", closings_of(record.place.page.version), "open")
    closing = CLOSINGS[closed_by]
    if record.sound("closed_by"):
        _check_belonging(record, closed_by)
    count = _count(record, closing)
    return tidied(
        stated(
            Opening,
            record,
            width=_size(record, "width", taken.width_top, taken.width_bottom),
            height=_size(record, "height", taken.height_left, taken.height_right),
            closed_by=closed_by,
            fronts=fronts(record, closing, count),
            measured=taken,
            standard=standard(record),
        )
    )


def _check_belonging(record: Record, closed_by: ClosedBy) -> None:
    for key, kinds in _BELONGS.items():
        if record.has(key) and closed_by not in kinds:
            record.fault(key, f"no {key} unless closed_by is {' or '.join(kinds)}")


def _measured(place: Place) -> Measured | None:
    record = Record(place, keys_of(Measured))
    found = stated(Measured, record)
    for missing in measured_faults(found):
        if record.sound("diagonal_1", "diagonal_2"):
            record.fault(missing, "both diagonals or neither", "nothing")
    return found if record.sound(*keys_of(Measured)) else None


def _size(record: Record, key: str, *measured: Mm | None) -> Mm:
    """The nominal size; the greater measured one stands in where it is left out."""
    taken = [size for size in measured if size is not None]
    if taken and not record.has(key):
        return max(taken)
    return sizes.needed(record, key)


def _count(record: Record, closing: Closing) -> int:
    if not belongs("count", closing):
        return closing.fronts[0]
    wanted = f"how many drawers, 1 to {MOST_FRONTS}"
    return record.need("count", values.whole(1, MOST_FRONTS), 1, wanted)

"""What the shop keeps on the shelf, as a job file gives it."""

import re

from fronts.jobfile import sizes
from fronts.jobfile.place import Place, Record
from fronts.rules.kitchen import Stock
from fronts.rules.lengths import INCH, Mm
from fronts.rules.screws import thread_diameter

KEYS = (
    "screw_lengths", "knob_screw_lengths", "knob_thread", "knob_thread_depth", "slide_lengths",
)  # fmt: skip
MOST_LENGTHS = 200
_THREAD = re.compile(
    r"M ?[0-9]{1,2}(?:\.[0-9]{1,2})?|(?:#?[0-9]{1,2}|[0-9]{1,2}/[0-9]{1,2})-[0-9]{2}", re.IGNORECASE
)


def _inches(*quarters: int) -> tuple[Mm, ...]:
    return tuple(INCH * each / 4 for each in quarters)


STOCK = Stock(
    screw_lengths=_inches(3, 4, 5, 6),
    knob_screw_lengths=_inches(4, 7),
    knob_thread="8-32",
    knob_thread_depth=INCH / 2,
    slide_lengths=_inches(48, 56, 64, 72, 80, 88, 96),
)
"""What is taken to be in stock where a file doesn't say (common practice, no source)."""


def stock(record: Record) -> Stock:
    """What key `stock` says; what it leaves out is as in `STOCK`."""
    return record.take("stock", _stock) or STOCK


def _stock(place: Place) -> Stock:
    record = Record(place, KEYS)
    thread = record.take("knob_thread", _thread)
    return Stock(
        screw_lengths=_lengths(record, "screw_lengths", STOCK.screw_lengths),
        knob_screw_lengths=_lengths(record, "knob_screw_lengths", STOCK.knob_screw_lengths),
        knob_thread=STOCK.knob_thread if thread is None else thread,
        knob_thread_depth=sizes.given_or(record, "knob_thread_depth", STOCK.knob_thread_depth),
        slide_lengths=_lengths(record, "slide_lengths", STOCK.slide_lengths),
    )


def _thread(place: Place) -> str | None:
    said = place.value
    if isinstance(said, str) and _THREAD.fullmatch(said) and thread_diameter(said):
        return said
    place.fault("a thread like 8-32, 1/4-20 or M4")
    return None


def _lengths(record: Record, key: str, default: tuple[Mm, ...]) -> tuple[Mm, ...]:
    if not record.has(key):
        return default
    return sizes.every_length(record.entries(key, MOST_LENGTHS))

"""What the shop keeps on the shelf, as a job file gives it."""

from fronts.jobfile import sizes
from fronts.jobfile.reader import Place, Record
from fronts.rules.kitchen import Stock
from fronts.rules.lengths import Mm
from fronts.rules.screws import thread_diameter
from fronts.rules.standards import COMMON_STOCK

KEYS = (
    "screw_lengths", "knob_screw_lengths", "knob_thread", "knob_thread_depth", "slide_lengths",
)  # fmt: skip
MOST_LENGTHS = 200


def stock(record: Record) -> Stock:
    """What key `stock` says; what it leaves out is as in `COMMON_STOCK`."""
    return record.take("stock", _stock) or COMMON_STOCK


def _stock(place: Place) -> Stock:
    record = Record(place, KEYS)
    thread = record.take("knob_thread", _thread)
    return Stock(
        screw_lengths=_lengths(record, "screw_lengths", COMMON_STOCK.screw_lengths),
        knob_screw_lengths=_lengths(record, "knob_screw_lengths", COMMON_STOCK.knob_screw_lengths),
        knob_thread=COMMON_STOCK.knob_thread if thread is None else thread,
        knob_thread_depth=sizes.given_or(
            record, "knob_thread_depth", COMMON_STOCK.knob_thread_depth
        ),
        slide_lengths=_lengths(record, "slide_lengths", COMMON_STOCK.slide_lengths),
    )


def _thread(place: Place) -> str | None:
    said = place.value
    if isinstance(said, str) and said == said.strip() and thread_diameter(said):
        return said
    place.fault("a thread like 8-32, 1/4-20 or M4")
    return None


def _lengths(record: Record, key: str, default: tuple[Mm, ...]) -> tuple[Mm, ...]:
    if not record.has(key):
        return default
    return sizes.every_length(record.entries(key, MOST_LENGTHS))

"""Drawer boxes, as a job file gives them."""

from fronts.jobfile import sizes, values, words
from fronts.jobfile.reader import Place, Record
from fronts.rules.kitchen import Box, ShelfPins, SlideKind
from fronts.rules.lengths import INCH

KEYS = (
    "width", "height", "depth", "front_thickness", "rise", "side_clearance",
    "slide", "slide_width", "slide_height", "shelf_pins",
)  # fmt: skip
PIN_KEYS = ("x", "y", "pitch", "count", "diameter")
MOST_ROWS = 50
MOST_PINS = 500
PIN = INCH / 4


def box(place: Place) -> Box:
    """One box."""
    record = Record(place, KEYS)
    return Box(
        width=sizes.needed(record, "width"),
        height=sizes.needed(record, "height"),
        front_thickness=sizes.needed(record, "front_thickness"),
        rise=sizes.needed(record, "rise", sizes.OR_ZERO),
        depth=sizes.given(record, "depth"),
        side_clearance=sizes.given(record, "side_clearance", sizes.OR_ZERO),
        slide=_slide(record),
        slide_width=sizes.given(record, "slide_width"),
        slide_height=sizes.given(record, "slide_height"),
        shelf_pins=tuple(_pins(each) for each in record.entries("shelf_pins", MOST_ROWS)),
    )


def _slide(record: Record) -> SlideKind | None:
    if record.at("slide").value == words.NO_SLIDE:
        return None
    return record.take("slide", values.one_of(words.SLIDES))


def _pins(place: Place) -> ShelfPins:
    record = Record(place, PIN_KEYS)
    return ShelfPins(
        x=sizes.needed(record, "x", sizes.OR_ZERO),
        y=sizes.needed(record, "y", sizes.OR_ZERO),
        pitch=sizes.needed(record, "pitch"),
        count=record.need("count", values.whole(1, MOST_PINS), 1, f"a count, 1 to {MOST_PINS}"),
        diameter=sizes.given_or(record, "diameter", PIN),
    )

"""Drawer boxes, as a job file gives them."""

from fronts.jobfile import values
from fronts.jobfile.reader import Place, Record
from fronts.jobfile.stated import keys_of, stated
from fronts.rules.kinds import SLIDES, SlideKind
from fronts.rules.kitchen import Box

NO_SLIDE = "none"
_ALSO: dict[str, SlideKind] = {
    "bottom-mount": "bottom",
    "side-mount": "side",
    "undermount": "under",
}
"""What else people call a kind of slide."""


def box(place: Place) -> Box:
    """One box."""
    record = Record(place, keys_of(Box))
    return stated(Box, record, slide=_slide(record))


def _slide(record: Record) -> SlideKind | None:
    if record.at("slide").value == NO_SLIDE:
        return None
    return record.take("slide", values.one_of({**{kind: kind for kind in SLIDES}, **_ALSO}))

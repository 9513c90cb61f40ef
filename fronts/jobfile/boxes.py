"""Drawer boxes, as a job file gives them: one that was measured, or one that is to be made."""

from typing import Any, TypeAlias

from fronts.jobfile import values
from fronts.jobfile.reader import Place, Record
from fronts.jobfile.stated import keys_of, stated
from fronts.rules.box_facts import Box, BoxToMake
from fronts.rules.kinds import SLIDES, SlideKind
from fronts.rules.kitchen import FrontFacts

OnBox: TypeAlias = Box | BoxToMake
"""What a front stands on."""
MAKE = "make"
NO_SLIDE = "none"
_ALSO: dict[str, SlideKind] = {
    "bottom-mount": "bottom",
    "side-mount": "side",
    "undermount": "under",
}
"""What else people call a kind of slide."""


def box(place: Place) -> OnBox | None:
    """One box: `make` says that it is to be made, and then its sizes are the rules'."""
    record = Record(place, _keys(place))
    if record.take(MAKE, values.yes_or_no):
        return _to_make(record)
    return stated(Box, record, slide=_slide(record))


def on_box(found: object) -> dict[str, Any]:
    """What a front stands on, by the names of its facts."""
    to_make = isinstance(found, BoxToMake)
    return {"box": None if to_make else found, "box_to_make": found if to_make else None}


def boxed(front: FrontFacts) -> OnBox | None:
    """What a front stands on."""
    return front.box or front.box_to_make


def _keys(place: Place) -> tuple[str, ...]:
    own = keys_of(Box, place.page.version)
    return own if place.page.version == 1 else (*own, MAKE)


def _to_make(record: Record) -> BoxToMake:
    kept = keys_of(BoxToMake)
    for key in keys_of(Box):
        if key not in kept and record.has(key):
            record.fault(key, f"no {key} where the box is to be made: its sizes follow")
    return stated(BoxToMake, record, slide=_slide(record))


def _slide(record: Record) -> SlideKind | None:
    if record.at("slide").value == NO_SLIDE:
        return None
    return record.take("slide", values.one_of({**{kind: kind for kind in SLIDES}, **_ALSO}))

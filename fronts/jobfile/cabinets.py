"""Cabinets, as a job file gives them, and their openings within them."""

from collections.abc import Iterator
from dataclasses import replace

from fronts.jobfile import sizes, values, words
from fronts.jobfile.consistency import Agreement
from fronts.jobfile.openings import KEYS as OPENING_KEYS
from fronts.jobfile.openings import opening
from fronts.jobfile.reader import Record
from fronts.jobfile.standard import standard
from fronts.rules.kitchen import Cabinet, Opening

KEYS = (
    "label", "kind", "build", "wall", "x", "y", "width", "height", "depth",
    "openings", "standard",
)  # fmt: skip
MOST_CABINETS = 5000
MOST_OPENINGS = 60


def cabinets(record: Record, agreement: Agreement) -> tuple[Cabinet, ...]:
    """The cabinets of key `cabinets`, held against each other and the rest of the job."""
    return tuple(
        _cabinet(Record(place, KEYS), agreement)
        for place in record.entries("cabinets", MOST_CABINETS)
    )


def _cabinet(record: Record, agreement: Agreement) -> Cabinet:
    bare = Cabinet(
        label=record.need("label", values.label(), "", "a label"),
        kind=values.chosen(record, "kind", words.KINDS, "base"),
        build=values.chosen(record, "build", words.CABINET_BUILDS, "frameless"),
        wall=record.need("wall", values.label(), "", "the name of a wall"),
        x=sizes.needed(record, "x", sizes.PLACE),
        y=sizes.needed(record, "y", sizes.PLACE),
        width=sizes.needed(record, "width"),
        height=sizes.needed(record, "height"),
        depth=sizes.needed(record, "depth"),
        standard=standard(record),
    )
    agreement.cabinet(record, bare)
    return replace(bare, openings=tuple(_openings(record, bare, agreement)))


def _openings(record: Record, cabinet: Cabinet, agreement: Agreement) -> Iterator[Opening]:
    for place in record.entries("openings", MOST_OPENINGS):
        entry = Record(place, OPENING_KEYS)
        found = opening(entry)
        agreement.opening(entry, found, record, cabinet)
        yield found

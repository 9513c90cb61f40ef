"""Cabinets, as a job file gives them, and their openings within them."""

from collections.abc import Iterator
from dataclasses import replace

from fronts.jobfile import sizes
from fronts.jobfile.consistency import Consistency
from fronts.jobfile.openings import opening, opening_keys
from fronts.jobfile.reader import Record
from fronts.jobfile.standard import standard
from fronts.jobfile.stated import keys_of, stated
from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.limits import MOST_CABINETS, MOST_OPENINGS


def cabinets(record: Record, consistency: Consistency, version: int) -> tuple[Cabinet, ...]:
    """The cabinets of key `cabinets`, held against each other and the rest of the job."""
    return tuple(
        _cabinet(Record(place, keys_of(Cabinet)), consistency, version)
        for place in record.entries("cabinets", MOST_CABINETS)
    )


def _cabinet(record: Record, consistency: Consistency, version: int) -> Cabinet:
    bare = stated(Cabinet, record, openings=(), standard=standard(record))
    if version == 1 and not record.has("x"):
        record.fault("x", str(sizes.Limits(signed=True)), "nothing")
    consistency.cabinet(record, bare)
    return replace(bare, openings=tuple(_openings(record, bare, consistency, version)))


def _openings(
    record: Record, cabinet: Cabinet, consistency: Consistency, version: int
) -> Iterator[Opening]:
    for place in record.entries("openings", MOST_OPENINGS):
        entry = Record(place, opening_keys(version))
        found = opening(entry)
        consistency.opening(entry, found, record, cabinet)
        yield found

"""The shop's own numbers where they differ from common practice."""

from dataclasses import replace
from fractions import Fraction
from typing import Any

from fronts.jobfile import shop_tables, sizes, values
from fronts.jobfile.reader import Place, Record
from fronts.rules.practice import NUMBER_NAMES, PLAIN, POSITIVE, PRACTICE, TABLES, Practice


def practice(record: Record) -> Practice:
    """Common practice, changed by what key `practice` says."""
    return record.take("practice", _practice) or PRACTICE


def _practice(place: Place) -> Practice:
    record = Record(place, (*NUMBER_NAMES, *TABLES))
    changes: dict[str, Any] = {key: _number(record, key) for key in NUMBER_NAMES if record.has(key)}
    found = replace(PRACTICE, **changes, **shop_tables.tables(record))
    sound = record.sound("humidity_low", "humidity_high")
    if sound and found.humidity_low > found.humidity_high:
        key = "humidity_low" if record.has("humidity_low") else "humidity_high"
        record.fault(key, "humidity_low at or under humidity_high")
    return found


def _number(record: Record, key: str) -> Fraction:
    """A stand-in of nothing where it is at fault."""
    if key in PLAIN:
        found = record.take(key, values.number(*PLAIN[key]))
    else:
        found = sizes.given(record, key, sizes.SIZE if key in POSITIVE else sizes.OR_ZERO)
    return Fraction(0) if found is None else found

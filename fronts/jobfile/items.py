"""The shop's hardware as a job file gives it: what a hinge makes is a list, or least and most."""

from typing import Any

from fronts.jobfile import sizes
from fronts.jobfile.reader import Place, Record
from fronts.jobfile.stated import keys_of, stated, thing
from fronts.rules.facts import rows_of
from fronts.rules.items import NO_ITEMS, Hardware, HingeItem, Span
from fronts.rules.lengths import Mm
from fronts.rules.limits import MOST_LENGTHS
from fronts.rules.validity import faults_of

SPANS = {"overlays": "overlay_span", "gaps": "gap_span"}
"""Facts of a hinge that a file says under the key of another."""


def hardware(record: Record) -> Hardware:
    """What key `hardware` says; nothing where it is left out."""
    return record.take("hardware", _hardware) or NO_ITEMS


def _hardware(place: Place) -> Hardware:
    record = Record(place, keys_of(Hardware))
    return Hardware(**{
        fact.name: tuple(_items(record, fact.name, fact.kind, declared.most))
        for fact, declared in rows_of(Hardware)
    })  # fmt: skip


def _items(record: Record, key: str, kind: type, most: int) -> list[Any]:
    found: list[Any] = []
    codes: set[str] = set()
    for place in record.entries(key, most):
        own = tuple(name for name in keys_of(kind) if name not in SPANS.values())
        entry = Record(place, own)
        item: Any = stated(kind, entry, **(_made_by(entry) if kind is HingeItem else {}))
        entry.once("code", item.code, codes, "a code that no other item of its kind has")
        for path, wanted in faults_of(item).items():
            entry.fault(path, wanted)
        found.append(item)
    return found


def _made_by(record: Record) -> dict[str, Any]:
    """What a hinge makes: each key gives a list, or least and most."""
    said: dict[str, Any] = {}
    for key, span in SPANS.items():
        listed = isinstance(record.at(key).value, list)
        said[key] = (record.take(key, _listed) or ()) if listed else ()
        said[span] = None if listed else record.take(key, thing(Span))
    return said


def _listed(place: Place) -> tuple[Mm, ...]:
    return sizes.every_length(place.items(MOST_LENGTHS), sizes.OR_ZERO)

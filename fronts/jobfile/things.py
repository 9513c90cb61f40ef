"""Things of a job that stand by themselves, as a job file gives them."""

from collections.abc import Callable, Mapping
from typing import Any

from fronts.jobfile.doors import tell_door_faults
from fronts.jobfile.reader import Record
from fronts.jobfile.stated import keys_of, stated
from fronts.rules.fact_kinds import Rows
from fronts.rules.facts import Fact
from fronts.rules.kitchen import DoorOnHand
from fronts.rules.validity import faults_of

_TELL: Mapping[type, Callable[[Record, Any], None]] = {DoorOnHand: tell_door_faults}
"""Kinds whose faults a file has finer places for."""


def things(record: Record, fact: Fact, declared: Rows) -> tuple[Any, ...]:
    """The things at the fact's key, each under a label of its own."""
    tell = _TELL.get(fact.kind, _tell_faults)
    found: list[Any] = []
    labels: set[str] = set()
    for place in record.entries(fact.name, declared.most):
        entry = Record(place, keys_of(fact.kind))
        thing = stated(fact.kind, entry)
        entry.once("label", thing.label, labels, f"a label that no other {declared.one} has")
        tell(entry, thing)
        found.append(thing)
    return tuple(found)


def _tell_faults(record: Record, thing: Any) -> None:
    """What is wrong with a thing by itself, each at its key."""
    for path, wanted in faults_of(thing).items():
        key = path.partition(".")[0]
        if record.sound(key):
            record.fault(key, wanted)

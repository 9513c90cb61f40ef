"""What a cabinet, an opening or a front says for itself, where others go by the standard."""

from collections.abc import Iterable, Iterator
from typing import Any

from fronts.facts.column_words import column_words, in_words
from fronts.facts.rows import columns_of
from fronts.rules.fact_kinds import Word
from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import Cabinet, FrontFacts, Kitchen
from fronts.rules.labels import front_labels
from fronts.rules.standard_keys import Standard

_SHORT = 24
"""Letters that a row has room for; the front schedule says all of it."""
_OF_FRONTS = ("thickness", "handle", "hinge", "made_by")
"""What a front says for itself that a standard, or the shop's list, says for the others; its
build and material stand beside that, in what it is made from."""


def own_words(standard: Standard, unit: str) -> tuple[str, ...]:
    """What a level says of the standard: `overlay 1/4`; sides that say the same together."""
    return tuple(_said(columns_of(standard), Standard, unit))


def own_note(standard: Standard, unit: str) -> str:
    """That there is anything, with what it is where that is short; "" where it says nothing."""
    said = ", ".join(own_words(standard, unit))
    if not said:
        return ""
    return f"own standard: {said}" if len(said) <= _SHORT else "own standard"


def differing_fronts(cabinets: Iterable[Cabinet], kitchen: Kitchen) -> dict[str, str]:
    """What differs from the job's standard at each of their fronts, by its label, where it does.

    The nearer level comes last: cabinet kind, cabinet, opening, front.
    """
    unit = kitchen.job.unit
    of_kinds = {one.kind: own_words(one.standard, unit) for one in kitchen.kind_standards}
    found = {}
    for cabinet in cabinets:
        of_cabinet = (*of_kinds.get(cabinet.kind, ()), *own_words(cabinet.standard, unit))
        for opening in cabinet.openings:
            of_opening = own_words(opening.standard, unit)
            labels = front_labels(cabinet.label, opening)
            for label, front in zip(labels, opening.fronts, strict=True):
                words = (*of_cabinet, *of_opening, *_of_front(front, unit))
                if words:
                    found[label] = ", ".join(dict.fromkeys(words))
    return found


def _of_front(front: FrontFacts, unit: str) -> Iterator[str]:
    columns = columns_of(front)
    return _said({name: columns[name] for name in _OF_FRONTS}, FrontFacts, unit)


def _said(columns: dict[str, Any], kind: type, unit: str) -> Iterator[str]:
    words, done = column_words(kind), set()
    for name, value in columns.items():
        if value in (None, "", ()) or name in done:
            continue
        called, declared = words[name]
        base, _, side = name.rpartition("_")
        alike = [f"{base}_{each}" for each in SIDES]
        if side in SIDES and all(columns.get(each) == value for each in alike):
            done |= {*alike}
            called = called.removesuffix(f" {side}")
        read = in_words(value, declared, unit)
        read = read.lower() if isinstance(declared, Word) else read
        yield read if called == "made" else f"{called} {read}"

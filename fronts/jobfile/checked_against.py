"""What a line of the order was checked against, in a job file.

It says `need`, `spares` and `unit`, and in `fronts` an entry for each front: `front`, its label,
`count`, how many it takes, and each fact that the item was picked by, under its name in
`FRONT_FACTS`: lengths in millimetres, weights in kilograms.
"""

from fractions import Fraction
from typing import Any

from fronts.jobfile import values
from fronts.jobfile.reader import Place, Record
from fronts.rules.lengths import exact
from fronts.rules.limits import (
    LONGEST_FRONT_LABEL,
    LONGEST_ITEM,
    LONGEST_WORD,
    MOST_FRONTS_IN_ALL,
    MOST_NEEDED,
)
from fronts.rules.order_facts import COUNT, FRONT_FACTS, FrontFacts, LineFacts

_MOST = Fraction(MOST_NEEDED)
_label = values.label(LONGEST_FRONT_LABEL)
_number = values.number(-_MOST, _MOST)
_words = values.text(LONGEST_ITEM)
_count = values.whole(0, MOST_NEEDED)


def against_said(against: LineFacts | None) -> dict[str, Any]:
    """What a file says of it; nothing where nobody noted it."""
    if against is None:
        return {}
    fronts = [{"front": label, **facts} for label, facts in against.fronts.items()]
    said = {"spares": against.spares, "unit": against.unit, "fronts": fronts}
    return {"need": against.need, **{key: value for key, value in said.items() if value}}


def checked_against(place: Place) -> LineFacts | None:
    """What the file says of it."""
    record = Record(place, ("need", "spares", "unit", "fronts"))
    need = record.need("need", _count, 0, "how many were needed")
    fronts: dict[str, FrontFacts] = {}
    taken: set[str] = set()
    for entry in record.entries("fronts", MOST_FRONTS_IN_ALL):
        one = Record(entry, ("front", COUNT, *FRONT_FACTS))
        label = one.need("front", _label, "", "the front's label")
        one.once("front", label, taken, "a front that stands once")
        fronts[label] = _facts(one)
    return LineFacts(
        need=need,
        spares=record.take("spares", _count) or 0,
        unit=record.take("unit", values.text(LONGEST_WORD)) or "",
        fronts=fronts,
    )


def _facts(record: Record) -> FrontFacts:
    count = record.need(COUNT, values.number(Fraction(0), _MOST), Fraction(0), "how many it takes")
    facts = {COUNT: exact(count)}
    for name, kind in FRONT_FACTS.items():
        if kind.figure == "word":
            said = record.take(name, _words)
        else:
            figure = record.take(name, _number)
            said = None if figure is None else exact(figure)
        if said:
            facts[name] = said
    return facts

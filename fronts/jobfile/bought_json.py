"""A line of the door maker's list as JSON: lengths are decimal millimetres as text, exact."""

from fractions import Fraction

from fronts.rules.bought_results import BoughtFront, BoughtLine
from fronts.rules.facts import facts_of
from fronts.rules.lengths import as_output


def bought_line(line: BoughtLine) -> dict[str, object]:
    """All that its maker is told, by the names of the facts; how many, and which fronts."""
    told = {fact.name: _plain(getattr(line.front, fact.name)) for fact in facts_of(BoughtFront)}
    return {**told, "count": line.count, "fronts": list(line.labels)}


def _plain(value: object) -> object:
    match value:
        case Fraction():
            return as_output(value)
        case tuple():
            return [_plain(one) for one in value]
    return value

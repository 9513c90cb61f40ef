"""Findings where they arise: a mark at the row of each cabinet and opening that one is about."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.pages.shared.finding_links import FindingRow
from fronts.rules.results import Level
from fronts.rules.schedule import LEVELS


@dataclass(frozen=True, slots=True)
class Mark:
    """The gravest of the findings at a place, how many there are, and where the first stands."""

    level: Level
    sign: str
    count: int
    says: str
    href: str


def marks_of(findings: Sequence[FindingRow]) -> Mapping[str, Mark]:
    """The marks of all places by their labels: `B1.a.1` is in `B1.a`, and that in `B1`."""
    at: dict[str, list[FindingRow]] = defaultdict(list)
    for finding in findings:
        places = (place for label in finding.where for place in _around(label))
        for place in dict.fromkeys(places):
            at[place].append(finding)
    return {place: _mark(found) for place, found in at.items()}


def _around(label: str) -> list[str]:
    parts = label.split(".")
    return [".".join(parts[:count]) for count in range(1, len(parts) + 1)]


def _mark(found: Sequence[FindingRow]) -> Mark:
    gravest = min(found, key=lambda one: LEVELS.index(one.level))
    says = " ".join(f"{one.word}: {one.message}" for one in found)
    return Mark(gravest.level, gravest.sign, len(found), says, f"#{gravest.id}")

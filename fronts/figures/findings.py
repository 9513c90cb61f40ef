"""Findings by how much they matter, all of them or those about some places; how many there are."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from fronts.rules.kitchen import Cabinet
from fronts.rules.labels import opening_label
from fronts.rules.results import Finding, Front, Schedule
from fronts.rules.schedule import LEVELS


@dataclass(frozen=True, slots=True)
class Findings:
    """The findings of a sheet or a page, in the schedule's order: the stops are first."""

    stops: tuple[Finding, ...]
    others: tuple[Finding, ...]

    @property
    def every(self) -> tuple[Finding, ...]:
        """Stops and others."""
        return (*self.stops, *self.others)


def findings_of(schedule: Schedule, places: Iterable[str] | None = None) -> Findings:
    """All findings, or those about the places (fronts, openings, cabinets)."""
    wanted = None if places is None else frozenset(places)
    found = [
        each for each in schedule.findings if wanted is None or not wanted.isdisjoint(each.where)
    ]
    return Findings(
        tuple(each for each in found if each.level == "stop"),
        tuple(each for each in found if each.level != "stop"),
    )


def tally(findings: Iterable[Finding]) -> str:
    """How many findings of each kind: `2 stops, 1 check`."""
    counted = Counter(finding.level for finding in findings)
    return ", ".join(
        f"{counted[level]} {level}{'s' if counted[level] > 1 else ''}"
        for level in LEVELS
        if counted[level]
    )


def places_at(cabinet: Cabinet, fronts: Sequence[Front] = ()) -> frozenset[str]:
    """The names under which a finding can be about this cabinet, its openings and its fronts."""
    openings = (opening_label(cabinet.label, opening.label) for opening in cabinet.openings)
    return frozenset({cabinet.label, *openings, *(front.label for front in fronts)})

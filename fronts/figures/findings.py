"""Findings sorted by how much they matter, all of them or those about some places."""

from collections.abc import Iterable
from dataclasses import dataclass

from fronts.rules.results import Finding, Schedule


@dataclass(frozen=True, slots=True)
class Findings:
    """The findings of a sheet, by how much they matter."""

    stops: tuple[Finding, ...]
    others: tuple[Finding, ...]


def findings_of(schedule: Schedule, places: Iterable[str] | None = None) -> Findings:
    """All findings, or those about the places (fronts, openings, cabinets)."""
    wanted = None if places is None else frozenset(places)
    found = [
        each for each in schedule.findings if wanted is None or not wanted.isdisjoint(each.where)
    ]
    order = {"stop": 0, "check": 1, "note": 2}
    found.sort(key=lambda each: order[each.level])
    return Findings(
        tuple(each for each in found if each.level == "stop"),
        tuple(each for each in found if each.level != "stop"),
    )

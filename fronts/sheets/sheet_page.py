"""What every sheet says of itself, and how lengths are written on it."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from django.template.loader import render_to_string

from fronts.rules.kitchen import JobFacts
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Finding, Schedule


@dataclass(frozen=True, slots=True)
class Imprint:
    """When a sheet was printed, and the fingerprint of the schedule that it shows."""

    printed: date
    fingerprint: str


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


def size(unit: str, *lengths: Mm) -> str:
    """`15 1/2 × 28 1/2`."""
    return " × ".join(show(each, unit) for each in lengths)


def page(template: str, job: JobFacts, imprint: Imprint, context: dict[str, Any]) -> str:
    """A sheet's whole HTML; the context brings its `title`."""
    shared = {
        "job": job,
        "for_whom": " · ".join(each for each in (job.client, job.site) if each),
        "unit_words": "All lengths in inches" if job.unit == "in" else "All lengths in millimetres",
        "printed": imprint.printed.isoformat(),
        "fingerprint": imprint.fingerprint,
    }
    return render_to_string(f"sheets/{template}", {**shared, **context})


def listed(labels: Sequence[str]) -> str:
    """Labels in one line."""
    return ", ".join(labels)

"""What every sheet says of itself, and how lengths are written on it."""

from dataclasses import dataclass
from datetime import date
from typing import Any

from django.template.loader import render_to_string

from fronts.rules.kitchen import JobFacts


@dataclass(frozen=True, slots=True)
class Imprint:
    """When a sheet was printed, and the fingerprint of the schedule that it shows."""

    printed: date
    fingerprint: str


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

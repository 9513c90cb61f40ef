"""Recording how a front fitted."""

from dataclasses import fields, replace
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.facts import PLACES
from fronts.facts.rows import columns_of
from fronts.models import FitRecord, Front
from fronts.rules.fits import FitFacts, Gaps
from fronts.services.saving import checked, job_told, saved
from shopjobs.models import Person
from shopjobs.services.recording import recorded


@recorded
def fit_record(
    *,
    front: Front,
    facts: FitFacts,
    hung: str,
    fingerprint: str,
    by: Person,
    at: datetime,
) -> FitRecord:
    """Record the gaps measured round a front once it hung; each record stays, the last counts.

    `hung` is the short name of the front as it is now, `fingerprint` that of the schedule.
    What the facts say was planned is kept to the last decimal that a column holds.
    """
    if facts.says_nothing:
        raise ValidationError("enter a gap that was measured, or a note")
    job = front.opening.cabinet.job
    record = FitRecord(
        job=job, front=front, hung=hung, fingerprint=fingerprint, fitted_by=by, fitted_at=at,
        **columns_of(replace(facts, planned=_as_kept(facts.planned))),
    )  # fmt: skip
    checked(record)
    saved(record)
    text = f"Recorded the fit of {record.label}"
    job_told(job=job, text=text, by=by, at=at, about=front.opening.cabinet)
    return record


def _as_kept(planned: Gaps) -> Gaps:
    """A gap that is reckoned may have no end of decimals; one that is entered has few."""
    reckoned = {gap.name: getattr(planned, gap.name) for gap in fields(planned)}
    return Gaps(**{
        name: None if gap is None else round(gap, PLACES) for name, gap in reckoned.items()
    })  # fmt: skip

"""Recording how a front fitted."""

from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.facts.rows import columns_of
from fronts.models import FitRecord, Front
from fronts.rules.fits import FitFacts
from fronts.selectors.kitchens import front_keys_of
from fronts.services.saving import checked, enter, job_told, saved
from shopjobs.models import Job, Person
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
    """
    if facts.says_nothing:
        raise ValidationError("enter a gap that was measured, or a note")
    job = front.opening.cabinet.job
    record = FitRecord(
        job=job, front=front, hung=hung, fingerprint=fingerprint, fitted_by=by, fitted_at=at,
        **columns_of(facts),
    )  # fmt: skip
    checked(record)
    saved(record)
    text = f"Recorded the fit of {record.label}"
    job_told(job=job, text=text, by=by, at=at, about=front.opening.cabinet)
    return record


def fits_find_their_fronts(*, job: Job) -> None:
    """Records whose fronts were taken out and put back by a file find them by their labels."""
    lost = list(FitRecord.objects.filter(job=job, front=None))
    if not lost:
        return
    fronts = front_keys_of(job)
    found = [record for record in lost if record.label in fronts]
    for record in found:
        enter(record, {"front_id": fronts[record.label]})
        saved(record)

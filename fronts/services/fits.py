"""Recording how a front fitted."""

from datetime import datetime
from typing import Unpack

from django.core.exceptions import ValidationError
from django.db import transaction

from fronts.models import FitRecord
from fronts.services.saving import checked, enter
from fronts.services.values import FitValues
from shopjobs.models import Job, Person
from shopjobs.services.diary import diary_write


@transaction.atomic
def fit_record(
    *,
    job: Job,
    front: str,
    cabinet: str,
    fingerprint: str,
    by: Person,
    at: datetime,
    **values: Unpack[FitValues],
) -> FitRecord:
    """Record the gaps measured round a front once it hung; each record stays, the last counts."""
    record = FitRecord(
        job=job, front=front, cabinet=cabinet, fingerprint=fingerprint, fitted_by=by, fitted_at=at
    )
    enter(record, values)
    checked(record)
    if record.note == "" and all(gap is None for gap in _gaps(record)):
        raise ValidationError("enter a gap that was measured, or a note")
    record.save()
    diary_write(shop=job.shop, job=job, text=f"Recorded the fit of {front}", at=at, person=by)
    return record


def _gaps(record: FitRecord) -> tuple[object, ...]:
    return (record.gap_left, record.gap_right, record.gap_top, record.gap_bottom)

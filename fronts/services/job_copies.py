"""A job's kitchen once more, under another number: for a second flat, or to begin from."""

from datetime import date, datetime

from django.db.models import Model

from fronts import models
from fronts.services.hardware import hardware_saved, list_of
from fronts.services.kitchen_rows import kitchen_save
from fronts.services.saving import job_changed
from fronts.snapshot import kitchen_of
from fronts.snapshot.hardware import hardware_of
from shopjobs.models import Job, Person
from shopjobs.services.jobs import job_create
from shopjobs.services.recording import recorded, saved

_SAID_BY_JOB: tuple[type[Model], ...] = (
    models.JobStandard, models.Stock, models.BoxesMadeOf, models.ShopNumber,
)  # fmt: skip
"""What a job says otherwise than its shop, beside its list of hardware."""


@recorded
def job_copy(
    *,
    job: Job,
    number: str,
    client: str,
    site: str,
    fit_on: date | None,
    at: datetime,
    by: Person | None = None,
) -> Job:
    """Make a job with the kitchen of another and its own ways, and nothing that was recorded.

    What the job leaves to its shop, the copy leaves to it too.
    """
    copy = job_create(
        shop=job.shop, number=number, client=client, site=site, unit=job.unit, step=job.step,
        fit_on=fit_on, responsible=job.responsible_id, at=at, by=by,
    )  # fmt: skip
    for table in _SAID_BY_JOB:
        for row in table._default_manager.filter(job=job):
            saved(_once_more(row, copy))
    own_list = models.HardwareList.objects.filter(job=job).first()
    if own_list is not None:
        hardware_saved(list_of(copy), hardware_of(own_list))
    kitchen_save(kitchen_of(job), copy)
    text = f"Made job {number} as a copy of job {job.number}"
    job_changed(job=copy, text=text, by=by, at=at, stays=True)
    return copy


def _once_more(row: Model, job: Job) -> Model:
    """The same row, not yet saved, for another job."""
    said = {
        column.attname: getattr(row, column.attname)
        for column in row._meta.concrete_fields
        if not column.primary_key
    }
    return type(row)(**{**said, "job_id": job.pk})

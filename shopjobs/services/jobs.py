"""Making, changing and deleting jobs."""

from contextlib import AbstractContextManager
from datetime import date, datetime
from decimal import Decimal

from django.db import transaction
from django.db.models import F
from django.utils import timezone

from shopjobs.models import Job, Person, Shop
from shopjobs.services.diary import diary_write
from shopjobs.services.refused import refuse_twice


@transaction.atomic
def job_create(
    *,
    shop: Shop,
    number: str,
    at: datetime,
    client: str = "",
    site: str = "",
    unit: str | None = None,
    step: Decimal | None = None,
    fit_on: date | None = None,
    by: Person | None = None,
) -> Job:
    """Make a job; where unit or step is not given, it is the shop's."""
    with _taken(number):
        job = Job.objects.create(
            shop=shop,
            number=number,
            client=client,
            site=site,
            unit=unit or shop.unit,
            step=shop.step if step is None else step,
            fit_on=fit_on,
        )
    diary_write(shop=shop, job=job, text=f"Made job {number}", at=at, person=by)
    return job


@transaction.atomic
def job_change(
    *,
    job: Job,
    number: str,
    client: str,
    site: str,
    unit: str,
    step: Decimal,
    fit_on: date | None,
    by: Person,
    at: datetime,
) -> Job:
    """Change what is known of a job. Measured sizes stay as they were measured."""
    job.number, job.client, job.site = number, client, site
    job.unit, job.step, job.fit_on = unit, step, fit_on
    with _taken(number):
        job.save(update_fields=["number", "client", "site", "unit", "step", "fit_on", "updated_at"])
    job_touch(job=job)
    diary_write(shop=job.shop, job=job, text=f"Changed job {number}", at=at, person=by)
    return job


def job_touch(*, job: Job) -> Job:
    """Count one more change of the job, whoever else counts at the same time."""
    job.updated_at = timezone.now()
    Job.objects.filter(pk=job.pk).update(revision=F("revision") + 1, updated_at=job.updated_at)
    job.__dict__.pop("revision", None)  # Read again by whoever asks for it.
    return job


@transaction.atomic
def job_delete(*, job: Job, by: Person, at: datetime) -> None:
    """Delete a job with all that was entered for it; the diary keeps a line of it."""
    diary_write(shop=job.shop, text=f"Deleted job {job.number}", at=at, person=by)
    job.delete()


def _taken(number: str) -> AbstractContextManager[None]:
    words = f"There is already a job {number} in this shop. Give another number."
    return refuse_twice(words, field="number")

"""Making, changing and deleting jobs."""

from collections.abc import Iterable, Sequence
from contextlib import AbstractContextManager, suppress
from datetime import date, datetime, timedelta
from decimal import Decimal
from functools import partial

from django.conf import settings
from django.core.files.storage import default_storage
from django.db import transaction
from django.utils.module_loading import import_string

from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.row_changes import RowChange
from shopjobs.services.change_words import words_of_rows
from shopjobs.services.clients import client_named, site_at
from shopjobs.services.recording import Told, recorded, saved, tell
from shopjobs.services.refused import Refused, refuse_twice
from shopjobs.services.unnamed_files import files_let_go, named_in

FACTS = ("number", "client_id", "site_id", "unit", "step", "fit_on", "responsible_id")
"""What is known of a job."""
STEP_PLACES = Decimal("1e-8")
"""As the database says it, so that a step that is the same is no change."""


@recorded
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
    responsible: int | None = None,
    by: Person | None = None,
) -> Job:
    """Make a job; where unit or step is not given, it is the shop's.

    `client` and `site` are found by what they are called, or made. `responsible` is the key of a
    person of the shop.
    """
    for_whom = client_named(shop, client)
    with _taken(number):
        job = saved(
            Job(
                shop=shop,
                number=number,
                client=for_whom,
                site=site_at(shop, for_whom, site),
                unit=unit or shop.unit,
                step=shop.step if step is None else step,
                fit_on=fit_on,
                responsible_id=responsible,
            )
        )
    tell(Told(shop=shop, job=job, text=f"Made job {number}", at=at, by=by, stays=True))
    return job


@recorded
def job_change(
    *,
    job: Job,
    number: str,
    client: str,
    site: str,
    unit: str,
    step: Decimal,
    fit_on: date | None,
    responsible: int | None,
    by: Person,
    at: datetime,
) -> Job:
    """Change what is known of a job. Measured sizes stay as they were measured."""
    if unit != job.unit and (why := import_string(settings.JOB_UNIT_HELD)(job)):
        raise Refused(why, field="unit")
    job.number, job.client = number, client_named(job.shop, client)
    job.site = site_at(job.shop, job.client, site)
    job.unit, job.step, job.fit_on = unit, step.quantize(STEP_PLACES), fit_on
    job.responsible_id = responsible
    with _taken(number):
        saved(job, FACTS)
    text = f"Changed job {number}"
    told = Told(shop=job.shop, job=job, text=text, at=at, by=by, counts=True, words=_words)
    tell(told)
    return job


@recorded
def job_delete(*, job: Job, by: Person, at: datetime) -> None:
    """Delete a job; it can be brought back for as long as it is kept."""
    _purge(job.shop, at)
    went = import_string(settings.JOB_CONTENTS)(job)
    job.deleted_at = at
    saved(job, ["deleted_at"])
    text = f"Deleted job {job.number}"
    tell(Told(shop=job.shop, job=job, text=text, at=at, by=by, went=went, stays=True))


@recorded
def job_restore(*, job: Job, by: Person, at: datetime) -> Job:
    """Bring back a deleted job with all that was entered for it, under its number."""
    job.deleted_at = None
    with _taken(job.number):
        saved(job, ["deleted_at"])
    text = f"Brought back job {job.number}"
    tell(Told(shop=job.shop, job=job, text=text, at=at, by=by, stays=True))
    return job


@recorded
def job_archive(*, job: Job, by: Person, at: datetime) -> None:
    """Take a job off the list of what there is to do; all of it stays as it is."""
    job.archived_at = at
    saved(job, ["archived_at"])
    tell(Told(shop=job.shop, job=job, text=f"Archived job {job.number}", at=at, by=by))


@recorded
def job_unarchive(*, job: Job, by: Person, at: datetime) -> None:
    """Put a job back on the list."""
    job.archived_at = None
    saved(job, ["archived_at"])
    text = f"Took job {job.number} out of the archive"
    tell(Told(shop=job.shop, job=job, text=text, at=at, by=by))


def _words(changes: Sequence[RowChange]) -> str:
    """What changed of the job; that a client is new goes without saying."""
    return words_of_rows([each for each in changes if each.table == Job._meta.label_lower])


def _purge(shop: Shop, at: datetime) -> None:
    """Let go for good of what was deleted long ago; lines of history stay, as words alone."""
    long_ago = at - timedelta(days=Job.DAYS_KEPT)
    jobs = Job.with_deleted.filter(shop=shop, deleted_at__lt=long_ago)
    revisions = Revision.objects.filter(job__in=jobs)
    files = named_in(revisions)  # Those of a shop that came from elsewhere may lie anywhere.
    revisions.update(changes=[], can_undo=False)
    folders = [f"photos/{shop.pk}/{job.pk}" for job in jobs]
    jobs.delete()
    transaction.on_commit(partial(_let_files_go, folders, files), robust=True)


def _let_files_go(folders: Sequence[str], files: Iterable[str]) -> None:
    """Remove what was uploaded for jobs that are gone for good, and is nobody else's."""
    theirs = {*files}
    for folder in folders:
        with suppress(OSError):
            _, names = default_storage.listdir(folder)
            theirs |= {f"{folder}/{name}" for name in names}
    files_let_go(theirs)  # All at once: history is read for it.


def _taken(number: str) -> AbstractContextManager[None]:
    words = f"There is already a job {number} in this shop. Give another number."
    return refuse_twice(words, field="number")

"""Printing all the sheets of a job: asked for by a person, made by a worker, kept for a day."""

from collections.abc import Iterable
from datetime import date, datetime

from django.db import transaction

from fronts import jobfile
from fronts.models import CutPlan, SheetFile, SheetSet
from fronts.rules.kitchen import Kitchen
from fronts.selectors.sheet_sets import latest_set
from shopjobs.models import Job, Person
from shopjobs.services.notes import note
from shopjobs.services.refused import Refused
from shopjobs.services.task_pieces import tasks_admit
from shopjobs.services.tasks import task_ask, task_cancel

PIECE_SECONDS = 120
"""Far more than a few sheets take; what takes longer hangs."""


@transaction.atomic
def sheet_set_begin(
    *,
    job: Job,
    kitchen: Kitchen,
    fingerprint: str,
    plan: CutPlan | None,
    sheets: int,
    pieces: int,
    printed_on: date,
    site: str,
    by: Person,
    at: datetime,
) -> SheetSet:
    """Ask for every sheet of the kitchen as it is; the set before it goes."""
    task = task_ask(
        shop=job.shop, job=job, kind="sheet set", pieces=pieces, piece_seconds=PIECE_SECONDS,
        by=by, at=at,
    )  # fmt: skip
    before = latest_set(job)
    if before is not None and before.task.is_open:
        raise Refused("The sheets of this job are being printed already.")
    if before is not None:
        before.delete()
    begun = SheetSet.objects.create(
        job=job, task=task, kitchen=jobfile.write(kitchen), plan=plan, paper=job.shop.paper,
        fingerprint=fingerprint, printed_on=printed_on, sheets=sheets, site=site,
    )  # fmt: skip
    note(shop=job.shop, job=job, text="Had all sheets printed", at=at, person=by)
    tasks_admit(shop_id=job.shop_id)
    return begun


@transaction.atomic
def sheet_set_cancel(*, sheet_set: SheetSet, by: Person, at: datetime) -> None:
    """Call a set off that is being printed; one that has ended stays as it is."""
    task_cancel(task=sheet_set.task, by=by, at=at)


def sheet_files_keep(*, sheet_set: SheetSet, made: Iterable[tuple[str, str, bytes]]) -> None:
    """Keep some more of the set's files: name, cabinet, content."""
    SheetFile.objects.bulk_create(
        SheetFile(sheet_set=sheet_set, name=name, cabinet=cabinet, content=content)
        for name, cabinet, content in made
    )


def sheet_files_drop(*, sheet_set: SheetSet) -> None:
    """Delete the files of a set that was not finished."""
    SheetFile.objects.filter(sheet_set=sheet_set).delete()

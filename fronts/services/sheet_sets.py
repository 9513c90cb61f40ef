"""Printing all the sheets of a job: asked for by a person, made by a worker, kept for a day."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime

from django.db import transaction

from fronts import jobfile
from fronts.models import CutPlan, SheetFile, SheetSet
from fronts.rules.kitchen import Kitchen
from fronts.selectors.sheet_sets import latest_set
from shopjobs.models import Job, Person, TaskState
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
    """Ask for every sheet of the kitchen as it is.

    The set before it goes once this one is there: what has not changed is taken from it.
    """
    task = task_ask(
        shop=job.shop, job=job, kind="sheet set", pieces=pieces, piece_seconds=PIECE_SECONDS,
        by=by, at=at,
    )  # fmt: skip
    before = latest_set(job)
    if before is not None and before.task.is_open:
        raise Refused("The sheets of this job are being printed already.")
    if before is not None and before.task.state != TaskState.DONE:
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


@dataclass(frozen=True, slots=True)
class MadeFile:
    """A sheet as it was printed: its name, its cabinet's label, what it was made from."""

    name: str
    cabinet: str
    made_from: str
    content: bytes


def sheet_files_keep(*, sheet_set: SheetSet, made: Iterable[MadeFile]) -> None:
    """Keep some more of the set's files."""
    SheetFile.objects.bulk_create(
        SheetFile(
            sheet_set=sheet_set, name=each.name, cabinet=each.cabinet, made_from=each.made_from,
            content=each.content,
        )
        for each in made
    )  # fmt: skip


def sheet_sets_drop_older(*, sheet_set: SheetSet) -> None:
    """Delete the job's sets before this one."""
    SheetSet.objects.filter(job_id=sheet_set.job_id, pk__lt=sheet_set.pk).delete()


def sheet_files_drop(*, sheet_set: SheetSet) -> None:
    """Delete the files of a set that was not finished."""
    SheetFile.objects.filter(sheet_set=sheet_set).delete()

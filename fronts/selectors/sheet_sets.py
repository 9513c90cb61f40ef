"""The printed set of a job, and its files."""

from collections.abc import Iterable, Mapping
from datetime import datetime

from django.db.models import QuerySet

from fronts.models import SheetFile, SheetSet
from shopjobs.models import Job, TaskState
from shopjobs.services.lost_tasks import KEPT_FOR


def latest_set(job: Job) -> SheetSet | None:
    """The set that was asked for last, whatever became of it."""
    sets = SheetSet.objects.filter(job=job).select_related("task__asked_by").defer("kitchen")
    return sets.order_by("-pk").first()


def is_kept(sheet_set: SheetSet, at: datetime) -> bool:
    """Whether the set is finished and its files still stand, tidied up after or not."""
    task = sheet_set.task
    if task.state != TaskState.DONE or task.ended_at is None:
        return False
    return task.ended_at + KEPT_FOR > at


def files_of(sheet_set: SheetSet) -> QuerySet[SheetFile]:
    """The set's files in the order of the work."""
    return SheetFile.objects.filter(sheet_set=sheet_set).order_by("pk")


def fittings_of(sheet_set: SheetSet) -> QuerySet[SheetFile]:
    """Those of them that are for cabinets."""
    return files_of(sheet_set).exclude(cabinet="")


def printed_before(job: Job, made_from: Iterable[str]) -> Mapping[str, bytes]:
    """Files of the job's sets that were made from just this, by the names of that."""
    files = SheetFile.objects.filter(sheet_set__job=job, made_from__in=[*made_from])
    return {name: bytes(content) for name, content in files.values_list("made_from", "content")}

"""What was recorded of fronts on site: how they fitted, steps done, and what changed since."""

from collections.abc import Iterable, Mapping
from datetime import datetime

from fronts.models import FitRecord, WorkTick
from fronts.selectors.kitchens import front_keys_of
from shopjobs.models import Job, Revision
from shopjobs.row_changes import changes_of

_ON_SITE = (
    "fronts.fitrecord", "fronts.worktick", "fronts.frontcut", "fronts.frontreceipt",
    "fronts.ordercheck", "fronts.orderlist", "fronts.snag", "fronts.snagphoto",
    "fronts.wallphoto",
)  # fmt: skip
"""Tables in which nothing says how a front is to be."""


def fits_of(job: Job, keys: Mapping[str, int]) -> dict[str, list[FitRecord]]:
    """Every record of each front that was fitted, by its label; the latest first.

    `keys` are those of the job's fronts by what they are called now.
    """
    found: dict[int | None, list[FitRecord]] = {}
    records = FitRecord.objects.filter(job=job, front__isnull=False).select_related("fitted_by")
    for record in records.order_by("-fitted_at", "-pk"):
        found.setdefault(record.front_id, []).append(record)
    return {label: found[key] for label, key in keys.items() if key in found}


def fit_records_of(job: Job) -> dict[str, FitRecord]:
    """The latest record of each front that was fitted, by what the front is called now."""
    return {label: records[0] for label, records in fits_of(job, front_keys_of(job)).items()}


def ticks_of(fronts: Iterable[int]) -> Mapping[int, Mapping[str, WorkTick]]:
    """The steps that were ticked off, by their words, of each of these fronts by its key."""
    found: dict[int, dict[str, WorkTick]] = {}
    rows = WorkTick.objects.filter(front__in=list(fronts)).select_related("ticked_by")
    for tick in rows:
        found.setdefault(tick.front_id, {})[tick.step] = tick
    return found


def kitchen_changes(job: Job, about: str, since: datetime) -> list[datetime]:
    """When the kitchen was changed after that, the first first.

    For all of it, or `about` one cabinet, as its revisions name it.
    """
    revisions = Revision.objects.filter(job=job, at__gt=since, about__in=("", about))
    return [
        revision.at
        for revision in revisions.order_by("pk")
        if any(change.table not in _ON_SITE for change in changes_of(revision.changes))
    ]

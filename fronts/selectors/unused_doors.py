"""Doors on hand that no front is made of, over all jobs of a shop."""

from collections import defaultdict
from collections.abc import Sequence

from django.db.models import QuerySet

from fronts.models import DoorOnHand, Front
from fronts.selectors.schedules import schedule_of
from shopjobs.models import Job, Shop


def jobs_with_doors(shop: Shop) -> QuerySet[Job]:
    """The jobs that have doors on hand, the latest changed first."""
    doors = DoorOnHand.objects.filter(job__shop=shop)
    return Job.objects.filter(shop=shop, pk__in=doors.values("job")).order_by("-updated_at", "-pk")


def unused_doors(jobs: Sequence[Job]) -> dict[int, list[DoorOnHand]]:
    """The doors of each job, by its key, that nothing of its kitchen is made of."""
    rows = DoorOnHand.objects.filter(job__in=jobs).order_by("position", "pk")
    doors: dict[int, list[DoorOnHand]] = defaultdict(list)
    for row in rows.prefetch_related("hinge_bores"):
        doors[row.job_id].append(row)
    used = {job.pk: fronts_by_door(job) for job in jobs if job.pk in doors}
    return {
        key: [row for row in several if row.label not in used[key]]
        for key, several in doors.items()
    }


def fronts_by_door(job: Job) -> dict[str, str]:
    """Which front of a job each of its doors is, by their labels: by name, or by the rules."""
    named = Front.objects.filter(door__job=job).select_related("door", "opening__cabinet")
    by_name = {row.door.label: str(row.opening) for row in named if row.door is not None}
    return by_name | {use.door: use.front for use in schedule_of(job).doors_on_hand}


def door_on_hand_of(shop: Shop, key: int) -> DoorOnHand:
    """One door of a job of the shop that is there."""
    rows = DoorOnHand.objects.filter(job__shop=shop, job__deleted_at=None)
    return rows.select_related("job__shop").get(pk=key)

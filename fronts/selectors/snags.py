"""A job's snags, and how many are open where; what belongs to another job does not exist."""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import TypeVar

from django.db.models import Count, Prefetch, Q, QuerySet
from django.utils import timezone

from fronts.models import Cabinet, Front, Snag
from fronts.rules.snags import OpenSnags, SnagOf, on_words, open_snags
from fronts.selectors.kitchens import front_keys_of
from fronts.selectors.photos import snag_photos_of
from shopjobs.models import Job

Key = TypeVar("Key")
Called = Mapping[int | None, str]
"""What the fronts of a job are called now, by their keys."""


@dataclass(frozen=True, slots=True)
class SnagOn:
    """What a snag is on, in words; `gone` where that is there no more."""

    words: str
    gone: bool = False


def snags_of(job: Job) -> QuerySet[Snag]:
    """The job's snags as they were written down, with their people and photos at hand."""
    rows = Snag.objects.filter(job=job).select_related(
        "cabinet", "assigned_to", "raised_by", "done_by"
    )
    photos = Prefetch("photos", snag_photos_of(job))
    return rows.order_by("raised_at", "pk").prefetch_related(photos)


def snag_of(job: Job, key: int) -> Snag:
    """One snag of the job."""
    snag = snags_of(job).get(pk=key)
    snag.job = job
    return snag


@dataclass(frozen=True, slots=True)
class Place:
    """What a new snag is on, and what that is called; no row where it has gone."""

    label: str = ""
    cabinet: Cabinet | None = None
    front: Front | None = None


def place_now(job: Job, of: SnagOf, key: int | None, label: str) -> Place:
    """What had this key, or else is called so by now: a phone may have been away for days."""
    if of == "cabinet":
        cabinets = Cabinet.objects.filter(job=job)
        cabinet = cabinets.filter(pk=key or 0).first() or cabinets.filter(label=label).first()
        return Place(cabinet.label if cabinet else label, cabinet)
    if of == "job":
        return Place()
    keys = front_keys_of(job)
    called = next((name for name, front in keys.items() if front == key), label)
    fronts = Front.objects.select_related("opening__cabinet")
    front = fronts.filter(pk=keys.get(called, 0)).first()
    return Place(called, front.opening.cabinet if front else None, front)


def fronts_called(job: Job, snags: Iterable[Snag]) -> Called:
    """What the fronts that snags are on are called now; asked for only where there are any."""
    if not any(snag.front_id for snag in snags):
        return {}
    return {key: label for label, key in front_keys_of(job).items()}


def on_now(snag: Snag, called: Called) -> SnagOn:
    """What a snag is on as that is called now; as it was called then where it has gone."""
    label = _label_now(snag, called)
    return SnagOn(on_words(snag.of, label or snag.label), gone=snag.of != "job" and not label)


def _label_now(snag: Snag, called: Called) -> str:
    """What its front or cabinet is called now; "" where that has gone, or it is of none."""
    if snag.of == "front":
        return called.get(snag.front_id, "")
    return snag.cabinet.label if snag.cabinet else ""


def open_in_job(job: Job) -> OpenSnags:
    """How many of the job's snags are open, as of today."""
    dues = Snag.objects.filter(job=job, done_at=None).values_list("due", flat=True)
    return open_snags(dues, timezone.localdate())


def open_by_cabinet(job: Job) -> dict[int, OpenSnags]:
    """How many snags are open on each cabinet and its fronts, by the cabinet's key."""
    rows = Snag.objects.filter(job=job, done_at=None, cabinet__isnull=False)
    return _by(rows.values_list("cabinet_id", "due"))


def open_by_label(job: Job) -> dict[str, OpenSnags]:
    """How many snags are open on each front, and on each cabinet by itself, by what it is called.

    What cabinets and fronts are called never agrees: a front's label holds its opening's.
    """
    snags = list(Snag.objects.filter(job=job, done_at=None).select_related("cabinet"))
    called = fronts_called(job, snags)
    on = ((_label_now(snag, called), snag.due) for snag in snags)
    return _by((label, due) for label, due in on if label)


def open_snags_by_job(jobs: QuerySet[Job] | Iterable[int]) -> dict[int, OpenSnags]:
    """How many snags of each job are open, by the jobs' keys; nothing of a job without any."""
    late = Count("pk", filter=Q(due__lt=timezone.localdate()))
    rows = Snag.objects.filter(job__in=jobs, done_at=None).order_by().values("job")
    counts = rows.annotate(count=Count("pk"), late=late).values_list("job", "count", "late")
    return {job: OpenSnags(count, late) for job, count, late in counts}


def _by(rows: Iterable[tuple[Key, date | None]]) -> dict[Key, OpenSnags]:
    dues: dict[Key, list[date | None]] = defaultdict(list)
    for key, due in rows:
        dues[key].append(due)
    today = timezone.localdate()
    return {key: open_snags(each, today) for key, each in dues.items()}

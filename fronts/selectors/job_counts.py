"""How far jobs have come, front by front, counted in the database: no schedule is asked for."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import Any

from django.db.models import Count as Number
from django.db.models import Exists, OuterRef, Q, QuerySet, Subquery

from fronts.models import FitRecord, Front, StageMark
from fronts.rules.front_states import FRONT_STATES
from fronts.rules.job_stages import JobCounts
from fronts.rules.snags import NO_SNAGS
from fronts.selectors.snags import open_snags_by_job
from shopjobs.models import Job

Jobs = QuerySet[Job] | Iterable[int]
"""Keys of jobs, or a question for jobs, which is then asked within the others."""
_JOB = "opening__cabinet__job"
_STATES_DONE = [word for word, state in FRONT_STATES.items() if state.is_done]


def counts_of(jobs: Jobs) -> dict[int, JobCounts]:
    """What is counted of each job that has a front or an open snag."""
    snags = open_snags_by_job(jobs)
    found = {key: JobCounts(snags=open_snags) for key, open_snags in snags.items()}
    for key, counts in front_counts_of(jobs):
        found[key] = replace(counts, snags=snags.get(key, NO_SNAGS))
    fitted = StageMark.objects.filter(job__in=jobs, stage="fit", done_on__isnull=False)
    for key in fitted.values_list("job", flat=True):
        found[key] = replace(found.get(key, JobCounts()), fitted=True)
    return found


def front_counts_of(jobs: Jobs) -> Iterator[tuple[int, JobCounts]]:
    """The same of fronts alone, in one question."""
    for key, fronts, to_make, made, done in _fronts(jobs):
        yield key, JobCounts(fronts, to_make, made, done)


def _fronts(jobs: Jobs) -> QuerySet[Any, Any]:
    """Of each job with fronts its key, and how many there are, to be made, made and done."""
    latest = FitRecord.objects.filter(front=OuterRef("pk")).order_by("-fitted_at", "-pk")
    done = Q(latest__in=_STATES_DONE)
    exists = Q(door__isnull=False) | Q(choose=True) | Q(width__isnull=False, height__isnull=False)
    made = Q(cut__isnull=False) | Q(receipts__isnull=False) | done
    rows = Front.objects.filter(**{f"{_JOB}__in": jobs}).order_by()
    counted: QuerySet[Any, Any] = (
        rows.annotate(latest=Subquery(latest.values("state")[:1]))
        .values(_JOB)
        .annotate(
            fronts=Number("pk"),
            to_make=Number("pk", filter=~exists),
            made=Number("pk", filter=~exists & made),
            done=Number("pk", filter=done),
        )
        .values_list(_JOB, "fronts", "to_make", "made", "done")
    )
    return counted


def all_done_of(jobs: QuerySet[Job]) -> dict[int, int]:
    """How many fronts there are of each job all of whose fronts are done."""
    fronts = Front.objects.filter(**{f"{_JOB}__in": jobs}).order_by().values(_JOB)
    later = FitRecord.objects.filter(front=OuterRef("front")).filter(
        Q(fitted_at__gt=OuterRef("fitted_at"))
        | Q(fitted_at=OuterRef("fitted_at"), pk__gt=OuterRef("pk"))
    )
    records = FitRecord.objects.filter(
        ~Exists(later), job__in=jobs, front__isnull=False, state__in=_STATES_DONE
    )
    done = dict(records.order_by().values_list("job").annotate(Number("pk")))
    counted = fronts.annotate(count=Number("pk")).values_list(_JOB, "count")
    return {key: count for key, count in counted if done.get(key) == count}

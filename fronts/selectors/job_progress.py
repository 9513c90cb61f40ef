"""How far jobs have come, counted in the database: a list of jobs asks for no schedule."""

from collections.abc import Iterable
from datetime import date
from typing import Any

from django.db.models import Count as Number
from django.db.models import Exists, OuterRef, Q, QuerySet, Subquery
from django.utils import timezone

from fronts.models import Cabinet, FitRecord, Front, OrderCheck, OrderList
from fronts.rules.front_states import FRONT_STATES
from fronts.rules.job_stages import DONE, JOB_STAGES, JobCounts, is_late, job_stage, waits_for
from fronts.rules.snags import NO_SNAGS
from fronts.selectors.snags import open_snags_by_job
from shopjobs.job_progress import Count, JobProgress, Standing
from shopjobs.models import Job, Shop

Jobs = QuerySet[Job] | Iterable[int]
"""Keys of jobs, or a question for jobs, which is then asked within the others."""
_JOB = "opening__cabinet__job"
_STATES_DONE = [word for word, state in FRONT_STATES.items() if state.is_done]


def progress_of(jobs: Iterable[Job]) -> dict[int, JobProgress]:
    """How far each job has come, by its key, in a fixed number of questions."""
    listed, today = list(jobs), timezone.localdate()
    keys = [job.pk for job in listed]
    counts, lines = counts_of(keys), _order_lines(keys)
    found = {}
    for job in listed:
        counted = counts.get(job.pk, JobCounts())
        standing = _standing(counted, job.fit_on, today)
        found[job.pk] = _said(standing, counted, lines.get(job.pk, Count()))
    return found


def standings_of(jobs: QuerySet[Job]) -> dict[int, Standing]:
    """What each of the jobs is at, and whether it is late, by its key.

    A job whose fronts are all done is told by two counts; only of others more is asked.
    """
    rows, today = dict(jobs.values_list("pk", "fit_on")), timezone.localdate()
    all_done, snags = _all_done(jobs), open_snags_by_job(jobs)
    counts = counts_of([key for key in rows if key not in all_done])
    for key, fronts in all_done.items():
        counts[key] = JobCounts(fronts, done=fronts, snags=snags.get(key, NO_SNAGS))
    return {
        key: _standing(counts.get(key, JobCounts()), fit_on, today) for key, fit_on in rows.items()
    }


def _all_done(jobs: QuerySet[Job]) -> dict[int, int]:
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


def counts_of(jobs: Jobs) -> dict[int, JobCounts]:
    """What is counted of each job that has a front or an open snag."""
    snags = open_snags_by_job(jobs)
    found = {key: JobCounts(snags=open_snags) for key, open_snags in snags.items()}
    for key, fronts, to_make, made, done in _fronts(jobs):
        found[key] = JobCounts(fronts, to_make, made, done, snags.get(key, NO_SNAGS))
    return found


def jobs_with_cabinet(shop: Shop, word: str) -> QuerySet[Any, Any]:
    """The keys of the shop's jobs in which a cabinet is called so, in capitals or not."""
    return Cabinet.objects.filter(job__shop=shop, label__iexact=word).values("job")


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


def _order_lines(keys: list[int]) -> dict[int, Count]:
    """How many lines of each job's hardware order are checked, of those that stood on it."""
    checked: dict[int, set[str]] = {}
    for job, item in OrderCheck.objects.filter(job__in=keys).values_list("job", "item"):
        checked.setdefault(job, set()).add(item)
    listed = {job: set(items) for job, items in checked.items()}
    for job, items in OrderList.objects.filter(job__in=keys).values_list("job", "items"):
        listed.setdefault(job, set()).update(items)
    return {job: Count(len(checked.get(job, ())), len(items)) for job, items in listed.items()}


def _standing(counts: JobCounts, fit_on: date | None, today: date) -> Standing:
    stage = job_stage(counts)
    done = stage == DONE
    return Standing(stage.word, is_done=done, is_late=is_late(fit_on, today, done=done))


def _said(standing: Standing, counts: JobCounts, lines: Count) -> JobProgress:
    return JobProgress(
        standing=standing,
        stage=JOB_STAGES[standing.stage],
        waits_for=waits_for(counts),
        snags=counts.snags.words,
        order=lines,
        made=Count(counts.made, counts.to_make),
        fitted=Count(counts.done, counts.fronts),
    )

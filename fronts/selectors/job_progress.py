"""How far jobs have come, counted in the database: a list of jobs asks for no schedule."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date
from typing import Any

from django.db.models import QuerySet
from django.utils import timezone

from fronts.models import Cabinet, OrderCheck, OrderList
from fronts.rules.job_stages import DONE, JOB_STAGES, JobCounts, is_late, job_stage, waits_for
from fronts.selectors.dates import jobs_now
from fronts.selectors.job_counts import counts_of, unfinished
from shopjobs.job_progress import Count, JobProgress, Standing, Standings
from shopjobs.models import Job, Shop


def progress_of(jobs: Iterable[Job]) -> dict[int, JobProgress]:
    """How far each job of one shop has come, by its key, in a fixed number of questions."""
    listed, today = list(jobs), timezone.localdate()
    if not listed:
        return {}
    keys = [job.pk for job in listed]
    counts, lines = counts_of(keys), _order_lines(keys)
    now = jobs_now(listed[0].shop, today, keys, counts)
    found = {}
    for job in listed:
        counted = counts.get(job.pk, JobCounts())
        standing = _standing(counted, job.fit_on, today)
        said = _said(standing, counted, lines.get(job.pk, Count()))
        # One that was deleted meanwhile is at nothing now.
        late = now[job.pk].words if job.pk in now and not standing.is_done else ""
        found[job.pk] = replace(said, late=late)
    return found


def standings_of(jobs: QuerySet[Job]) -> Standings:
    """What each of the jobs is at, and whether it is late.

    Of a job that is over nothing is counted: a shop of many years has few others. One that is
    made after this was asked has nothing in it yet, and is taken to be over until the next list.
    """
    today, days = timezone.localdate(), dict(unfinished(jobs).values_list("pk", "fit_on"))
    counts = counts_of(days)
    left = {
        key: _standing(counts.get(key, JobCounts()), fit_on, today) for key, fit_on in days.items()
    }
    return Standings(left, Standing(DONE.word, is_done=True, is_late=False))


def jobs_with_cabinet(shop: Shop, word: str) -> QuerySet[Any, Any]:
    """The keys of the shop's jobs in which a cabinet is called so, in capitals or not."""
    return Cabinet.objects.filter(job__shop=shop, label__iexact=word).values("job")


def _order_lines(keys: list[int]) -> dict[int, Count]:
    """How many lines of each job's hardware order are checked, of those that stood on it."""
    checked: dict[int, set[str]] = {}
    for job, item in OrderCheck.objects.filter(job__in=keys, open=False).values_list("job", "item"):
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

"""How far jobs have come, front by front, counted in the database: no schedule is asked for."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import replace
from typing import Any, cast

from django.db.models import Count as Number
from django.db.models import Exists, OuterRef, Q, QuerySet, Subquery, Value
from django.db.models.functions import Coalesce

from fronts.models import ApprovedLine, FitRecord, Front, OrderApproval, Snag, StageMark
from fronts.rules.date_facts import Stage
from fronts.rules.date_facts import StageMark as MarkFacts
from fronts.rules.front_states import FRONT_STATES
from fronts.rules.job_stages import JobCounts, with_marks
from fronts.selectors.order_progress import still_to_send, unsent
from fronts.selectors.snags import open_snags_by_job
from shopjobs.models import Job

Jobs = QuerySet[Job] | Iterable[int]
"""Keys of jobs, or a question for jobs, which is then asked within the others."""
_JOB = "opening__cabinet__job"
_STATES_DONE = [word for word, state in FRONT_STATES.items() if state.is_done]
_PROBLEMS = [word for word, state in FRONT_STATES.items() if state.is_problem]


def counts_of(jobs: Jobs) -> dict[int, JobCounts]:
    """What is counted of each job of which anything is recorded."""
    found = recorded_of(jobs)
    for key, marks in marks_of(jobs).items():
        found[key] = with_marks(found.get(key, JobCounts()), marks)
    for key, snags in open_snags_by_job(jobs).items():
        found[key] = replace(found.get(key, JobCounts()), snags=snags)
    return found


def recorded_of(jobs: Jobs) -> dict[int, JobCounts]:
    """What the fronts and the order of each job with fronts say of it, in few questions."""
    rows = list(_fronts(jobs))
    more = still_to_send([key for key, *_, approved, _ in rows if approved])
    return {
        key: JobCounts(
            fronts, to_make, made, done, approved=approved,
            sent=approved and not more.get(key, to_send), problems=problems,
        )
        for key, fronts, to_make, made, done, problems, approved, to_send in rows
    }  # fmt: skip


def marks_of(jobs: Jobs) -> dict[int, list[MarkFacts]]:
    """What somebody said of each job's stages."""
    marks: dict[int, list[MarkFacts]] = defaultdict(list)
    rows = StageMark.objects.filter(job__in=jobs)
    for key, stage, begun, done in rows.values_list("job_id", "stage", "begun_on", "done_on"):
        marks[key].append(MarkFacts(cast(Stage, stage), begun, done))
    return marks


def _to_send() -> QuerySet[Any, Any]:
    """The items of an outer job's approved order of which more was ordered than sent for."""
    return unsent(ApprovedLine.objects.filter(approval__job=OuterRef(_JOB)))


def _fronts(jobs: Jobs) -> QuerySet[Any, Any]:
    """Of each job with fronts its key, and how many there are, to be made, made, done, problems.

    Then whether its order is approved, and whether anything of that was not sent for; what stock
    does for it is not counted.
    """
    done = Q(latest__in=_STATES_DONE)
    exists = Q(door__isnull=False) | Q(choose=True) | Q(width__isnull=False, height__isnull=False)
    made = Q(cut__isnull=False) | Q(receipts__isnull=False) | done
    rows = Front.objects.filter(**{f"{_JOB}__in": jobs}).order_by()
    counted: QuerySet[Any, Any] = (
        rows.annotate(latest=_latest_state())
        .values(_JOB)
        .annotate(
            fronts=Number("pk"),
            to_make=Number("pk", filter=~exists),
            made=Number("pk", filter=~exists & made),
            done=Number("pk", filter=done),
            problems=Number("pk", filter=Q(latest__in=_PROBLEMS)),
            approved=Exists(OrderApproval.objects.filter(job=OuterRef(_JOB))),
            to_send=Exists(_to_send()),
        )
        .values_list(_JOB, "fronts", "to_make", "made", "done", "problems", "approved", "to_send")
    )
    return counted


def unfinished(jobs: QuerySet[Job]) -> QuerySet[Job]:
    """Those of the jobs that have no front yet, one that is not done, or a snag still open."""
    fronts = Front.objects.filter(**{_JOB: OuterRef("pk")})
    not_done = fronts.annotate(latest=Coalesce(_latest_state(), Value(""))).exclude(
        latest__in=_STATES_DONE
    )
    snags = Snag.objects.filter(job=OuterRef("pk"), done_at=None)
    return jobs.filter(Exists(not_done) | ~Exists(fronts) | Exists(snags))


def _latest_state() -> Subquery:
    """The state that was recorded last of an outer front."""
    latest = FitRecord.objects.filter(front=OuterRef("pk")).order_by("-fitted_at", "-pk")
    return Subquery(latest.values("state")[:1])

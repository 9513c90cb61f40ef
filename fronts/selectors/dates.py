"""The days of a shop and its jobs: a few reads however many jobs there are, and no schedule."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date

from django.db.models import QuerySet

from fronts.facts.rows import from_row
from fronts.models import ClosedDays, JobDates, ShopDates, StageMark
from fronts.rules.capacity import Plan, planned
from fronts.rules.date_facts import DOING, Stage, at_once, stage_days, workdays
from fronts.rules.date_facts import JobDates as JobFacts
from fronts.rules.date_facts import ShopDates as ShopFacts
from fronts.rules.date_facts import StageMark as MarkFacts
from fronts.rules.delivery import Awaited, delivery
from fronts.rules.job_stages import JobCounts, stage_recorded, with_marks
from fronts.rules.lateness import Lateness, lateness
from fronts.rules.stages import DatedJob, stage_of
from fronts.rules.working_days import WorkingDays, working_days
from fronts.selectors.deliveries import awaited_by
from fronts.selectors.job_counts import marks_of, recorded_of
from shopjobs.models import Job, Shop

NOTHING_SAID = JobFacts()
LONG_AGO = date(1, 1, 1)
"""The day of what is done without anybody saying when."""


@dataclass(frozen=True, slots=True)
class ShopCalendar:
    """What a shop says of its days, when it is closed, and its working days."""

    facts: ShopFacts
    closed: tuple[ClosedDays, ...]
    days: WorkingDays

    def name_of(self, day: date) -> str:
        """What a closed day is for; "" where the shop is not closed then."""
        return next((each.name for each in self.closed if each.first <= day <= each.last), "")


@dataclass(frozen=True, slots=True)
class ShopPlan:
    """A shop's jobs with their days, as of a day."""

    calendar: ShopCalendar
    jobs: Mapping[int, DatedJob]
    plan: Plan
    today: date
    sellers: bool

    def lateness(self, key: int) -> Lateness:
        """Whether a job is late, or will be, and why."""
        return lateness(self.jobs[key], self.calendar.days, self.today, self.plan.of(key))


@dataclass(frozen=True, slots=True)
class JobNow:
    """At which stage a job is, None once it is fitted; whether it is late by itself, and why."""

    stage: Stage | None
    lateness: Lateness

    @property
    def words(self) -> str:
        """`late at cutting`, `will be late`; "" of a job that is in time."""
        late = self.lateness
        return f"late at {DOING[late.stage]}" if late.state == "late" and late.stage else late.state


def shop_dates_of(shop: Shop) -> ShopFacts:
    """What the shop says of its days, or what is usual."""
    row = ShopDates.objects.filter(shop=shop).first()
    return ShopFacts() if row is None else from_row(ShopFacts, row)


def closed_days_of(shop: Shop) -> QuerySet[ClosedDays]:
    """When the shop is closed, the first time first."""
    return ClosedDays.objects.filter(shop=shop).order_by("first", "last", "pk")


def calendar_of(shop: Shop) -> ShopCalendar:
    """The shop's days."""
    facts, closed = shop_dates_of(shop), tuple(closed_days_of(shop))
    days = working_days(workdays(facts), [(each.first, each.last) for each in closed])
    return ShopCalendar(facts, closed, days)


def job_dates_of(job: Job) -> JobFacts:
    """The days that the job itself says its stages take."""
    row = JobDates.objects.filter(job=job).first()
    return NOTHING_SAID if row is None else from_row(JobFacts, row)


def dated_jobs(
    jobs: QuerySet[Job],
    shop: Shop,
    calendar: ShopCalendar,
    counts: Mapping[int, JobCounts] | None = None,
    *,
    sellers: bool = False,
) -> list[DatedJob]:
    """Jobs of a shop with their days and marks; what was recorded of them marks a stage too.

    `counts` are what is counted of them, where that is known already. Where `sellers` are told,
    it is said who sells what is still to be sent for.
    """
    asked = jobs.order_by()
    marks = marks_of(asked)
    recorded = recorded_of(asked) if counts is None else counts
    for key, counted in recorded.items():
        if stage := stage_recorded(with_marks(counted, marks.get(key, ()))):
            marks.setdefault(key, []).append(MarkFacts(stage, None, LONG_AGO))
    awaited = awaited_by(shop, recorded, sellers=sellers)
    return [
        _dated(job, calendar, tuple(marks.get(job.pk, ())), awaited.get(job.pk))
        for job in jobs.select_related("dates").order_by("pk")
    ]


def _dated(
    job: Job,
    calendar: ShopCalendar,
    marks: tuple[MarkFacts, ...],
    awaited: Iterable[Awaited] | None,
) -> DatedJob:
    said = _said(job)
    takes = delivery(said.lead_days, calendar.facts.lead_days, awaited, calendar.days)
    return DatedJob(
        job.pk, job.number, job.fit_on,
        replace(stage_days(calendar.facts, said), lead=takes.days),
        marks, job.client_name, job.site_address, takes,
    )  # fmt: skip


def dated_job(job: Job, known: ShopPlan) -> DatedJob:
    """One job with its days and marks, whether it is planned or not."""
    if job.pk in known.jobs:
        return known.jobs[job.pk]
    (found,) = dated_jobs(
        Job.objects.filter(pk=job.pk), job.shop, known.calendar, sellers=known.sellers
    )
    return found


def _said(job: Job) -> JobFacts:
    row = getattr(job, "dates", None)
    return NOTHING_SAID if row is None else from_row(JobFacts, row)


def plan_of(shop: Shop, today: date, *, sellers: bool = False) -> ShopPlan:
    """The days of the shop's jobs on the list that have a fitting date and are not fitted.

    Who sells what is still to be sent for is told to those alone who see that: `sellers`.
    """
    calendar = calendar_of(shop)
    fitted = StageMark.objects.filter(stage="fit", done_on__isnull=False)
    jobs = Job.objects.filter(shop=shop, fit_on__isnull=False, archived_at=None)
    jobs = jobs.exclude(pk__in=fitted.values("job"))
    dated = {each.key: each for each in dated_jobs(jobs, shop, calendar, sellers=sellers)}
    plan = planned(dated.values(), calendar.days, at_once(calendar.facts), today)
    return ShopPlan(calendar, dated, plan, today, sellers)


def jobs_now(
    shop: Shop,
    today: date,
    keys: Iterable[int],
    counts: Mapping[int, JobCounts] | None = None,
) -> dict[int, JobNow]:
    """At which stage each of these jobs is, and whether it is late, by the jobs' keys.

    In a few reads, however many there are; other jobs that want the same days don't count here.
    `counts` are what is counted of them, where that is known already.
    """
    calendar = calendar_of(shop)
    jobs = Job.objects.filter(shop=shop, pk__in=list(keys))
    found = dated_jobs(jobs, shop, calendar, counts)
    return {
        each.key: JobNow(stage_of(each), lateness(each, calendar.days, today)) for each in found
    }


def marks_of_job(job: Job) -> QuerySet[StageMark]:
    """What is marked of a job's stages, with who said so."""
    return StageMark.objects.filter(job=job).select_related("marked_by")


def marks_of_shop(shop: Shop, first: date, last: date) -> QuerySet[StageMark]:
    """What was done in the shop's jobs from one day to another."""
    jobs = Job.objects.filter(shop=shop)
    rows = StageMark.objects.filter(job__in=jobs, done_on__range=(first, last))
    return rows.select_related("job__client", "job__site").order_by("done_on", "job__number", "pk")

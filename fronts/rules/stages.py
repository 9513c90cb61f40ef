"""Stages of a job: the latest days on which each may begin and must end, back from its fitting."""

from dataclasses import dataclass
from datetime import date

from fronts.rules.date_facts import STAGES, Stage, StageDays, StageMark
from fronts.rules.delivery import Delivery
from fronts.rules.working_days import WorkingDays, is_sensible


@dataclass(frozen=True, slots=True)
class Span:
    """The first and the last working day of a stage."""

    start: date
    end: date


@dataclass(frozen=True, slots=True)
class DatedJob:
    """A job as its dates know it. `key` tells it from all others; `marks` are of its stages.

    `delivery` says why what it orders takes as long as its `days` say, and when what was sent
    for comes; None where nobody asked.
    """

    key: int
    number: str
    fit_on: date | None
    days: StageDays
    marks: tuple[StageMark, ...] = ()
    client: str = ""
    site: str = ""
    delivery: Delivery | None = None

    @property
    def due(self) -> date | None:
        """The day on which the last of what was sent for comes; None where nothing is to come."""
        return self.delivery.due if self.delivery else None

    def mark(self, stage: Stage) -> StageMark:
        """What is marked of a stage."""
        return next((each for each in self.marks if each.stage == stage), StageMark(stage))


def stage_of(job: DatedJob) -> Stage | None:
    """The stage at which a job is: the first that is not done; None once it is fitted.

    What comes before a stage that is done counts as done, marked or not.
    """
    return next(iter(open_stages(job)), None)


def open_stages(job: DatedJob) -> tuple[Stage, ...]:
    """The stages that are still to be done."""
    done = [STAGES.index(each.stage) for each in job.marks if each.done_on is not None]
    return STAGES[max(done, default=-1) + 1 :]


def latest_spans(job: DatedJob, calendar: WorkingDays) -> dict[Stage, Span]:
    """The latest days of every stage; nothing of a job without a fitting date.

    Fitting begins on its date, or on the first working day after it. Every other stage ends
    on the working day before the next one begins; the order ends before that by the days that
    it is on its way, so that all is there when cutting begins.
    """
    if job.fit_on is None or not is_sensible(job.fit_on):
        return {}
    spans: dict[Stage, Span] = {}
    start = calendar.number(job.fit_on)
    spans["fit"] = span_of(calendar, start, job.days.fit)
    for stage in reversed(STAGES[:-1]):
        start -= job.days.until_next(stage) + job.days.of(stage)
        spans[stage] = span_of(calendar, start, job.days.of(stage))
    return {stage: spans[stage] for stage in STAGES}


def span_of(calendar: WorkingDays, start: int, days: int) -> Span:
    """So many working days from the one with this number on."""
    return Span(calendar.day(start), calendar.day(start + days - 1))


def earliest_fitting(job: DatedJob, calendar: WorkingDays, today: date) -> date:
    """The first day on which fitting can begin, if all goes on from today without a wait.

    A stage that was begun takes the rest of its days; one that took longer ends today. Cutting
    begins the day after what was sent for has come; what is cut already waits for it to be fitted.
    """
    at = calendar.number(today)
    there = at if job.due is None else calendar.number(job.due) + 1
    for stage in open_stages(job)[:-1]:
        begun = job.mark(stage).begun_on
        if stage == "cut" and begun is None:
            at = max(at, there)
        days = job.days.of(stage)
        end = at + days if begun is None else max(calendar.number(begun) + days, at + 1)
        at = end + job.days.until_next(stage)
    return calendar.day(max(at, there))

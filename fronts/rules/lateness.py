"""Whether a job is late, or will be, and why: in words that name the days."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date
from typing import Literal, TypeAlias

from fronts.rules.capacity import Planned
from fronts.rules.date_facts import DOING, STAGES, Stage
from fronts.rules.day_words import day_words, days_words, listed
from fronts.rules.stages import DatedJob, Span, earliest_fitting, latest_spans, open_stages
from fronts.rules.working_days import WorkingDays

LateState: TypeAlias = Literal["", "late", "will be late"]


@dataclass(frozen=True, slots=True)
class Lateness:
    """Whether a job is late; `stage` is the one that is, and `words` say why."""

    state: LateState = ""
    stage: Stage | None = None
    words: str = ""


IN_TIME = Lateness()


def lateness(
    job: DatedJob,
    calendar: WorkingDays,
    today: date,
    plan: Mapping[Stage, Planned] | None = None,
) -> Lateness:
    """Late: a stage is past its latest days. Will be late: what is left no longer fits in.

    `plan` are the job's planned days, where other jobs count too.
    """
    spans, left = latest_spans(job, calendar), open_stages(job)
    if not spans or not left:
        return IN_TIME
    stage = left[0]
    begun = job.mark(stage).begun_on is not None
    if (spans[stage].end if begun else spans[stage].start) < today:
        return Lateness("late", stage, _late_words(job, stage, spans, today))
    if stage == "fit" and begun:
        return IN_TIME
    earliest = earliest_fitting(job, calendar, today)
    if earliest > spans["fit"].start:
        words = _too_slow(job, stage, spans, earliest, today)
        waits = earliest > earliest_fitting(replace(job, delivery=None), calendar, today)
        words = f"{_coming(job, today)}; {words}" if waits else words
        return Lateness("will be late", stage, words)
    return _for_others(job, stage, (plan or {}).get(stage), today)


def _late_words(job: DatedJob, stage: Stage, spans: Mapping[Stage, Span], today: date) -> str:
    """`cutting should have begun on 3 March: 4 working days for cutting and 5 for …`."""
    if job.mark(stage).begun_on is None:
        said = f"{DOING[stage]} should have begun on {day_words(spans[stage].start, today)}"
        needs = _needs(job, STAGES[STAGES.index(stage) :])
    else:
        said = f"{DOING[stage]} should have been done by {day_words(spans[stage].end, today)}"
        needs = _needs(job, STAGES[STAGES.index(stage) :], but=stage)
    return f"{said}: {needs} before {_fitting(spans, today)}" if needs else said


def _needs(job: DatedJob, stages: tuple[Stage, ...], but: Stage | None = None) -> str:
    """`4 working days for cutting and 5 for finishing`: what stands before fitting.

    Of delivery also what takes so long, and from whom, where a supplier says.
    """
    needed: list[tuple[int, str]] = []
    for stage in stages[:-1]:
        if stage != but:
            needed.append((job.days.of(stage), DOING[stage]))
        if lead := job.days.until_next(stage):
            needed.append((lead, job.delivery.words if job.delivery else "delivery"))
    first = [f"{days_words(days)} for {what}" for days, what in needed[:1]]
    return listed([*first, *(f"{days} for {what}" for days, what in needed[1:])])


def _too_slow(
    job: DatedJob, stage: Stage, spans: Mapping[Stage, Span], earliest: date, today: date
) -> str:
    can = (
        f"fitting can begin on {day_words(earliest, today)}, "
        f"not on {day_words(spans['fit'].start, today)}"
    )
    if stage == "fit":
        return can
    begun = job.mark(stage).begun_on
    since = "" if begun is None else f", begun on {day_words(begun, today)}"
    takes = f"{DOING[stage]} takes {days_words(job.days.of(stage))}{since}"
    rest = _needs(job, STAGES[STAGES.index(stage) :], but=stage)
    after = f", then {rest}" if rest else ""
    return f"{takes}{after}: {can}"


def _coming(job: DatedJob, today: date) -> str:
    """`hinge H-1 from Northfield, sent for on 3 March, comes on 24 March`."""
    held = job.delivery
    if held is None or held.last is None or held.due is None or held.last.sent_on is None:
        return ""
    sent, due = (day_words(day, today) for day in (held.last.sent_on, held.due))
    return f"{held.last.words}, sent for on {sent}, comes on {due}"


def _for_others(job: DatedJob, stage: Stage, planned: Planned | None, today: date) -> Lateness:
    """A stage that must begin before its latest day, since others have that, and hasn't."""
    if planned is None or job.mark(stage).begun_on is not None or planned.span.start >= today:
        return IN_TIME
    words = (
        f"{DOING[stage]} should have begun on {day_words(planned.span.start, today)}, "
        f"{days_words(planned.earlier)} before it must: other jobs need the same days"
    )
    return Lateness("will be late", stage, words)


def _fitting(spans: Mapping[Stage, Span], today: date) -> str:
    return f"fitting on {day_words(spans['fit'].start, today)}"

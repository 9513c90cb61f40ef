"""What a moved date does: to its own job, and to the days of every other one."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date

from fronts.rules.capacity import Plan, TooMany, planned
from fronts.rules.date_facts import STAGES, Stage
from fronts.rules.lateness import Lateness, lateness
from fronts.rules.stages import DatedJob, Span
from fronts.rules.working_days import WorkingDays


@dataclass(frozen=True, slots=True)
class MovedStage:
    """The days of a stage before and after; None where it has none."""

    stage: Stage
    before: Span | None
    after: Span | None


@dataclass(frozen=True, slots=True)
class MovedJob:
    """What a moved date does to one job: stages with other days, and whether it is late."""

    key: int
    number: str
    stages: tuple[MovedStage, ...]
    before: Lateness
    after: Lateness

    @property
    def is_worse(self) -> bool:
        """Whether the job comes to be late, or is late otherwise than before."""
        return bool(self.after.state) and self.after != self.before


@dataclass(frozen=True, slots=True)
class Moved:
    """What a moved date does to every job that it touches; days that come to be too full."""

    jobs: tuple[MovedJob, ...]
    too_many: tuple[TooMany, ...]


def moved(
    jobs: Sequence[DatedJob],
    key: int,
    fit_on: date | None,
    calendar: WorkingDays,
    at_once: Mapping[Stage, int],
    today: date,
) -> Moved:
    """What comes of it when the job of this key is fitted on another day."""
    then = [replace(each, fit_on=fit_on) if each.key == key else each for each in jobs]
    old, new = (planned(each, calendar, at_once, today) for each in (jobs, then))
    touched = [
        _moved_job(was, now, old, new, calendar, today) for was, now in zip(jobs, then, strict=True)
    ]
    return Moved(
        tuple(each for each in touched if each.stages or each.before != each.after),
        tuple(each for each in new.too_many if each not in old.too_many),
    )


def _moved_job(
    was: DatedJob, now: DatedJob, old: Plan, new: Plan, calendar: WorkingDays, today: date
) -> MovedJob:
    before, after = old.of(was.key), new.of(now.key)
    spans = [
        (stage, getattr(before.get(stage), "span", None), getattr(after.get(stage), "span", None))
        for stage in STAGES
    ]
    return MovedJob(
        was.key,
        was.number,
        tuple(MovedStage(stage, one, other) for stage, one, other in spans if one != other),
        lateness(was, calendar, today, before),
        lateness(now, calendar, today, after),
    )

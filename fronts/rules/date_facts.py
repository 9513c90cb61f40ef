"""What is known of days: a job's stages, how long each takes, what is marked; closed days."""

from collections.abc import Mapping
from dataclasses import dataclass, fields
from datetime import date
from typing import Annotated, Literal, TypeAlias

from fronts.rules.fact_kinds import Count, Day, Label, Word, YesNo
from fronts.rules.limits import (
    LONGEST_CLOSED_NAME,
    MOST_AT_ONCE,
    MOST_LEAD_DAYS,
    MOST_STAGE_DAYS,
)

Stage: TypeAlias = Literal["measure", "order", "cut", "finish", "fit"]
STAGES: tuple[Stage, ...] = ("measure", "order", "cut", "finish", "fit")
"""In the order in which a job goes through them."""
DOING: Mapping[Stage, str] = {
    "measure": "measuring",
    "order": "ordering",
    "cut": "cutting",
    "finish": "finishing",
    "fit": "fitting",
}
"""What is done in a stage."""
WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")


@dataclass(frozen=True, slots=True)
class ShopDates:
    """The weekdays on which a shop works, the days that stages usually take, jobs at once.

    What is usual where a shop says nothing is common practice, no source.
    """

    monday: Annotated[bool, YesNo("Monday")] = True
    tuesday: Annotated[bool, YesNo("Tuesday")] = True
    wednesday: Annotated[bool, YesNo("Wednesday")] = True
    thursday: Annotated[bool, YesNo("Thursday")] = True
    friday: Annotated[bool, YesNo("Friday")] = True
    saturday: Annotated[bool, YesNo("Saturday")] = False
    sunday: Annotated[bool, YesNo("Sunday")] = False
    measure_days: Annotated[int, Count("measuring", 1, MOST_STAGE_DAYS)] = 1
    order_days: Annotated[int, Count("ordering", 1, MOST_STAGE_DAYS)] = 1
    lead_days: Annotated[int, Count("delivery", 0, MOST_LEAD_DAYS)] = 10
    cut_days: Annotated[int, Count("cutting", 1, MOST_STAGE_DAYS)] = 4
    finish_days: Annotated[int, Count("finishing", 1, MOST_STAGE_DAYS)] = 5
    fit_days: Annotated[int, Count("fitting", 1, MOST_STAGE_DAYS)] = 2
    measure_at_once: Annotated[int, Count("measuring", 1, MOST_AT_ONCE)] = 1
    order_at_once: Annotated[int, Count("ordering", 1, MOST_AT_ONCE)] = 1
    cut_at_once: Annotated[int, Count("cutting", 1, MOST_AT_ONCE)] = 1
    finish_at_once: Annotated[int, Count("finishing", 1, MOST_AT_ONCE)] = 1
    fit_at_once: Annotated[int, Count("fitting", 1, MOST_AT_ONCE)] = 1


@dataclass(frozen=True, slots=True)
class JobDates:
    """The days that a job's own stages take; without one, the shop's usual number holds."""

    measure_days: Annotated[int | None, Count("measuring", 1, MOST_STAGE_DAYS)] = None
    order_days: Annotated[int | None, Count("ordering", 1, MOST_STAGE_DAYS)] = None
    lead_days: Annotated[int | None, Count("delivery", 0, MOST_LEAD_DAYS)] = None
    cut_days: Annotated[int | None, Count("cutting", 1, MOST_STAGE_DAYS)] = None
    finish_days: Annotated[int | None, Count("finishing", 1, MOST_STAGE_DAYS)] = None
    fit_days: Annotated[int | None, Count("fitting", 1, MOST_STAGE_DAYS)] = None


STAGE_DAYS = tuple(each.name for each in fields(JobDates))
"""What says how long a stage takes, in the order of stages; delivery comes after the order."""


@dataclass(frozen=True, slots=True)
class ClosedDays:
    """Days on which the shop is closed, the first and the last among them."""

    first: Annotated[date, Day("first day")]
    last: Annotated[date, Day("last day")]
    name: Annotated[str, Label("what for", LONGEST_CLOSED_NAME, example="summer holidays")]


@dataclass(frozen=True, slots=True)
class StageMark:
    """What somebody said of a stage: the day it was begun, the day it was done."""

    stage: Annotated[Stage, Word("stage", DOING)]
    begun_on: Annotated[date | None, Day("begun on")] = None
    done_on: Annotated[date | None, Day("done on")] = None


@dataclass(frozen=True, slots=True)
class StageDays:
    """The working days that each stage of one job takes, and that its order is on its way."""

    measure: int
    order: int
    lead: int
    cut: int
    finish: int
    fit: int

    def of(self, stage: Stage) -> int:
        """The working days that the work of a stage takes."""
        days: int = getattr(self, stage)
        return days

    def until_next(self, stage: Stage) -> int:
        """The working days between a stage's end and the next one's start."""
        return self.lead if stage == "order" else 0


def stage_days(shop: ShopDates, job: JobDates) -> StageDays:
    """The job's own number where it has one, else the shop's."""
    own = {name: getattr(job, name) for name in STAGE_DAYS}
    return StageDays(**{
        name.removesuffix("_days"): getattr(shop, name) if days is None else days
        for name, days in own.items()
    })  # fmt: skip


def at_once(shop: ShopDates) -> dict[Stage, int]:
    """How many jobs the shop has at each stage on one day, at most."""
    return {stage: getattr(shop, f"{stage}_at_once") for stage in STAGES}


def workdays(shop: ShopDates) -> tuple[int, ...]:
    """The weekdays on which the shop works, Monday as 0."""
    return tuple(each for each, name in enumerate(WEEKDAYS) if getattr(shop, name))

"""A week of the shop: each day with the stages of jobs that are on it."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import cast

from fronts.models import StageMark
from fronts.rules.capacity import Planned
from fronts.rules.date_facts import DOING, STAGES, Stage
from fronts.rules.lateness import Lateness
from fronts.rules.stages import DatedJob
from fronts.rules.working_days import WEEK, days_from, is_sensible
from fronts.selectors.dates import ShopPlan
from shopjobs.words import capitalized

SHOWN = 2 * WEEK
"""Days that are worked out: the week, and for a phone the days that follow."""


@dataclass(frozen=True, slots=True)
class Entry:
    """A stage of a job on one day, the `nth` of so many; or that it was done then."""

    stage: Stage
    key: int
    number: str
    client: str
    nth: int = 0
    days: int = 0
    is_begun: bool = False
    is_done: bool = False
    is_late: bool = False

    @property
    def name(self) -> str:
        """`Cutting`."""
        return capitalized(DOING[self.stage])


@dataclass(frozen=True, slots=True)
class DiaryDay:
    """A day: open or not and what for, its entries, where it has too many."""

    day: date
    is_today: bool
    is_past: bool
    is_open: bool
    closed_for: str
    entries: tuple[Entry, ...]
    too_many: tuple[str, ...]
    is_next_week: bool


@dataclass(frozen=True, slots=True)
class LateJob:
    """A job that is late or will be, and why."""

    key: int
    number: str
    client: str
    late: Lateness


@dataclass(frozen=True, slots=True)
class Week:
    """A week by ISO 8601: Monday first, week 1 the one with the year's first Thursday."""

    monday: date

    @property
    def sunday(self) -> date:
        """Its last day."""
        return self.monday + timedelta(days=WEEK - 1)

    @property
    def last_shown(self) -> date:
        """The last of the days that its page has."""
        return self.monday + timedelta(days=SHOWN - 1)

    @property
    def name(self) -> str:
        """As its address says it: `2027-W09`."""
        year, week, _ = self.monday.isocalendar()
        return f"{year}-W{week:02}"

    @property
    def number(self) -> int:
        """Its number in the year."""
        return self.monday.isocalendar().week

    def moved(self, weeks: int) -> "Week | None":
        """So many weeks on; None where nothing is planned any more."""
        there = self.monday + timedelta(weeks=weeks)
        return Week(there) if is_sensible(there) else None


def week_of(day: date) -> Week:
    """The week in which a day is."""
    return Week(day - timedelta(days=day.weekday()))


def week_named(name: str) -> Week | None:
    """The week of this name; None where there is none."""
    year, _, week = name.partition("-W")
    if not (year.isascii() and year.isdigit() and week.isascii() and week.isdigit()):
        return None
    try:
        monday = date.fromisocalendar(int(year), int(week), 1)
    except (ValueError, OverflowError):
        return None
    return Week(monday) if is_sensible(monday) else None


def diary_days(week: Week, known: ShopPlan, done: Iterable[StageMark]) -> list[DiaryDay]:
    """The days of the week, and those of the next."""
    entries = _entries(known, done, week.monday, week.last_shown)
    too_many = defaultdict(list)
    for each in known.plan.too_many:
        too_many[each.day].append(_over(each.stage, len(each.jobs), each.at_once))
    return [
        DiaryDay(
            day=day,
            is_today=day == known.today,
            is_past=day < known.today,
            is_open=known.calendar.days.is_open(day),
            closed_for=known.calendar.name_of(day),
            entries=tuple(sorted(entries.get(day, ()), key=_in_turn)),
            too_many=tuple(too_many.get(day, ())),
            is_next_week=day > week.sunday,
        )
        for day in days_from(week.monday, week.last_shown)
    ]


def _in_turn(entry: Entry) -> tuple[bool, int, str]:
    """Fitting first, since that is out of the house; then stage by stage; what is done last."""
    return entry.is_done, -STAGES.index(entry.stage), entry.number


def _over(stage: Stage, jobs: int, at_once: int) -> str:
    return f"{jobs} jobs at {DOING[stage]}, {at_once} at once"


def _entries(
    known: ShopPlan, done: Iterable[StageMark], first: date, last: date
) -> Mapping[date, Sequence[Entry]]:
    found: dict[date, list[Entry]] = defaultdict(list)
    for key, stages in known.plan.stages.items():
        for stage, planned in stages.items():
            for day, entry in _on_days(known, known.jobs[key], stage, planned, first, last):
                found[day].append(entry)
    for mark in done:
        if mark.done_on is not None:
            job, stage_done = mark.job, cast(Stage, mark.stage)
            entry = Entry(stage_done, job.pk, job.number, job.client_name, is_done=True)
            found[mark.done_on].append(entry)
    return found


def _on_days(
    known: ShopPlan, job: DatedJob, stage: Stage, planned: Planned, first: date, last: date
) -> Iterator[tuple[date, Entry]]:
    span, calendar = planned.span, known.calendar.days
    if span.start > last or span.end < first:
        return
    begins = calendar.number(span.start)
    days = calendar.number(span.end) - begins + 1
    is_begun = job.mark(stage).begun_on is not None
    for day in days_from(max(span.start, first), min(span.end, last)):
        if calendar.is_open(day):
            nth = calendar.number(day) - begins + 1
            late = day < known.today and not is_begun
            yield day, Entry(
                stage, job.key, job.number, job.client, nth, days,
                is_begun=is_begun, is_late=late,
            )  # fmt: skip


def late_jobs(known: ShopPlan) -> list[LateJob]:
    """The jobs that are late, the one fitted first on top; then those that will be."""
    found = [
        LateJob(key, job.number, job.client, known.lateness(key)) for key, job in _by_date(known)
    ]
    late = [each for each in found if each.late.state]
    return sorted(late, key=lambda each: each.late.state != "late")


def _by_date(known: ShopPlan) -> list[tuple[int, DatedJob]]:
    return sorted(known.jobs.items(), key=lambda each: (each[1].fit_on or date.max, each[0]))

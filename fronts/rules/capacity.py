"""Planned days: the latest ones, moved earlier where a stage would have more jobs than it can.

Jobs are placed from the one that is fitted last to the one that is fitted first, each as late
as there is room: backward list scheduling by due date, which on one machine leaves the least
lateness (J. R. Jackson, Scheduling a Production Line to Minimize Maximum Tardiness, 1955, read
from the other end). Fitting keeps its date, since a client was told; what was begun stays where
it is. Nothing is moved before today: what finds no room keeps its latest days, and that these
are too many is said.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date

from fronts.rules.date_facts import STAGES, Stage
from fronts.rules.stages import DatedJob, Span, latest_spans, open_stages, span_of
from fronts.rules.working_days import WorkingDays


@dataclass(frozen=True, slots=True)
class Planned:
    """When a stage of a job is planned: so many working days earlier than it must be begun.

    `because` are the keys of the jobs that have the stage on its latest days.
    """

    span: Span
    earlier: int = 0
    because: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class TooMany:
    """A day on which a stage has more jobs than it can: their keys, and how many it can."""

    stage: Stage
    day: date
    jobs: tuple[int, ...]
    at_once: int


@dataclass(frozen=True, slots=True)
class Plan:
    """The planned days of every open stage, by the jobs' keys, and where they are too many."""

    stages: Mapping[int, Mapping[Stage, Planned]]
    too_many: tuple[TooMany, ...]

    def of(self, key: int) -> Mapping[Stage, Planned]:
        """The planned days of one job; nothing of one that has none."""
        return self.stages.get(key, {})


@dataclass(slots=True)
class _Places:
    """Who has one stage on which working day, by its number.

    `below` leads from a day that is full to one before it; a run of full days is walked once.
    """

    at_once: int
    jobs: dict[int, list[int]] = field(default_factory=lambda: defaultdict(list))
    below: dict[int, int] = field(default_factory=dict)

    def take(self, key: int, start: int, days: int) -> None:
        for number in range(start, start + days):
            self.jobs[number].append(key)
            if len(self.jobs[number]) >= self.at_once:
                self.below[number] = number - 1

    def latest(self, start: int, days: int, floor: int) -> int | None:
        """The latest start, not after `start` nor before `floor`, with room on all its days."""
        end = self._free(start + days - 1)
        while end - days + 1 >= floor:
            for number in range(end - 1, end - days, -1):
                if number in self.below:
                    end = self._free(number)
                    break
            else:
                return end - days + 1
        return None

    def on(self, start: int, days: int) -> tuple[int, ...]:
        """Who has any of these days, each once."""
        found = (self.jobs.get(number, ()) for number in range(start, start + days))
        return tuple(dict.fromkeys(key for keys in found for key in keys))

    def _free(self, number: int) -> int:
        """The last day up to this one that is not full."""
        full = []
        while number in self.below:
            full.append(number)
            number = self.below[number]
        self.below |= dict.fromkeys(full, number)
        return number


@dataclass(frozen=True, slots=True)
class _Dated:
    """An open job with its latest days, each stage's first by its number."""

    job: DatedJob
    must: Mapping[Stage, int]

    def standing(self, stage: Stage, today: int, calendar: WorkingDays) -> tuple[int, int] | None:
        """Where a stage stays whoever else comes: its first working day, and for how many."""
        days, begun = self.job.days.of(stage), self.job.mark(stage).begun_on
        if begun is not None:
            start = calendar.number(begun)
            return start, max(days, today + 1 - start)
        return (self.must[stage], days) if stage == "fit" else None


def planned(
    jobs: Iterable[DatedJob],
    calendar: WorkingDays,
    at_once: Mapping[Stage, int],
    today: date,
) -> Plan:
    """The planned days of all open jobs of a shop."""
    places = {stage: _Places(at_once[stage]) for stage in STAGES}
    now = calendar.number(today)
    dated = list(_latest_first(jobs, calendar))
    for each in dated:
        for stage in open_stages(each.job):
            if stands := each.standing(stage, now, calendar):
                places[stage].take(each.job.key, *stands)
    stages = {each.job.key: _placed(each, calendar, places, now) for each in dated}
    return Plan(stages, tuple(_too_many(calendar, places, now)))


def _latest_first(jobs: Iterable[DatedJob], calendar: WorkingDays) -> Iterable[_Dated]:
    """Open jobs with a date, from the one that is fitted last."""
    in_turn = sorted(jobs, key=lambda each: (each.fit_on or date.min, each.key), reverse=True)
    for each in in_turn:
        spans = latest_spans(each, calendar) if open_stages(each) else {}
        if spans:
            numbers = {stage: calendar.number(span.start) for stage, span in spans.items()}
            yield _Dated(each, numbers)


def _placed(
    dated: _Dated, calendar: WorkingDays, places: Mapping[Stage, _Places], now: int
) -> dict[Stage, Planned]:
    """Where the job's open stages go, from fitting back; `now` is today's number."""
    job, found = dated.job, dict[Stage, Planned]()
    next_start = dated.must["fit"]
    for stage in reversed(open_stages(job)):
        days, must = job.days.of(stage), dated.must[stage]
        if stands := dated.standing(stage, now, calendar):
            found[stage] = Planned(span_of(calendar, *stands))
            next_start = min(stands[0], must)
            continue
        wanted = min(must, next_start - job.days.until_next(stage) - days)
        start = places[stage].latest(wanted, days, now)
        because = () if start == must else places[stage].on(must, days)
        start = wanted if start is None else start
        places[stage].take(job.key, start, days)
        found[stage] = Planned(span_of(calendar, start, days), must - start, because)
        next_start = start
    return found


def _too_many(
    calendar: WorkingDays, places: Mapping[Stage, _Places], now: int
) -> Iterable[TooMany]:
    """Every day from today on with more jobs than the stage can have, in its order."""
    for stage, place in places.items():
        for number, keys in sorted(place.jobs.items()):
            if number >= now and len(keys) > place.at_once:
                yield TooMany(stage, calendar.day(number), tuple(keys), place.at_once)

"""Stages counted back from fitting: a kitchen worked through by hand, and laws."""

from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.date_facts import (
    STAGES,
    JobDates,
    ShopDates,
    Stage,
    StageDays,
    StageMark,
    at_once,
    stage_days,
    workdays,
)
from fronts.rules.stages import (
    DatedJob,
    Span,
    earliest_fitting,
    latest_spans,
    open_stages,
    stage_of,
)
from fronts.rules.working_days import working_days
from tests.rules.test_working_days import SHOP, closings, days, weekdays

DAYS = StageDays(measure=1, order=1, lead=10, cut=4, finish=5, fit=2)
JOB = DatedJob(1, "K-1", date(2027, 4, 5), DAYS)

each_takes = st.integers(1, 30)
taken = st.builds(
    StageDays, each_takes, each_takes, st.integers(0, 30), each_takes, each_takes, each_takes
)


def marked(job: DatedJob, **days: date) -> DatedJob:
    """The job with stages begun (`cut`) or done (`cut_done`)."""
    stages = {name.removesuffix("_done") for name in days}
    marks = [StageMark(each, days.get(each), days.get(f"{each}_done")) for each in STAGES]
    return replace(job, marks=tuple(each for each in marks if each.stage in stages))


def test_by_hand() -> None:
    """Fitting on Monday 5 April 2027, past an Easter that is closed from 26 to 29 March.

    Counted on a wall calendar: finishing the five days before it (25, 30, 31 March, 1, 2 April),
    cutting the four before that (19, 22, 23, 24), ten for delivery (5 to 18 March), ordering on
    the 4th, measuring on the 3rd.
    """
    assert latest_spans(JOB, SHOP) == {
        "measure": Span(date(2027, 3, 3), date(2027, 3, 3)),
        "order": Span(date(2027, 3, 4), date(2027, 3, 4)),
        "cut": Span(date(2027, 3, 19), date(2027, 3, 24)),
        "finish": Span(date(2027, 3, 25), date(2027, 4, 2)),
        "fit": Span(date(2027, 4, 5), date(2027, 4, 6)),
    }


@pytest.mark.parametrize("fit_on", [None, date(1, 1, 1), date(9999, 12, 31)])
def test_without_a_date_that_can_be_nothing_is_planned(fit_on: date | None) -> None:
    """Nor does anything fail."""
    assert latest_spans(replace(JOB, fit_on=fit_on), SHOP) == {}


@given(taken, weekdays, closings(), days)
def test_latest_days_are_working_days_one_stage_after_another(
    takes: StageDays, worked: tuple[int, ...], closed: list[tuple[date, date]], fit_on: date
) -> None:
    """Never on a closed day; each as long as it takes; none begins before the last has ended."""
    calendar = working_days(worked, closed)
    spans = latest_spans(replace(JOB, fit_on=fit_on, days=takes), calendar)

    for stage, span in spans.items():
        assert calendar.is_open(span.start)
        assert calendar.is_open(span.end)
        assert calendar.number(span.end) - calendar.number(span.start) + 1 == takes.of(stage)
    for (stage, one), (_, other) in pairwise(spans.items()):
        between = calendar.number(other.start) - calendar.number(one.end) - 1
        assert between == takes.until_next(stage)
    assert spans["fit"].start == calendar.on_or_after(fit_on)


@given(taken, weekdays, closings(), days, st.integers(0, 400))
def test_fitting_later_makes_no_stage_earlier(
    takes: StageDays,
    worked: tuple[int, ...],
    closed: list[tuple[date, date]],
    fit_on: date,
    later: int,
) -> None:
    """Nor does a shorter stage."""
    calendar = working_days(worked, closed)
    job = replace(JOB, fit_on=fit_on, days=takes)
    before = latest_spans(job, calendar)
    after = latest_spans(replace(job, fit_on=fit_on + timedelta(days=later)), calendar)
    shorter = latest_spans(replace(job, days=replace(takes, finish=1)), calendar)

    assert all(before[stage].start <= after[stage].start for stage in STAGES)
    assert all(before[stage].start <= shorter[stage].start for stage in STAGES)


@pytest.mark.parametrize(
    ("days_marked", "stage"),
    [
        ({}, "measure"),
        ({"measure": date(2027, 3, 1)}, "measure"),
        ({"measure_done": date(2027, 3, 1)}, "order"),
        ({"cut_done": date(2027, 3, 1)}, "finish"),
        ({"cut": date(2027, 3, 1), "order_done": date(2027, 3, 1)}, "cut"),
        ({"fit_done": date(2027, 3, 1)}, None),
    ],
)
def test_the_stage_at_which_a_job_is(days_marked: dict[str, date], stage: Stage | None) -> None:
    """The first that is not done; what comes before one that is done counts as done."""
    job = marked(JOB, **days_marked)

    assert stage_of(job) == stage
    assert open_stages(job) == (STAGES[STAGES.index(stage) :] if stage else ())


@pytest.mark.parametrize(
    ("days_marked", "today", "earliest"),
    [
        # 1 March is a Monday: measuring 1st, ordering 2nd, delivery 3rd to 16th, cutting 17th to
        # 22nd, finishing 23rd to 31st past Easter.
        ({}, date(2027, 3, 1), date(2027, 4, 1)),
        # Cutting since the Monday: to Thursday 4th; finishing 5th to 11th.
        ({"order_done": date(2027, 2, 1), "cut": date(2027, 3, 1)}, date(2027, 3, 2),
         date(2027, 3, 12)),
        # Cutting takes longer than it should: to this day at least.
        ({"order_done": date(2027, 2, 1), "cut": date(2027, 2, 1)}, date(2027, 3, 2),
         date(2027, 3, 10)),
        ({"finish_done": date(2027, 3, 1)}, date(2027, 3, 6), date(2027, 3, 8)),
    ],
)  # fmt: skip
def test_the_earliest_day_for_fitting(
    days_marked: dict[str, date], today: date, earliest: date
) -> None:
    """Counted forward on a wall calendar of March 2027."""
    assert earliest_fitting(marked(JOB, **days_marked), SHOP, today) == earliest


def test_a_job_says_otherwise_than_its_shop() -> None:
    """Its own number where it has one, a delivery of no days too; else the shop's."""
    shop = replace(ShopDates(), cut_days=3, saturday=True, cut_at_once=2)

    assert stage_days(shop, JobDates()) == StageDays(1, 1, 10, 3, 5, 2)
    assert stage_days(shop, JobDates(cut_days=7, lead_days=0)) == StageDays(1, 1, 0, 7, 5, 2)
    assert workdays(shop) == (0, 1, 2, 3, 4, 5)
    assert at_once(shop) == {"measure": 1, "order": 1, "cut": 2, "finish": 1, "fit": 1}

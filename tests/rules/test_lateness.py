"""When a job is late or will be, in words; what a moved date does to the others."""

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.capacity import planned
from fronts.rules.date_facts import ShopDates, StageDays, at_once
from fronts.rules.lateness import IN_TIME, Lateness, lateness
from fronts.rules.moved_dates import moved
from fronts.rules.stages import DatedJob, Span
from fronts.rules.working_days import working_days
from tests.rules.test_stages import JOB, marked
from tests.rules.test_working_days import MONDAY_TO_FRIDAY, SHOP, days

ONE = at_once(ShopDates())
PLAIN = working_days(MONDAY_TO_FRIDAY)
READY = marked(replace(JOB, fit_on=date(2026, 3, 20)), order_done=date(2026, 2, 2))
"""Ordered; to be fitted on Friday 20 March 2026: cutting from the 9th, finishing from the 13th."""


@pytest.mark.parametrize(
    ("job", "today", "late"),
    [
        (READY, date(2026, 3, 9), IN_TIME),
        (READY, date(2026, 3, 10), Lateness(
            "late", "cut", "cutting should have begun on 9 March: 4 working days for cutting and "
            "5 for finishing before fitting on 20 March")),
        (marked(READY, order_done=date(2026, 2, 2), cut=date(2026, 3, 9)), date(2026, 3, 12),
         IN_TIME),
        (marked(READY, order_done=date(2026, 2, 2), cut=date(2026, 3, 9)), date(2026, 3, 13),
         Lateness("late", "cut", "cutting should have been done by 12 March: 5 working days for "
                  "finishing before fitting on 20 March")),
        (marked(READY, order_done=date(2026, 2, 2), cut=date(2026, 3, 11)), date(2026, 3, 11),
         Lateness("will be late", "cut", "cutting takes 4 working days, begun on 11 March, then "
                  "5 working days for finishing: fitting can begin on 24 March, not on 20 March")),
        (replace(READY, marks=()), date(2027, 1, 4), Lateness(
            "late", "measure", "measuring should have begun on 19 February 2026: 1 working day for "
            "measuring, 1 for ordering, 10 for delivery, 4 for cutting and 5 for finishing before "
            "fitting on 20 March 2026")),
        (marked(READY, finish_done=date(2026, 3, 19)), date(2026, 3, 20), IN_TIME),
        (marked(READY, finish_done=date(2026, 3, 19)), date(2026, 3, 21), Lateness(
            "late", "fit", "fitting should have begun on 20 March")),
        (marked(READY, finish_done=date(2026, 3, 19), fit=date(2026, 3, 20)), date(2026, 3, 23),
         IN_TIME),
        (marked(READY, fit_done=date(2026, 3, 19)), date(2026, 5, 1), IN_TIME),
        (replace(READY, fit_on=None), date(2026, 5, 1), IN_TIME),
    ],
)  # fmt: skip
def test_in_words(job: DatedJob, today: date, late: Lateness) -> None:
    """Which days, and what needs them; counted on the calendar of March 2026."""
    assert lateness(job, PLAIN, today) == late


def test_late_since_others_need_the_days() -> None:
    """A job whose turn was before its latest day, and which was not begun then."""
    second = replace(READY, key=2, number="K-2", fit_on=date(2026, 3, 24))
    jobs = [marked(each, cut_done=date(2026, 3, 2)) for each in (READY, second)]
    plan = planned(jobs, PLAIN, ONE, date(2026, 3, 2))
    assert plan.of(1)["finish"].span.start == date(2026, 3, 10)

    late = lateness(jobs[0], PLAIN, date(2026, 3, 11), plan.of(1))

    assert late.state == "will be late"
    assert late.words == (
        "finishing should have begun on 10 March, 3 working days before it must: other jobs need "
        "the same days"
    )
    assert lateness(jobs[0], PLAIN, date(2026, 3, 11)) == IN_TIME


@given(days, days, st.integers(1, 20), st.integers(1, 20))
def test_a_job_that_is_late_stays_so_until_something_is_done(
    fit_on: date, today: date, cut: int, finish: int
) -> None:
    """The next day, and with a stage that takes longer."""
    job = replace(READY, fit_on=fit_on, days=StageDays(1, 1, 10, cut, finish, 2))
    longer = replace(job, days=StageDays(1, 1, 10, cut + 1, finish, 2))
    is_late = lateness(job, SHOP, today).state == "late"

    assert not is_late or lateness(job, SHOP, SHOP.moved(today, 1)).state == "late"
    assert not is_late or lateness(longer, SHOP, today).state == "late"


def test_what_a_moved_date_does_to_the_others() -> None:
    """Two days later, the other job's finishing has to begin earlier; its fitting stays."""
    today = date(2027, 2, 1)
    second = replace(JOB, key=2, number="K-2", fit_on=date(2027, 4, 19))
    third = replace(JOB, key=3, number="K-3", fit_on=date(2027, 6, 1))

    done = moved([JOB, second, third], 2, date(2027, 4, 7), SHOP, ONE, today)

    ours, other = sorted(done.jobs, key=lambda each: each.key == 1)
    assert (ours.number, other.number) == ("K-2", "K-1")
    assert {each.stage: each.after for each in other.stages}["finish"] == Span(
        date(2027, 3, 22), date(2027, 3, 30)
    )
    assert not any(each.stage == "fit" for each in other.stages)
    assert not done.too_many
    assert not moved([JOB, second], 2, second.fit_on, SHOP, ONE, today).jobs


def test_a_moved_date_says_what_comes_to_be_too_many() -> None:
    """Two to fit on one day; and what is late by then."""
    today = date(2027, 3, 1)
    second = replace(JOB, key=2, number="K-2", fit_on=date(2027, 5, 19))

    done = moved([JOB, second], 2, JOB.fit_on, SHOP, ONE, today)
    sooner = moved([JOB, second], 2, date(2027, 3, 3), SHOP, ONE, today)

    assert [(each.stage, each.day) for each in done.too_many] == [
        ("fit", date(2027, 4, 5)), ("fit", date(2027, 4, 6)),
    ]  # fmt: skip
    (ours,) = (each for each in sooner.jobs if each.key == 2)
    assert ours.is_worse
    assert ours.after.state == "late"


def test_taking_the_date_away_frees_the_days() -> None:
    """A job without one has no days, and the others have theirs."""
    second = replace(JOB, key=2, number="K-2", fit_on=date(2027, 4, 7))
    done = moved([JOB, second], 2, None, SHOP, ONE, date(2027, 2, 1))

    assert {each.number for each in done.jobs} == {"K-1", "K-2"}
    assert all(
        each.after is None for job in done.jobs for each in job.stages if job.number == "K-2"
    )

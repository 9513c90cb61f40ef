"""Planned days where jobs want the same ones: worked through by hand, and laws."""

from collections import Counter
from dataclasses import replace
from datetime import date
from itertools import pairwise
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.rules.capacity import Plan, TooMany, planned
from fronts.rules.date_facts import STAGES, ShopDates, Stage, at_once
from fronts.rules.stages import DatedJob, Span, latest_spans
from fronts.rules.working_days import days_from
from tests.rules.test_stages import DAYS, JOB, marked, taken
from tests.rules.test_working_days import SHOP

TODAY = date(2027, 2, 1)
ONE = at_once(ShopDates())
PLENTY: dict[Stage, int] = dict.fromkeys(STAGES, 100)

few_jobs = st.lists(
    st.tuples(st.dates(date(2027, 3, 1), date(2027, 5, 1)), taken), min_size=1, max_size=8
).map(
    lambda several: [
        DatedJob(key, f"K-{key}", fit_on, takes)
        for key, (fit_on, takes) in enumerate(several, start=1)
    ]
)


def test_a_job_by_itself_is_planned_on_its_latest_days() -> None:
    """Nobody else needs them."""
    plan = planned([JOB], SHOP, ONE, TODAY)

    assert {stage: each.span for stage, each in plan.of(JOB.key).items()} == latest_spans(JOB, SHOP)
    assert not plan.too_many


def test_two_jobs_that_want_the_same_days_by_hand() -> None:
    """The one that is fitted first goes first; two days apart, with one saw and one finisher.

    K-1 is fitted on 5 April, K-2 on 7 April 2027. K-2 finishes on its latest days, 31 March,
    1, 2, 5, 6 April, and cuts on 23, 24, 25, 30 March. K-1 would finish 25 March to 2 April:
    it ends before the 31st, so 22, 23, 24, 25, 30 March, three days earlier; and cuts before that,
    16 to 19 March, three days earlier too, since nobody has those days.
    """
    second = replace(JOB, key=2, number="K-2", fit_on=date(2027, 4, 7))
    plan = planned([JOB, second], SHOP, ONE, TODAY)

    assert plan.of(2)["finish"].span == Span(date(2027, 3, 31), date(2027, 4, 6))
    assert plan.of(2)["cut"].span == Span(date(2027, 3, 23), date(2027, 3, 30))
    first = plan.of(1)
    assert first["finish"].span == Span(date(2027, 3, 22), date(2027, 3, 30))
    assert (first["finish"].earlier, first["finish"].because) == (3, (2,))
    assert first["cut"].span == Span(date(2027, 3, 16), date(2027, 3, 19))
    assert plan.too_many == ()


def test_two_jobs_fitted_on_one_day_are_too_many_there() -> None:
    """A client was told the day: it is said, and moved by people alone."""
    second = replace(JOB, key=2, number="K-2")
    plan = planned([JOB, second], SHOP, ONE, TODAY)

    assert plan.of(1)["fit"].span == plan.of(2)["fit"].span
    assert plan.too_many == (
        TooMany("fit", date(2027, 4, 5), (2, 1), 1),
        TooMany("fit", date(2027, 4, 6), (2, 1), 1),
    )


def test_nothing_is_moved_before_today() -> None:
    """Where there is no room left, both stay on the latest days, and these are too many."""
    second = replace(JOB, key=2, number="K-2", fit_on=date(2027, 4, 7))
    ready = [marked(each, order_done=date(2027, 3, 1)) for each in (JOB, second)]
    plan = planned(ready, SHOP, ONE, today=date(2027, 3, 23))

    assert plan.of(1)["cut"].span.start < date(2027, 3, 23)  # late by now: it stays there
    assert plan.of(1)["finish"].span == latest_spans(JOB, SHOP)["finish"]
    assert {each.stage for each in plan.too_many} == {"cut", "finish"}


def test_what_was_begun_stays_where_it_is() -> None:
    """Until it is done: it takes today at least, and who comes after finds these days taken."""
    begun = marked(JOB, order_done=date(2027, 3, 1), cut=date(2027, 3, 8))
    plan = planned([begun], SHOP, ONE, today=date(2027, 3, 16))

    assert plan.of(1)["cut"].span == Span(date(2027, 3, 8), date(2027, 3, 16))


@settings(deadline=None, max_examples=40)
@given(few_jobs)
def test_no_day_has_too_many_but_those_that_are_named(jobs: list[DatedJob]) -> None:
    """Counted again from the planned days alone; and named only where there are."""
    plan = planned(jobs, SHOP, ONE, TODAY)

    counts = {key: many for key, many in _counts(plan).items() if many > 1 and key[1] >= TODAY}
    assert counts == {(each.stage, each.day): len(each.jobs) for each in plan.too_many}


@settings(deadline=None, max_examples=40)
@given(few_jobs)
def test_stages_follow_one_another_and_none_is_later_than_its_latest(jobs: list[DatedJob]) -> None:
    """However many there are; and with plenty of room all are on their latest days."""
    plan = planned(jobs, SHOP, ONE, TODAY)
    for job in jobs:
        latest, mine = latest_spans(job, SHOP), plan.of(job.key)
        ordered = [mine[stage].span for stage in STAGES]
        assert all(one.end < other.start for one, other in pairwise(ordered))
        assert all(mine[stage].span.start <= latest[stage].start for stage in STAGES)
        roomy = planned(jobs, SHOP, PLENTY, TODAY).of(job.key)
        assert {stage: each.span for stage, each in roomy.items()} == latest


@settings(deadline=None, max_examples=40)
@given(few_jobs, st.randoms(use_true_random=False))
def test_the_order_in_which_jobs_come_makes_no_difference(
    jobs: list[DatedJob], random: Random
) -> None:
    """The same jobs have the same plan."""
    shuffled = random.sample(jobs, len(jobs))

    assert planned(shuffled, SHOP, ONE, TODAY) == planned(jobs, SHOP, ONE, TODAY)


def test_a_year_of_jobs_that_all_want_one_day() -> None:
    """Those that find no room before today keep their latest days, and nothing takes long."""
    jobs = [replace(JOB, key=key, fit_on=date(2027, 4, 5)) for key in range(1, 301)]
    plan = planned(jobs, SHOP, ONE, TODAY)

    starts = [plan.of(job.key)["finish"].span.start for job in jobs]
    assert min(starts) >= TODAY
    assert len(plan.stages) == 300
    assert DAYS.finish == 5


def _counts(plan: Plan) -> Counter[tuple[Stage, date]]:
    return Counter(
        (stage, day)
        for stages in plan.stages.values()
        for stage, each in stages.items()
        for day in days_from(each.span.start, each.span.end)
        if SHOP.is_open(day)
    )

"""How long a job waits for what it orders: by its own number, a supplier's, or the shop's."""

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.date_facts import StageDays
from fronts.rules.delivery import Awaited, Delivery, delivery
from fronts.rules.lateness import IN_TIME, Lateness, lateness
from fronts.rules.stages import DatedJob, earliest_fitting
from fronts.rules.working_days import working_days
from tests.rules.test_stages import JOB, marked
from tests.rules.test_working_days import MONDAY_TO_FRIDAY, SHOP, days

PLAIN = working_days(MONDAY_TO_FRIDAY)
USUAL = 10
HINGE = Awaited("hinge H-1", "Northfield", 15)
BUMPER = Awaited("bumper", "Kestrel Lane", 2)
KNOB = Awaited("knob K-2")
SENT = date(2026, 3, 2)
"""A Monday."""
CALLED = replace(HINGE, sent_on=SENT)

things = st.builds(
    Awaited,
    st.sampled_from(["bumper", "hinge H-1", "slide S-1, 22 in"]),
    st.sampled_from(["", "Kestrel Lane", "Northfield"]),
    st.none() | st.integers(0, 366),
    st.none() | days,
)


@pytest.mark.parametrize(
    ("what", "own", "awaited", "waits"),
    [
        ("nothing approved", None, None, Delivery(10, "shop")),
        ("nothing approved, a number of its own", 7, None, Delivery(7, "job")),
        ("its own goes before, also nothing", 0, [HINGE], Delivery(0, "job")),
        ("all came, or is in stock", None, [], Delivery(0, "nothing")),
        ("the longest of several", None, [BUMPER, HINGE], Delivery(15, "supplier", HINGE)),
        ("sooner than is usual", None, [BUMPER], Delivery(2, "supplier", BUMPER)),
        ("who sells a thing says nothing", None, [BUMPER, KNOB],
         Delivery(10, "shop", replace(KNOB, days=10))),
        ("as long as is usual, and said", None, [KNOB, replace(HINGE, days=10)],
         Delivery(10, "supplier", replace(HINGE, days=10))),
        ("sent for, three weeks on", None, [CALLED],
         Delivery(0, "nothing", None, CALLED, date(2026, 3, 23), "supplier")),
        ("a Saturday: from Monday on", None, [replace(BUMPER, sent_on=date(2026, 3, 7))],
         Delivery(0, "nothing", None, replace(BUMPER, sent_on=date(2026, 3, 7)),
                  date(2026, 3, 11), "supplier")),
        ("sent for, nobody says for how long", None, [replace(KNOB, sent_on=SENT)],
         Delivery(0, "nothing", None, replace(KNOB, days=10, sent_on=SENT), date(2026, 3, 16),
                  "shop")),
        ("sent for, a number of its own", 3, [CALLED],
         Delivery(3, "job", None, replace(CALLED, days=3), date(2026, 3, 5), "job")),
        ("some sent for, some to be", None, [CALLED, BUMPER],
         Delivery(2, "supplier", BUMPER, CALLED, date(2026, 3, 23), "supplier")),
        ("what comes last, not what takes longest", None,
         [CALLED, replace(BUMPER, sent_on=date(2026, 3, 20))],
         Delivery(0, "nothing", None, replace(BUMPER, sent_on=date(2026, 3, 20)),
                  date(2026, 3, 24), "supplier")),
    ],
)  # fmt: skip
def test_whose_number_holds(
    what: str, own: int | None, awaited: list[Awaited] | None, waits: Delivery
) -> None:
    """Counted by hand on the calendar of March 2026."""
    assert delivery(own, USUAL, awaited, PLAIN) == waits, what


@given(st.lists(things, max_size=6), st.integers(0, 60))
def test_nothing_takes_longer_or_comes_later_than_is_said(held: list[Awaited], usual: int) -> None:
    """Whatever order things are named in; one more thing is never waited for less."""
    said = delivery(None, usual, held, SHOP)

    assert said == delivery(None, usual, reversed(held), SHOP)
    for each in held:
        takes = usual if each.days is None else each.days
        if each.sent_on is None:
            assert said.days >= takes
        else:
            assert said.due is not None
            assert said.due >= SHOP.moved(each.sent_on, takes)
        fewer = delivery(None, usual, [one for one in held if one is not each], SHOP)
        assert fewer.days <= said.days


ORDERED = marked(replace(JOB, fit_on=date(2026, 3, 20)), order_done=SENT)
"""Ordered on Monday 2 March 2026, to be fitted on Friday the 20th, cutting from the 9th."""


def waiting(job: DatedJob, *awaited: Awaited) -> DatedJob:
    """The job as it waits for these things."""
    held = delivery(None, USUAL, awaited, PLAIN)
    return replace(job, delivery=held, days=replace(job.days, lead=held.days))


@pytest.mark.parametrize(
    ("job", "today", "late"),
    [
        # Four days come by Friday the 6th; five by Monday the 9th, the day on which it is cut.
        (waiting(ORDERED, replace(BUMPER, days=4, sent_on=SENT)), SENT, IN_TIME),
        (waiting(ORDERED, replace(BUMPER, days=5, sent_on=SENT)), SENT, Lateness(
            "will be late", "cut", "bumper from Kestrel Lane, sent for on 2 March, comes on 9 "
            "March; cutting takes 4 working days, then 5 working days for finishing: fitting can "
            "begin on 23 March, not on 20 March")),
        # What is cut already waits for it to be fitted; what was to come is past.
        (waiting(marked(ORDERED, cut_done=date(2026, 3, 6)), CALLED), date(2026, 3, 9), Lateness(
            "will be late", "finish", "hinge H-1 from Northfield, sent for on 2 March, comes on "
            "23 March; finishing takes 5 working days: fitting can begin on 24 March, not on 20 "
            "March")),
        (waiting(marked(ORDERED, finish_done=date(2026, 3, 6)), CALLED), date(2026, 3, 9), Lateness(
            "will be late", "fit", "hinge H-1 from Northfield, sent for on 2 March, comes on "
            "23 March; fitting can begin on 24 March, not on 20 March")),
        (waiting(marked(ORDERED, cut_done=date(2026, 3, 6)), replace(BUMPER, sent_on=SENT)),
         date(2026, 3, 9), IN_TIME),
        # It is fitted without what has not come.
        (waiting(marked(ORDERED, finish_done=date(2026, 3, 6), fit=date(2026, 3, 20)), CALLED),
         date(2026, 3, 20), IN_TIME),
        (waiting(replace(ORDERED, marks=marked(JOB, measure_done=SENT).marks), HINGE), SENT,
         Lateness(
            "late", "order", "ordering should have begun on 13 February: 1 working day for "
            "ordering, 15 for delivery (hinge H-1 from Northfield), 4 for cutting and 5 for "
            "finishing before fitting on 20 March")),
        (waiting(replace(ORDERED, marks=marked(JOB, measure_done=SENT).marks), BUMPER), SENT,
         IN_TIME),
    ],
)  # fmt: skip
def test_late_for_what_is_to_come(job: DatedJob, today: date, late: Lateness) -> None:
    """Of what, from whom, and since when; counted on the calendar of March 2026."""
    assert lateness(job, PLAIN, today) == late


@given(days, days, st.integers(0, 60), st.integers(0, 60))
def test_what_comes_later_lets_no_fitting_begin_sooner(
    today: date, sent_on: date, takes: int, longer: int
) -> None:
    """Nor before the day after the last has come."""
    job = replace(ORDERED, days=StageDays(1, 1, 0, 4, 5, 2))
    soon, late = (
        replace(job, delivery=delivery(None, USUAL, [Awaited("bumper", "", each, sent_on)], SHOP))
        for each in (takes, takes + longer)
    )

    assert earliest_fitting(soon, SHOP, today) <= earliest_fitting(late, SHOP, today)
    assert late.due is not None
    assert earliest_fitting(late, SHOP, today) > late.due

"""Working days, beside numpy's business days, and a calendar worked through by hand."""

from datetime import date, timedelta

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.working_days import EARLIEST, LATEST, WorkingDays, days_from, working_days

MONDAY_TO_FRIDAY = (0, 1, 2, 3, 4)
EASTER = (date(2027, 3, 26), date(2027, 3, 29))
"""Good Friday to Easter Monday of 2027."""
SHOP = working_days(MONDAY_TO_FRIDAY, [EASTER])

weekdays = st.lists(st.integers(0, 6), min_size=1, max_size=7, unique=True).map(tuple)
days = st.dates(date(2020, 1, 1), date(2035, 12, 31))


@st.composite
def closings(draw: st.DrawFn) -> list[tuple[date, date]]:
    """Some times at which a shop is closed, that may lie within each other."""
    firsts = draw(st.lists(days, max_size=6))
    return [(first, first + timedelta(days=draw(st.integers(0, 40)))) for first in firsts]


@pytest.mark.parametrize(
    ("day", "by", "comes"),
    [
        (date(2027, 3, 25), 0, date(2027, 3, 25)),  # Thursday
        (date(2027, 3, 25), 1, date(2027, 3, 30)),  # past Easter, Tuesday
        (date(2027, 3, 30), -1, date(2027, 3, 25)),
        (date(2027, 3, 27), 0, date(2027, 3, 30)),  # within Easter: the next one
        (date(2027, 3, 27), -1, date(2027, 3, 25)),
        (date(2027, 3, 8), 10, date(2027, 3, 22)),  # two weeks without a closed day
        (date(2027, 3, 22), 10, date(2027, 4, 7)),  # and two with Easter in them
    ],
)
def test_by_hand(day: date, by: int, comes: date) -> None:
    """Counted on the calendar of March 2027."""
    assert SHOP.moved(day, by) == comes


@given(weekdays, closings(), days, st.integers(-300, 300))
def test_as_numpy_counts_business_days(
    worked: tuple[int, ...], closed: list[tuple[date, date]], day: date, by: int
) -> None:
    """Outside check: numpy.busday_offset and busday_count, which are written by others."""
    ours = working_days(worked, closed)
    mask = [each in worked for each in range(7)]
    holidays = [each for first, last in closed for each in days_from(first, last)]
    theirs = numpy.busdaycalendar(weekmask=mask, holidays=holidays)

    moved = numpy.busday_offset(day, by, roll="forward", busdaycal=theirs).astype(object)
    since = numpy.busday_count(date(2020, 1, 1), day, busdaycal=theirs)

    assert ours.moved(day, by) == moved
    assert ours.number(day) - ours.number(date(2020, 1, 1)) == since
    assert ours.is_open(day) == bool(numpy.is_busday(day, busdaycal=theirs))
    assert ours.is_open(ours.on_or_after(day))


@given(weekdays, closings(), st.integers(735_000, 745_000))
def test_numbers_and_days_are_each_others(
    worked: tuple[int, ...], closed: list[tuple[date, date]], ordinal: int
) -> None:
    """Every number has its day, and that day has this number."""
    calendar = working_days(worked, closed)
    number = calendar.number(date.fromordinal(ordinal))

    assert calendar.number(calendar.day(number)) == number


def test_a_shop_that_works_on_no_weekday_works_on_all() -> None:
    """Else nothing would ever come after anything."""
    assert working_days(()) == working_days(range(7)) == WorkingDays(tuple(range(7)))


def test_no_day_is_past_the_end_of_time() -> None:
    """However far one counts."""
    sundays = working_days((6,), [(EARLIEST, EARLIEST)])

    assert sundays.moved(LATEST, 10**7) == date.max
    assert sundays.moved(EARLIEST, -(10**7)) == date.min

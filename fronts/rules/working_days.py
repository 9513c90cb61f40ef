"""Working days: counted forward and backward over weekdays off and days on which it is closed."""

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

WEEK = 7
EARLIEST, LATEST = date(1990, 1, 1), date(2199, 12, 31)
"""A day before or after these is a slip of the finger; nothing is planned for it."""


def is_sensible(day: date) -> bool:
    """Whether anything may be planned for a day."""
    return EARLIEST <= day <= LATEST


@dataclass(frozen=True, slots=True)
class WorkingDays:
    """The days on which a shop works, each with a number that counts them through.

    `weekdays` are those worked, Monday as 0; `closed` the numbers, before any is closed, of
    working weekdays that are, in their order.
    """

    weekdays: tuple[int, ...]
    closed: tuple[int, ...] = ()

    def number(self, day: date) -> int:
        """How many working days come before this one; its own number where it is one."""
        at = self._weekdays_before(day)
        return at - bisect_left(self.closed, at)

    def day(self, number: int) -> date:
        """The working day of this number."""
        skipped = bisect_right(range(len(self.closed)), number, key=self._after_closing)
        week, place = divmod(number + skipped, len(self.weekdays))
        ordinal = week * WEEK + self.weekdays[place] + 1
        return date.fromordinal(min(max(ordinal, 1), date.max.toordinal()))

    def is_open(self, day: date) -> bool:
        """Whether the shop works on this day."""
        if day.weekday() not in self.weekdays:
            return False
        at = self._weekdays_before(day)
        place = bisect_left(self.closed, at)
        return place == len(self.closed) or self.closed[place] != at

    def on_or_after(self, day: date) -> date:
        """The day itself where it is a working day, else the next one that is."""
        return self.day(self.number(day))

    def moved(self, day: date, days: int) -> date:
        """So many working days after a day, or before it; counted from the working day on."""
        return self.day(self.number(day) + days)

    def _weekdays_before(self, day: date) -> int:
        """Working weekdays before a day since the calendar begins, closed or not."""
        weeks, weekday = divmod(day.toordinal() - 1, WEEK)
        return weeks * len(self.weekdays) + bisect_left(self.weekdays, weekday)

    def _after_closing(self, place: int) -> int:
        """The number that the first working day after a closed one has."""
        return self.closed[place] - place


def working_days(weekdays: Sequence[int], closed: Iterable[tuple[date, date]] = ()) -> WorkingDays:
    """The working days of a shop that works on these weekdays but for `closed`, first to last.

    A shop that works on no weekday would never get anything done, and is taken to work on all.
    """
    worked = tuple(sorted(set(weekdays))) or tuple(range(WEEK))
    every = WorkingDays(worked)
    numbers = {
        every.number(day)
        for first, last in closed
        for day in days_from(first, last)
        if day.weekday() in worked
    }
    return WorkingDays(worked, tuple(sorted(numbers)))


def days_from(first: date, last: date) -> Iterable[date]:
    """Every day from the first to the last."""
    return (first + timedelta(days=each) for each in range((last - first).days + 1))

"""How long a plan may take: work is the limit that counts, the clock is the last stop.

Work that is counted is the same on every machine and every day; so is the plan that it ends with.
"""

import time
from collections.abc import Callable
from dataclasses import dataclass
from math import inf

from fronts.cutting import work_counter

Clock = Callable[[], float]

PACE = 0.85
"""Work for each second: a little less than fits into it, so that the clock seldom decides."""


@dataclass(frozen=True, slots=True)
class Deadline:
    """An end on a clock."""

    end: float
    clock: Clock

    @property
    def left(self) -> float:
        """Seconds that remain; never below nothing."""
        return max(0.0, self.end - self.clock())


@dataclass(frozen=True, slots=True)
class Budget:
    """So much work (in seconds' worth) from `started` on this thread's counter, and a deadline."""

    work: float
    started: float
    deadline: Deadline

    @property
    def left(self) -> float:
        """Work that remains; never below nothing."""
        remaining = max(0.0, self.work - (work_counter.spent() - self.started))
        return remaining if self.deadline.left > 0 else 0.0

    @property
    def seconds(self) -> float:
        """The work that remains as seconds, no more of them than the clock has."""
        return min(self.left, self.deadline.left)

    @property
    def over(self) -> bool:
        """Whether it is time to stop."""
        return self.left <= 0

    def share(self, part: float) -> "Budget":
        """A budget that ends after `part` of what is left here."""
        return Budget(self.left * part, work_counter.spent(), self.deadline)

    def capped(self, most: float) -> "Budget":
        """The same with no more than `most` work from here on."""
        return Budget(min(self.left, most), work_counter.spent(), self.deadline)


def begin(seconds: float, clock: Clock = time.monotonic) -> Budget:
    """A budget that starts now."""
    return Budget(seconds * PACE, work_counter.spent(), Deadline(clock() + seconds, clock))


def until(end: float, clock: Clock) -> Budget:
    """A budget that only the clock ends."""
    return Budget(inf, work_counter.spent(), Deadline(end, clock))

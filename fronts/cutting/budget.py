"""How long a plan may take: the clock is the last stop, work limits come first."""

import time
from collections.abc import Callable
from dataclasses import dataclass

Clock = Callable[[], float]


@dataclass(frozen=True, slots=True)
class Budget:
    """Seconds on a clock, from `started` on."""

    seconds: float
    started: float
    clock: Clock = time.monotonic

    @property
    def spent(self) -> float:
        """Seconds gone by."""
        return self.clock() - self.started

    @property
    def left(self) -> float:
        """Seconds that remain; never below nothing."""
        return max(0.0, self.seconds - self.spent)

    @property
    def over(self) -> bool:
        """Whether it is time to stop."""
        return self.spent >= self.seconds

    def share(self, part: float) -> "Budget":
        """A budget that ends after `part` of what is left here."""
        return begin(self.left * part, self.clock)


def begin(seconds: float, clock: Clock = time.monotonic) -> Budget:
    """A budget that starts now."""
    return Budget(seconds, clock(), clock)

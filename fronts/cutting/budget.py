"""How long a plan may take: the clock is the last stop, work limits come first."""

import time
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Budget:
    """Seconds from the moment it is made."""

    seconds: float
    started: float = field(default_factory=time.monotonic)

    @property
    def spent(self) -> float:
        """Seconds gone by."""
        return time.monotonic() - self.started

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
        return Budget(self.left * part)

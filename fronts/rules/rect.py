"""A rectangle on a wall: an opening, a cabinet, a front, a box behind it."""

from dataclasses import dataclass

from fronts.rules.lengths import Mm


@dataclass(frozen=True, slots=True)
class Rect:
    """A rectangle on a wall."""

    x: Mm
    y: Mm
    width: Mm
    height: Mm

    @property
    def right(self) -> Mm:
        """Where it ends on the right."""
        return self.x + self.width

    @property
    def top(self) -> Mm:
        """Where it ends at the top."""
        return self.y + self.height

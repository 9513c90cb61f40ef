"""The room that a front's box has in its opening.

Widths and heights are the opening's least ones, since the box must pass where it is narrowest.
It runs up from the front's lower edge to its upper one, and never past the opening.
"""

from dataclasses import dataclass

from fronts.rules.laying import Laid
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.opening_sizes import heights_of, widths_of


@dataclass(frozen=True, slots=True)
class BoxRoom:
    """How wide, and from where to where above the opening's bottom edge."""

    width: Mm
    low: Mm
    high: Mm


def box_room(laid: Laid) -> BoxRoom:
    """The room of one front's box."""
    low, high = laid.y - laid.rect.y, laid.top - laid.rect.y
    return BoxRoom(
        width=min(widths_of(laid.opening)),
        low=max(low, NOTHING),
        high=min(high, min(heights_of(laid.opening))),
    )

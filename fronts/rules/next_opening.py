"""What can be known of a cabinet's next opening from those that it has: the space still free.

The first takes the whole face but for members of the usual width. Another goes under the
lowest, else over the highest, between members as wide as those at its side.
"""

from dataclasses import dataclass, replace

from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import Mm
from fronts.rules.opening_labels import free_labels


@dataclass(frozen=True, slots=True)
class NextOpening:
    """The next opening as far as it is known; None is not known."""

    label: str
    closed_by: ClosedBy = "door"
    x: Mm | None = None
    y: Mm | None = None
    width: Mm | None = None
    height: Mm | None = None


def next_opening(cabinet: Cabinet, member: Mm) -> NextOpening:
    """The opening that comes next in this cabinet; `member` is the usual width of one."""
    label = next(free_labels(each.label for each in cabinet.openings))
    if cabinet.openings:
        return _beside_the_others(cabinet, NextOpening(label, cabinet.openings[-1].closed_by))
    width, height = cabinet.width - 2 * member, cabinet.height - 2 * member
    if width <= 0 or height <= 0:
        return NextOpening(label)
    return NextOpening(label, x=member, y=member, width=width, height=height)


def _beside_the_others(cabinet: Cabinet, known: NextOpening) -> NextOpening:
    """The free space under the lowest opening, else over the highest, else level with the lowest.

    Space that is no higher than a member is taken to be one.
    """
    lowest = min(cabinet.openings, key=lambda each: each.y)
    top = max(each.y + each.height for each in cabinet.openings)
    member = lowest.x
    for y, height in (
        (member, lowest.y - 2 * member),
        (top + member, cabinet.height - top - 2 * member),
    ):
        if height > member:
            return replace(known, x=lowest.x, y=y, width=lowest.width, height=height)
    return replace(known, y=lowest.y, height=lowest.height)

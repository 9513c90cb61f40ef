"""What a drawer box that nobody has measured yet is likely to be, from those that were.

Offered, never taken for measured: a shop builds its boxes to one clearance, and hangs the
boxes of a stack of even fronts a front's share apart (common practice, no source).
"""

from collections.abc import Mapping

from fronts.rules.lengths import Mm, floor_to


def likely_width(opening_width: Mm, last_opening_width: Mm, last_width: Mm) -> Mm | None:
    """As much narrower than its opening as the last box; None where that leaves nothing."""
    width = opening_width - (last_opening_width - last_width)
    return width if width > 0 else None


def likely_rise(
    opening_height: Mm, count: int, index: int, rises: Mapping[int, Mm], step: Mm
) -> Mm | None:
    """How high box `index` of a stack of even fronts hangs, from the nearest that was measured.

    `rises` by the fronts' places from the top. None where none was measured, or where it would
    hang outside its opening.
    """
    if not rises:
        return None
    nearest = min(rises, key=lambda place: abs(place - index))
    rise = floor_to(rises[nearest] + opening_height / count * (nearest - index), step)
    return rise if 0 <= rise < opening_height else None

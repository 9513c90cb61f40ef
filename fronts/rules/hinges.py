"""How many hinges a door takes, and where they lie.

The counts are the shop's own tables (`practice`; memory), the places common practice, no
source: makers of hinges publish tables of their own, and theirs go first.
"""

from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise

from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice


def hinge_count(height: Mm, weight_kg: Fraction, practice: Practice) -> int | None:
    """The greater of the counts by height and by weight; None: past the shop's table."""
    by_height = _from_table(height, practice.hinges_by_height)
    by_weight = _from_table(weight_kg, practice.hinges_by_weight)
    if by_height is None or by_weight is None:
        return None
    return max(by_height, by_weight)


def too_heavy(weight_kg: Fraction, practice: Practice) -> bool:
    """Whether a door is past the weight table."""
    return _from_table(weight_kg, practice.hinges_by_weight) is None


def hinge_centres(
    length: Mm, count: int, hinge_end: Mm, rails: Sequence[tuple[Mm, Mm]], half: Mm,
    bores: Sequence[tuple[Mm, Mm]] = (),
) -> tuple[Mm, ...] | None:  # fmt: skip
    """Hinge centres along a door's hinge side, from its bottom (left, where it hinges at an end).

    First and last `hinge_end` from the ends, the rest equally spaced; a single one halfway. Each
    is then moved, as little as may be, until `half` a hinge plate is clear of every one of
    `rails` (low, high along the door: rails, shelf pins, slides), and its centre within none of
    `bores`. None: no clear place.
    """
    blocked = [*_blocked(rails, half), *bores]
    centres = [_clear(place, length, blocked) for place in _wished(length, count, hinge_end, half)]
    clear = [centre for centre in centres if centre is not None]
    if len(clear) < count or any(b - a < 2 * half for a, b in pairwise(clear)):
        return None
    return tuple(clear)


def is_clear(centre: Mm, rails: Sequence[tuple[Mm, Mm]], half: Mm) -> bool:
    """Whether half a hinge plate on either side of a centre is clear of the rails."""
    return not any(low < centre < high for low, high in _blocked(rails, half))


def _wished(length: Mm, count: int, hinge_end: Mm, half: Mm) -> list[Mm]:
    """Where hinges belong; nearer the ends on a door too short for their plates between those."""
    if count == 1:
        return [length / 2]
    fits = length - 2 * hinge_end >= 2 * half * (count - 1)
    end = hinge_end if fits else min(hinge_end, length / (2 * count))
    between = (length - 2 * end) / (count - 1)
    return [end + between * index for index in range(count)]


def _from_table(value: Fraction, table: Sequence[tuple[Fraction, int]]) -> int | None:
    return next((count for limit, count in table if value <= limit), None)


def _blocked(rails: Sequence[tuple[Mm, Mm]], half: Mm) -> list[tuple[Mm, Mm]]:
    return [(low - half, high + half) for low, high in rails if low < high]


def _clear(place: Mm, length: Mm, blocked: Sequence[tuple[Mm, Mm]]) -> Mm | None:
    """Where it is wished, else the nearest edge of what is blocked that is itself free."""
    if _is_free(place, length, blocked):
        return place
    edges = (edge for pair in blocked for edge in pair)
    free = (edge for edge in edges if _is_free(edge, length, blocked))
    return min(free, key=lambda centre: (abs(centre - place), centre), default=None)


def _is_free(centre: Mm, length: Mm, blocked: Sequence[tuple[Mm, Mm]]) -> bool:
    return 0 < centre < length and not any(low < centre < high for low, high in blocked)

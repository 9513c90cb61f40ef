"""How the fronts of one opening share its span.

The raw span is the opening plus the two overlays (or less the two gaps). Fronts that share
an opening are `gap_between` apart exactly. Each takes an equal share, down to the step;
what is left over goes, in whole steps, to the lowest front of a stack that has no height of
its own, and the rest comes off the two outer edges, half each. So a front is never larger
than its rule.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.rules.lengths import NOTHING, Mm, floor_to


@dataclass(frozen=True, slots=True)
class Division:
    """How a span is shared: sizes in order, and what comes off the two outer edges together."""

    sizes: tuple[Mm, ...]
    rest: Mm


def divide(
    raw: Mm,
    gap_between: Mm,
    step: Mm,
    sizes: Sequence[Mm | None],
    *,
    lowest_takes_rest: bool,
) -> Division:
    """Share a raw span among fronts; None in `sizes` marks one without a size of its own.

    The last of `sizes` is the lowest. A share may come out at or below zero: no room.
    """
    free = raw - gap_between * (len(sizes) - 1) - sum((size for size in sizes if size), NOTHING)
    sharing = [index for index, size in enumerate(sizes) if size is None]
    if not sharing:
        return Division(tuple(size for size in sizes if size is not None), free)
    share = floor_to(free / len(sharing), step)
    shared = [share if size is None else size for size in sizes]
    rest = free - share * len(sharing)
    if lowest_takes_rest:
        whole = floor_to(rest, step)
        shared[sharing[-1]] += whole
        rest -= whole
    return Division(tuple(shared), rest)

"""Fronts along one direction of their opening: where each starts, and how large it is.

From the low edge upwards or to the right. What shares the direction is separated by the gap
between fronts exactly; what doesn't has all of it to itself.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from fronts.rules.front_sizes import divide
from fronts.rules.lengths import NOTHING, Mm


@dataclass(frozen=True, slots=True)
class Axis:
    """One direction of an opening's fronts, from its low edge: starts and sizes."""

    starts: tuple[Mm, ...]
    sizes: tuple[Mm, ...]
    past_rule: Mm = NOTHING


def one_by_one(sizes: Sequence[Mm | None], axis: Callable[[Sequence[Mm | None]], Axis]) -> Axis:
    """Fronts that don't share this direction: each has all of it to itself, none goes past it."""
    axes = [axis([size]) for size in sizes]
    return Axis(tuple(one.starts[0] for one in axes), tuple(one.sizes[0] for one in axes))


def shifted(axis: Axis, shifts: Sequence[Mm]) -> Axis:
    """The same fronts, each moved by a shift of its own."""
    starts = tuple(start + by for start, by in zip(axis.starts, shifts, strict=True))
    return replace(axis, starts=starts)


def axis_of(
    sizes: Sequence[Mm | None], edge: Mm, opening: Mm, before: Mm, after: Mm, between: Mm,
    step: Mm, *, stack: bool,
) -> Axis:  # fmt: skip
    """Places along one direction: existing fronts stand centred, new ones by their overlays."""
    existing = tuple(size for size in sizes if size is not None)
    past = NOTHING
    if not stack and len(existing) == len(sizes):
        settled_sizes = existing
        first = edge + (opening - with_gaps(existing, between)) / 2
    else:
        division = divide(before + opening + after, between, step, sizes, lowest_takes_rest=stack)
        settled_sizes = division.sizes
        first = edge - before + division.rest / 2
        past = max(-division.rest, NOTHING)
    starts, place = [], first
    for size in settled_sizes:
        starts.append(place)
        place += size + between
    return Axis(tuple(starts), settled_sizes, past)


def with_gaps(sizes: Sequence[Mm], between: Mm) -> Mm:
    """What these sizes come to with a gap between each two."""
    return sum(sizes, NOTHING) + between * (len(sizes) - 1)

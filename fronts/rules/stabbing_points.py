"""Fewest points so that every span holds one, and of those the nearest to what each span wants.

Stabbing intervals with points: the fewest are found by taking, again and again, the right end
of the interval that ends first (folklore; e.g. Cormen et al., Introduction to Algorithms, on
greedy choice). That says nothing of how near the points lie, so that here a shortest path runs
over the points that may be taken, from each to the next: a span's own choice is between the
nearest one at either side of what it wants. Exact, in (points)² × spans.
"""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from fronts.rules.lengths import NOTHING, Mm


@dataclass(frozen=True, slots=True)
class Span:
    """What is wanted, how far either way it may be, and how much a millimetre off it counts.

    `least` ≤ `wanted` ≤ `most`.
    """

    wanted: Mm
    least: Mm
    most: Mm
    weight: int = 1

    def holds(self, point: Mm) -> bool:
        return self.least <= point <= self.most

    def off(self, point: Mm) -> Mm:
        """What it costs to be given this point."""
        return self.weight * abs(point - self.wanted)


Cost: TypeAlias = tuple[int, Mm, int]
"""How many points, how far off in all, how many of them nobody wanted."""
_Way: TypeAlias = tuple[Cost, tuple[Mm, ...]]


def stabbing_points(spans: Sequence[Span], points: Collection[Mm]) -> tuple[Cost, tuple[Mm, ...]]:
    """The points to take, in their order, and what they cost; every span wants one of `points`.

    Of equally good choices the one with fewer points that no span wants, then the lower ones.
    """
    wanted = {span.wanted for span in spans}
    order = sorted({*points, *wanted})
    best: dict[Mm | None, _Way] = {None: ((0, NOTHING, 0), ())}
    for point in order:
        ways = [
            way
            for last, before in best.items()
            if (way := _with(before, last, point, spans, unwanted=point not in wanted))
        ]
        if ways:
            best[point] = min(ways)
    ended = [_ended(way, last, spans) for last, way in best.items()]
    return min(way for way in ended if way is not None)


def nearest_held(span: Span, points: Sequence[Mm]) -> Mm:
    """Which of the points a span is given: the nearest that it holds, the lower of two as near."""
    return min((point for point in points if span.holds(point)), key=lambda at: (span.off(at), at))


def _with(
    way: _Way, last: Mm | None, point: Mm, spans: Sequence[Span], *, unwanted: bool
) -> _Way | None:
    """The way gone on to one more point; None where a span between both would hold neither."""
    costs = list(_between(spans, last, point))
    if None in costs:
        return None
    (count, off, others), taken = way
    off += sum((cost for cost in costs if cost is not None), NOTHING)
    return (count + 1, off, others + unwanted), (*taken, point)


def _between(spans: Sequence[Span], last: Mm | None, point: Mm) -> Iterator[Mm | None]:
    for span in spans:
        if span.wanted <= point and (last is None or last < span.wanted):
            held = [at for at in (last, point) if at is not None and span.holds(at)]
            yield min((span.off(at) for at in held), default=None)


def _ended(way: _Way, last: Mm | None, spans: Sequence[Span]) -> _Way | None:
    """The way with no point after its last one; None where a span that wants more holds none."""
    beyond = [span for span in spans if last is None or last < span.wanted]
    if last is None:
        return None if beyond else way
    if any(not span.holds(last) for span in beyond):
        return None
    (count, off, others), taken = way
    return (count, off + sum((span.off(last) for span in beyond), NOTHING), others), taken

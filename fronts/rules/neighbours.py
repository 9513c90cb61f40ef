"""What faces each side of each front along a wall, and how far away it is.

Fronts are compared in one plane of one wall: x to the right, y up from the floor. What faces
a side is the nearest front whose span overlaps that side. Two fronts that overlap face each
other across the direction in which they overlap least, with a gap below zero.
"""

from bisect import bisect_left
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import islice
from math import lcm

from fronts.rules.kinds import Side
from fronts.rules.lengths import Mm

STRIP = 300
"""Width in mm of the strips a wall is sorted into, so that only near fronts are compared."""

MOST_FACING = 20
"""Fronts at the same distance that are kept; more is a kitchen typed over itself."""


@dataclass(frozen=True, slots=True)
class Placed:
    """A front's rectangle; only fronts with the same `plane` (wall and plane) are compared."""

    plane: tuple[str, str]
    left: Mm
    bottom: Mm
    right: Mm
    top: Mm


@dataclass(frozen=True, slots=True)
class Facing:
    """The nearest gap on one side of a front, and every front at that distance, in order."""

    gap: Mm
    fronts: tuple[int, ...]


@dataclass(slots=True)
class _Nearest:
    gap: int | None = None
    fronts: set[int] = field(default_factory=set)

    def offer(self, gap: int, front: int) -> None:
        if self.gap is None or gap < self.gap:
            self.gap, self.fronts = gap, {front}
        elif gap == self.gap and len(self.fronts) < MOST_FACING:
            self.fronts.add(front)


Box = tuple[int, int, int, int]
"""low, high along the direction looked in; low, high across it."""


def facing(fronts: Sequence[Placed]) -> list[dict[Side, Facing]]:
    """For each front, in order, what faces it on each side that something faces."""
    faced: list[dict[Side, Facing]] = [{} for _ in fronts]
    planes: dict[tuple[str, str], list[int]] = defaultdict(list)
    for index, front in enumerate(fronts):
        planes[front.plane].append(index)
    for members in planes.values():
        _face_plane([fronts[index] for index in members], members, faced)
    return faced


def _face_plane(
    placed: Sequence[Placed], members: Sequence[int], faced: list[dict[Side, Facing]]
) -> None:
    scale = lcm(
        *(
            edge.denominator
            for front in placed
            for edge in (front.left, front.bottom, front.right, front.top)
        )
    )
    across = [tuple(_whole(e, scale) for e in (p.left, p.right, p.bottom, p.top)) for p in placed]
    along = [(low, high, left, right) for left, right, low, high in across]
    nearest: dict[Side, list[_Nearest]] = {
        side: [_Nearest() for _ in placed] for side in ("left", "right", "top", "bottom")
    }
    _look(across, scale, nearest["left"], nearest["right"])  # type: ignore[arg-type]
    _look(along, scale, nearest["bottom"], nearest["top"])
    for first, second, level, gap in _overlapping(across, scale):  # type: ignore[arg-type]
        low, high = ("left", "right") if level else ("bottom", "top")
        nearest[high][first].offer(gap, second)  # type: ignore[index]
        nearest[low][second].offer(gap, first)  # type: ignore[index]
    for side, of_side in nearest.items():
        for index, near in enumerate(of_side):
            if near.gap is not None:
                fronts = tuple(sorted(members[front] for front in near.fronts))
                faced[members[index]][side] = Facing(Fraction(near.gap, scale), fronts)


def _look(boxes: Sequence[Box], scale: int, before: list[_Nearest], after: list[_Nearest]) -> None:
    """Fill in the nearest before and after each box, along the first direction."""
    _look_ahead(boxes, scale, after)
    _look_ahead([(-high, -low, *cross) for low, high, *cross in boxes], scale, before)  # type: ignore[misc]


def _look_ahead(boxes: Sequence[Box], scale: int, nearest: list[_Nearest]) -> None:
    for strip in _strips(((low, high) for _, _, low, high in boxes), scale):
        order = sorted((boxes[index][0], index) for index in strip)
        starts = [start for start, _ in order]
        for index in strip:
            _, high, cross_low, cross_high = boxes[index]
            mine = nearest[index]
            for place in range(bisect_left(starts, high), len(order)):
                start, other = order[place]
                gap = start - high
                if mine.gap is not None and gap > mine.gap:
                    break
                if boxes[other][2] < cross_high and cross_low < boxes[other][3]:
                    mine.offer(gap, other)


def _overlapping(boxes: Sequence[Box], scale: int) -> set[tuple[int, int, bool, int]]:
    """Pairs that overlap: (lower or left one, other, side by side?, gap below zero)."""
    pairs = set()
    for strip in _strips(((left, right) for left, right, _, _ in boxes), scale):
        order = sorted((boxes[index][2], index) for index in strip)
        for place, (_, one) in enumerate(order):
            met = 0
            for bottom, other in islice(order, place + 1, None):
                if bottom >= boxes[one][3] or met == MOST_FACING:
                    break
                if boxes[one][0] < boxes[other][1] and boxes[other][0] < boxes[one][1]:
                    pairs.add(_apart(one, other, boxes))
                    met += 1
    return pairs


def _apart(one: int, other: int, boxes: Sequence[Box]) -> tuple[int, int, bool, int]:
    a, b = boxes[one], boxes[other]
    wide = min(a[1], b[1]) - max(a[0], b[0])
    tall = min(a[3], b[3]) - max(a[2], b[2])
    level = wide <= tall
    low, high = (0, 1) if level else (2, 3)
    first, second = sorted((one, other), key=lambda i: (boxes[i][low] + boxes[i][high], i))
    return first, second, level, -(wide if level else tall)


def _strips(spans: Iterable[tuple[int, int]], scale: int) -> list[list[int]]:
    strips: dict[int, list[int]] = defaultdict(list)
    size = STRIP * scale
    for index, (low, high) in enumerate(spans):
        for strip in range(low // size, -(-high // size)):
            strips[strip].append(index)
    return list(strips.values())


def _whole(edge: Mm, scale: int) -> int:
    return edge.numerator * (scale // edge.denominator)

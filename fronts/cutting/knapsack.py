"""The best load of a line: the bounded knapsack problem, by dynamic programming.

Each size is offered in chunks of 1, 2, 4 … up to its demand, so that one pass serves every number
of it, and the table serves every line up to the longest (Martello and Toth 1990, "Knapsack
problems: algorithms and computer implementations"). Whole numbers throughout: where sizes are
rounded, they are rounded the way that keeps what it is for true.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import gcd

import numpy as np
from numpy.typing import NDArray

from fronts.cutting import work_counter

MOST_CELLS = 12_000_000
"""Cells of the table; longer lines are measured on a coarser scale."""
MOST_LINE = 200_000


@dataclass(frozen=True, slots=True)
class RoundedSizes:
    """Sizes on the knapsack's own scale: whole lengths times `top`, over `bottom`, rounded.

    Sizes are rounded up for plans (lines down), or the other way for bounds, where a size may come
    out as 0: too small to weigh.
    """

    sizes: tuple[int, ...]
    top: int
    bottom: int
    up: bool = False

    def line(self, length: int) -> int:
        """A line of this whole length, on the scale."""
        exact = length * self.top
        return exact // self.bottom if self.up else -(-exact // self.bottom)


@dataclass(slots=True)
class KnapsackTable:
    """`value[c]` is the most that a line of length c carries.

    `steps[mark]` is the value of the whole line, and the number of chunks, up to that mark.
    """

    value: NDArray[np.int64]
    chunks: list[tuple[int, int, int]]
    taken: list[NDArray[np.bool_]]
    steps: dict[int, tuple[int, int]]

    def load(self, length: int, until: int | None = None) -> tuple[tuple[int, int], ...]:
        """How many of each size make up the value of a line, out of the first `until` chunks."""
        counts: dict[int, int] = {}
        room = length
        last = len(self.chunks) if until is None else until
        for step in range(last - 1, -1, -1):
            (which, size, times), taken = self.chunks[step], self.taken[step]
            if room >= size and taken[room - size]:
                counts[which] = counts.get(which, 0) + times
                room -= size
        return tuple(sorted(counts.items()))


def knapsack(
    sizes: Sequence[int],
    weights: Sequence[int],
    most: Sequence[int],
    length: int,
    watch: Sequence[int] = (),
) -> KnapsackTable:
    """Fill lines up to `length`; at most `most[i]` of size i, each worth `weights[i]` > 0.

    `watch` gives each size a mark, for `steps`.
    """
    value = np.zeros(length + 1, np.int64)
    table = KnapsackTable(value, [], [], {})
    for which, size in enumerate(sizes):
        weight = weights[which]
        left = min(most[which], length // size) if weight > 0 and size > 0 else 0
        times = 1
        while left > 0:
            now = min(times, left)
            left, times = left - now, times * 2
            reach = size * now
            offered = value[: length + 1 - reach] + weight * now
            room = value[reach:]
            table.taken.append(offered > room)
            np.maximum(room, offered, out=room)
            table.chunks.append((which, reach, now))
        if watch and value[length] > 0:
            table.steps[watch[which]] = int(value[length]), len(table.chunks)
    work_counter.spend(work_counter.of_loads(len(table.chunks), length, len(sizes)))
    return table


def scales(sizes: Sequence[int], longest: int) -> tuple[RoundedSizes, RoundedSizes]:
    """Scales for a bound and for plans; the same one where lines up to `longest` stay exact."""
    unit = gcd(*sizes)
    room = max(200, min(MOST_LINE, MOST_CELLS // (2 * len(sizes))))
    if longest // unit <= room:
        same = RoundedSizes(tuple(size // unit for size in sizes), 1, unit, up=True)
        return same, same
    down = RoundedSizes(tuple(size * room // longest for size in sizes), room, longest)
    return down, rough_scale(sizes, longest, room)


def rough_scale(sizes: Sequence[int], longest: int, cells: int) -> RoundedSizes:
    """A scale of so many cells on which all that fits does fit in truth."""
    return RoundedSizes(
        tuple(-(-size * cells // longest) for size in sizes), cells, longest, up=True
    )

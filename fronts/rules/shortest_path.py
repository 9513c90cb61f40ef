"""The shortest open path through all points: which order costs least from each to the next.

Up to `EXACT_BY_SETS` points by dynamic programming over sets of points (Held and Karp, 1962,
"A dynamic programming approach to sequencing problems"): the least cost of having gone through
a set and standing at one of it. Of orders that cost as little the first in the points' own order.
More points go to `subtour_elimination`.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import TypeAlias

Costs: TypeAlias = Sequence[Sequence[int]]
"""From each point to each other, the same both ways, at least 0."""

EXACT_BY_SETS = 11
"""So many points take some 250 000 steps."""


@dataclass(frozen=True, slots=True)
class Path:
    """An order of the points, what it costs, and what none can be under; both alike: proven."""

    order: tuple[int, ...]
    cost: int
    bound: int

    @property
    def is_proven(self) -> bool:
        return self.cost == self.bound


def path_cost(order: Sequence[int], costs: Costs) -> int:
    """What it costs to go through the points in this order."""
    return sum(costs[one][two] for one, two in pairwise(order))


def path_by_sets(costs: Costs) -> Path:
    """The cheapest order; of several the one that is first in the points' own order."""
    count = len(costs)
    if not count:
        return Path((), 0, 0)
    left = _left_to_pay(costs)
    everything = (1 << count) - 1
    order = [min(range(count), key=lambda at: (left[everything][at], at))]
    passed = everything
    while passed != 1 << order[-1]:
        at, passed = order[-1], passed & ~(1 << order[-1])
        nexts = (to for to in range(count) if passed >> to & 1)
        order.append(min(nexts, key=lambda to: (costs[at][to] + left[passed][to], to)))
    cost = path_cost(order, costs)
    return Path(tuple(order), cost, cost)


def _left_to_pay(costs: Costs) -> list[list[int]]:
    """For each set of points and each of it: the least cost of a path through it from there."""
    count = len(costs)
    left = [[0] * count for _ in range(1 << count)]
    for points in range(1, 1 << count):
        among = [at for at in range(count) if points >> at & 1]
        if len(among) == 1:
            continue
        for at in among:
            rest = points & ~(1 << at)
            row, from_here = left[rest], costs[at]
            left[points][at] = min(from_here[to] + row[to] for to in among if to != at)
    return left

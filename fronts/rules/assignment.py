"""Exact assignment: as many served as can be, and of those plans the cheapest.

Greedy choice would give a large door to a small front and leave a large one without.
"""

import heapq
from collections import defaultdict
from collections.abc import Mapping, Sequence

Column = tuple[bool, int]
"""A column by its number or, last in order, a row's own way out: whether it is one, and whose."""


def assign(costs: Sequence[Mapping[int, int]]) -> dict[int, int]:
    """Which column serves which row; `costs[row][column]` is at least 0, absent where it can't.

    Serving more rows always comes first, then the least total cost. Shortest augmenting
    paths with potentials (Kuhn-Munkres), each row having a way out of its own that costs
    more than everything else together. Whole numbers only, so the answer is exact.
    """
    unserved = 1 + sum(max(row.values()) for row in costs if row)
    plan = _Plan(
        [
            [*(((False, column), row[column]) for column in sorted(row)), ((True, index), unserved)]
            for index, row in enumerate(costs)
        ]
    )
    for row in range(len(costs)):
        plan.serve(row)
    return {row: column for row, (out, column) in sorted(plan.column_of.items()) if not out}


class _Plan:
    def __init__(self, edges: Sequence[Sequence[tuple[Column, int]]]) -> None:
        self.edges = edges
        self.row_price: defaultdict[int, int] = defaultdict(int)
        self.column_price: defaultdict[Column, int] = defaultdict(int)
        self.row_of: dict[Column, int] = {}
        self.column_of: dict[int, Column] = {}

    def serve(self, start: int) -> None:
        """Serve one more row along the cheapest augmenting path."""
        distance_to, came_from, last = self._cheapest_path(start)
        total = distance_to[last]
        self.row_price[start] += total
        for passed, distance in distance_to.items():
            if passed != last:
                self.row_price[self.row_of[passed]] += total - distance
                self.column_price[passed] -= total - distance
        column: Column | None = last
        while column is not None:
            row = came_from[column]
            freed = self.column_of.get(row)
            self.row_of[column], self.column_of[row] = row, column
            column = freed

    def _cheapest_path(self, start: int) -> tuple[dict[Column, int], dict[Column, int], Column]:
        """How far each column passed is, whence it was reached, and the free one at the end.

        Of two columns as near as each other the free one comes first, which ends the search.
        """
        best: dict[Column, int] = {}
        came_from: dict[Column, int] = {}
        settled: dict[Column, int] = {}
        heap: list[tuple[int, bool, Column]] = []
        row, far = start, 0
        while True:
            for column, cost in self.edges[row]:
                distance = far + cost - self.row_price[row] - self.column_price[column]
                if column not in best or distance < best[column]:
                    best[column], came_from[column] = distance, row
                    heapq.heappush(heap, (distance, column in self.row_of, column))
            far, _, column = heapq.heappop(heap)
            while column in settled:
                far, _, column = heapq.heappop(heap)
            settled[column] = far
            if column not in self.row_of:
                return settled, came_from, column
            row = self.row_of[column]

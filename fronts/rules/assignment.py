"""Exact assignment: as many served as can be, and of those plans the cheapest.

Greedy choice would give a large door to a small front and leave a large one without.
"""

import heapq
from collections.abc import Mapping, Sequence


def assign(costs: Sequence[Mapping[int, int]]) -> dict[int, int]:
    """Which column serves which row; `costs[row][column]` is at least 0, absent where it can't.

    Serving more rows always comes first, then the least total cost. Shortest augmenting
    paths with potentials (Kuhn-Munkres), each row having a way out of its own that costs
    more than everything else together. Whole numbers only, so the answer is exact.
    """
    columns = 1 + max((column for row in costs for column in row), default=-1)
    unserved = 1 + sum(max(row.values(), default=0) for row in costs)
    plan = _Plan(
        edges=[
            [*sorted(row.items()), (columns + index, unserved)] for index, row in enumerate(costs)
        ],
        columns=columns + len(costs),
    )
    for row in range(len(costs)):
        plan.serve(row)
    return {row: column for row, column in sorted(plan.column_of.items()) if column < columns}


class _Plan:
    def __init__(self, *, edges: Sequence[Sequence[tuple[int, int]]], columns: int) -> None:
        self.edges = edges
        self.row_price = [0] * len(edges)
        self.column_price = [0] * columns
        self.row_of: dict[int, int] = {}
        self.column_of: dict[int, int] = {}

    def serve(self, start: int) -> None:
        """Serve one more row along the cheapest augmenting path."""
        distance_to, came_from, last = self._cheapest_path(start)
        total = distance_to[last]
        self.row_price[start] += total
        for passed, distance in distance_to.items():
            if passed != last:
                self.row_price[self.row_of[passed]] += total - distance
                self.column_price[passed] -= total - distance
        column: int | None = last
        while column is not None:
            row = came_from[column]
            freed = self.column_of.get(row)
            self.row_of[column], self.column_of[row] = row, column
            column = freed

    def _cheapest_path(self, start: int) -> tuple[dict[int, int], dict[int, int], int]:
        """How far each column passed is, whence it was reached, and the free one at the end.

        Of two columns as near as each other the free one comes first, which ends the search.
        """
        best: dict[int, int] = {}
        came_from: dict[int, int] = {}
        settled: dict[int, int] = {}
        heap: list[tuple[int, bool, int]] = []
        row, far = start, 0
        while True:
            for column, cost in self.edges[row]:
                distance = far + cost - self.row_price[row] - self.column_price[column]
                if column not in settled and distance < best.get(column, distance + 1):
                    best[column], came_from[column] = distance, row
                    heapq.heappush(heap, (distance, column in self.row_of, column))
            far, _, column = heapq.heappop(heap)
            while column in settled:
                far, _, column = heapq.heappop(heap)
            settled[column] = far
            if column not in self.row_of:
                return settled, came_from, column
            row = self.row_of[column]

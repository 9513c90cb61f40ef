"""Sheets by strips: each strip the best knapsack load of its height, gaps filled afterwards.

The two-stage patterns of Gilmore and Gomory 1965, "Multistage cutting stock problems of two and
more dimensions", as a heuristic: parts run out, and what is over a strip's parts is filled. It is
what serves where a sheet holds many small parts; without it the plans of large sets take more
sheets.
"""

from collections.abc import Sequence

from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import IntegerProblem, Orientation
from fronts.cutting.knapsack import knapsack, rough_scale
from fronts.cutting.sheets.candidates import Candidates, FreeRectangle
from fronts.cutting.sheets.constructive_heuristic import FillRule, fill_rooms

CELLS = 600
"""Cells of a strip's length; sizes are rounded up to them, so that what fits does fit."""

SHARE = 1 << 20


class StripPacker:
    """Fills a board strip by strip for given weights; strips run along its length or across."""

    def __init__(self, problem: IntegerProblem, board: int, *, across: bool) -> None:
        self.board, self.across = problem.boards[board], across
        self.line, self.depth = self.board.length, self.board.width
        if across:
            self.line, self.depth = self.depth, self.line
        rows = [
            (way.length, way.width, index, way) if across else (way.width, way.length, index, way)
            for index, item in enumerate(problem.items)
            for way in item.orientations[board]
        ]
        self.rows = sorted(rows)
        sizes = [size for _, size, _, _ in self.rows] or [1]
        self.scale = rough_scale(sizes, self.line, min(self.line, CELLS))
        self.rule = FillRule("first", "big")

    def fill(self, weights: Sequence[int], left: Sequence[int], choice: Candidates) -> list[Spot]:
        """Places on one board, most weight first; `choice` orders what fills the gaps."""
        rest, spots, rooms = list(left), [], []
        place = 0
        while place < self.depth:
            strip = self._strip(weights, rest, self.depth - place)
            if strip is None:
                break
            height, chosen = strip
            at = 0
            for way, item in sorted(chosen, key=lambda pair: (-self._deep(pair[0]), pair)):
                spots.append(Spot(item, *self._corner(at, place), way))
                rest[item] -= 1
                spare = height - self._deep(way)
                if spare:
                    rooms.append(self._room(at, place + height - spare, self._long(way), spare))
                at += self._long(way)
            if at < self.line:
                rooms.append(self._room(at, place, self.line - at, height))
            place += height
        if place < self.depth:
            rooms.append(self._room(0, place, self.line, self.depth - place))
        return spots + fill_rooms(rooms, choice, rest, self.rule)

    def _strip(
        self, weights: Sequence[int], left: Sequence[int], room: int
    ) -> tuple[int, list[tuple[Orientation, int]]] | None:
        """The strip to cut next: of those that fill the room best, the one of most worth."""
        rows = [
            (k, row) for k, row in enumerate(self.rows)
            if row[0] <= room and left[row[2]] > 0 and weights[row[2]] > 0
        ]  # fmt: skip
        if not rows:
            return None
        sizes = [self.scale.sizes[k] for k, _ in rows]
        line = self.scale.line(self.line)
        table = knapsack(
            sizes, [weights[r[2]] for _, r in rows], [left[r[2]] for _, r in rows], line,
            watch=[r[0] for _, r in rows],
        )  # fmt: skip
        heights = sorted(table.steps)
        best = self._height(heights, [table.steps[h][0] for h in heights], room)
        counts = table.load(line, table.steps[best][1])
        chosen: list[tuple[Orientation, int]] = []
        rest = {row[2]: left[row[2]] for _, row in rows}
        for which, n in counts:
            _, _, item, way = rows[which][1]
            take = min(n, rest[item])
            rest[item] -= take
            chosen.extend([(way, item)] * take)
        return max(self._deep(way) for way, _ in chosen), chosen

    def _height(self, heights: list[int], worth: list[int], room: int) -> int:
        """Fill the room with strips as if parts never ran out; of those, the densest strip."""
        cells = min(room, CELLS)
        sizes = [-(-height * cells // room) for height in heights]
        table = knapsack(sizes, worth, [cells // max(size, 1) for size in sizes], cells)
        used = [which for which, _ in table.load(cells)]
        return heights[max(used, key=lambda k: worth[k] / heights[k])]

    def _deep(self, way: Orientation) -> int:
        return way.length if self.across else way.width

    def _long(self, way: Orientation) -> int:
        return way.width if self.across else way.length

    def _corner(self, along: int, deep: int) -> tuple[int, int]:
        return (deep, along) if self.across else (along, deep)

    def _room(self, along: int, deep: int, long: int, high: int) -> FreeRectangle:
        return (
            FreeRectangle(deep, along, high, long)
            if self.across
            else FreeRectangle(along, deep, long, high)
        )


def shares(problem: IntegerProblem) -> list[int]:
    """Areas as small whole numbers, at least 1, for use as weights."""
    largest = max(item.area for item in problem.items)
    return [item.area * SHARE // largest + 1 for item in problem.items]

"""Bounds for sheets from bars: cut every part into bars one lattice step deep.

Each row of a sheet is then a line that carries bars, and the rows are a cutting stock problem of
one dimension, whose fractional least is a bound for every way of packing (Scheithauer 1999, "LP-based
bounds for the container and multi-container loading problem"). Its prices are again a stretch of
the sizes: weighing the other direction's sizes with them, and going to and fro, finds better ones.
The solver proposes the weights; what a line carries of them is counted in whole numbers.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.cutting import proof
from fronts.cutting.budget import Budget
from fronts.cutting.knapsack import loads, scales
from fronts.cutting.lattice import Board, Lattice
from fronts.solver import LinearProgram

WEIGHT = 1 << 24
ROUNDS = 60
TURNS = 6


@dataclass(frozen=True, slots=True)
class Stretch:
    """A weight for every size in one direction, and the most that a line of each board carries."""

    weight: dict[int, int]
    most: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class _Kind:
    """Items alike: the (size along the line, size across it) of each way it may lie."""

    ways: tuple[tuple[int, int], ...]
    demand: int


class Bars:
    """One direction: lines along the boards' length, or across."""

    def __init__(self, lattice: Lattice, boards: Sequence[Board], *, across: bool) -> None:
        self.boards = boards
        self.lines = [b.width if across else b.length for b in boards]
        kinds: dict[tuple[tuple[int, int], ...], int] = {}
        for item in lattice.items:
            lies = sorted({lie[:2] for lies in item.loose for lie in lies})
            ways = tuple((w, a) if across else (a, w) for a, w in lies)
            kinds[ways] = kinds.get(ways, 0) + item.demand
        self.kinds = [_Kind(ways, demand) for ways, demand in kinds.items()]
        self.sizes = sorted({size for kind in self.kinds for size, _ in kind.ways})
        self.row = {size: k for k, size in enumerate(self.sizes)}
        self.copies = [
            sum(k.demand for k in self.kinds if any(way[0] == size for way in k.ways))
            for size in self.sizes
        ]
        self.scale = scales(self.sizes, max(self.lines))[0]

    def plain(self) -> Stretch:
        """Every size weighs itself."""
        return Stretch({size: size for size in self.sizes}, tuple(self.lines))

    def stretch(self, weights: Sequence[int]) -> Stretch:
        """These weights, with what a line carries of them, counted exactly."""
        return Stretch(dict(zip(self.sizes, weights, strict=True)), self._most(weights))

    def bound(self, along: Stretch, other: Stretch) -> proof.Bound:
        """What two stretches prove together; a part that may turn counts its lighter way."""
        total = sum(
            kind.demand * min(along.weight[a] * other.weight[b] for a, b in kind.ways)
            for kind in self.kinds
        )
        most = [a * b for a, b in zip(along.most, other.most, strict=True)]
        return proof.weigh(total, most, self.boards)

    def best(self, other: Stretch, budget: Budget) -> Stretch | None:
        """The weights that prove most together with the other direction's."""
        program = self._program(other)
        known: set[tuple[int, tuple[tuple[int, int], ...]]] = set()
        weights: list[int] | None = None
        for _ in range(ROUNDS):
            answer = program.solve(budget.left)
            if answer is None:
                break
            duals = answer.duals[: len(self.sizes)]
            top = max(float(duals.max()), 1e-12)
            weights = [max(0, int(dual / top * WEIGHT)) for dual in duals]
            found = loads(self.scale.sizes, weights, self.copies, self.scale.line(max(self.lines)))
            fresh = []
            for board, line in enumerate(self.lines):
                pattern = found.load(self.scale.line(line))
                worth = sum(float(duals[k]) * n for k, n in pattern)
                if worth > self._cost(board, other) * (1 + 1e-7) and (board, pattern) not in known:
                    known.add((board, pattern))
                    fresh.append((board, pattern))
            if not fresh or budget.over:
                break
            program.add(
                [self._cost(board, other) for board, _ in fresh],
                [[(k, float(n)) for k, n in pattern] for _, pattern in fresh],
            )
        return None if weights is None else self.stretch(weights)

    def _cost(self, board: int, other: Stretch) -> float:
        """A row's share of its board's cost."""
        return max(self.boards[board].cost, 1e-6) * self._unit(other) / max(other.most[board], 1)

    def _unit(self, other: Stretch) -> float:
        return float(max(other.most))

    def _program(self, other: Stretch) -> LinearProgram:
        """Rows: bars wanted of each size; then the parts that may turn, shared between ways."""
        unit = self._unit(other)
        fixed = [0.0] * len(self.sizes)
        turning = [kind for kind in self.kinds if len(kind.ways) > 1]
        for kind in self.kinds:
            if len(kind.ways) == 1:
                size, across = kind.ways[0]
                fixed[self.row[size]] += kind.demand * other.weight[across] / unit
        low = fixed + [float(kind.demand) for kind in turning]
        program = LinearProgram(low, [float("inf")] * len(low))
        for k, size in enumerate(self.sizes):
            boards = [b for b, line in enumerate(self.lines) if line >= size]
            times = {b: min(self.lines[b] // size, self.copies[k]) for b in boards}
            program.add([self._cost(b, other) for b in boards], [[(k, times[b])] for b in boards])
        for t, kind in enumerate(turning, len(self.sizes)):
            columns = [
                [(self.row[size], -other.weight[across] / unit), (t, 1.0)]
                for size, across in kind.ways
            ]
            program.add([0.0] * len(columns), columns)
        return program

    def _most(self, weights: Sequence[int]) -> tuple[int, ...]:
        table = loads(self.scale.sizes, weights, self.copies, self.scale.line(max(self.lines)))
        dust = sum(
            weight * n
            for weight, n, size in zip(weights, self.copies, self.scale.sizes, strict=True)
            if size == 0
        )
        return tuple(int(table.value[self.scale.line(line)]) + dust for line in self.lines)


def bars_bound(lattice: Lattice, enough: int, budget: Budget) -> proof.Bound:
    """To and fro between the directions from several starts, until the bound is `enough`."""
    boards = lattice.boards
    along, up = Bars(lattice, boards, across=False), Bars(lattice, boards, across=True)
    bound = proof.NOTHING
    for first, second in ((along, up), (up, along)):
        for start in _starts(second):
            other, last = start, -1
            for turn in range(TURNS):
                here, there = (first, second) if turn % 2 == 0 else (second, first)
                found = here.best(other, budget)
                if found is None:
                    break
                proved = here.bound(found, other)
                bound = proof.best([bound, proved])
                if bound.cost >= enough or bound.impossible or budget.over:
                    return bound
                if proved.cost <= last and turn > 1:
                    break
                other, last = found, proved.cost
    return bound


def _starts(bars: Bars) -> list[Stretch]:
    """Plain sizes; and large ones only, from several thresholds."""
    line = max(bars.lines)
    starts = [bars.plain()]
    for part in (2, 3):
        weights = [
            part * 2
            if (part) * size > (part - 1) * line
            else 2 * (size * part // line) + (size * part % line > 0)
            for size in bars.sizes
        ]
        starts.append(bars.stretch(weights))
    halves = [2 if 2 * size > line else 1 if 2 * size == line else 0 for size in bars.sizes]
    starts.append(bars.stretch(halves))
    return starts

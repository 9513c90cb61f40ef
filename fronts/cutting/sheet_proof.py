"""What a sheet can carry at most, for given weights, however it is cut edge to edge.

An integer program picks the parts of one sheet. Its rows hold for every sheet that can be cut:
stretched areas, pairs that never share a sheet, and groups that were tried in every way and
refuted. What it finds is tried as well; what can be cut becomes a layout, what cannot becomes a
row. The solver's bound is a float: a margin is added before it counts.
"""

from collections.abc import Sequence
from math import ceil

import numpy as np
from numpy.typing import NDArray

from fronts.cutting.budget import Budget
from fronts.cutting.columns import Column, column
from fronts.cutting.exact import MOST_ITEMS, packed
from fronts.cutting.generation import Priced
from fronts.cutting.lattice import Board, Lattice, Lie
from fronts.cutting.weighing import stretched_rows
from fronts.solver import Entry, IntegerLimits, solve_integer

MARGIN = 1e-6
FIRST_ROWS = 30
MORE_ROWS = 6
TRIES = 60
NODES = 4_000


class SheetProof:
    """Prices sheets from above, on a board as long as the longest and as wide as the widest.

    Whatever a real board carries lies on that one too, so what it proves holds for each.
    """

    def __init__(self, lattice: Lattice) -> None:
        self.lattice = lattice
        longest = max(board.length for board in lattice.boards)
        widest = max(board.width for board in lattice.boards)
        self.board = Board(longest, widest, None, 1)
        sizes = [(board.length, board.width) for board in lattice.boards]
        self.real = sizes.index((longest, widest)) if (longest, widest) in sizes else None
        self.lies = [
            tuple({lie[:2]: lie for lies in item.loose for lie in lies}.values())
            for item in lattice.items
        ]
        self.most = [
            self._cap(lies, i.demand) for lies, i in zip(self.lies, lattice.items, strict=True)
        ]
        self.stretched = stretched_rows(lattice)
        order = np.argsort(-(self.stretched @ np.array(self.most)), kind="stable")
        self.rows = [self._entries(self.stretched[k]) for k in order[:FIRST_ROWS]]
        self.limits = [1.0] * len(self.rows)
        self._cliques()
        self.packed: list[Column] = []

    def price(
        self, weights: list[int], wanted: list[int], left: Sequence[int], budget: Budget
    ) -> Priced:
        """The heaviest parts that no row forbids, and what a sheet carries at most."""
        scale = max(wanted)
        worth = np.array(weights, float) / scale
        total = float(worth @ np.array(left, float))
        enough = total / max(ceil(total - 1e-6) - 1, 1) * (1 - 2 * MARGIN)
        most: list[int] | None = None
        for _ in range(TRIES):
            answer = solve_integer(
                list(-worth), self._columns(), [(-np.inf, limit) for limit in self.limits],
                IntegerLimits(budget.left, NODES, -enough), most=[float(m) for m in self.most],
            )  # fmt: skip
            if answer is None:
                break
            most = [int((-answer.bound + MARGIN) * scale) + 1] * len(self.lattice.boards)
            counts = np.rint(answer.amounts).astype(int)
            carried = float(worth @ counts)
            if carried < enough:
                break
            if self._stretch(counts):
                continue
            found = self._settle(counts)
            if found is not None:
                return Priced([found], most)
            if budget.over:
                break
        return Priced([], most)

    def _columns(self) -> list[list[Entry]]:
        columns: list[list[Entry]] = [[] for _ in self.most]
        for row, entries in enumerate(self.rows):
            for item, value in entries:
                columns[item].append((row, value))
        return columns

    def _stretch(self, counts: NDArray[np.int64]) -> bool:
        """Add the stretched areas that these parts overrun."""
        over = self.stretched @ counts
        worst = [k for k in np.argsort(-over)[:MORE_ROWS] if over[k] > 1 + 1e-9]
        for k in worst:
            self.rows.append(self._entries(self.stretched[k]))
            self.limits.append(1.0)
        return bool(worst)

    def _settle(self, counts: NDArray[np.int64]) -> Column | None:
        """Try the parts in every way: a layout, or a new row (None), or undecided: as they are."""
        chosen = [int(i) for i in np.flatnonzero(counts) for _ in range(counts[i])]
        pieces = [(i, self.lies[i]) for i in chosen]
        large = sorted(pieces, key=lambda p: -p[1][0].length * p[1][0].width)[:MOST_ITEMS]
        spots = packed(self.board, large)
        if spots is None:
            if self._forbid(large, counts):
                return None
        elif len(large) == len(pieces):
            found = column(self.real or 0, spots)
            if self.real is not None and self._allowed(found):
                self.packed.append(found)
            return found
        yields = tuple((int(i), int(counts[i])) for i in np.flatnonzero(counts))
        return Column(self.real or 0, yields, ())

    def _allowed(self, found: Column) -> bool:
        """Whether a plan may lay the items so: a bound allows for more."""
        items = self.lattice.items
        return all(spot.lie in items[spot.item].lies[found.board] for spot in found.spots)

    def _forbid(self, group: list[tuple[int, tuple[Lie, ...]]], counts: NDArray[np.int64]) -> bool:
        """Forbid the smallest part of a group that cannot be cut; whether a row can say so."""
        for piece in reversed(list(group)):
            fewer = [p for p in group if p is not piece]
            if len(fewer) > 1 and packed(self.board, fewer) is None:
                group = fewer
        times: dict[int, int] = {}
        for item, _ in group:
            times[item] = times.get(item, 0) + 1
        if any(n != self.most[item] for item, n in times.items()):
            return False
        self.rows.append([(item, 1.0) for item in times])
        self.limits.append(float(sum(times.values()) - 1))
        return True

    def _cliques(self) -> None:
        """Parts of which no two share a sheet: at most one of them."""
        length, width = self.board.length, self.board.width
        size = len(self.lies)
        apart = np.ones((size, size), np.bool_)
        for turn in range(2):
            for other in range(2):
                a = np.array([lies[min(turn, len(lies) - 1)][:2] for lies in self.lies])
                b = np.array([lies[min(other, len(lies) - 1)][:2] for lies in self.lies])
                beside = a[:, None, 0] + b[None, :, 0] <= length
                above = a[:, None, 1] + b[None, :, 1] <= width
                apart &= ~(beside | above)
        apart[np.diag_indices(size)] = False
        uncovered = {(i, j) for i, j in np.argwhere(apart) if i < j}
        alone = [most == 1 for most in self.most]
        while uncovered:
            i, j = min(uncovered)
            clique = [int(i), int(j)]
            common = apart[i] & apart[j]
            for k in np.flatnonzero(common):
                if common[k] and all(apart[k][m] for m in clique):
                    clique.append(int(k))
            uncovered -= {(a, b) for a in clique for b in clique if a < b}
            single = [k for k in clique if alone[k]]
            many = [k for k in clique if not alone[k]]
            self.rows.append([(k, 1.0 / self.most[k]) for k in single + many])
            self.limits.append(1.0)

    def _cap(self, lies: tuple[Lie, ...], demand: int) -> int:
        areas = self.board.length * self.board.width // (lies[0].length * lies[0].width)
        if len(lies) == 1:
            columns = self.board.length // lies[0].length
            areas = columns * (self.board.width // lies[0].width)
        return max(1, min(demand, areas))

    def _entries(self, row: NDArray[np.float64]) -> list[Entry]:
        return [(int(i), float(row[i])) for i in np.flatnonzero(row)]

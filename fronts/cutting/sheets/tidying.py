"""Among equal plans, the tidier: one big usable offcut first, then fewer fence settings."""

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import product

from fronts.cutting.budget import Budget
from fronts.cutting.guillotine_tree import CutNode, Spot, cut_tree
from fronts.cutting.integer_problem import BoardKind, IntegerProblem
from fronts.cutting.patterns import Packing, Pattern, area_of, pattern_of
from fronts.cutting.sheets.candidates import Candidates
from fronts.cutting.sheets.constructive_heuristic import FillRule, Split, fill
from fronts.cutting.sheets.strip_packing import StripPacker, shares

MOST_MOVES = 60
MOST_PARTS = 60
"""Parts on a sheet up to which it is worth laying again."""
_SPLITS: tuple[Split, ...] = ("rip", "cross", "long", "big")


class Tidier:
    """Lays the same parts again; bounded in its tries, and never makes a plan worse."""

    def __init__(self, problem: IntegerProblem, budget: Budget) -> None:
        self.problem, self.budget = problem, budget
        self._areas = shares(problem)
        self._strips: dict[tuple[int, bool], StripPacker] = {}

    def drained(self, packing: Packing) -> Packing:
        """Parts of the emptiest sheet moved onto others, so that what is left over is together."""
        if self.problem.sticks or len(packing.chosen) < 2:
            return packing
        order = sorted(
            range(len(packing.chosen)), key=lambda k: area_of(packing.chosen[k][0].spots)
        )
        chosen = list(packing.chosen)
        emptiest = order[0]
        source, times = chosen[emptiest]
        if times > 1 or len(source.spots) > MOST_PARTS:
            return packing
        moves = 0
        for item, _ in sorted(source.yields, key=lambda pair: -self.problem.items[pair[0]].area):
            for other in reversed(order[1:]):
                target, often = chosen[other]
                if often > 1 or moves >= MOST_MOVES or self.budget.over or len(source.spots) < 2:
                    continue
                moves += 1
                grown = self._laid(target, [*(s.item for s in target.spots), item])
                if grown is not None:
                    rest = list(source.spots)
                    rest.remove(next(s for s in rest if s.item == item))
                    source = pattern_of(source.board, rest)
                    chosen[other], chosen[emptiest] = (grown, often), (source, 1)
                    break
        return Packing(tuple(chosen), packing.short)

    def tree(self, chosen: Pattern) -> CutNode:
        """The tidiest tree of cuts for the same parts on the same board."""
        board = self.problem.boards[chosen.board]
        best = _tree(board, chosen.spots)
        if self.problem.sticks or len(chosen.spots) > MOST_PARTS:
            return best
        for spots in self._layings(chosen.board, [s.item for s in chosen.spots]):
            if self.budget.over:
                break
            best = max(best, _tree(board, spots), key=tidiness)
        return best

    def _laid(self, target: Pattern, items: list[int]) -> Pattern | None:
        board = self.problem.boards[target.board]
        if sum(self.problem.items[i].area for i in items) > board.length * board.width:
            return None
        spots = next(self._layings(target.board, items), None)
        return None if spots is None else pattern_of(target.board, spots)

    def _layings(self, board: int, items: list[int]) -> Iterator[list[Spot]]:
        """Ways to lay all of these on one board."""
        counts = Counter(items)
        left = [counts[i] for i in range(len(self.problem.items))]
        ways = {i: self.problem.items[i].orientations[board][0] for i in counts}
        size = self.problem.boards[board]
        orders = [
            sorted(counts, key=lambda i: (-ways[i].length * ways[i].width, i)),
            sorted(counts, key=lambda i: (-ways[i].width, -ways[i].length, i)),
            sorted(counts, key=lambda i: (-ways[i].length, -ways[i].width, i)),
        ]
        choices = [Candidates(self.problem, board, order) for order in orders]
        for across in (False, True):
            if (board, across) not in self._strips:
                self._strips[board, across] = StripPacker(self.problem, board, across=across)
            spots = self._strips[board, across].fill(self._areas, left, choices[0])
            if len(spots) == len(items):
                yield spots
        for choice, split in product(choices, _SPLITS):
            spots = fill(size, choice, left, FillRule("first", split))
            if len(spots) == len(items):
                yield spots


def largest_left(board: BoardKind, chosen: Pattern) -> int:
    """The area, in whole units, of the largest piece left over."""
    return tidiness(_tree(board, chosen.spots))[0]


def tidiness(tree: CutNode) -> tuple[int, int]:
    """The largest piece left over, then fence settings (fewer is better); greater is tidier."""
    largest, fences, waiting = 0, set(), [tree]
    while waiting:
        node = waiting.pop()
        if node.spot is None and not node.children:
            largest = max(largest, node.length * node.width)
        for child in node.children:
            if child.spot is not None or child.children:
                fences.add((node.across, child.width if node.across else child.length))
        waiting.extend(node.children)
    return largest, -len(fences)


def _tree(board: BoardKind, spots: Sequence[Spot]) -> CutNode:
    """The tree of cuts, in the tidier of its two orders."""
    trees = [
        cut_tree(board.length, board.width, spots, rips_first=first) for first in (True, False)
    ]
    return max(trees, key=tidiness)

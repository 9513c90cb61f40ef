"""Among equal plans, the tidier: one big usable offcut first, then fewer fence settings."""

from collections.abc import Sequence

from fronts.cutting.lattice import Board
from fronts.cutting.tree import Node, Spot, cut_tree


def tidy_tree(board: Board, spots: Sequence[Spot]) -> Node:
    """The tree of cuts, in the tidier of its two orders."""
    trees = [
        cut_tree(board.length, board.width, spots, rips_first=first) for first in (True, False)
    ]
    return max(trees, key=tidiness)


def tidiness(tree: Node) -> tuple[int, int]:
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

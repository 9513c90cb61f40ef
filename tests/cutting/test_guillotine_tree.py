"""A packed board as a tree of cuts that go right across."""

import pytest

from fronts.cutting.guillotine_tree import NotEdgeToEdgeError, Spot, cut_tree
from fronts.cutting.integer_problem import Orientation

PINWHEEL = [(0, 0, 2, 1), (2, 0, 1, 2), (1, 2, 2, 1), (0, 1, 1, 2), (1, 1, 1, 1)]


def spots(rectangles: list[tuple[int, int, int, int]]) -> list[Spot]:
    """Items at x, y with their lengths and widths."""
    return [Spot(i, x, y, Orientation(a, b, turned=False))
            for i, (x, y, a, b) in enumerate(rectangles)]  # fmt: skip


def test_a_pinwheel_is_refused() -> None:
    """Four round one: no cut goes right across."""
    with pytest.raises(NotEdgeToEdgeError):
        cut_tree(3, 3, spots(PINWHEEL))


def test_without_its_last_arm_it_is_cut() -> None:
    """Three arms and the middle: the free corner lets a cut through."""
    tree = cut_tree(3, 3, spots(PINWHEEL[:1] + PINWHEEL[2:]))

    assert len(tree.children) > 1


def test_an_empty_board_is_one_piece() -> None:
    """Nothing lies on it, nothing is cut."""
    assert not cut_tree(3, 3, []).children

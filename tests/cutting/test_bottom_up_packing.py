"""Sheets built up by joins: what they carry is what was asked for, and they can be sawn."""

from collections import Counter
from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.cutting.guillotine_tree import Spot, cut_tree
from fronts.cutting.integer_problem import IntegerProblem, integer_problem
from fronts.cutting.model import Request, StockSize, WantedPart
from fronts.cutting.sheets.bottom_up_packing import BottomUpPacker

SIZES = st.tuples(st.integers(2, 9), st.integers(2, 9), st.integers(1, 3))


def board(sizes: list[tuple[int, int, int]], length: int = 12, width: int = 10) -> IntegerProblem:
    """Parts without grain on a board without kerf or trim."""
    parts = tuple(
        WantedPart(f"P{i}", Fraction(a), Fraction(b), n) for i, (a, b, n) in enumerate(sizes)
    )
    stock = (StockSize("S", Fraction(length), Fraction(width)),)
    return integer_problem(Request(Fraction(0), Fraction(0), stock, parts))


def built(whole: IntegerProblem, full: int) -> list[list[Spot]]:
    """Sheets of more than `full` area."""
    weights = [2 * item.area for item in whole.items]
    left = [item.demand for item in whole.items]
    return BottomUpPacker(whole, 0).sheets(weights, left, 2 * full + 1, 50, 20)


@settings(max_examples=100, deadline=None)
@given(st.lists(SIZES, min_size=1, max_size=8))
def test_what_is_built_fits_and_can_be_sawn(sizes: list[tuple[int, int, int]]) -> None:
    """Nothing beyond the board, no more of a part than is wanted, cuts that go right across."""
    whole = board(sizes)
    sheets = built(whole, 0)
    assert sheets
    for spots in sheets:
        cut_tree(12, 10, spots)  # refuses what cannot be cut apart
        for spot in spots:
            assert spot.x + spot.orientation.length <= 12
            assert spot.y + spot.orientation.width <= 10
        for item, n in Counter(spot.item for spot in spots).items():
            assert n <= whole.items[item].demand


def test_the_heaviest_comes_first() -> None:
    """By the weight asked for, and nothing under the least."""
    whole = board([(6, 5, 2), (4, 4, 1), (3, 9, 1)])
    worth = [sum(whole.items[spot.item].area for spot in spots) for spots in built(whole, 36)]
    assert worth == sorted(worth, reverse=True)
    assert min(worth) > 36


def test_a_sheet_without_waste_is_found() -> None:
    """Four pieces that fill the board in two rows of different cuts."""
    whole = board([(7, 6, 1), (5, 6, 1), (3, 4, 1), (9, 4, 1)])
    assert sum(whole.items[spot.item].area for spot in built(whole, 119)[0]) == 120

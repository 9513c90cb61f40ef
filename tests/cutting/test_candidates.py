"""Which part goes into a free rectangle: the same one, whether few are looked at or many."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.cutting.integer_problem import integer_problem
from fronts.cutting.model import Request, StockSize, WantedPart
from fronts.cutting.sheets.candidates import (
    CandidateArrays,
    CandidateList,
    Candidates,
    FreeRectangle,
    Pick,
)

SIZES = st.lists(st.tuples(st.integers(1, 9), st.integers(1, 9)), min_size=1, max_size=12)
ROOMS = st.lists(st.tuples(st.integers(1, 12), st.integers(1, 10)), min_size=1, max_size=20)


@pytest.mark.parametrize("pick", ["first", "snug", "strip"])
def test_arrays_pick_what_the_loop_picks(pick: Pick) -> None:
    """Room after room, each item forgotten once it is used."""

    @settings(max_examples=150, deadline=None)
    @given(SIZES, ROOMS)
    def check(sizes: list[tuple[int, int]], rooms: list[tuple[int, int]]) -> None:
        parts = tuple(WantedPart(f"P{a}x{b}", Fraction(a), Fraction(b)) for a, b in sizes)
        stock = (StockSize("S", Fraction(12), Fraction(10)),)
        problem = integer_problem(Request(Fraction(0), Fraction(0), stock, parts))
        unit = problem.boards[0].length
        rows = Candidates(problem, 0, range(len(problem.items))).rows
        few, many = CandidateList(rows, pick), CandidateArrays(rows, pick)
        for length, width in rooms:
            room = FreeRectangle(0, 0, length * unit // 12, width * unit // 12)
            taken = few.take(room)
            assert taken == many.take(room)
            if taken is not None:
                many.drop(taken[2])
                if not few.drop(taken[2]):
                    break

    check()

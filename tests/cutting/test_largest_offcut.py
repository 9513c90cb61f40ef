"""One big offcut rather than several small ones, on no more sheets."""

import json
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.cutting import patterns
from fronts.cutting.budget import begin
from fronts.cutting.integer_problem import integer_problem
from fronts.cutting.sheets.largest_offcut import with_largest_offcut
from fronts.cutting.sheets.sheet_search import plan_sheets
from fronts.cutting.sheets.tidying import largest_left
from fronts.jobfile.parts_file import read_request

SLABS = """
55 1/16 x 23 7/8 x 1; 35 7/8 x 8 1/4 x 1; 35 7/8 x 8 1/8 x 2; 35 7/8 x 5 1/2 x 1; 34 x 7 1/2 x 1
30 3/8 x 16 3/8 x 2; 29 7/8 x 17 7/8 x 2; 29 7/8 x 16 3/8 x 2; 28 11/16 x 11 7/8 x 2
28 x 7 1/2 x 1; 26 13/16 x 6 5/16 x 1; 22 x 10 7/8 x 2; 22 x 6 1/2 x 1; 16 x 7 1/2 x 1
"""
SIZES = st.lists(
    st.tuples(st.integers(2, 12), st.integers(2, 12), st.integers(1, 3)), min_size=2, max_size=9
)


def request(sizes: list[tuple[str, str, int]], stock: tuple[str, str], unit: str) -> dict[str, Any]:
    """A parts file of parts without grain."""
    parts = [
        {"label": f"P{i}", "length": a, "width": b, "count": n} for i, (a, b, n) in enumerate(sizes)
    ]
    return {"unit": unit, "kerf": "0", "trim": "0", "parts": parts,
            "stock": [{"label": "S", "length": stock[0], "width": stock[1]}]}  # fmt: skip


@settings(max_examples=60, deadline=None)
@given(SIZES)
def test_never_more_sheets_and_never_less_in_one_piece(sizes: list[tuple[int, int, int]]) -> None:
    """No part is lost and no sheet more is cut; on as many, the largest piece is no smaller."""
    rows = [(str(a), str(b), n) for a, b, n in sizes]
    whole = integer_problem(read_request(json.dumps(request(rows, ("17", "13"), "mm")).encode()))
    found = plan_sheets(whole, begin(0.1, lambda: 0.0)).packing
    better = with_largest_offcut(whole, found, begin(0.1, lambda: 0.0))
    board = whole.boards[0]
    before, after = (patterns.cost(packing, whole.boards) for packing in (found, better))
    assert not better.short
    assert after <= before
    if after == before:
        assert max(largest_left(board, c) for c, _ in better.chosen) >= max(
            largest_left(board, c) for c, _ in found.chosen
        )


def test_a_kitchens_slabs_leave_a_piece_worth_keeping() -> None:
    """Twenty slabs on two sheets: more in one piece than the first least plan leaves."""
    rows = [
        (a.strip(), b.strip(), int(n))
        for a, b, n in (each.split("x") for each in SLABS.replace("\n", ";").split(";") if each)
    ]
    asked = request(rows, ("96", "48"), "in")
    whole = integer_problem(read_request(json.dumps(asked).encode()))
    found = plan_sheets(whole, begin(1, lambda: 0.0)).packing
    better = with_largest_offcut(whole, found, begin(1, lambda: 0.0))
    board = whole.boards[0]
    assert patterns.cost(found, whole.boards) == patterns.cost(better, whole.boards) == 2
    assert max(largest_left(board, c) for c, _ in better.chosen) > max(
        largest_left(board, c) for c, _ in found.chosen
    )

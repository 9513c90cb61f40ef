"""Each way of proving on its own: whatever the search would have needed, the bound must hold."""

import json
from collections.abc import Callable
from math import inf
from typing import Any

import pytest
from hypothesis import given, settings

from fronts.cutting.bounds.conservative_scales import conservative_scale_bound
from fronts.cutting.bounds.dual_feasible import area_bound, dual_feasible_bound
from fronts.cutting.bounds.guillotine_knapsack import GuillotineKnapsack
from fronts.cutting.bounds.lower_bound import LowerBound
from fronts.cutting.budget import begin
from fronts.cutting.column_generation import ColumnGeneration
from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import IntegerProblem, integer_problem
from fronts.cutting.patterns import pattern_of
from fronts.jobfile.parts_file import read_request
from tests.cutting.exhaustive import least_sheets
from tests.cutting.test_bounds import small_sheets


def priced(whole: IntegerProblem, pricer: Any) -> LowerBound:
    """The bound of column generation from nothing but single parts."""
    generation = ColumnGeneration(whole, pricer)
    for item, kind in enumerate(whole.items):
        for board, ways in enumerate(kind.orientations):
            if ways:
                generation.add([pattern_of(board, [Spot(item, 0, 0, ways[0])])])
    relaxed = generation.solve(begin(2), 60)
    return LowerBound(0) if relaxed is None else relaxed.bound


def scaled(whole: IntegerProblem) -> LowerBound:
    """Two scales made for the parts."""
    return conservative_scale_bound(whole, whole.boards, 10**9, begin(2))


def by_cuts(whole: IntegerProblem) -> LowerBound:
    """Pricing by every sheet that cuts can make."""
    table = GuillotineKnapsack(whole)
    return priced(whole, table) if table.usable else LowerBound(0)


def stretched(whole: IntegerProblem) -> LowerBound:
    """Stretched areas."""
    return dual_feasible_bound(whole, whole.boards, 10**9)


def area(whole: IntegerProblem) -> LowerBound:
    """Areas as they are."""
    return area_bound(whole, whole.boards)


@pytest.mark.parametrize("prove", [scaled, by_cuts, stretched, area])
def test_no_prover_goes_over_the_least(prove: Callable[[IntegerProblem], LowerBound]) -> None:
    """Boards that do not fit into each other, limited stock, grain and turning."""

    @settings(max_examples=120, deadline=None)
    @given(small_sheets())
    def check(request: dict[str, Any]) -> None:
        true_least = least_sheets(request)
        found = prove(integer_problem(read_request(json.dumps(request).encode())))
        assert found.cost <= (inf if true_least is None else true_least)
        assert true_least is None or not found.impossible

    check()


@pytest.mark.parametrize("prove", [scaled, by_cuts, stretched, area])
def test_a_long_board_beside_a_larger_one(prove: Callable[[IntegerProblem], LowerBound]) -> None:
    """Two strips that share no square board do share a long one: one board is enough."""
    request = {
        "unit": "mm", "kerf": "0", "trim": "0",
        "stock": [{"label": "square", "length": "10", "width": "10"},
                  {"label": "long", "length": "16", "width": "6"}],
        "parts": [{"label": "A", "length": "8", "width": "6", "count": 2, "grain": "length"}],
    }  # fmt: skip
    whole = integer_problem(read_request(json.dumps(request).encode()))
    assert prove(whole).cost <= 1


def test_provers_prove_something() -> None:
    """Three parts of which no two share a sheet: three sheets, though the area is that of two."""
    request = {
        "unit": "mm", "kerf": "0", "trim": "0",
        "stock": [{"label": "S", "length": "10", "width": "10"}],
        "parts": [{"label": "A", "length": "6", "width": "6", "count": 3}],
    }  # fmt: skip
    whole = integer_problem(read_request(json.dumps(request).encode()))
    assert area(whole).cost == 2
    assert [prove(whole).cost for prove in (scaled, by_cuts, stretched)] == [3, 3, 3]

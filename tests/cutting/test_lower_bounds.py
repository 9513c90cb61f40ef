"""Each way of proving on its own: whatever the search would have needed, the bound must hold."""

import json
from collections.abc import Callable, Iterator
from itertools import combinations
from math import inf
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.cutting.bounds.conservative_scales import ScalePair, scale_pair
from fronts.cutting.bounds.dual_feasible import area_bound, dual_feasible_bound
from fronts.cutting.bounds.guillotine_knapsack import GuillotineKnapsack
from fronts.cutting.bounds.lower_bound import LowerBound, strongest
from fronts.cutting.budget import begin
from fronts.cutting.column_generation import ColumnGeneration
from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import IntegerProblem, integer_problem
from fronts.cutting.patterns import Pattern, pattern_of
from fronts.cutting.sheets.capped_duals import CappedDuals
from fronts.cutting.sheets.heavy_patterns import HeavyPatterns
from fronts.cutting.sheets.rest_bound import worth_of
from fronts.jobfile.parts_file import read_request
from tests.cutting.exhaustive import fits, least_sheets
from tests.cutting.test_bounds import small_sheets


def single_parts(whole: IntegerProblem) -> Iterator[Pattern]:
    """Patterns of one part each."""
    for item, kind in enumerate(whole.items):
        for board, ways in enumerate(kind.orientations):
            if ways:
                yield pattern_of(board, [Spot(item, 0, 0, ways[0])])


def priced(whole: IntegerProblem, pricer: Any) -> LowerBound:
    """The bound of column generation from nothing but single parts."""
    generation = ColumnGeneration(whole, pricer)
    generation.add(single_parts(whole))
    relaxed = generation.solve(begin(2), 60)
    return LowerBound(0) if relaxed is None else relaxed.bound


def scales(whole: IntegerProblem, across_first: bool = False) -> ScalePair:
    """Two scales made for the parts."""
    return scale_pair(whole, whole.boards, begin(2, lambda: 0.0), across_first=across_first)


def scaled(whole: IntegerProblem) -> LowerBound:
    """Two scales made for the parts."""
    return strongest([scales(whole, first).bound(whole.boards) for first in (False, True)])


def by_heavy_patterns(whole: IntegerProblem) -> LowerBound:
    """Exactly priced column generation, one board after the other as far as it goes."""
    pair = scales(whole)
    if not CappedDuals.serves(whole, pair):
        return LowerBound(0)
    duals = CappedDuals(whole, pair, single_parts(whole), begin(2))
    bound = LowerBound(0)
    while (further := duals.bound(bound.cost + 1)).cost > bound.cost:
        bound = further
    return bound


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


@pytest.mark.parametrize("prove", [scaled, by_heavy_patterns, by_cuts, stretched, area])
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


@pytest.mark.parametrize("prove", [scaled, by_heavy_patterns, by_cuts, stretched, area])
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
    assert [prove(whole).cost for prove in (scaled, by_heavy_patterns, by_cuts, stretched)] == [
        3
    ] * 4


@settings(max_examples=150, deadline=None)
@given(small_sheets(), st.lists(st.integers(0, 60), min_size=5, max_size=5))
def test_no_heavy_pattern_is_missed(request: dict[str, Any], more: list[int]) -> None:
    """The heaviest pattern is as heavy as trying every set of parts says, or no heavier than one.

    Weights are those of two scales, each part's raised by up to 60 %.
    """
    request["stock"] = request["stock"][:1]
    length, width = int(request["stock"][0]["length"]), int(request["stock"][0]["width"])
    sizes = [(int(row["length"]), int(row["width"]), row["grain"]) for row in request["parts"]]
    lying = [(b, a, False) if grain == "width" else (a, b, grain is None) for a, b, grain in sizes]
    lying = [part for part in lying if fits(length, width, (part,))]
    if not lying:
        return
    request["parts"] = [
        {"label": f"P{i}", "length": str(a), "width": str(b), "grain": None if turns else "length"}
        for i, (a, b, turns) in enumerate(lying)
    ]
    whole = integer_problem(read_request(json.dumps(request).encode()))
    pair = scales(whole)
    full = pair.along.carried(pair.lengths)[0] * pair.across.carried(pair.widths)[0]
    weights = [
        least * worth_of(pair) * (100 + percent) // (100 * full)
        for least, percent in zip(pair.weights(), more[: len(whole.items)], strict=True)
    ]
    worth = {part: weights[index] for index, part in item_of_part(whole)}
    heaviest = max(
        sum(worth[i] for i in chosen)
        for size in range(1, len(lying) + 1)
        for chosen in combinations(range(len(lying)), size)
        if fits(length, width, tuple(lying[i] for i in chosen))
    )
    heavy = HeavyPatterns(whole, pair, weights, begin(2))

    assert heavy.complete
    assert heavy.heaviest == max(heaviest, worth_of(pair))


def item_of_part(whole: IntegerProblem) -> Iterator[tuple[int, int]]:
    """Which item each part belongs to: item, part."""
    for index, item in enumerate(whole.items):
        for unit in item.units:
            yield index, unit.parts[0]

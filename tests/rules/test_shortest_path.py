"""Orders of points against every order there is, and against a published instance."""

import random
from collections.abc import Callable
from itertools import combinations, permutations

import pytest

from fronts.rules.shortest_path import EXACT_BY_SETS, Costs, Path, path_by_sets, path_cost
from fronts.rules.subtour_elimination import path_by_cuts

WAYS = (path_by_sets, path_by_cuts)
GR17 = """
0 633 0 257 390 0 91 661 228 0 412 227 169 383 0 150 488 112 120 267 0 80 572 196 77 351 63 0
134 530 154 105 309 34 29 0 259 555 372 175 338 264 232 249 0 505 289 262 476 196 360 444 402 495 0
353 282 110 324 61 208 292 250 352 154 0 324 638 437 240 421 329 297 314 95 578 435 0
70 567 191 27 346 83 47 68 189 439 287 254 0 211 466 74 182 243 105 150 108 326 336 184 391 145 0
268 420 53 239 199 123 207 165 383 240 140 448 202 57 0
246 745 472 237 528 364 332 349 202 685 542 157 289 426 483 0
121 518 142 84 297 35 29 36 236 390 238 301 55 96 153 336 0
"""
"""TSPLIB 95, gr17, 17-city problem (Groetschel), lower diagonal rows."""
GR17_TOUR = 2085
"""Its shortest tour, by TSPLIB's list of proven lengths."""


def lower_rows(text: str) -> list[list[int]]:
    """The whole matrix from its lower diagonal rows."""
    figures = iter(int(each) for each in text.split())
    rows: list[list[int]] = []
    for at, figure in enumerate(figures):
        rows.append([figure] + [next(figures) for _ in range(at)])
    return [[rows[max(a, b)][min(a, b)] for b in range(len(rows))] for a in range(len(rows))]


def as_path(tour: Costs, far: int) -> Costs:
    """The tour's first point twice, both so far from all else that a path ends in them."""
    count = len(tour)
    source = [*range(count), 0]
    ends = {0, count}

    def cost(one: int, two: int) -> int:
        both = {one, two}
        if both == ends:
            return 3 * far
        apart: int = tour[source[one]][source[two]]
        return apart + far * len(both & ends)

    return [[0 if a == b else cost(a, b) for b in range(count + 1)] for a in range(count + 1)]


def random_costs(count: int, dice: random.Random, dearest: int) -> Costs:
    """The same both ways."""
    cost: dict[tuple[int, int], int] = {
        pair: dice.randint(0, dearest) for pair in combinations(range(count), 2)
    }
    return [
        [0 if a == b else cost[min(a, b), max(a, b)] for b in range(count)] for a in range(count)
    ]


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("count", [2, 3, 5, 7])
@pytest.mark.parametrize("dearest", [1, 4, 1_000])
def test_no_order_is_cheaper(way: Callable[[Costs], Path], count: int, dearest: int) -> None:
    """Every order is tried; few different costs make for many rings and ties."""
    dice = random.Random(count * dearest)
    for _ in range(12):
        costs = random_costs(count, dice, dearest)
        path = way(costs)
        assert sorted(path.order) == list(range(count))
        assert path_cost(path.order, costs) == path.cost == path.bound
        assert path.cost == min(path_cost(order, costs) for order in permutations(range(count)))


def test_of_orders_that_cost_as_little_the_first() -> None:
    """By sets that is the points' own order; by cuts at least its first end comes first."""
    even = [[0 if a == b else 1 for b in range(5)] for a in range(5)]
    assert path_by_sets(even).order == (0, 1, 2, 3, 4)
    assert path_by_cuts(even).order[0] < path_by_cuts(even).order[-1]


def test_a_published_instance() -> None:
    """Source: TSPLIB 95 (G. Reinelt), gr17; its tour of 2085 as a path between two ends."""
    far = 10_000
    path = path_by_cuts(as_path(lower_rows(GR17), far))
    assert path.is_proven
    assert path.cost - 2 * far == GR17_TOUR


def test_both_ways_agree_on_part_of_it() -> None:
    """As many of its cities as sets are searched for."""
    part = [row[:EXACT_BY_SETS] for row in lower_rows(GR17)[:EXACT_BY_SETS]]
    assert path_by_sets(part).cost == path_by_cuts(part).cost


def test_where_rounds_run_out_the_bound_says_how_close(monkeypatch: pytest.MonkeyPatch) -> None:
    """Two squares far apart: without a cut the cheapest pairs go round in rings."""
    monkeypatch.setattr("fronts.rules.subtour_elimination.MOST_ROUNDS", 1)
    costs = [[0 if a == b else 1 if a // 4 == b // 4 else 9 for b in range(8)] for a in range(8)]
    path = path_by_cuts(costs)
    assert path.cost == 6 + 9
    assert 7 <= path.bound < path.cost
    assert not path.is_proven


def test_no_points_and_one() -> None:
    """Nothing to go between."""
    assert path_by_sets([]) == Path((), 0, 0)
    assert path_by_sets([[0]]) == Path((0,), 0, 0)

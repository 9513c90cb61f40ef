"""The exact assignment against a general-purpose solver, and against every plan there is."""

import random
from collections.abc import Mapping, Sequence

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import linear_sum_assignment

from fronts.rules.assignment import assign
from tests.rules.laws import LAW

Costs = Sequence[Mapping[int, int]]


def _score(costs: Costs, plan: Mapping[int, int]) -> tuple[int, int]:
    return len(plan), sum(costs[row][column] for row, column in plan.items())


def _by_scipy(costs: Costs, columns: int) -> tuple[int, int]:
    """How many it serves and at what cost; leaving a row unserved costs more than all else."""
    unserved = 1 + sum(max(row.values(), default=0) for row in costs)
    matrix = np.full((len(costs), columns + len(costs)), unserved * (len(costs) + 1))
    for row, each in enumerate(costs):
        matrix[row, columns + row] = unserved
        for column, cost in each.items():
            matrix[row, column] = cost
    rows, chosen = linear_sum_assignment(matrix)
    plan = {int(r): int(c) for r, c in zip(rows, chosen, strict=True) if c < columns}
    return _score(costs, plan)


def _random(
    seed: int, rows: int, columns: int, density: float, dearest: int
) -> list[dict[int, int]]:
    dice = random.Random(seed)
    return [
        {c: dice.randint(0, dearest) for c in range(columns) if dice.random() < density}
        for _ in range(rows)
    ]


SIZES = [
    (5, 5, 0.5, 9),
    (30, 30, 0.1, 50),
    (40, 25, 0.2, 3),
    (25, 60, 0.3, 10_000),
    (60, 60, 1, 99),
]


@pytest.mark.parametrize("seed", range(6))
@pytest.mark.parametrize("size", SIZES, ids=[f"{r}×{c} at {d:.0%}" for r, c, d, _ in SIZES])
def test_agrees_with_scipy(size: tuple[int, int, float, int], seed: int) -> None:
    """Source: scipy.optimize.linear_sum_assignment, on the same costs padded."""
    rows, columns, density, dearest = size
    costs = _random(seed, rows, columns, density, dearest)

    plan = assign(costs)

    assert len(set(plan.values())) == len(plan)
    assert all(column in costs[row] for row, column in plan.items())
    assert _score(costs, plan) == _by_scipy(costs, columns)


def _every_score(costs: Costs, taken: frozenset[int] = frozenset()) -> tuple[int, int]:
    """The best (served, -cost) of all plans, by trying each."""
    if not costs:
        return (0, 0)
    best = _every_score(costs[1:], taken)
    for column, cost in costs[0].items():
        if column not in taken:
            served, saved = _every_score(costs[1:], taken | {column})
            best = max(best, (served + 1, saved - cost))
    return best


@LAW
@given(st.lists(st.dictionaries(st.integers(0, 4), st.integers(0, 6)), max_size=5))
def test_agrees_with_trying_every_plan(costs: list[dict[int, int]]) -> None:
    """Served first, then cost: nothing is better."""
    served, cost = _score(costs, assign(costs))

    assert (served, -cost) == _every_score(costs)


def test_a_dear_plan_that_serves_more_wins() -> None:
    """Serving both for 1000 comes before serving one for nothing."""
    assert assign([{0: 0, 1: 1000}, {0: 0}]) == {0: 1, 1: 0}


def test_nothing_to_assign() -> None:
    """No rows, or rows that nothing serves, give no plan."""
    assert assign([]) == {}
    assert assign([{}, {}]) == {}

"""The order of least changes against every order there is."""

import random
from itertools import pairwise, permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.order_of_cabinets import Order, changes_along, least_changes
from tests.rules.laws import LAW

_SETS = st.lists(st.frozensets(st.sampled_from("abcdef"), max_size=5), max_size=6)


def named(*sets: str | frozenset[str]) -> dict[str, frozenset[str]]:
    """Cabinets B1, B2 … with these tools, a letter each."""
    return {f"B{at}": frozenset(tools) for at, tools in enumerate(sets, 1)}


def order_of(order: Order[str]) -> str:
    """Its cabinets, one step after another: `B1 B3, B2`."""
    return ", ".join(" ".join(step.cabinets) for step in order.steps)


@LAW
@given(_SETS)
def test_no_order_changes_less(sets: list[frozenset[str]]) -> None:
    """Every order of up to six cabinets is tried."""
    order = least_changes(named(*sets))
    full = [tools for tools in sets if tools]
    assert order.changes == order.least
    assert order.changes == min(changes_along(each) for each in permutations(full))


@LAW
@given(_SETS)
def test_every_cabinet_once_and_every_change_said(sets: list[frozenset[str]]) -> None:
    """What a step uses it has from the one before or as new; nothing is set up twice in a row."""
    of = named(*sets)
    order = least_changes(of)
    assert sorted(label for step in order.steps for label in step.cabinets) == sorted(
        label for label, tools in of.items() if tools
    )
    assert all(of[label] == step.tools for step in order.steps for label in step.cabinets)
    assert sum(len(step.new) for step in order.steps) == order.changes
    for before, step in pairwise(order.steps):
        assert step.tools != before.tools
        assert step.new == step.tools - before.tools


def test_cabinets_with_one_set_up_follow_each_other() -> None:
    """In the wall's order, wherever they stand."""
    assert order_of(least_changes(named("ab", "cd", "ab", "cd"))) == "B1 B3, B2 B4"


def test_what_is_shared_is_carried_over() -> None:
    """ab, bc, cd, da: from each to the next one tool changes."""
    order = least_changes(named("ab", "cd", "bc", "ad"))
    assert order.changes == 5
    assert order_of(order) == "B1, B3, B2, B4"


def test_ties_keep_the_wall_s_order() -> None:
    """Cabinets of which none shares a tool with another stay as they stand."""
    assert order_of(least_changes(named("a", "b", "c", "d"))) == "B1, B2, B3, B4"
    assert order_of(least_changes(named("ax", "bx", "cx", "dx"))) == "B1, B2, B3, B4"


def test_of_orders_with_as_few_changes_the_one_that_strays_least() -> None:
    """B1, B3, B4, B2 changes as little, and comes first by its labels, but goes back twice."""
    of = named("bc", "c", "abc", "ac")
    order = least_changes(of)
    assert order_of(order) == "B2, B1, B3, B4"
    assert order.changes == changes_along([of[label] for label in ("B1", "B3", "B4", "B2")])


def test_cabinets_without_a_set_up_are_left_out() -> None:
    """There is nothing to change for them, whenever one comes by."""
    assert order_of(least_changes(named("", "a", ""))) == "B2"
    assert least_changes({}).steps == ()


@pytest.mark.parametrize("seed", range(3))
def test_a_large_kitchen_is_solved_to_the_proof(seed: int) -> None:
    """Sixty cabinets, all different: fewer changes than in the wall's order, and none is fewer."""
    dice = random.Random(seed)
    of = named(*(frozenset(dice.sample("abcdefghijklmno", 5)) for _ in range(60)))
    order = least_changes(of)
    assert order.changes == order.least < changes_along(list(of.values()))


def test_where_the_proof_is_missing_the_order_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without a single integer program nothing is known but what is shared at most."""
    monkeypatch.setattr("fronts.rules.subtour_elimination.MOST_ROUNDS", 0)
    dice = random.Random(5)
    of = named(*(frozenset(dice.sample("abcdefghijklmno", 5)) for _ in range(30)))
    order = least_changes(of)
    assert order.least < order.changes <= changes_along(list(of.values()))

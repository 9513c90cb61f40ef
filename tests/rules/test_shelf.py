"""What is in stock: kept to the last thousandth, and covering wants exactly once."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.rules.buying import Thing, Wanted
from fronts.rules.buying_names import is_by_length, name_of_need
from fronts.rules.kitchen import Kitchen
from fronts.rules.schedule import schedule
from fronts.rules.shelf import (
    amount_in,
    came_for_job,
    in_words,
    kept,
    shares_of_free,
    with_stock,
)
from tests.rules.buying import buying as kitchens_that_buy
from tests.rules.laws import KITCHEN_LAW

NAMES = ("hinge H-1", "bumper", "edge band E-1")


@pytest.mark.parametrize(
    ("amount", "unit", "words"),
    [
        ("12", "", "12"),
        ("0", "", "0"),
        ("12.5", "ft", "12.5 ft"),
        ("0.001", "ft", "0.001 ft"),
        ("3.125", "m", "3.125 m"),
        ("100", "m", "100 m"),
    ],
)
def test_what_is_typed_is_kept_and_read_again(amount: str, unit: str, words: str) -> None:
    """Pieces, and lengths to the thousandth of a foot or metre."""
    much = Fraction(amount)

    assert amount_in(kept(much, unit), unit) == much
    assert in_words(kept(much, unit), unit) == words


def test_a_length_kept_in_feet_is_read_in_metres() -> None:
    """A shop may change its unit: 100 ft are 30.48 m (foot of 1959)."""
    assert in_words(kept(Fraction(100), "ft"), "m") == "30.48 m"
    assert in_words(kept(Fraction(1), "m"), "ft") == "3.28 ft"


@pytest.mark.parametrize(
    ("comes", "came", "ordered", "for_job"),
    [(4, 0, 10, 4), (10, 0, 10, 10), (12, 0, 10, 10), (3, 8, 10, 2), (3, 12, 10, 0)],
)
def test_what_comes_is_the_jobs_as_far_as_it_sent_for_it(
    comes: int, came: int, ordered: int, for_job: int
) -> None:
    """What is over is free."""
    assert came_for_job(comes, came, ordered) == for_job


WANTED = st.builds(
    Wanted, name=st.sampled_from(NAMES[:2]), job=st.sampled_from(("K-1", "K-2")),
    need=st.none() | st.integers(0, 60).map(Fraction), spares=st.integers(0, 5).map(Fraction),
    covered=st.integers(0, 30).map(Fraction),
)  # fmt: skip


@given(st.lists(WANTED, max_size=8), st.dictionaries(st.sampled_from(NAMES), st.integers(-20, 90)))
def test_what_is_laid_by_covers_wants_once(wanted: list[Wanted], held: dict[str, int]) -> None:
    """All of it is said somewhere, none twice, and it buys exactly that much less."""
    lines = with_stock(wanted, held)

    for name in NAMES:
        before = [each for each in wanted if each.name == name and each.need is not None]
        after = [each for each in lines if each.name == name and each.need is not None]
        stock = held.get(name, 0) if after else 0
        assert sum(each.stocked for each in after) == stock
        assert [each.sent for each in after] == [each.sent for each in before]
        left = sum(each.amount for each in before) - sum(each.amount for each in after)
        if stock >= 0:
            assert left == min(stock, sum(each.amount for each in before))
    assert [each.name for each in lines] == [each.name for each in wanted]


def test_what_was_given_back_is_bought_again() -> None:
    """Ten were sent for and came, three of them went back to the shelf: three are missing."""
    line = Wanted("bumper", "K-1", Fraction(10), covered=Fraction(10))

    (after,) = with_stock([line], {"bumper": -3})

    assert [after.amount, after.sent, after.stocked] == [3, 10, -3]


@given(
    st.lists(
        st.builds(
            Thing,
            name=st.sampled_from(NAMES),
            unit=st.just(""),
            wanted=st.lists(WANTED.filter(lambda each: each.need is not None), max_size=4).map(
                tuple
            ),
        ),
        max_size=4,
        unique_by=lambda thing: thing.name,
    ),
    st.dictionaries(st.sampled_from(NAMES), st.integers(0, 80)),
)
def test_shares_are_no_more_than_is_free_or_wanted(
    things: list[Thing], free: dict[str, int]
) -> None:
    """And as much as can be of both."""
    shares = list(shares_of_free(things, free))

    assert all(share.amount > 0 for share in shares)
    for thing in things:
        given_out = sum(share.amount for share in shares if share.name == thing.name)
        assert given_out == min(free.get(thing.name, 0), thing.amount)


@settings(KITCHEN_LAW, max_examples=15)
@given(kitchens_that_buy())
def test_what_is_needed_by_length_is_known_by_its_name(of: Kitchen) -> None:
    """So that stock of a thing is counted as its need is."""
    for need in schedule(of).hardware:
        assert is_by_length(name_of_need(need)) == bool(need.unit)

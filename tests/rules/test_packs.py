"""Packs for a need: enough, and not one too many."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.money import Price
from fronts.rules.offers import BuyUnit, OfferFacts
from fronts.rules.packs import packs_to_buy, totals


def asked(
    pack: str | Decimal, *, unit: BuyUnit = "piece", least: int = 1, price: str | Decimal = "2.50"
) -> OfferFacts:
    """An offer of packs."""
    return OfferFacts(Price(Decimal(price), "EUR"), pack=Decimal(pack), unit=unit, least=least)


@pytest.mark.parametrize(
    ("need", "unit", "offer", "packs", "cost"),
    [
        (23, "", asked("10"), 3, "7.50 EUR"),
        (20, "", asked("10"), 2, "5.00 EUR"),
        (1, "", asked("10", least=4), 4, "10.00 EUR"),
        (0, "", asked("10"), 0, "0.00 EUR"),
        (0, "", asked("10", least=4), 0, "0.00 EUR"),
        (30, "ft", asked("7.5", unit="ft"), 4, "10.00 EUR"),
        (50, "ft", asked("5", unit="m"), 4, "10.00 EUR"),  # 15.24 m
        (3, "m", asked("10", unit="ft"), 1, "2.50 EUR"),  # 9.84 ft
    ],
)  # fmt: skip
def test_whole_packs_are_bought(
    need: int, unit: str, offer: OfferFacts, packs: int, cost: str
) -> None:
    """As many as it takes, in the offer's own unit, and no fewer than the least order."""
    bought = packs_to_buy(Fraction(need), unit, offer)

    assert bought is not None
    assert (bought.packs, str(bought.cost)) == (packs, cost)


@pytest.mark.parametrize(("unit", "sold"), [("", "m"), ("ft", "piece")])
def test_a_length_is_no_number_of_pieces(unit: str, sold: BuyUnit) -> None:
    """Nobody guesses how long one is."""
    assert packs_to_buy(Fraction(3), unit, asked("1", unit=sold)) is None


AMOUNTS = st.fractions(min_value=0, max_value=10_000, max_denominator=50)
PACKS = st.decimals(min_value="0.001", max_value=1000, places=3)


@given(AMOUNTS, PACKS, st.integers(1, 20))
def test_never_less_than_the_need_nor_a_pack_too_many(
    need: Fraction, pack: Decimal, least: int
) -> None:
    """Beyond the least order."""
    bought = packs_to_buy(need, "m", asked(pack, unit="m", least=least))

    assert bought is not None
    assert bought.amount == bought.packs * Fraction(pack) >= need
    assert bought.packs in (0, least) or (bought.packs - 1) * Fraction(pack) < need
    assert bought.packs == 0 or need > 0


@given(st.lists(st.integers(0, 10**6), max_size=8), st.integers(1, 100))
def test_costs_add_up(needs: list[int], pack: int) -> None:
    """Exactly; and what is bought together costs no more than what is bought apart."""
    offer = asked(Decimal(pack), price="0.07")
    apart = [each for need in needs if (each := packs_to_buy(Fraction(need), "", offer))]
    together = packs_to_buy(Fraction(sum(needs)), "", offer)

    whole = totals(each.cost for each in apart)
    assert [each.amount for each in whole] == [
        sum(each.packs for each in apart) * Decimal("0.07") for _ in apart[:1]
    ]
    assert together is not None
    assert not whole or together.cost.amount <= whole[0].amount


def test_every_currency_has_its_own_sum() -> None:
    """Nothing is changed from one into another."""
    costs = [Price(Decimal(1), "EUR"), Price(Decimal(2), "USD"), Price(Decimal(3), "EUR")]

    assert [str(each) for each in totals(costs)] == ["4.00 EUR", "2.00 USD"]

"""What a job costs, by kind and front: exact, and shown so that what is shown adds up."""

from decimal import Decimal
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.buying import Cause, Wanted
from fronts.rules.job_cost import coins, job_cost, shared_out
from fronts.rules.money import Price
from fronts.rules.offers import OfferFacts

OFFERS = {
    "hinge H-1": OfferFacts(Price(Decimal("32.50"), "USD"), pack=Decimal(10)),
    "edge band E-1": OfferFacts(Price(Decimal(58), "USD"), pack=Decimal(250), unit="ft"),
    "glass stop": OfferFacts(Price(Decimal(9), "EUR"), pack=Decimal(10), unit="m"),
}


def front(label: str, amount: int | str) -> Cause:
    """So much for a front of cabinet B1."""
    return Cause(label, "B1", Fraction(amount))


def test_each_bears_its_share_of_a_pack() -> None:
    """Three hinges of ten cost three tenths of the pack; spares are nobody's front."""
    causes = (front("B1.a", 2), front("B1.b", 1))
    hinges = Wanted("hinge H-1", "J", Fraction(3), Fraction(1), causes=causes)
    band = Wanted("edge band E-1", "J", Fraction(8), unit="ft", causes=(front("B1.a", "15/2"),))

    (cost,) = job_cost([hinges, band], OFFERS).currencies

    assert dict(cost.kinds) == {
        "Hinges": Fraction("13.00"), "Edge bands": Fraction(58 * 8, 250)
    }  # fmt: skip
    first, second = cost.fronts
    assert first.amount == Fraction("6.50") + Fraction(58 * 15, 2 * 250)
    assert second.amount == Fraction("3.25")
    assert cost.rest == Fraction("3.25") + Fraction(58, 2 * 250)
    assert cost.amount == Fraction("13.00") + Fraction(58 * 8, 250)


def test_money_is_not_mixed_and_what_has_no_price_is_said() -> None:
    """Feet of what is sold by the metre are converted; pieces are not."""
    stop = Wanted("glass stop", "J", Fraction(10), unit="ft")
    pieces = Wanted("edge band E-1", "J", Fraction(2))
    sheets = Wanted("sheet MDF 3/4 in, 96 × 48 in", "J", None)

    found = job_cost([stop, pieces, sheets], OFFERS)

    assert found.unpriced == ("edge band E-1", "sheet MDF 3/4 in, 96 × 48 in")
    assert [each.currency for each in found.currencies] == ["EUR"]
    assert found.in_currency("EUR").amount == Fraction(9) * Fraction("3.048") / 10
    assert found.in_currency("USD").amount == 0


PARTS = st.lists(st.fractions(0, 1000, max_denominator=97), max_size=12)


@given(PARTS, st.sampled_from(("USD", "JPY", "KWD")), st.booleans())
def test_what_is_shown_adds_up(parts: list[Fraction], currency: str, down: bool) -> None:
    """To the coin, each within a coin of what it is; however the whole was rounded."""
    whole = coins(sum(parts, Fraction(0)), currency)
    one = {"USD": 100, "JPY": 1, "KWD": 1000}[currency]
    if down:
        whole = int(sum(parts, Fraction(0)) * one)

    shown = shared_out(parts, whole, currency)

    assert sum(shown) == whole
    assert all(abs(part * one - each) < 1 for part, each in zip(parts, shown, strict=True))

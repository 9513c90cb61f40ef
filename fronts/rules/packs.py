"""How many packs of an offer a need takes, and what they cost.

Only whole packs are bought, and no fewer than the least order (common practice, no source).
"""

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from math import ceil

from fronts.rules.lengths import UNITS
from fronts.rules.money import Price
from fronts.rules.offers import OfferFacts

PIECE = "piece"


@dataclass(frozen=True, slots=True)
class Purchase:
    """So many packs, what is in all of them in the offer's unit, and their cost."""

    packs: int
    amount: Fraction
    cost: Price


def packs_to_buy(need: Fraction, unit: str, offer: OfferFacts) -> Purchase | None:
    """The packs for what is still to be bought, spares included.

    `unit` is what the need counts, "" where pieces; None where the offer counts otherwise: a
    length is no number of pieces.
    """
    share = _in_units_of(offer.unit, unit or PIECE)
    if share is None:
        return None
    pack = Fraction(offer.pack)
    wanted = need * share
    packs = max(ceil(wanted / pack), offer.least) if wanted else 0
    cost = Price(packs * offer.price.amount, offer.price.currency)
    return Purchase(packs, packs * pack, cost)


def share_of_price(unit: str, offer: OfferFacts) -> Fraction | None:
    """What one of the unit costs, its share of a pack; None where the offer counts otherwise."""
    share = _in_units_of(offer.unit, unit or PIECE)
    return None if share is None else share * Fraction(offer.price.amount) / Fraction(offer.pack)


def _in_units_of(asked: str, unit: str) -> Fraction | None:
    """How many of the asked unit one of the other is."""
    if asked == unit:
        return Fraction(1)
    if PIECE in (asked, unit):
        return None
    return UNITS[unit] / UNITS[asked]


def totals(costs: Iterable[Price]) -> list[Price]:
    """What several come to, a sum for each currency in the order in which they are met."""
    sums: dict[str, Decimal] = {}
    for cost in costs:
        sums[cost.currency] = sums.get(cost.currency, Decimal(0)) + cost.amount
    return [Price(amount, currency) for currency, amount in sums.items()]

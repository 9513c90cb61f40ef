"""What a job costs: of all that is bought for it, by kind, cabinet and front, exactly.

Of a pack a job bears the share that it uses (common practice, no source): what is left in the pack
is the shop's. So the cost of a job is no sum of an order, which is of whole packs.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import floor

from fronts.rules.buying import NOTHING, Wanted
from fronts.rules.buying_names import group_of
from fronts.rules.money import MINOR_DIGITS
from fronts.rules.offers import OfferFacts
from fronts.rules.packs import share_of_price

HALF = Fraction(1, 2)


@dataclass(frozen=True, slots=True)
class FrontCost:
    """What one front costs of all that is bought."""

    front: str
    cabinet: str
    amount: Fraction


@dataclass(frozen=True, slots=True)
class CurrencyCost:
    """What a job costs in one currency; `rest` is spares, and what was rounded up to be bought."""

    currency: str
    kinds: tuple[tuple[str, Fraction], ...]
    fronts: tuple[FrontCost, ...]
    rest: Fraction

    @property
    def amount(self) -> Fraction:
        """All of it."""
        return sum((each.amount for each in self.fronts), self.rest)


@dataclass(frozen=True, slots=True)
class JobCost:
    """The cost in each currency, and the things whose price nobody knows."""

    currencies: tuple[CurrencyCost, ...]
    unpriced: tuple[str, ...]

    def in_currency(self, currency: str) -> CurrencyCost:
        """What it costs in this money; nothing where nobody asks for any."""
        found = (each for each in self.currencies if each.currency == currency)
        return next(found, CurrencyCost(currency, (), (), NOTHING))


def job_cost(wanted: Iterable[Wanted], offers: Mapping[str, OfferFacts]) -> JobCost:
    """The cost of all that a job wants at these prices, whatever of it was sent for already."""
    priced: dict[str, list[tuple[Wanted, Fraction]]] = defaultdict(list)
    unpriced = []
    for each in wanted:
        offer = offers.get(each.name)
        price = None if offer is None or each.need is None else share_of_price(each.unit, offer)
        if offer is None or price is None:
            unpriced.append(each.name)
        else:
            priced[offer.price.currency].append((each, price))
    found = (_in_currency(currency, of) for currency, of in priced.items())
    return JobCost(tuple(found), tuple(dict.fromkeys(unpriced)))


def _in_currency(currency: str, priced: Sequence[tuple[Wanted, Fraction]]) -> CurrencyCost:
    kinds: dict[str, Fraction] = defaultdict(Fraction)
    fronts: dict[tuple[str, str], Fraction] = defaultdict(Fraction)
    rest = NOTHING
    for wanted, price in priced:
        kinds[group_of(wanted.name)] += wanted.whole * price
        rest += wanted.whole * price
        for cause in wanted.causes:
            fronts[cause.cabinet, cause.front] += cause.amount * price
            rest -= cause.amount * price
    costs = (FrontCost(front, cabinet, much) for (cabinet, front), much in fronts.items())
    return CurrencyCost(currency, tuple(kinds.items()), tuple(costs), rest)


def coins(amount: Fraction, currency: str) -> int:
    """The amount in the smallest coins of its currency, halves up."""
    return floor(amount * _coins_of_one(currency) + HALF)


def shared_out(parts: Sequence[Fraction], whole: int, currency: str) -> list[int]:
    """The parts in coins that sum up to the whole: what is over goes to the largest remainders.

    The method of largest remainders (Hamilton's); `whole` is the parts' sum, rounded either way.
    """
    exact = [part * _coins_of_one(currency) for part in parts]
    given = [floor(each) for each in exact]
    by_rest = sorted(range(len(exact)), key=lambda place: (given[place] - exact[place], place))
    for place in by_rest[: max(whole - sum(given), 0)]:
        given[place] += 1
    return given


def _coins_of_one(currency: str) -> int:
    base: int = 10 ** MINOR_DIGITS[currency]
    return base

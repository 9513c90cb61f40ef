"""What a job costs as its page shows it: amounts in coins that add up to what stands above them."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from string import digits

from fronts.rules.job_cost import CurrencyCost, FrontCost, JobCost, coins, shared_out
from fronts.rules.money import MINOR_DIGITS, Price


@dataclass(frozen=True, slots=True)
class Amount:
    """What one thing costs, and what is in it."""

    name: str
    price: Price
    parts: tuple["Amount", ...] = ()


@dataclass(frozen=True, slots=True)
class CostShown:
    """The cost in one currency: by kind, and once more by cabinet with its fronts; the rest."""

    total: Price
    kinds: tuple[Amount, ...]
    cabinets: tuple[Amount, ...]
    rest: Amount


@dataclass(frozen=True, slots=True)
class AgainstBudget:
    """What may be spent beside what it costs: so much is left, or so much is too much."""

    budget: Price
    cost: Price
    left: Price | None
    over: Price | None
    others: tuple[Price, ...]


def costs_shown(cost: JobCost) -> list[CostShown]:
    """The cost in each currency, in coins."""
    return [_shown(each) for each in cost.currencies]


def against(budget: Price | None, cost: JobCost) -> AgainstBudget | None:
    """What is left of the amount that was set; other money is not counted against it."""
    if budget is None:
        return None
    code = budget.currency
    spent = coins(cost.in_currency(code).amount, code)
    left = coins(Fraction(budget.amount), code) - spent
    others = (each for each in cost.currencies if each.currency != code)
    return AgainstBudget(
        budget=budget,
        cost=_price(spent, code),
        left=_price(left, code) if left >= 0 else None,
        over=_price(-left, code) if left < 0 else None,
        others=tuple(_total(each) for each in others),
    )


def _shown(cost: CurrencyCost) -> CostShown:
    code, whole = cost.currency, coins(cost.amount, cost.currency)
    kinds = [amount for _, amount in cost.kinds]
    cabinets = sorted({each.cabinet for each in cost.fronts}, key=_as_counted)
    of = {name: [each for each in cost.fronts if each.cabinet == name] for name in cabinets}
    sums = [sum((each.amount for each in of[name]), Fraction(0)) for name in cabinets]
    *shares, rest = shared_out([*sums, cost.rest], whole, code)
    return CostShown(
        total=_price(whole, code),
        kinds=tuple(
            Amount(name, _price(much, code))
            for (name, _), much in zip(cost.kinds, shared_out(kinds, whole, code), strict=True)
        ),
        cabinets=tuple(
            Amount(name or "no cabinet", _price(much, code), tuple(_fronts(of[name], much, code)))
            for name, much in zip(cabinets, shares, strict=True)
        ),
        rest=Amount("Spares, and what is rounded up", _price(rest, code)),
    )


def _fronts(fronts: Sequence[FrontCost], whole: int, code: str) -> Iterator[Amount]:
    shares = shared_out([each.amount for each in fronts], whole, code)
    for each, much in zip(fronts, shares, strict=True):
        yield Amount(each.front, _price(much, code))


def _as_counted(label: str) -> list[tuple[int, str]]:
    """B2 before B10."""
    parts = re.findall(r"[0-9]+|[^0-9]+", label.casefold(), re.ASCII)
    return [(int(part), "") if part[0] in digits else (0, part) for part in parts]


def _total(cost: CurrencyCost) -> Price:
    return _price(coins(cost.amount, cost.currency), cost.currency)


def _price(number: int, code: str) -> Price:
    return Price(Decimal(number).scaleb(-MINOR_DIGITS[code]), code)

"""What a supplier asks for one thing that the shop buys: pack, price, lead time."""

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from typing import Literal, TypeAlias

from fronts.rules.limits import MOST_NEEDED
from fronts.rules.money import MINOR_DIGITS, Price, decimals_of, number_text, price_fault

BuyUnit: TypeAlias = Literal["piece", "ft", "m"]
BUY_UNITS: Mapping[BuyUnit, str] = {"piece": "pieces", "ft": "feet", "m": "metres"}
"""What a pack is counted in, as `Need` counts."""
ONE = Decimal(1)
MOST_PACK = Decimal(MOST_NEEDED)
PACK_DECIMALS = 3
MOST_LEAD_DAYS = 366
LONGEST_CODE = 60
MOST_SUPPLIERS = 200
MOST_OFFERS = 2000
"""Of a shop, over all that it buys."""


@dataclass(frozen=True, slots=True)
class OfferFacts:
    """An offer; without `lead_days` the supplier's usual ones hold. `least` is in packs."""

    price: Price
    code: str = ""
    pack: Decimal = ONE
    unit: BuyUnit = "piece"
    lead_days: int | None = None
    least: int = 1
    note: str = ""


def pack_words(pack: Decimal, unit: str) -> str:
    """`100 pieces`, `one`, `50 ft`."""
    if unit == "piece":
        return "one" if pack == ONE else f"{number_text(pack)} pieces"
    return f"{number_text(pack)} {unit}"


def offer_faults(offer: OfferFacts) -> dict[str, str]:
    """What cannot be, by the name of the fact."""
    faults: dict[str, str] = {}
    price = price_fault(offer.price.amount, offer.price.currency)
    if price:
        faults["price"] = price
    if offer.price.currency not in MINOR_DIGITS:
        faults["currency"] = "choose one of the currencies"
    if not 0 < offer.pack <= MOST_PACK:
        faults["pack"] = f"a pack holds more than nothing and at most {MOST_PACK}"
    elif decimals_of(offer.pack) > PACK_DECIMALS:
        faults["pack"] = f"enter at most {PACK_DECIMALS} decimals"
    elif offer.unit == "piece" and decimals_of(offer.pack):
        faults["pack"] = "pieces are counted whole"
    if offer.unit not in BUY_UNITS:
        faults["unit"] = "choose pieces, feet or metres"
    if offer.lead_days is not None and not 0 <= offer.lead_days <= MOST_LEAD_DAYS:
        faults["lead_days"] = f"enter 0 to {MOST_LEAD_DAYS} working days"
    if not 1 <= offer.least <= MOST_NEEDED:
        faults["least"] = "enter one pack or more"
    return faults

"""The columns of a file of offers, and a cell of each: out and in."""

from collections.abc import Callable, Mapping
from decimal import Decimal

from fronts.rules.money import NoAmount, amount_text, decimals_of, number_text, read_amount
from fronts.rules.offers import BUY_UNITS, BuyUnit, OfferFacts

COLUMNS: Mapping[str, str] = {
    "item": "item",
    "supplier": "supplier",
    "code": "supplier's code",
    "pack": "pack",
    "unit": "unit",
    "price": "price",
    "currency": "currency",
    "lead_days": "lead days",
    "least": "least order",
    "preferred": "preferred",
    "note": "note",
}
"""What heads each column, by the fact that it holds."""
NEEDED = ("item", "supplier", "price")
YES, NO = "yes", "no"
_YES = {YES, "y", "x", "1", "true", "preferred"}
_NO = {"", NO, "n", "0", "false", "-"}
_UNITS: Mapping[str, BuyUnit] = {
    "": "piece", "piece": "piece", "pieces": "piece", "pc": "piece", "pcs": "piece",
    "ft": "ft", "foot": "ft", "feet": "ft",
    "m": "m", "metre": "m", "metres": "m", "meter": "m", "meters": "m",
}  # fmt: skip


class Unreadable(ValueError):  # noqa: N818 - what a cell is
    """A cell says nothing that can be; says what may stand there."""


def cells_of(
    item: str, supplier: str, facts: OfferFacts, *, preferred: bool
) -> dict[str, str | Decimal | int]:
    """An offer as a file says it, numbers as numbers."""
    price = facts.price
    return {
        "item": item,
        "supplier": supplier,
        "code": facts.code,
        "pack": facts.pack,
        "unit": BUY_UNITS[facts.unit],
        "price": price.amount,
        "currency": price.currency,
        "lead_days": "" if facts.lead_days is None else facts.lead_days,
        "least": facts.least,
        "preferred": YES if preferred else NO,
        "note": facts.note,
    }


def texts_of(cells: Mapping[str, str | Decimal | int]) -> list[str]:
    """The same as text, in the order of the columns."""
    shown = {name: _text(cell) for name, cell in cells.items()}
    price = cells["price"]
    if isinstance(price, Decimal):
        shown["price"] = amount_text(price, shown["currency"])
    return [shown[name] for name in COLUMNS]


def _text(cell: str | Decimal | int) -> str:
    return number_text(cell) if isinstance(cell, Decimal) else str(cell)


def read_unit(cell: str) -> BuyUnit:
    """In what a pack is counted."""
    unit = _UNITS.get(cell.casefold().rstrip("."))
    if unit is None:
        raise Unreadable("pieces, feet or metres")
    return unit


def read_yes(cell: str) -> bool:
    """Whether an offer is preferred."""
    word = cell.casefold()
    if word not in _YES | _NO:
        raise Unreadable("yes, or nothing")
    return word in _YES


def read_pack(cell: str) -> Decimal:
    """How much is in a pack; one where nothing is said."""
    try:
        return read_amount(cell) if cell else Decimal(1)
    except NoAmount as fault:
        raise Unreadable(str(fault)) from fault


def read_count(wanted: str) -> Callable[[str], int]:
    """What reads a whole number; says what is wanted."""

    def read(cell: str) -> int:
        try:
            number = read_amount(cell)
        except NoAmount as fault:
            raise Unreadable(wanted) from fault
        if decimals_of(number):
            raise Unreadable(wanted)
        return int(number)

    return read

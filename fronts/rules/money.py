"""Money: exact amounts, each in its currency; read as people write them, shown to the coin.

Currency codes and how many decimals their smallest coins take: ISO 4217:2015, list one, as its
maintenance agency publishes it; a subset, from memory.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal

MINOR_DIGITS: Mapping[str, int] = {
    "AUD": 2, "BHD": 3, "BRL": 2, "CAD": 2, "CHF": 2, "CLP": 0, "CNY": 2, "CZK": 2, "DKK": 2,
    "EUR": 2, "GBP": 2, "HUF": 2, "IDR": 2, "ILS": 2, "INR": 2, "ISK": 0, "JOD": 3, "JPY": 0,
    "KRW": 0, "KWD": 3, "MXN": 2, "NOK": 2, "NZD": 2, "PLN": 2, "RON": 2, "SEK": 2, "SGD": 2,
    "THB": 2, "TND": 3, "TRY": 2, "TWD": 2, "USD": 2, "ZAR": 2,
}  # fmt: skip
USUAL_CURRENCY: Mapping[str, str] = {"in": "USD", "mm": "EUR"}
"""What a shop counts in that has not said so, by its unit (common practice, no source)."""
SIGNS: Mapping[str, tuple[str, ...]] = {
    "€": ("EUR",),
    "£": ("GBP",),
    "¥": ("JPY", "CNY"),
    "$": ("USD", "AUD", "CAD", "MXN", "NZD", "SGD", "TWD"),
}
"""The currencies that a sign may stand for."""
MOST_PRICE = Decimal(100_000_000)
LONGEST_AMOUNT = 30
GROUP = 3
"""Digits between two marks of thousands."""

_SPACES = " \u00a0\u2009\u202f'’"
_GROUPED = re.compile(rf"(?<=\d)[{_SPACES}](?=\d{{{GROUP}}}(?:\D|$))", re.ASCII)
_PLAIN = re.compile(r"\d+(?:\.\d+)?", re.ASCII)


class NoAmount(ValueError):  # noqa: N818 - what a text is, no error of the program
    """The text is no amount; says what may stand there."""


@dataclass(frozen=True, slots=True)
class Price:
    """So much money."""

    amount: Decimal
    currency: str

    def __str__(self) -> str:
        return f"{amount_text(self.amount, self.currency)} {self.currency}"


def amount_text(amount: Decimal, currency: str) -> str:
    """An amount as people read it: `12.50`; more decimals only where it has them."""
    least = MINOR_DIGITS.get(currency, 0)
    digits = max(least, decimals_of(amount))
    return f"{amount:.{digits}f}"


def number_text(number: Decimal) -> str:
    """A number without a zero too many: `2.5`."""
    return f"{number:.{decimals_of(number)}f}"


def decimals_of(amount: Decimal) -> int:
    """How many decimals it takes to write it."""
    _, digits, exponent = amount.normalize().as_tuple()
    return max(-exponent, 0) if isinstance(exponent, int) and digits != (0,) else 0


def price_fault(amount: Decimal, currency: str) -> str | None:
    """What is wrong with a price, or None."""
    if amount < 0:
        return "this is below nothing; enter what is paid"
    if amount >= MOST_PRICE:
        return f"this is too much; enter less than {MOST_PRICE}"
    digits = MINOR_DIGITS.get(currency)
    if digits is None:
        return None
    if decimals_of(amount) > digits:
        finest = f"at most {digits} decimals" if digits else "no decimals"
        return f"{currency} has {finest}; enter the price of a larger pack"
    return None


def read_amount(text: str) -> Decimal:
    """An amount with a decimal point or comma, with or without marks of thousands.

    `1,234` alone may mean two things, and is refused.
    """
    bare = _GROUPED.sub("", text.strip())
    if len(bare) > LONGEST_AMOUNT:
        raise NoAmount("this is too long for an amount")
    plain = _with_point(bare)
    if not _PLAIN.fullmatch(plain):
        raise NoAmount("a number like 12.50 may stand here")
    return Decimal(plain)


def _with_point(bare: str) -> str:
    """The digits with a point for the decimal mark, and no other."""
    last = max(bare.rfind(","), bare.rfind("."))
    if last < 0:
        return bare
    mark = bare[last]
    other = "." if mark == "," else ","
    head, tail = bare[:last], bare[last + 1 :]
    if other in head:
        return f"{_ungrouped(head, other)}.{tail}"
    if mark in head:
        return _ungrouped(bare, mark)
    if mark == "," and len(tail) == GROUP and head.lstrip("0"):
        raise NoAmount(f"this may be {head}{tail} or {head}.{tail}; write it as one of these")
    return f"{head}.{tail}"


def _ungrouped(digits: str, mark: str) -> str:
    first, *groups = digits.split(mark)
    if not 1 <= len(first) <= GROUP or any(len(each) != GROUP for each in groups):
        raise NoAmount("the marks of thousands stand in odd places; leave them out")
    return first + "".join(groups)


def read_price(text: str, *, stated: str = "", usual: str) -> Price:
    """A price: `12.50`, `€ 12,50`, `12.50 EUR`. `stated` is the currency beside it, if any."""
    stated = stated.strip().upper()
    if stated and stated not in MINOR_DIGITS:
        raise NoAmount(f"“{stated[:10]}” is none of the currencies known here, such as {usual}")
    amount, meant = _apart(text.strip())
    if stated and meant and stated not in meant:
        raise NoAmount(f"{' or '.join(meant)} stands beside the price, {stated} in its column")
    currency = stated or (usual if not meant or usual in meant else meant[0])
    price = Price(read_amount(amount), currency)
    fault = price_fault(price.amount, currency)
    if fault:
        raise NoAmount(fault)
    return price


def _apart(text: str) -> tuple[str, tuple[str, ...]]:
    """The amount, and the currencies that a sign or a code beside it may mean."""
    for sign, meant in SIGNS.items():
        if text.startswith(sign) or text.endswith(sign):
            return text.removeprefix(sign).removesuffix(sign).strip(), meant
    upper = text.upper()
    for code in MINOR_DIGITS:
        if upper.startswith(code) or upper.endswith(code):
            bare = text[len(code) :] if upper.startswith(code) else text[: -len(code)]
            return bare.strip(), (code,)
    return text, ()

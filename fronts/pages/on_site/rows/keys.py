"""Large keys for sizes, in the shop's unit and step."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

from fronts.rules.lengths import INCH, Mm, show

Does: TypeAlias = Literal["digit", "point", "fraction", "more", "back", "clear"]
EIGHTHS = 8
TAPE = 16
FINER = (32, 64)
"""Parts of an inch on a tape, and on finer ones that a shop with such a step reads."""
DIGITS = ("7", "8", "9", "4", "5", "6", "1", "2", "3")


@dataclass(frozen=True, slots=True)
class Key:
    """A key: what it `does` with its `value`, as the page's script knows it, and its words."""

    does: Does
    value: str
    shows: str
    says: str = ""


def digit_keys(unit: str) -> list[Key]:
    """Digits as on a telephone's calculator, with what takes back."""
    digits = [Key("digit", digit, digit) for digit in (*DIGITS, "0")]
    left = (
        Key("clear", "", "C", "Clear") if unit == "in" else Key("point", ".", ".", "Decimal point")
    )
    return [*digits[:-1], left, digits[-1], Key("back", "", "⌫", "Back-space")]


def fraction_keys(unit: str, step: Mm) -> list[Key]:
    """Parts of an inch in two taps at most: an eighth, then what the step adds to it.

    In millimetres the half, and what clears; other decimals are typed behind a point.
    """
    if unit != "in":
        return [Key("fraction", ".5", ".5", "and a half"), Key("clear", "", "C", "Clear")]
    parts = next((parts for parts in FINER if step * parts == INCH), TAPE)
    keys = [Key("fraction", _part(n, EIGHTHS), _part(n, EIGHTHS)) for n in range(1, EIGHTHS)]
    return keys + [
        Key("more", _part(n, parts), f"+{_part(n, parts)}", f"and {_part(n, parts)} more")
        for n in range(1, parts // EIGHTHS)
    ]


def _part(number: int, of: int) -> str:
    return show(Fraction(number, of) * INCH, "in")

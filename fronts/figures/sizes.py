"""How lengths are written: several as one size, one with its sign, one as it is bought."""

from fractions import Fraction

from fronts.rules.lengths import BOUGHT_IN, UNITS, Mm, show


def size(unit: str, *lengths: Mm) -> str:
    """`15 1/2 × 28 1/2`."""
    return " × ".join(show(each, unit) for each in lengths)


def on_one_line(text: str) -> str:
    """The text with spaces at which no line breaks."""
    return text.replace(" ", "\u00a0")


def signed(length: Mm, unit: str) -> str:
    """`+1/8`, `−1/8` or `0`."""
    sign = "+" if length > 0 else "−" if length < 0 else ""
    return f"{sign}{show(abs(length), unit)}"


def bought_length(length: Mm, unit: str) -> str:
    """A long length as it is bought: feet or metres, rounded up to a tenth."""
    name = BOUGHT_IN[unit]
    return tenths(length / UNITS[name], name)


def tenths(amount: Fraction, name: str) -> str:
    """So many feet or metres, rounded up to a tenth."""
    number = -(-amount * 10 // 1)
    return f"{number // 10}.{number % 10} {name}"

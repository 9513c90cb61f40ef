"""Exact lengths: read as people say them, show as they say them.

Inside, a length is a `Fraction` of a millimetre, so that halves, thirds and
128ths of an inch all survive.
"""

import re
from collections.abc import Iterable
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache
from string import ascii_lowercase, ascii_uppercase
from typing import NamedTuple, TypeAlias

Mm: TypeAlias = Fraction

INCH = Fraction(127, 5)
"""One inch in millimetres, exactly (international yard and pound agreement, 1959)."""

NOTHING = Mm(0)

UNITS: dict[str, Fraction] = {
    "mm": Fraction(1),
    "cm": Fraction(10),
    "m": Fraction(1000),
    "in": INCH,
    "ft": INCH * 12,
}
BOUGHT_IN = {"in": "ft", "mm": "m"}
"""In what long lengths are ordered, by the unit of a job."""
LONGEST = Fraction(20_000)
"""Nothing in a kitchen is longer than 20 m; what is, was mistyped."""
FINEST_FRACTION = 128
ROUNDED_FRACTION = 64
"""What is on no mark of a rule is shown to the nearest mark that a rule has, with `≈`."""
LONGEST_TEXT = 60

_NAMES = {
    "mm": "mm", "millimetre": "mm", "millimetres": "mm", "millimeter": "mm", "millimeters": "mm",
    "cm": "cm", "centimetre": "cm", "centimetres": "cm", "centimeter": "cm", "centimeters": "cm",
    "m": "m", "metre": "m", "metres": "m", "meter": "m", "meters": "m",
    "in": "in", "in.": "in", "inch": "in", "inches": "in", '"': "in",
    "ft": "ft", "ft.": "ft", "foot": "ft", "feet": "ft", "'": "ft",
}  # fmt: skip
_MARKS = str.maketrans({
    "″": '"', "”": '"', "“": '"', "′": "'", "’": "'", "⁄": "/", "∕": "/", "×": "*",
    "\u00a0": " ", "\u2009": " ", "\u202f": " ", "−": "-", "–": "-",
    **dict(zip(ascii_uppercase, ascii_lowercase, strict=True)),
})  # fmt: skip
"""One character for one, so that a place in a plain text is that place in what was typed."""
_VULGAR = {
    "½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅕": "1/5", "⅖": "2/5",
    "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8",
    "⅞": "7/8",
}  # fmt: skip
_RATIO = r"[0-9]+\s*/\s*[0-9]+"
_VULGAR_MARK = f"[{''.join(_VULGAR)}]"
_NUMBER = (
    rf"(?:[0-9]+(?:-|\s+){_RATIO}|[0-9]+(?:-|\s*){_VULGAR_MARK}"
    rf"|{_RATIO}|{_VULGAR_MARK}|[0-9]+(?:\.[0-9]*)?|\.[0-9]+)"
)
"""A hyphen belongs to a number only where it touches both its parts: `36 - 1/2` takes away."""
_UNIT = "|".join(
    re.escape(name) + ("(?![a-z])" if name[-1].isalpha() else "")
    for name in sorted(_NAMES, key=len, reverse=True)
)
_ONE = re.compile(rf"({_NUMBER})(?:\s*({_UNIT}))?")
_FEET_AND_INCHES = re.compile(
    rf"([0-9]+)\s*(?:ft\.|ft|foot|feet|')(?:-|\s*)({_NUMBER})(?:\s*(?:in\.|(?:inches|inch|in)(?![a-z])|\"))?"
)


class LengthError(ValueError):
    """What was typed is not a length that can be used; the message says what would be."""


class Amount(NamedTuple):
    """A number as it stands in a text, with the unit that is written after it, if one is."""

    number: Fraction
    unit: str | None
    end: int


def read(text: str, unit: str, *, signed: bool = False, zero: bool = True) -> Mm:
    """The length that `text` says, in mm; a bare number is in `unit`.

    `signed` allows a leading minus (a place or a shift); `zero` allows nothing at all.
    """
    return allowed(_read(text, unit), text, unit, signed=signed, zero=zero)


def allowed(length: Mm, text: str, unit: str, *, signed: bool = False, zero: bool = True) -> Mm:
    """The length that `text` was read as, where it may be that; else LengthError."""
    if length < 0 and not signed:
        raise LengthError(f"“{_short(text)}” is negative; enter a size, like {_example(unit)}")
    if length == 0 and not zero:
        raise LengthError(
            f"“{_short(text)}” is nothing; enter a size above zero, like {_example(unit)}"
        )
    if abs(length) > LONGEST:
        raise LengthError(
            f"“{_short(text)}” is more than 20 m (65 ft); enter a length, like {_example(unit)}"
        )
    return length


def amount_at(plain: str, at: int) -> Amount | None:
    """The number that begins there in a plain text, as long as it can be; None: none does.

    ZeroDivisionError where it divides by zero.
    """
    both = _FEET_AND_INCHES.match(plain, at)
    if both:
        return Amount(int(both[1]) * 12 + _value(both[2]), "in", both.end())
    one = _ONE.match(plain, at)
    if not one:
        return None
    return Amount(_value(one[1]), _NAMES[one[2]] if one[2] else None, one.end())


def plain(text: str) -> str:
    """The text with its marks as a keyboard has them and small letters, each in its place."""
    return text.translate(_MARKS)


def checked_text(text: str, unit: str) -> str:
    """The plain text without spaces around it; LengthError where it can't be a length."""
    if not text.strip():
        raise LengthError(f"nothing is entered; enter a length, like {_example(unit)}")
    if len(text) > LONGEST_TEXT:
        raise LengthError(
            f"“{_short(text)}” is too long to be a length; enter one like {_example(unit)}"
        )
    return plain(text).strip()


def not_a_length(text: str, unit: str) -> LengthError:
    """What is said of a text that is no length at all."""
    return LengthError(f"“{_short(text)}” is not a length; enter one like {_example(unit)}")


def divides_by_zero(text: str, unit: str) -> LengthError:
    """What is said of a text that divides by zero."""
    return LengthError(f"“{_short(text)}” divides by zero; enter a length like {_example(unit)}")


def show(length: Mm, unit: str, *, finest: int = FINEST_FRACTION) -> str:
    """The length as the shop says it: `23 5/8` or `600.5`, with `≈` where it had to be rounded.

    Inches are shown as fractions in lowest terms no finer than 1/`finest`, millimetres to 1/100.
    """
    if unit == "in":
        return _show_inches(length, finest)
    return _show_decimal(length, Fraction(1, 100))


def show_with_unit(length: Mm, unit: str, *, finest: int = FINEST_FRACTION) -> str:
    """As `show`, with the unit written after it: `23 5/8 in`."""
    return f"{show(length, unit, finest=finest)} {unit}"


def write(length: Mm, unit: str, *, in_unit: bool = False) -> str:
    """Text that reads back to exactly this length: in `unit` where that is short, else in mm.

    `in_unit`: in `unit` however long that is.
    """
    if unit == "in":
        shown = _show_inches(length, FINEST_FRACTION)
        if not shown.startswith("≈"):
            return shown
        if in_unit:
            return _ratio(length / INCH)
        decimal = terminating(length)
        return f"{decimal} mm" if decimal is not None else f"{_ratio(length / INCH)} in"
    decimal = terminating(length)
    return decimal if decimal is not None else _ratio(length)


def exact(length: Mm) -> str:
    """Decimal millimetres as text, exact, without trailing zeros.

    A length that no decimal states (a third of an inch) is given as a ratio, `42/5`.
    """
    decimal = terminating(length)
    return decimal if decimal is not None else f"{length.numerator}/{length.denominator}"


def as_output(length: Mm) -> str:
    """Decimal millimetres for whoever reads an output: exact wherever a decimal can be.

    What none states (a third, how far an opening leans) comes to 1/1 000 000 000 mm: programs
    that read decimals can't read a ratio.
    """
    decimal = terminating(length)
    return decimal if decimal is not None else exact(Fraction(round(length * 10**9), 10**9))


@lru_cache(maxsize=4096)
def terminating(length: Mm) -> str | None:
    """The finite decimal that equals `length`, or None where there is none."""
    denominator = length.denominator
    places = denominator.bit_length()  # No fewer than its factors two or five.
    scaled, rest = divmod(abs(length.numerator) * 10**places, denominator)
    if rest:
        return None
    digits = str(scaled).rjust(places + 1, "0")
    text = f"{digits[:-places]}.{digits[-places:]}".rstrip("0").rstrip(".")
    return f"-{text}" if length < 0 else text


def floor_to(length: Mm, step: Mm) -> Mm:
    """The greatest whole number of steps that is not over `length`."""
    return length // step * step


def ceiling_to(length: Mm, step: Mm) -> Mm:
    """The least whole number of steps that is not under `length`."""
    return -floor_to(-length, step)


def greatest_within(lengths: Iterable[Mm], most: Mm) -> Mm | None:
    """The greatest of these that is not over `most`; None: none is."""
    return max((length for length in lengths if length <= most), default=None)


def as_decimal(length: Mm, places: int = 8) -> Decimal:
    """The length as a decimal of a millimetre; LengthError where `places` can't hold it exactly."""
    scaled = length * 10**places
    if scaled.denominator != 1:
        raise LengthError(
            "this length can't be kept exactly; use decimals, or parts of an inch down to 1/128"
        )
    return Decimal(scaled.numerator).scaleb(-places)


@lru_cache(maxsize=4096)
def _read(text: str, unit: str) -> Mm:
    cleaned = checked_text(text, unit)
    sign = 1
    if cleaned.startswith(("-", "+")):
        sign = -1 if cleaned[0] == "-" else 1
        cleaned = cleaned[1:].lstrip()
    try:
        amount = amount_at(cleaned, 0)
    except ZeroDivisionError:
        raise divides_by_zero(text, unit) from None
    if amount is None or amount.end < len(cleaned):
        raise not_a_length(text, unit)
    return sign * amount.number * UNITS[amount.unit or unit]


def _value(number: str) -> Fraction:
    for mark, ratio in _VULGAR.items():
        number = number.replace(mark, f" {ratio}")
    total = Fraction(0)
    for part in re.split(r"\s*-\s*|\s+(?=[0-9]+\s*/)", number.strip()):
        top, slash, bottom = part.partition("/")
        total += Fraction(int(top), int(bottom)) if slash else Fraction(part.rstrip("."))
    return total


def _show_inches(length: Mm, finest: int) -> str:
    inches = length / INCH
    if (inches * finest).denominator == 1:
        return _ratio(inches)
    rounded = min(finest, ROUNDED_FRACTION)
    return "≈" + _ratio(Fraction(round(inches * rounded), rounded))


def _show_decimal(length: Mm, finest: Fraction) -> str:
    parts = length / finest
    text = terminating(round(parts) * finest)
    return ("" if parts.denominator == 1 else "≈") + str(text)


def _ratio(value: Fraction) -> str:
    sign, value = ("-", -value) if value < 0 else ("", value)
    whole, rest = divmod(value, 1)
    if not rest:
        return f"{sign}{whole}"
    return f"{sign}{whole} {rest}" if whole else f"{sign}{rest}"


def _example(unit: str) -> str:
    return "23 5/8 or 23.625" if unit == "in" else "600 or 600.5"


def _short(text: str) -> str:
    return text if len(text) <= 24 else text[:23] + "…"

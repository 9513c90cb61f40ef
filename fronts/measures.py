"""The one door to Pint: people's units of weight, temperature and volume, in and out.

Pint never sees people's text: number and unit are told apart by a grammar of our own.
Inside, weights are exact kilograms and temperatures exact degrees Celsius.
"""

import re
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING

from fronts.rules.kitchen import Unit
from fronts.rules.lengths import Mm, terminating

if TYPE_CHECKING:
    from pint import UnitRegistry

WEIGHTS = {"kg": "kilogram", "g": "gram", "lb": "pound", "lbs": "pound", "oz": "ounce"}
DEGREES = {"°c": "degC", "c": "degC", "°f": "degF", "f": "degF"}
WEIGHT_OF: dict[Unit, str] = {"in": "lb", "mm": "kg"}
DEGREE_OF: dict[Unit, str] = {"in": "°F", "mm": "°C"}
HEAVIEST = Fraction(1000)
"""Kilograms; nothing that hangs in a kitchen weighs more."""
COLDEST, HOTTEST = Fraction(-50), Fraction(80)
LONGEST_TEXT = 40

_MEASURE = re.compile(r"([-+−]?)\s*([0-9]{1,12}(?:\.[0-9]{0,12})?|\.[0-9]{1,12})\s*([^\s0-9.]*)")


class MeasureError(ValueError):
    """What was typed is not a measure that can be used; the message says what would be."""


def pounds(kg: Fraction) -> Fraction:
    """Kilograms as pounds, exactly."""
    return _converted(kg, "kilogram", "pound")


def fahrenheit(celsius: Fraction) -> Fraction:
    """Degrees Celsius as degrees Fahrenheit, exactly."""
    return _converted(celsius, "degC", "degF")


def board_feet(length: Mm, width: Mm, thickness: Mm) -> Fraction:
    """The volume of a board in board feet (1 ft × 1 ft × 1 in), exactly."""
    return _converted(length * width * thickness, "millimeter ** 3", "board_foot")


def show_weight(kg: Fraction, unit: Unit) -> str:
    """The weight to one place, in pounds where the job is in inches: `8.3 lb`, `3.8 kg`."""
    shown = pounds(kg) if unit == "in" else kg
    return f"{_tenths(shown)} {WEIGHT_OF[unit]}"


def show_temperature(celsius: Fraction, unit: Unit) -> str:
    """The temperature to one place, in Fahrenheit where the job is in inches: `70 °F`."""
    shown = fahrenheit(celsius) if unit == "in" else celsius
    return f"{_tenths(shown)} {DEGREE_OF[unit]}"


def read_weight(text: str, unit: Unit) -> Fraction:
    """The kilograms that `text` says; a bare number is in the job's unit of weight."""
    example = "8.3 lb" if unit == "in" else "3.8 kg"
    kg = _read(text, WEIGHTS, WEIGHT_OF[unit], "kilogram", "weight", example)
    if not 0 <= kg <= HEAVIEST:
        raise MeasureError(f"“{_short(text)}” is no weight of a front; enter one like {example}")
    return kg


def read_temperature(text: str, unit: Unit) -> Fraction:
    """The degrees Celsius that `text` says; a bare number is in the job's degrees."""
    example = "70 °F" if unit == "in" else "21 °C"
    celsius = _read(text, DEGREES, DEGREE_OF[unit], "degC", "temperature", example)
    if not COLDEST <= celsius <= HOTTEST:
        raise MeasureError(
            f"“{_short(text)}” is no temperature of a site; enter one like {example}"
        )
    return celsius


def _read(
    text: str, units: dict[str, str], bare: str, to: str, what: str, example: str
) -> Fraction:
    found = _MEASURE.fullmatch(text.strip()) if len(text) <= LONGEST_TEXT else None
    unit = units.get((found[3] or bare).lower().rstrip(".")) if found else None
    if found is None or unit is None:
        raise MeasureError(f"“{_short(text)}” is not a {what}; enter one like {example}")
    value = Fraction(found[2].rstrip(".")) * (-1 if found[1] in ("-", "−") else 1)
    return _converted(value, unit, to)


def _converted(value: Fraction, unit: str, to: str) -> Fraction:
    quantity = _registry().Quantity(value, unit)
    return Fraction(quantity.to(to).magnitude)


@lru_cache(maxsize=1)
def _registry() -> "UnitRegistry[Fraction]":
    """Made at the first use: it takes longer to load than a page to answer."""
    from pint import UnitRegistry

    return UnitRegistry(non_int_type=Fraction, autoconvert_offset_to_baseunit=True)


def _tenths(value: Fraction) -> str:
    return str(terminating(Fraction(round(value * 10), 10)))


def _short(text: str) -> str:
    return text if len(text) <= 24 else text[:23] + "…"

"""The one door to Pint: people's units of weight, in and out.

Pint never sees people's text: number and unit are told apart by a grammar of our own.
Inside, weights are exact kilograms.
"""

import re
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING

from fronts.rules.kinds import Unit
from fronts.rules.lengths import terminating

if TYPE_CHECKING:
    from pint import UnitRegistry

WEIGHTS = {"kg": "kilogram", "g": "gram", "lb": "pound", "lbs": "pound", "oz": "ounce"}
WEIGHT_OF: dict[Unit, str] = {"in": "lb", "mm": "kg"}
HEAVIEST = Fraction(1000)
"""Kilograms; nothing that hangs in a kitchen weighs more."""
LONGEST_TEXT = 40

_MEASURE = re.compile(r"([-+−]?)\s*([0-9]{1,12}(?:\.[0-9]{0,12})?|\.[0-9]{1,12})\s*([^\s0-9.]*)")


class MeasureError(ValueError):
    """What was typed is not a measure that can be used; the message says what would be."""


def pounds(kg: Fraction) -> Fraction:
    """Kilograms as pounds, exactly."""
    return _converted(kg, "kilogram", "pound")


def read_weight(text: str, unit: Unit) -> Fraction:
    """The kilograms that `text` says; a bare number is in the job's unit of weight."""
    example = "8.3 lb" if unit == "in" else "3.8 kg"
    found = _MEASURE.fullmatch(text.strip()) if len(text) <= LONGEST_TEXT else None
    weight = WEIGHTS.get((found[3] or WEIGHT_OF[unit]).lower().rstrip(".")) if found else None
    if found is None or weight is None:
        raise MeasureError(f"“{_short(text)}” is not a weight; enter one like {example}")
    number = Fraction(found[2].rstrip(".")) * (-1 if found[1] in ("-", "−") else 1)
    kg = _converted(number, weight, "kilogram")
    if not 0 <= kg <= HEAVIEST:
        raise MeasureError(f"“{_short(text)}” is no weight of a front; enter one like {example}")
    return kg


def write_weight(kg: Fraction, unit: Unit) -> str:
    """Text that reads back to exactly this weight, in the unit's own where that is short."""
    if unit == "in" and (lb := terminating(pounds(kg))):
        return f"{lb} lb"
    return f"{terminating(kg)} kg"


def _converted(value: Fraction, unit: str, to: str) -> Fraction:
    quantity = _registry().Quantity(value, unit)
    return Fraction(quantity.to(to).magnitude)


@lru_cache(maxsize=1)
def _registry() -> "UnitRegistry[Fraction]":
    """Made at the first use: it takes longer to load than a page to answer."""
    from pint import UnitRegistry

    return UnitRegistry(non_int_type=Fraction)


def _short(text: str) -> str:
    return text if len(text) <= 24 else text[:23] + "…"

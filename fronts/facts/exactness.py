"""What a length must be to be kept exactly."""

from decimal import Decimal, InvalidOperation
from fractions import Fraction

from django.core.exceptions import ValidationError

from fronts.rules.lengths import LengthError, Mm, as_decimal
from fronts.rules.limits import length_fault

PLACES = 8
"""Decimal places of a millimetre that are kept: 1/128 in is 0.1984375 mm."""
NUMBER_PLACES = 10
"""Of a number that is no length: hundredths of a pound are so many decimals of a kilogram."""
DIGITS = 14
"""Digits in all: no more than SQLite's numbers keep exactly (15)."""


def fraction_of(value: object) -> Fraction:
    """The number as an exact fraction; binary floats are refused, they are exact by accident."""
    if isinstance(value, Fraction):
        return value
    if isinstance(value, (int, Decimal)):
        return Fraction(value)
    if isinstance(value, str):
        try:
            return Fraction(Decimal(value))
        except (InvalidOperation, ValueError, OverflowError) as error:
            raise ValidationError(f"“{value}” is not a number of millimetres") from error
    raise ValidationError(f"{value!r} is not an exact number of millimetres")


def checked_number(number: Fraction) -> None:
    """Pass a number that can be kept; ValidationError where it can't."""
    try:
        as_decimal(number, NUMBER_PLACES)
    except LengthError as error:
        raise ValidationError("this can't be kept exactly; enter fewer decimals") from error


def checked(length: Mm, *, signed: bool, zero: bool) -> None:
    """Pass a length that can be kept; ValidationError where it can't, or is no such size."""
    fault = length_fault(length, zero=zero, signed=signed)
    if fault is not None:
        raise ValidationError(fault)
    try:
        as_decimal(length, PLACES)
    except LengthError as error:
        raise ValidationError(str(error)) from error

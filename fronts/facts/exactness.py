"""What a length must be to be kept exactly."""

from decimal import Decimal, InvalidOperation
from fractions import Fraction

from django.core.exceptions import ValidationError

from fronts.rules.lengths import LONGEST, LengthError, Mm, as_decimal

PLACES = 8
"""Decimal places of a millimetre that are kept: 1/128 in is 0.1984375 mm."""
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


def checked(length: Mm, *, signed: bool, zero: bool) -> Decimal:
    """The length as it is kept; ValidationError where it can't be kept or is no such size."""
    if length < 0 and not signed:
        raise ValidationError("this is negative; enter a size")
    if length == 0 and not zero:
        raise ValidationError("this is nothing; enter a size above zero")
    if abs(length) > LONGEST:
        raise ValidationError("this is more than 20 m")
    try:
        return as_decimal(length, PLACES)
    except LengthError as error:
        raise ValidationError(str(error)) from error

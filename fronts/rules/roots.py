"""The square root of an exact number, to the next step up: roots have no end of decimals."""

from fractions import Fraction
from math import isqrt


def root_up(square: Fraction, step: Fraction, beside: Fraction = Fraction(0)) -> Fraction:
    """The least whole number of steps that is not under `beside` + √`square`; both zero or more.

    Reckoned in whole numbers: with x = a/d and y = b/d², n steps are enough where
    n·d − a is at least √b, and that holds of a whole number where it holds of √b rounded up.
    """
    apart, under = beside / step, square / step**2
    whole = apart.denominator * under.denominator
    over = int(under * whole**2)
    root = isqrt(over)
    if root * root < over:
        root += 1
    return -(-(int(apart * whole) + root) // whole) * step

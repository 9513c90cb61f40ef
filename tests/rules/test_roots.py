"""Roots up to the next step, beside those of Python's decimal module to fifty places."""

from decimal import ROUND_CEILING, Decimal, localcontext
from fractions import Fraction
from math import isqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.roots import root_up
from tests.rules.laws import LAW

lengths = st.fractions(0, 1000, max_denominator=640)
steps = st.fractions(Fraction(1, 10**6), 10, max_denominator=10**6)

# Each: a square, a step, what stands beside it; √ + beside, up to the step.
WORKED = [
    ("a whole root", "9", "1", "0", "3"),
    ("a root of a ratio", "9/16", "1/8", "0", "3/4"),
    ("√2 = 1.41421…", "2", "1/100", "0", "142/100"),
    ("√3 = 1.73205… in 64ths: 110.85", "3", "1/64", "0", "111/64"),
    ("nothing", "0", "1/64", "0", "0"),
    ("only what stands beside it", "0", "1/64", "1/100", "1/64"),
    ("√2 + 1/2 = 1.91421…", "2", "1/10", "1/2", "2"),
    ("a step that does not go into one", "4", "3/4", "0", "9/4"),
]


@pytest.mark.parametrize(
    ("square", "step", "beside", "root"),
    [row[1:] for row in WORKED], ids=[row[0] for row in WORKED],
)  # fmt: skip
def test_worked_by_hand(square: str, step: str, beside: str, root: str) -> None:
    assert root_up(Fraction(square), Fraction(step), Fraction(beside)) == Fraction(root)


@LAW
@given(lengths, steps, lengths)
def test_it_is_the_least_number_of_steps(square: Fraction, step: Fraction, known: Fraction) -> None:
    """Enough, and one step less is not: said of squares, so that no root is taken."""
    found = root_up(square, step, known)

    assert (found / step).denominator == 1
    assert found >= known
    assert (found - known) ** 2 >= square
    less = found - step
    assert less < known or (less - known) ** 2 < square


@LAW
@given(st.integers(0, 10**12))
def test_it_agrees_with_python(square: int) -> None:
    """The decimal module's root of 50 places, rounded up to a thousandth; `math.isqrt`."""
    with localcontext(prec=50):
        root = Decimal(square).sqrt().quantize(Decimal("0.001"), rounding=ROUND_CEILING)

    assert root_up(Fraction(square), Fraction(1, 1000)) == Fraction(root)
    assert root_up(Fraction(square), Fraction(1)) - isqrt(square) in (0, 1)

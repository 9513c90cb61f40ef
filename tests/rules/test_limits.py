"""How small and how large a length may be."""

from fractions import Fraction

import pytest

from fronts.rules.lengths import LONGEST, Mm
from fronts.rules.limits import length_fault
from tests.rules.small_kitchens import inch

NEGATIVE, NOTHING = "this is negative; enter a size", "this is nothing; enter a size above zero"
LONG = "this is more than 20 m"
HAIR = Fraction(1, 1000)
LIMITS = [
    ("a size", inch("1/128"), False, False, None),
    ("no size", Mm(0), False, False, NOTHING),
    ("less than a size", inch("-1"), False, False, NEGATIVE),
    ("no gap", Mm(0), True, False, None),
    ("less than a gap", -HAIR, True, False, NEGATIVE),
    ("a place to the left", inch("-4"), True, True, None),
    ("a place at the start", Mm(0), True, True, None),
    ("the longest", LONGEST, False, False, None),
    ("longer", LONGEST + HAIR, False, False, LONG),
    ("as far to the left", -LONGEST, True, True, None),
    ("further to the left", -LONGEST - HAIR, True, True, LONG),
]


@pytest.mark.parametrize(
    ("length", "zero", "signed", "fault"),
    [case[1:] for case in LIMITS],
    ids=[case[0] for case in LIMITS],
)
def test_a_length_keeps_to_its_limits(
    length: Mm, zero: bool, signed: bool, fault: str | None
) -> None:
    """Zero and minus have a meaning only where the declaration says so."""
    assert length_fault(length, zero=zero, signed=signed) == fault


def test_a_length_may_have_a_limit_of_its_own() -> None:
    """A step is an inch at most."""
    assert length_fault(inch("1"), zero=False, signed=False, most=inch("1")) is None
    assert length_fault(inch("1 1/16"), zero=False, signed=False, most=inch("1")) == LONG

"""How small and how large a length may be."""

from fractions import Fraction

import pytest

from fronts.rules import limits
from fronts.rules.lengths import LONGEST, Mm
from fronts.rules.limits import COARSEST_STEP, LEAST_KG, MOST_KG, length_fault
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


STATED = {
    "MOST_CABINETS": 5000, "MOST_OPENINGS": 60, "MOST_FRONTS": 20, "MOST_FRONTS_IN_ALL": 20_000,
    "MOST_DOORS": 5000, "MOST_BORES": 50, "MOST_PIN_ROWS": 50, "MOST_PINS": 500,
    "MOST_LENGTHS": 200, "MOST_TABLE_ROWS": 20, "MOST_HINGES": 20, "LONGEST_LABEL": 40,
    "LONGEST_FRONT_LABEL": 100, "LONGEST_MATERIAL": 80, "LONGEST_NOTE": 400,
    "LONGEST_THREAD": 20, "LONGEST_WORD": 20, "LONGEST_CLIENT": 120, "LONGEST_SITE": 240,
}  # fmt: skip


@pytest.mark.parametrize(("name", "most"), STATED.items(), ids=STATED)
def test_how_many_and_how_long_at_most(name: str, most: int) -> None:
    """What files were written by, and columns made by, so none moves unnoticed: practice."""
    assert getattr(limits, name) == most


def test_weights_and_steps_have_limits_too() -> None:
    """From a gram to a tonne; no shop cuts to more than an inch."""
    assert Fraction("0.001") == LEAST_KG
    assert Fraction(1000) == MOST_KG
    assert inch("1") == COARSEST_STEP

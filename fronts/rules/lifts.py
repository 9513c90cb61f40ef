"""Stays and lifts for fronts that are hinged at the top, by what they carry.

An item serves a range of weight × height in kg·m, as its maker says; the first of the shop's
that serves is taken.
"""

from collections.abc import Sequence
from fractions import Fraction

from fronts.rules.items import LiftItem
from fronts.rules.lengths import Mm

METRE = Mm(1000)

USUAL_LIFTS = (
    LiftItem("STAY", Fraction(0), Fraction(3), "stay"),
    LiftItem("LIFT", Fraction(0), Fraction(9), "lift"),
)
"""Invented plain ones, for a shop that has entered none (common practice, no source)."""


def moment(weight_kg: Fraction, height: Mm) -> Fraction:
    """What a stay or lift has to carry: weight × height, in kg·m."""
    return weight_kg * height / METRE


def choose_lift(carried: Fraction, items: Sequence[LiftItem]) -> LiftItem | None:
    """The first item, in the shop's order, that serves so many kg·m; None: none does."""
    return next((item for item in items or USUAL_LIFTS if item.least <= carried <= item.most), None)

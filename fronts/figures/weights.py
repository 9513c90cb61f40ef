"""A front's weight in the job's unit, and whether one person may lift it."""

from fractions import Fraction

from fronts.rules.finding_words import FindingWords
from fronts.rules.kinds import Unit
from fronts.rules.results import Front

MOST_ALONE = Fraction(20)
"""Kilograms that one person lifts into place (common practice, no source)."""


def weight(front: Front, unit: Unit) -> str:
    """`5.1 lb`; beside inches in pounds, else in kilograms."""
    return FindingWords(unit).say_weight(front.weight_kg)


def needs_two_people(front: Front) -> bool:
    return front.weight_kg > MOST_ALONE

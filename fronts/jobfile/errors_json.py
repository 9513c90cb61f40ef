"""How far off each front is to be expected, as JSON; the word is what comes of it."""

from fractions import Fraction

from fronts.jobfile.front_kinds_json import Json
from fronts.rules.error_results import ErrorToExpect, OneWay
from fronts.rules.lengths import as_output

FINEST = Fraction(1, 10**9)
"""A root-sum-square is given up to the next of these, in mm."""


def error_json(error: ErrorToExpect) -> Json:
    """One front; a way is null where no play is needed, or none is known yet."""
    return {
        "front": error.front,
        "sideways": _way(error.sideways),
        "upright": _way(error.upright),
        "outlook": error.outlook,
    }


def _way(way: OneWay | None) -> Json | None:
    if way is None:
        return None
    return {
        "measuring": as_output(way.errors.measuring),
        "cutting": as_output(way.errors.cutting),
        "setting": as_output(way.errors.setting),
        "out_of_true": as_output(way.known),
        "expected": as_output(way.expected(FINEST)),
        "worst": as_output(way.worst),
        "play": as_output(way.play),
    }

"""Weights, against published factors and another library."""

from fractions import Fraction

import pytest
from scipy import constants

from fronts import measures
from fronts.measures import MeasureError
from fronts.rules.kinds import Unit


def test_the_pound_is_the_international_one() -> None:
    """0.453 592 37 kg: NIST SP 811 (2008), appendix B.8 (memory); and scipy.constants."""
    pound = 1 / measures.pounds(Fraction(1))

    assert Fraction("0.45359237") == pound
    assert float(pound) == pytest.approx(constants.pound, rel=1e-15)


@pytest.mark.parametrize(
    ("text", "unit", "kg"),
    [
        ("8", "in", 8 * Fraction("0.45359237")),
        ("8 lb", "mm", 8 * Fraction("0.45359237")),
        ("16 oz", "mm", Fraction("0.45359237")),
        ("3.8", "mm", Fraction("3.8")),
        ("3800 g", "in", Fraction("3.8")),
        (" 3.8kg ", "in", Fraction("3.8")),
    ],
)
def test_weights_are_read_as_people_say_them(text: str, unit: Unit, kg: Fraction) -> None:
    """A bare number is in the job's unit of weight."""
    assert kg == measures.read_weight(text, unit)


@pytest.mark.parametrize(
    "text",
    ["", "heavy", "8 stone", "-1", "1e3", "8 1/2 lb", "nan", "inf", "1 in", "9" * 50, "1 lb lb",
     "2000 kg", "__import__('os')", "1 kg*2"],
)  # fmt: skip
def test_other_text_is_no_weight(text: str) -> None:
    """People's text never reaches a parser of expressions; the message gives an example."""
    with pytest.raises(MeasureError, match="lb"):
        measures.read_weight(text, "in")

"""Weights, temperatures and volumes, against published factors and another library."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import constants

from fronts import measures
from fronts.measures import MeasureError
from fronts.rules.kitchen import Unit
from fronts.rules.lengths import INCH


def test_the_pound_is_the_international_one() -> None:
    """0.453 592 37 kg: NIST SP 811 (2008), appendix B.8 (memory); and scipy.constants."""
    pound = 1 / measures.pounds(Fraction(1))

    assert Fraction("0.45359237") == pound
    assert float(pound) == pytest.approx(constants.pound, rel=1e-15)


@pytest.mark.parametrize(
    ("celsius", "fahrenheit"), [("0", "32"), ("100", "212"), ("-40", "-40"), ("21", "69.8")]
)
def test_fahrenheit(celsius: str, fahrenheit: str) -> None:
    """1.8 · t + 32, exactly: NIST SP 811 (2008), appendix B.8 (memory)."""
    assert Fraction(fahrenheit) == measures.fahrenheit(Fraction(celsius))


@given(st.fractions(-50, 80))
def test_fahrenheit_agrees_with_another_library(celsius: Fraction) -> None:
    """scipy.constants.convert_temperature, within what its floats can say."""
    other = constants.convert_temperature(float(celsius), "Celsius", "Fahrenheit")

    assert float(measures.fahrenheit(celsius)) == pytest.approx(other)


def test_a_board_foot_is_144_cubic_inches() -> None:
    """2.359 737 E-03 m³, which is 144 in³: NIST SP 811 (2008), appendix B.8 (memory)."""
    assert float(144 * INCH**3) == pytest.approx(2.359737e6, rel=1e-6)
    assert measures.board_feet(144 * INCH, INCH, INCH) == 1
    assert Fraction(16, 3) == measures.board_feet(96 * INCH, 8 * INCH, INCH)


@pytest.mark.parametrize(
    ("kg", "unit", "shown"),
    [("3.8", "mm", "3.8 kg"), ("3.8", "in", "8.4 lb"), ("4", "mm", "4 kg"), ("0", "in", "0 lb")],
)
def test_weights_are_shown_in_the_unit_of_the_job(kg: str, unit: Unit, shown: str) -> None:
    """To one place, without a useless zero."""
    assert shown == measures.show_weight(Fraction(kg), unit)


def test_temperatures_are_shown_in_the_unit_of_the_job() -> None:
    """Fahrenheit where the job is in inches."""
    assert measures.show_temperature(Fraction(21), "in") == "69.8 °F"
    assert measures.show_temperature(Fraction(21), "mm") == "21 °C"


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


@pytest.mark.parametrize(
    ("text", "unit", "celsius"),
    [("70 °F", "mm", Fraction(190, 9)), ("70", "in", Fraction(190, 9)),
     ("-5 C", "in", Fraction(-5)), ("−5", "mm", Fraction(-5)), ("21.5 °C", "mm", Fraction(43, 2))],
)  # fmt: skip
def test_temperatures_are_read_as_people_say_them(text: str, unit: Unit, celsius: Fraction) -> None:
    """With or without the degree sign, on either side of zero."""
    assert celsius == measures.read_temperature(text, unit)


@pytest.mark.parametrize("text", ["warm", "451 °F", "70 K", ""])
def test_other_text_is_no_temperature(text: str) -> None:
    """Nor is what no site ever has."""
    with pytest.raises(MeasureError, match="°C"):
        measures.read_temperature(text, "mm")

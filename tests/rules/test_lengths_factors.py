"""The unit factors against general-purpose libraries, and fractions against a printed table."""

from fractions import Fraction
from typing import Any

import pint
import pytest
import scipy.constants

from fronts.rules.lengths import INCH, UNITS, read, show
from fronts.rules.practice import POUND

SCIPY = {"in": "inch", "ft": "foot"}
PINT: Any = pint.UnitRegistry(non_int_type=Fraction)


@pytest.mark.parametrize("unit", sorted(UNITS))
def test_factors_agree_with_pint(unit: str) -> None:
    """Source: Pint's default registry, exact in fractions."""
    assert PINT.Quantity(Fraction(1), unit).to("mm").magnitude == UNITS[unit]


@pytest.mark.parametrize("unit", sorted(SCIPY))
def test_factors_agree_with_scipy(unit: str) -> None:
    """Source: scipy.constants (the international yard and pound agreement of 1959)."""
    assert float(UNITS[unit]) / 1000 == pytest.approx(
        getattr(scipy.constants, SCIPY[unit]), rel=1e-15
    )


def test_the_pound_agrees_with_both() -> None:
    """Source: scipy.constants and Pint: 0.45359237 kg exactly."""
    assert float(POUND) == pytest.approx(scipy.constants.pound, rel=1e-15)
    assert PINT.Quantity(Fraction(1), "pound").to("kg").magnitude == POUND


STEPS = [("1/64", "0.396875"), ("1/32", "0.79375"), ("1/16", "1.5875"), ("1/128", "0.1984375")]


@pytest.mark.parametrize(("inches", "mm"), STEPS, ids=[each for each, _ in STEPS])
def test_steps_in_millimetres(inches: str, mm: str) -> None:
    """Arithmetic on 25.4 mm, exact."""
    assert read(inches, "in") == Fraction(mm)


PRINTED = [("0.1330", "9/64"), ("0.3670", "23/64"), ("0.8979", "57/64")]


@pytest.mark.parametrize(("decimal", "fraction"), PRINTED, ids=[each for _, each in PRINTED])
def test_nearest_64th(decimal: str, fraction: str) -> None:
    """Source: Building Trades Pocketbook, decimal equivalents to the nearest 64th."""
    assert show(read(decimal, "in"), "in", finest=64) == f"≈{fraction}"


SHEETS = [
    # (sold as, least, greatest, labelled) in inches
    ("1/4", "0.219", "0.281", "0.225"),
    ("1/2", "0.469", "0.531", "0.483"),
    ("5/8", "0.594", "0.656", "0.609"),
    ("23/32", "0.688", "0.750", "0.703"),
    ("3/4", "0.719", "0.781", "0.734"),
]


@pytest.mark.parametrize("sold_as", SHEETS, ids=[f"{each[0]} in sheet" for each in SHEETS])
def test_panel_thickness_is_kept_as_it_was_measured(sold_as: tuple[str, str, str, str]) -> None:
    """Source: PS 1 structural plywood, unsanded performance categories (min, max, label).

    A sheet is seldom what it is sold as; what the calliper says must survive, all of it
    within the ±1/32 in that PS 1 allows a panel up to 13/16 in.
    """
    name, least, most, label = (read(each, "in") for each in sold_as)

    assert read(show(name, "in"), "in") == name
    assert least <= label <= most
    assert abs(most - name) <= read("1/32", "in") + read("0.0005", "in")
    assert abs(name - least) <= read("1/32", "in") + read("0.0005", "in")
    for said in sold_as[1:]:
        assert read(said, "in") == Fraction(said) * INCH


def test_three_quarter_sheet_is_not_taken_for_three_quarters() -> None:
    """Source: PS 1: what is sold as 3/4 is often category 23/32; it stays 23/32."""
    assert show(read("23/32", "in"), "in") == "23/32"
    assert read("3/4", "in") - read("23/32", "in") == read("1/32", "in")

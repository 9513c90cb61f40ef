"""Which keys a shop has: every part of an inch that is on its tape, in two taps at most."""

from fractions import Fraction

import pytest

from fronts.pages.on_site.rows.keys import digit_keys, fraction_keys
from fronts.rules.lengths import INCH, Mm, read


@pytest.mark.parametrize(
    ("step", "parts", "keys"),
    [
        (INCH / 4, 16, 8), (INCH / 16, 16, 8), (INCH / 32, 32, 10), (INCH / 64, 64, 14),
        (INCH / 10, 16, 8), (Mm(1), 16, 8),
    ],
)  # fmt: skip
def test_every_part_of_an_inch_is_two_taps_away(step: Mm, parts: int, keys: int) -> None:
    """One that sets a part, and one that adds what lies between eighths; a tape has sixteenths."""
    offered = fraction_keys("in", step)
    sets = [read(key.value, "in") for key in offered if key.does == "fraction"]
    adds = [read(key.value, "in") for key in offered if key.does == "more"]

    reached = {*sets, *adds, *(one + other for one in sets for other in adds)}

    assert len(offered) == keys
    assert {INCH * n / parts for n in range(1, parts)} <= reached


@pytest.mark.parametrize("step", [Mm(1), Mm(2), Fraction(1, 2), Fraction(1, 10)])
def test_a_metric_shop_has_a_point_and_a_half(step: Mm) -> None:
    """Whatever its step: a tape shows halves, and other decimals are typed."""
    assert [key.shows for key in fraction_keys("mm", step)] == [".5", "C"]
    assert "." in [key.shows for key in digit_keys("mm")]

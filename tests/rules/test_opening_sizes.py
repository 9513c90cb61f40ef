"""What an opening measures on site, and how far it leans."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.kitchen import Measured
from fronts.rules.opening_sizes import lean, opening_rect
from tests.rules.laws import LAW
from tests.rules.small_kitchens import cabinet, inch, opening


def test_opening_by_its_greatest_or_least_measured_sizes() -> None:
    """Overlay fronts go by the greatest width and height, inset ones by the least."""
    taken = Measured(
        width_top=inch("15"), width_bottom=inch("15 1/16"),
        height_left=inch("28"), height_right=inch("27 15/16"),
    )  # fmt: skip
    of = opening(measured=taken)

    most = opening_rect(cabinet(of), of, greatest=True)
    least = opening_rect(cabinet(of), of, greatest=False)

    assert (most.width, most.height) == (inch("15 1/16"), inch("28"))
    assert (least.width, least.height) == (inch("15"), inch("27 15/16"))


def test_one_measured_width_replaces_the_nominal_one() -> None:
    """What was measured holds, the drawing's size does not."""
    of = opening(measured=Measured(width_top=inch("14 7/8")))

    assert opening_rect(cabinet(of), of, greatest=True).width == inch("14 7/8")


@LAW
@given(*[st.fractions(min_value=1, max_value=4000)] * 3)
def test_lean_of_a_racked_opening(width: Fraction, first: Fraction, second: Fraction) -> None:
    """A parallelogram whose top is shifted by its lean e has d1² - d2² = (w + e)² - (w - e)².

    Source: Euclid; both diagonals rise by the same height, d² = (w ± e)² + h².
    """
    e = lean(width, first, second)

    assert (width + e) ** 2 - (width - e) ** 2 == first**2 - second**2


def test_lean_on_a_3_4_5_opening() -> None:
    """3-4-5 against 5.1: by hand (5.1² - 5²) / (4·3) = 1.01 / 12."""
    assert lean(Fraction(3), Fraction("5.1"), Fraction(5)) == Fraction("1.01") / 12
    assert lean(Fraction(3), Fraction(5), Fraction(5)) == 0
    assert lean(Fraction(3), Fraction(5), Fraction("5.1")) == -Fraction("1.01") / 12

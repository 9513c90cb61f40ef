"""What is wrong with an opening or a front by itself, and the way out that is told."""

import pytest

from fronts.rules.checks import lean_of
from fronts.rules.kitchen import FrontFacts, Kitchen, Measured
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases import one, with_door
from tests.rules.small_kitchens import all_round, findings_of, inch, only_front, opening

INSET = Standard(mount="inset", inset_gap=all_round("3/32"))


def test_mixed_says_where_and_what_to_trim_to() -> None:
    """A door that laps across and falls inside upwards: both told, and the size to cut it to."""
    (found,) = findings_of(one(with_door("15 1/2", "27")), "mixed-overlay-and-inset")

    assert found.message == (
        "B1.a laps the opening (left, right) and falls inside it (top, bottom); "
        "trimmed to 14 13/16 in × 27 in it lies inside."
    )


def test_too_tight_says_what_to_trim_to() -> None:
    """1/32 in each side of a door that was meant to lie inside."""
    (found,) = findings_of(one(with_door("14 15/16", "27 7/16")), "gap-too-small")

    assert found.message == (
        "B1.a leaves 1/32 in inside its opening; the least gap is 1/16 in; "
        "trim it to 14 13/16 in × 27 5/16 in to lie inside."
    )


@pytest.mark.parametrize("trimmed", [("14 13/16", "27"), ("14 13/16", "27 5/16")])
def test_trimmed_to_what_was_told_it_fits(trimmed: tuple[str, str]) -> None:
    """The way out is one: after trimming nothing is told."""
    of = one(with_door(*trimmed))

    assert findings_of(of, "mixed-overlay-and-inset") == []
    assert findings_of(of, "gap-too-small") == []


def test_a_front_flush_with_its_opening_laps_it_by_nothing() -> None:
    """Both at least zero: it laps (common practice, no source)."""
    front = only_front(one(with_door("15", "27 1/2")))

    assert front.plane == "overlay"
    assert front.edges.left.overlay == 0


def test_off_centre_one_side_may_fall_inside() -> None:
    """A door of 15 1/2 in that was shifted by 3/8: 1/8 in of the opening shows at one side."""
    wish = FrontFacts(width=inch("15 1/2"), height=inch("28"), shift_x=inch("3/8"))

    (found,) = findings_of(one(opening(front=wish)), "mixed-overlay-and-inset")

    assert "(left)" in found.message


def _racked(standard: Standard | None = None) -> Kitchen:
    taken = Measured(diagonal_1=inch("31 3/8"), diagonal_2=inch("31 5/16"))
    return one(opening(measured=taken), standard, step=inch("1/32"))


def test_lean_is_reported_on_the_front() -> None:
    """(d1² - d2²)/(4·w), by hand: (31.375² - 31.3125²)/60 in."""
    front = only_front(_racked())

    assert front.lean is not None
    assert float(front.lean / inch("1")) == pytest.approx((31.375**2 - 31.3125**2) / 60)


def test_least_gap_to_be_expected() -> None:
    """The gap less half the lean: 3/32 - 0.0653/2 in."""
    (found,) = findings_of(_racked(INSET), "opening-out-of-square")

    assert "leans ≈1/16 in" in found.message
    assert "comes down to ≈1/16 in" in found.message


def test_lean_needs_both_diagonals() -> None:
    """Without them nothing is said about it."""
    assert lean_of(opening(), inch("15")) is None
    assert lean_of(opening(measured=Measured(inch("15"), inch("15"))), inch("15")) is None


TOO_SMALL = [("no width", "3/16", "27 1/2"), ("no height", "15", "3/16")]


@pytest.mark.parametrize(
    ("width", "height"), [row[1:] for row in TOO_SMALL], ids=[row[0] for row in TOO_SMALL]
)
def test_an_opening_that_two_gaps_fill_holds_no_inset_front(width: str, height: str) -> None:
    """Two gaps of 3/32 in leave nothing of 3/16 to trim a front to."""
    wish = FrontFacts(width=inch("5"), height=inch("5"))
    small = opening(width=inch(width), height=inch(height), front=wish)

    (found,) = findings_of(one(small), "mixed-overlay-and-inset")

    assert "too small for an inset front" in found.message

"""What is told of an opening that leans, and of diagonals that contradict its sizes."""

from dataclasses import replace

import pytest

from fronts.rules.kinds import Mount
from fronts.rules.kitchen import FrontFacts, Kitchen, Measured
from fronts.rules.lengths import read
from fronts.rules.opening_sizes import lean_of
from fronts.rules.practice import PRACTICE
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases import lapping, one
from tests.rules.small_kitchens import (
    all_round,
    codes_of,
    findings_of,
    inch,
    only_front,
    opening,
)

INSET = Standard(mount="inset", inset_gap=all_round("3/32"))


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


# An opening of 15 in with diagonals of 31 and 29 in leans by (31² - 29²)/(4 × 15) = 2 in.
LEANS = [
    ("laps by more than half of it", "overlay", "1 1/4", "opening-leans",
     "B1.a leans 2 in over its height; the least lap will be 1/4 in."),
    ("laps by half of it", "overlay", "1", "opening-leans",
     "B1.a leans 2 in over its height; the least lap will be 0 in."),
    ("laps by less", "overlay", "63/64", "lap-runs-out",
     "B1.a leans 2 in over its height: it shows past its front."),
    ("leaves the least gap", "inset", "1 1/16", "opening-leans",
     "B1.a leans 2 in over its height; the least side gap will be 1/16 in."),
    ("leaves less", "inset", "1 3/64", "opening-out-of-square",
     "B1.a leans 2 in over its height: hung square, a side gap comes down to 3/64 in; the least "
     "gap is 1/16 in. Measure its diagonals again, or give it gaps of 1 1/16 in or more at the "
     "sides."),
]  # fmt: skip


@pytest.mark.parametrize(
    ("mount", "by", "code", "message"), [row[1:] for row in LEANS], ids=[row[0] for row in LEANS]
)
def test_what_a_leaning_opening_leaves(mount: Mount, by: str, code: str, message: str) -> None:
    """The lap, or the gap, less half the lean."""
    racked = Measured(diagonal_1=inch("31"), diagonal_2=inch("29"))
    standard = Standard(mount=mount, overlay=all_round(by), inset_gap=all_round(by))
    of = one(opening(height=inch("26"), measured=racked), standard, step=inch("1/128"))

    (found,) = findings_of(of, code)

    assert found.message == message


def test_a_lean_eats_up_the_lesser_lap() -> None:
    """A front 1/2 in off the middle laps 3/4 in on one side, 1 3/4 in on the other."""
    racked = Measured(diagonal_1=inch("29"), diagonal_2=inch("31"))
    moved = opening(height=inch("26"), measured=racked, front=FrontFacts(shift_x=inch("-1/2")))

    (found,) = findings_of(one(moved, lapping(*["1 1/4"] * 4)), "lap-runs-out")

    assert found.message == "B1.a leans 2 in over its height: it shows past its front."


def test_a_single_diagonal_says_nothing() -> None:
    """It takes both."""
    for taken in (Measured(diagonal_1=inch("40")), Measured(diagonal_2=inch("40"))):
        assert codes_of(one(opening(measured=taken))) == []


def test_diagonals_go_with_the_mean_width_and_height() -> None:
    """20 in between 19 and 21, 15 between 14 and 16: 25 in from corner to corner."""
    taper = Measured(
        inch("19"), inch("21"), inch("14"), inch("16"), diagonal_1=inch("25"), diagonal_2=inch("25")
    )

    assert findings_of(one(opening(measured=taper)), "measure-again") == []


@pytest.mark.parametrize(("diagonal", "told"), [("505", 0), ("506", 1)])
def test_diagonals_off_by_what_the_eye_sees(diagonal: str, told: int) -> None:
    """400 × 300 mm has diagonals of 500; a shop that sees 5 mm is told from there on."""
    size = read(diagonal, "mm")
    of = opening(
        width=read("400", "mm"), height=read("300", "mm"),
        measured=Measured(diagonal_1=size, diagonal_2=size),
    )  # fmt: skip
    practice = replace(PRACTICE, lines_seen=read("5", "mm"))

    assert len(findings_of(one(of, practice=practice), "measure-again")) == told

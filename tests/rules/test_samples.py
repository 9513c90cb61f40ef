"""Means and spreads, beside a handbook's worked example, certified values and Python's own."""

import math
import statistics
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.samples import Sample, sample_of
from tests.rules.laws import LAW

MILLIONTH = Fraction(1, 10**6)
figures = st.lists(st.fractions(-100, 100, max_denominator=640), min_size=2, max_size=40)


def told(numbers: list[Fraction]) -> Sample:
    """What the numbers say; there are some."""
    found = sample_of(numbers)
    assert found is not None
    return found


def test_the_handbook_s_particle_counts() -> None:
    """NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2: counts on ten wafers.

    Mean 53.7, standard deviation 6.567; Student's t against a mean of 50: 1.782.
    """
    counts = [Fraction(number) for number in (50, 48, 44, 56, 61, 52, 53, 55, 67, 51)]
    found = told(counts)

    assert (found.count, found.mean) == (10, Fraction(537, 10))
    assert found.spread(Fraction(1, 1000)) == Fraction(6567, 1000)
    from_fifty = told([number - 50 for number in counts])
    assert from_fifty.is_off(1)
    assert not from_fifty.is_off(2)
    assert from_fifty.variance is not None
    t = float(from_fifty.mean) * math.sqrt(10 / float(from_fifty.variance))
    assert t == pytest.approx(1.782, abs=0.0005)


# NIST StRD, univariate summary statistics, certified mean and standard deviation, from memory:
# NumAcc1 has three figures, NumAcc2 to 4 have one and then five hundred pairs about it.
CERTIFIED = [
    ("NumAcc1", ["10000001", "10000003", "10000002"], "10000002", "1"),
    ("NumAcc2", ["1.2", *["1.1", "1.3"] * 500], "1.2", "0.1"),
    ("NumAcc3", ["1000000.2", *["1000000.1", "1000000.3"] * 500], "1000000.2", "0.1"),
    ("NumAcc4", ["10000000.2", *["10000000.1", "10000000.3"] * 500], "10000000.2", "0.1"),
]


@pytest.mark.parametrize(
    ("numbers", "mean", "deviation"),
    [row[1:] for row in CERTIFIED], ids=[row[0] for row in CERTIFIED],
)  # fmt: skip
def test_certified_values(numbers: list[str], mean: str, deviation: str) -> None:
    """Made to lose digits in floating point: exact numbers lose none."""
    found = told([Fraction(number) for number in numbers])

    assert found.mean == Fraction(mean)
    assert found.variance == Fraction(deviation) ** 2
    assert found.spread(MILLIONTH) == Fraction(deviation)


@LAW
@given(figures)
def test_it_agrees_with_python(numbers: list[Fraction]) -> None:
    """The statistics module on the same exact numbers."""
    found = told(numbers)

    assert found.count == len(numbers)
    assert found.mean == statistics.mean(numbers)
    assert found.variance == statistics.variance(numbers)
    spread = found.spread(MILLIONTH)
    assert spread is not None
    assert float(spread) == pytest.approx(statistics.stdev(map(float, numbers)), abs=2e-6)
    assert found.spread(MILLIONTH, 3) is not None


@LAW
@given(figures, st.fractions(-10, 10, max_denominator=64))
def test_moving_all_figures_moves_the_mean_alone(numbers: list[Fraction], by: Fraction) -> None:
    """A law of both: the spread stays."""
    found, moved = told(numbers), told([number + by for number in numbers])

    assert moved.mean == found.mean + by
    assert moved.variance == found.variance


def test_one_figure_does_not_spread() -> None:
    """And none says nothing."""
    found = told([Fraction(3)])

    assert (found.count, found.mean) == (1, Fraction(3))
    assert found.variance is None
    assert found.spread(MILLIONTH) is None
    assert not found.is_off(1)
    assert sample_of([]) is None


def test_figures_that_do_not_vary_are_sure() -> None:
    """Twice 1/64 is no chance; twice nothing is nothing."""
    assert told([Fraction(1, 64)] * 2).is_off(3)
    assert not told([Fraction(0)] * 2).is_off(3)

"""What ends a search: counted work first, the clock last."""

from fractions import Fraction
from itertools import count

import pytest

from fronts.cutting import work_counter
from fronts.cutting.budget import begin, until
from fronts.cutting.plan import plan
from tests.benchmarks.instances import kitchens


def test_work_ends_it_though_the_clock_stands_still() -> None:
    """Half of the work leaves half."""
    budget = begin(10, lambda: 0.0)
    whole = budget.left
    work_counter.spend(whole / 2)
    assert budget.left == pytest.approx(whole / 2)
    assert not budget.share(0.5).over
    work_counter.spend(whole)
    assert budget.over


def test_the_clock_ends_it_though_nothing_was_done() -> None:
    """A slow machine stops in time."""
    seconds = count(0, 6)
    budget = begin(10, lambda: float(next(seconds)))
    assert not budget.over
    assert budget.over


def test_until_a_time_counts_no_work() -> None:
    """Tidying ends by the clock only."""
    budget = until(5.0, lambda: 4.0)
    work_counter.spend(1_000)
    assert not budget.over


def test_a_search_that_is_not_finished_ends_the_same_way_each_time() -> None:
    """The same file, the same work, the same plan: no clock had a say."""
    request = next(kitchens()).request
    first, second = (plan(request, 0.6, lambda: 0.0) for _ in range(2))
    assert not first.proved
    assert first == second
    assert first.yielded > Fraction(1, 2)

"""The best whole choice among known patterns."""

from fractions import Fraction

import pytest

from fronts.cutting import pattern_pool, patterns
from fronts.cutting.integer_problem import IntegerProblem, integer_problem
from fronts.cutting.model import Request, StockSize, WantedPart
from fronts.cutting.pattern_pool import PatternPool
from fronts.cutting.patterns import Packing, Pattern, stick_pattern
from fronts.solver import IntegerLimits

LIMITS = IntegerLimits(5.0)


def sticks(*stock: StockSize) -> IntegerProblem:
    """Two of 6, two of 4 and four of 3 from these sticks."""
    sizes = ((6, 2), (4, 2), (3, 4))
    parts = tuple(WantedPart(f"P{size}", Fraction(size), count=n) for size, n in sizes)
    return integer_problem(Request(Fraction(0), Fraction(0), stock, parts))


def one_by_one(problem: IntegerProblem) -> Packing:
    """Every part from a stick of its own."""
    singles = [(stick_pattern(0, [(i, 1)], problem), item.demand)
               for i, item in enumerate(problem.items)]  # fmt: skip
    return patterns.packing(singles, problem)


def pairs(problem: IntegerProblem, board: int = 0) -> list[Pattern]:
    """A 6 with a 4; three 3s; a 3 by itself."""
    return [stick_pattern(board, counts, problem)
            for counts in ([(0, 1), (1, 1)], [(2, 3)], [(2, 1)])]  # fmt: skip


def test_the_cheapest_choice_is_made() -> None:
    """Twice 6 with 4, and 3s by three: four sticks of ten cover what eight covered before."""
    problem = sticks(StockSize("S", Fraction(10)))
    pool, before = PatternPool(problem), one_by_one(problem)
    pool.add(pairs(problem))
    after = pool.cover(before, 4, LIMITS)

    assert tuple(patterns.cost(p, problem.boards) for p in (before, after)) == (8, 4)
    assert not after.short


def test_few_promising_patterns_are_tried_first(monkeypatch: pytest.MonkeyPatch) -> None:
    """With room for one pattern only the fullest is tried, beside those in use; then for more."""
    monkeypatch.setattr(pattern_pool, "TRIED_OF_FEW", 1)
    problem = sticks(StockSize("S", Fraction(10)))
    pool, before = PatternPool(problem), one_by_one(problem)
    pool.add(pairs(problem))
    first = pool.cover(before, 4, LIMITS)

    assert patterns.cost(first, problem.boards) == 6
    assert pool.widen()
    assert patterns.cost(pool.cover(first, 4, LIMITS), problem.boards) == 4


def test_limited_sticks_are_not_passed() -> None:
    """Only one long stick is there: the other 6 and 4 come from short ones."""
    problem = sticks(StockSize("S", Fraction(6)), StockSize("L", Fraction(10), count=1))
    pool, before = PatternPool(problem), one_by_one(problem)
    pool.add(pairs(problem, board=1))
    pool.add([stick_pattern(0, [(2, 2)], problem)])
    after = pool.cover(before, 1, LIMITS)
    used = [pattern.board for pattern, times in after.chosen for _ in range(times)]

    assert used.count(1) == 1
    assert len(used) == 5

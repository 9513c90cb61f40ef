"""Fewest points, and of those the nearest, against every choice there is and the greedy rule."""

from fractions import Fraction
from itertools import combinations

from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.lengths import Mm
from fronts.rules.stabbing_points import Span, nearest_held, stabbing_points
from tests.rules.laws import LAW

_PLACE = st.integers(0, 24).map(lambda number: Fraction(number, 2))


@st.composite
def _spans(draw: st.DrawFn) -> Span:
    wanted = draw(_PLACE)
    down, up = draw(st.integers(0, 4)), draw(st.integers(0, 4))
    return Span(
        wanted, wanted - Fraction(down, 2), wanted + Fraction(up, 2), draw(st.integers(1, 3))
    )


def _best_of_all(spans: list[Span], points: set[Mm]) -> tuple[int, Mm]:
    """How few points will do, and how little they are off in all: every choice is tried."""
    order = sorted({*points, *(span.wanted for span in spans)})
    for count in range(len(spans) + 1):
        offs = [
            sum((min(span.off(at) for at in chosen if span.holds(at)) for span in spans), Mm(0))
            for chosen in combinations(order, count)
            if all(any(span.holds(at) for at in chosen) for span in spans)
        ]
        if offs:
            return count, min(offs)
    raise AssertionError("what each wants is among the points")


def _greedy(spans: list[Span]) -> int:
    """The end of the span that ends first, again and again."""
    count, last = 0, None
    for span in sorted(spans, key=lambda span: span.most):
        if last is None or last < span.least:
            count, last = count + 1, span.most
    return count


@LAW
@given(st.lists(_spans(), max_size=6), st.sets(_PLACE, max_size=5))
def test_no_choice_is_better(spans: list[Span], points: set[Mm]) -> None:
    """Neither fewer points nor as few that lie nearer."""
    (count, off, _), taken = stabbing_points(spans, points)
    assert (count, off) == _best_of_all(spans, points)
    assert len(taken) == count
    assert sum((span.off(nearest_held(span, taken)) for span in spans), Mm(0)) == off


@LAW
@given(st.lists(_spans(), max_size=12))
def test_as_few_as_the_greedy_choice(spans: list[Span]) -> None:
    """Where every span's end may be taken, the greedy choice is known to be the fewest."""
    (count, *_), _ = stabbing_points(spans, {span.most for span in spans})
    assert count == _greedy(spans)


def test_of_two_as_near_a_wanted_one() -> None:
    """Whatever lies between two wants moves both by as much in all: one then stays as it is."""
    one, two = Span(Mm(14), Mm(13), Mm(15)), Span(Mm(15), Mm(14), Mm(16))
    cost, taken = stabbing_points([one, two], {Mm(29) / 2})
    assert (cost, taken) == ((1, Mm(1), 0), (Mm(14),))


def test_a_point_between_where_neither_reaches_the_other() -> None:
    """One jig on the shop's step serves two that are too far apart for either of theirs."""
    one, two = (Span(at, at - Mm(1, 2), at + Mm(1, 2)) for at in (Mm(14), Mm(15)))
    assert stabbing_points([one, two], {Mm(29, 2)})[1] == (Mm(29, 2),)
    assert stabbing_points([one, two], ())[1] == (Mm(14), Mm(15))


def test_nothing_wants_no_point() -> None:
    """Not even where some could be taken."""
    assert stabbing_points([], {Mm(3)}) == ((0, Mm(0), 0), ())

"""How the fronts of one opening share its span: the rule, worked by hand."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.front_sizes import Division, divide
from fronts.rules.lengths import INCH, Mm
from tests.rules.laws import LAW
from tests.rules.small_kitchens import inch

STEP = inch("1/16")


lengths = st.integers(1, 4000).map(lambda n: n * INCH / 128)


DIVISIONS = [
    ("one front on the step", "16", 1, False, ["16"], "0"),
    ("one front off the step", "16 1/32", 1, False, ["16"], "1/32"),
    ("pair, even", "32 1/8", 2, False, ["16", "16"], "0"),
    ("pair keeps equal leaves", "32 3/16", 2, False, ["16", "16"], "1/16"),
    ("pair, 3/32 left over", "32 7/32", 2, False, ["16", "16"], "3/32"),
    ("stack of 3, even", "30 1/4", 3, True, ["10", "10", "10"], "0"),
    ("stack of 3, two steps to the lowest", "30 3/8", 3, True, ["10", "10", "10 1/8"], "0"),
    ("stack of 3, a step and a bit", "30 11/32", 3, True, ["10", "10", "10 1/16"], "1/32"),
]


@pytest.mark.parametrize(
    ("raw", "count", "stack", "sizes", "rest"),
    [each[1:] for each in DIVISIONS],
    ids=[each[0] for each in DIVISIONS],
)
def test_shares_of_a_span(raw: str, count: int, stack: bool, sizes: list[str], rest: str) -> None:
    """Equal shares down to the step, 1/8 in between; what is left over as the rule says."""
    found = divide(inch(raw), inch("1/8"), STEP, [None] * count, lowest_takes_rest=stack)

    assert found == Division(tuple(inch(each) for each in sizes), inch(rest))


FIXED = [
    ("top fixed", ["6", None, None], ["6", "12", "12 1/16"]),
    (
        "bottom fixed: the middle is the lowest that shares",
        [None, None, "12"],
        ["9", "9 1/16", "12"],
    ),
    ("two fixed", ["6", None, "12"], ["6", "12 1/16", "12"]),
]


@pytest.mark.parametrize(("own", "sizes"), [each[1:] for each in FIXED], ids=[f[0] for f in FIXED])
def test_a_stack_with_heights_of_its_own(own: list[str | None], sizes: list[str]) -> None:
    """Fixed heights stay; the others share, and the lowest of them takes the whole steps."""
    wished = [None if each is None else inch(each) for each in own]

    found = divide(inch("30 5/16"), inch("1/8"), STEP, wished, lowest_takes_rest=True)

    assert found == Division(tuple(inch(each) for each in sizes), Mm(0))


def test_a_stack_all_of_fixed_heights_leaves_the_rest_outside() -> None:
    """Nobody takes what is left over; it comes off the outer edges."""
    found = divide(inch("30"), inch("1/8"), STEP, [inch("10")] * 2, lowest_takes_rest=True)

    assert found == Division((inch("10"), inch("10")), inch("9 7/8"))


@LAW
@given(lengths, st.integers(0, 32), st.integers(1, 5), st.booleans())
def test_what_is_shared_is_all_there(raw: Mm, gap: int, count: int, stack: bool) -> None:
    """Shares + gaps + rest = span; nobody is larger than the rule, and little is left over."""
    between = gap * INCH / 128
    found = divide(raw, between, STEP, [None] * count, lowest_takes_rest=stack)
    fair = (raw - between * (count - 1)) / count

    assert sum(found.sizes) + between * (count - 1) + found.rest == raw
    assert all(size <= fair for size in found.sizes[:-1])
    assert all((size / STEP).denominator == 1 for size in found.sizes)
    assert 0 <= found.rest < (STEP if stack else count * STEP)
    assert stack or len(set(found.sizes)) == 1

"""Sums of lengths are worked out exactly; a single length is read as ever."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.length_sums import read_sum, sum_at
from fronts.rules.lengths import INCH, LengthError, read
from tests.rules.laws import LAW
from tests.rules.test_lengths import REFUSED, SAID

SUMS = [  # worked out by hand, in inches
    ("54+24", Fraction(78)),
    ("54 + 24", Fraction(78)),
    ("36-2*1 1/2", Fraction(33)),
    ("36 − 2 × 1½", Fraction(33)),
    ("1 1/2*2", Fraction(3)),
    ("36-3-1/2", Fraction(65, 2)),
    ("54+24-1/2", Fraction(157, 2)),
    ("54+24+-1/2", None),
    ("(36-3)/2", Fraction(33, 2)),
    ("(36 - 2*1 1/2) / 2 + 1/4", Fraction(67, 4)),
    ("((36-3)/2-1)/3", Fraction(31, 6)),
    ("2*(18+3/4)", Fraction(75, 2)),
    ("36*1/2", Fraction(18)),
    ("2*18 in", Fraction(36)),
    ("5'-3+1", Fraction(64)),
    ("1' 6 + 2'", Fraction(42)),
    ("254 mm + 1", Fraction(11)),
    ("1 + 254mm", Fraction(11)),
    ("(1+9)*25.4 mm", Fraction(10)),
    ("+54", Fraction(54)),
    ("33-0.5", Fraction(65, 2)),
    ("36-1/2", Fraction(73, 2)),
    ("36 - 1/2", Fraction(71, 2)),
    ("36 -1/2", Fraction(71, 2)),
    ("36 – ½", Fraction(71, 2)),
    ("36 1/2 - 1/2 - 3/4", Fraction(141, 4)),
    ("5' - 3", Fraction(57)),
]


@pytest.mark.parametrize(("text", "inches"), SUMS, ids=[text for text, _ in SUMS])
def test_sums_are_exact(text: str, inches: Fraction | None) -> None:
    """A number goes on as long as it can: 3-1/2 is three and a half, 3 - 1/2 a sum."""
    if inches is None:
        with pytest.raises(LengthError, match="can't be worked out"):
            read_sum(text, "in")
    else:
        assert read_sum(text, "in") == inches * INCH


@pytest.mark.parametrize(("text", "unit", "length"), SAID, ids=[f"{t} ({u})" for t, u, _ in SAID])
def test_a_single_length_is_read_as_ever(text: str, unit: str, length: Fraction) -> None:
    """Nothing that was read before means anything else."""
    assert read_sum(text, unit) == read(text, unit) == length


@pytest.mark.parametrize("text", [text for text, _ in REFUSED])
def test_what_is_no_length_is_refused_in_the_same_words(text: str) -> None:
    """A field says the same of a slip, whether sums may be typed in it or not."""
    with pytest.raises(LengthError) as as_ever:
        read(text, "mm")
    with pytest.raises(LengthError) as refused:
        read_sum(text, "mm")
    assert str(refused.value) == str(as_ever.value)


FAULTS = [
    ("54+", "can't be worked out"),
    ("*3", "can't be worked out"),
    ("(36-3", "can't be worked out"),
    ("36-3)", "can't be worked out"),
    ("36/2/2", "is not a length"),
    ("(36)(2)", "can't be worked out"),
    ("2 in*3 in", "multiplies a length by a length"),
    ("(2 mm + 1)*3 in", "multiplies a length by a length"),
    ("(36-3)/0", "divides by zero"),
    ("54+1/0", "divides by zero"),
    ("36-40", "is negative"),
    ("36-36", "is nothing"),
    ("400+400", "is more than 20 m"),
    ("1" + "+1" * 30, "is too long"),
    ("(" * 60, "can't be worked out"),
]


@pytest.mark.parametrize(("text", "why"), FAULTS, ids=[text[:12] for text, _ in FAULTS])
def test_what_cannot_be_worked_out_is_refused(text: str, why: str) -> None:
    """In words, with what was typed."""
    with pytest.raises(LengthError, match=why) as refused:
        read_sum(text, "in", zero=False)

    assert text[:20] in str(refused.value)


def test_a_place_may_come_to_less_than_nothing() -> None:
    """Where a minus has a meaning, a sum may come to one."""
    assert read_sum("3-5", "mm", signed=True) == -2
    assert read_sum("-(3+2)", "mm", signed=True) == -5


BEGINS = [
    ("36 1/2 door", 0, Fraction(73, 2), 6),
    ("18 4 drawers", 0, Fraction(18), 2),
    ("B2 36-2*1 1/2 pair", 3, Fraction(33), 13),
    ("6 inset", 0, Fraction(6), 1),
    ("6 in inset", 0, Fraction(6), 4),
    ("18 - over", 0, Fraction(18), 2),
    ("18 (one", 0, Fraction(18), 2),
]


@pytest.mark.parametrize(("text", "at", "inches", "end"), BEGINS, ids=[row[0] for row in BEGINS])
def test_a_sum_is_taken_as_long_as_it_goes_on(
    text: str, at: int, inches: Fraction, end: int
) -> None:
    """Words that are no units end it."""
    assert sum_at(text, at, "in") == (inches * INCH, end)


def test_where_none_begins_there_is_none() -> None:
    """A word is no size; one that never ends is refused before it is worked out."""
    assert sum_at("door left", 0, "in") is None
    with pytest.raises(LengthError, match="too long"):
        sum_at("9" * 5000, 0, "in")


amounts = st.integers(1, 400).map(lambda parts: Fraction(parts, 16))


def _said(amount: Fraction) -> str:
    whole, rest = divmod(amount, 1)
    return f"{whole} {rest}" if whole and rest else str(rest or whole)


@LAW
@given(st.lists(st.tuples(st.sampled_from("+-"), st.integers(1, 4), amounts), max_size=3), amounts)
def test_a_sum_is_what_its_parts_come_to(
    parts: list[tuple[str, int, Fraction]], first: Fraction
) -> None:
    """Each times how often it is taken, exactly."""
    text = _said(first) + "".join(f" {sign} {n}*{_said(part)}" for sign, n, part in parts)
    total = first + sum((n * part if sign == "+" else -n * part) for sign, n, part in parts)

    assert read_sum(text, "in", signed=True) == total * INCH


@LAW
@given(st.text("0123456789 /.+-*()½'\"inm", max_size=40), st.sampled_from(["in", "mm"]))
def test_any_text_is_a_sum_or_refused(text: str, unit: str) -> None:
    """Nothing that can be typed does anything else, and what was a length stays that length."""
    try:
        found = read_sum(text, unit, signed=True)
    except LengthError:
        with pytest.raises(LengthError):
            read(text, unit, signed=True)
        return
    assert abs(found) <= 20_000
    try:
        assert read(text, unit, signed=True) == found
    except LengthError:
        assert not text.strip().replace(".", "").isdigit()

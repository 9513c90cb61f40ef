"""Lengths are read as people say them, exactly, and shown as they say them."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.lengths import (
    INCH,
    LengthError,
    as_decimal,
    as_output,
    exact,
    floor_to,
    read,
    show,
    show_with_unit,
    write,
)
from tests.rules.laws import LAW

SAID = [  # forms as people say them: common practice, no source
    ("23 5/8", "in", Fraction(189, 8) * INCH),
    ("23-5/8", "in", Fraction(189, 8) * INCH),
    ('23-5/8"', "in", Fraction(189, 8) * INCH),
    ('23 5/8"', "mm", Fraction(189, 8) * INCH),
    ("23.625", "in", Fraction(189, 8) * INCH),
    ("23 5/8 in", "mm", Fraction(189, 8) * INCH),
    ("23 5/8in.", "mm", Fraction(189, 8) * INCH),
    ("23 5 / 8 inches", "mm", Fraction(189, 8) * INCH),
    ("23⅝", "in", Fraction(189, 8) * INCH),
    ("23 ⅝″", "mm", Fraction(189, 8) * INCH),
    ("23 5⁄8", "in", Fraction(189, 8) * INCH),
    ("189/8", "in", Fraction(189, 8) * INCH),
    ("1' 11 5/8\"", "in", Fraction(189, 8) * INCH),
    ("1'11-5/8\"", "mm", Fraction(189, 8) * INCH),
    ("1 ft 11 5/8 in", "mm", Fraction(189, 8) * INCH),
    ("1′ 11⅝″", "in", Fraction(189, 8) * INCH),
    ("1’ 11 5/8”", "in", Fraction(189, 8) * INCH),
    ("1'", "in", 12 * INCH),
    ("2 feet", "mm", 24 * INCH),
    ("⅝", "in", Fraction(5, 8) * INCH),
    ("5/8", "in", Fraction(5, 8) * INCH),
    (".5", "in", INCH / 2),
    ("5.", "in", 5 * INCH),
    ("1/128", "in", INCH / 128),
    ("1/3", "in", INCH / 3),
    ("600", "mm", Fraction(600)),
    ("600", "in", 600 * INCH),
    ("600 mm", "in", Fraction(600)),
    ("600mm", "in", Fraction(600)),
    ("60cm", "in", Fraction(600)),
    ("0.6 m", "in", Fraction(600)),
    ("600.5", "mm", Fraction(1201, 2)),
    ("600 1/2", "mm", Fraction(1201, 2)),
    ("  600  ", "mm", Fraction(600)),
    ("600\u00a0MM", "in", Fraction(600)),
    ("0", "mm", Fraction(0)),
    ("20 m", "mm", Fraction(20_000)),
]


@pytest.mark.parametrize(("text", "unit", "length"), SAID, ids=[f"{t} ({u})" for t, u, _ in SAID])
def test_read_as_people_say(text: str, unit: str, length: Fraction) -> None:
    """Each form means one exact length; a bare number is in the job's unit."""
    assert read(text, unit) == length


REFUSED = [
    ("", "nothing is entered"),
    ("   ", "nothing is entered"),
    ("-3", "is negative"),
    ("−3/4", "is negative"),
    ("1/0", "divides by zero"),
    ("3 1/0", "divides by zero"),
    ("0/0", "divides by zero"),
    ("nan", "is not a length"),
    ("inf", "is not a length"),
    ("1e400", "is not a length"),
    ("1e3", "is not a length"),
    ("3,5", "is not a length"),
    ("3 4", "is not a length"),
    ("3 1/2 1/4", "is not a length"),
    ("1/2/3", "is not a length"),
    ("--3", "is not a length"),
    ("wide", "is not a length"),
    ("12 yd", "is not a length"),
    ("٣", "is not a length"),
    ("3\n4", "is not a length"),
    ("20000.1 mm", "is more than 20 m"),
    ("66 ft", "is more than 20 m"),
    ("9" * 50, "is more than 20 m"),
    ("8" * 61, "is too long"),
]


@pytest.mark.parametrize(
    ("text", "why"), REFUSED, ids=[text[:12] or "empty" for text, _ in REFUSED]
)
def test_refused_with_the_text_and_the_reason(text: str, why: str) -> None:
    """What is no length is refused in words that hold what was typed."""
    with pytest.raises(LengthError, match=why) as refused:
        read(text, "mm")

    assert not text.strip() or text[:20] in str(refused.value)


def test_nothing_is_refused_where_a_size_is_meant() -> None:
    """Zero is a gap, not a width."""
    assert read("0", "in") == 0
    with pytest.raises(LengthError, match="is nothing"):
        read("0", "in", zero=False)


def test_below_zero_is_read_where_a_place_is_meant() -> None:
    """A cabinet may stand left of where the wall was measured from."""
    assert read("-3 1/2", "in", signed=True) == Fraction(-7, 2) * INCH
    assert read("− 40 mm", "in", signed=True) == -40


SHOWN = [
    (Fraction(189, 8) * INCH, "in", "23 5/8"),
    (Fraction(5, 8) * INCH, "in", "5/8"),
    (2 * INCH, "in", "2"),
    (Fraction(0), "in", "0"),
    (INCH / 128, "in", "1/128"),
    (-INCH / 2, "in", "-1/2"),
    (Fraction(-7, 2) * INCH, "in", "-3 1/2"),
    (Fraction(600), "in", "≈23 5/8"),
    (INCH / 3, "in", "≈21/64"),
    (Fraction(600), "mm", "600"),
    (Fraction(1201, 2), "mm", "600.5"),
    (Fraction("600.25"), "mm", "600.25"),
    (Fraction(127, 80), "mm", "≈1.59"),
    (INCH / 3, "mm", "≈8.47"),
    (Fraction(-1, 2), "mm", "-0.5"),
]


@pytest.mark.parametrize(("length", "unit", "shown"), SHOWN, ids=[f"{s} {u}" for _, u, s in SHOWN])
def test_shown_in_lowest_terms_and_never_rounded_silently(
    length: Fraction, unit: str, shown: str
) -> None:
    """A length that is not on the step of the display carries a leading ≈."""
    assert show(length, unit) == shown
    assert show_with_unit(length, unit) == f"{shown} {unit}"


def test_shown_on_a_coarser_step_when_asked() -> None:
    """A tape that is marked in sixteenths shows sixteenths."""
    assert show(read("5 3/32", "in"), "in", finest=16) == "≈5 1/8"
    assert show(read("5 3/32", "in"), "in", finest=32) == "5 3/32"


WRITTEN = [
    (Fraction(189, 8) * INCH, "in", "23 5/8"),
    (Fraction(600), "in", "600 mm"),
    (INCH / 3, "in", "1/3 in"),
    (4 * INCH / 3, "in", "1 1/3 in"),
    (Fraction(1201, 2), "mm", "600.5"),
    (INCH / 128, "mm", "0.1984375"),
    (Fraction(1, 3), "mm", "1/3"),
    (Fraction(700, 3), "mm", "233 1/3"),
]


@pytest.mark.parametrize(
    ("length", "unit", "text"), WRITTEN, ids=[f"{t} {u}" for _, u, t in WRITTEN]
)
def test_written_as_shortly_as_it_is_exact(length: Fraction, unit: str, text: str) -> None:
    """Marks of a rule, else a decimal of a millimetre, else a ratio."""
    assert write(length, unit) == text


anything = st.fractions(min_value=0, max_value=19_990, max_denominator=10_000)


@LAW
@given(anything, st.sampled_from(["in", "mm"]))
def test_what_is_written_reads_back_the_same(length: Fraction, unit: str) -> None:
    """A length that was written reads back exactly, whatever it was made of."""
    assert read(write(length, unit), unit) == length


@LAW
@given(st.integers(0, 20 * 128 * 39), st.sampled_from(["in", "mm"]))
def test_an_inch_in_128_parts_survives(parts: int, unit: str) -> None:
    """Every 1/128 in is shown exactly in inches, and kept in 8 places of a millimetre."""
    length = parts * INCH / 128

    assert not show(length, "in").startswith("≈")
    assert read(show_with_unit(length, "in"), unit) == length
    assert Fraction(as_decimal(length)) == length
    assert read(f"{exact(length)} mm", "in") == length


@LAW
@given(anything, st.sampled_from(["in", "mm"]))
def test_what_is_shown_without_a_mark_is_the_length(length: Fraction, unit: str) -> None:
    """Only ≈ may be off, and by half a display step at most."""
    shown = show(length, unit)
    off = abs(read(shown.lstrip("≈"), unit) - length)

    assert off <= (INCH / 128 if unit == "in" else Fraction(1, 200))
    assert shown.startswith("≈") == (off > 0)


@LAW
@given(st.text(max_size=30), st.sampled_from(["in", "mm"]))
def test_any_text_is_a_length_or_refused(text: str, unit: str) -> None:
    """Nothing that can be typed does anything else."""
    try:
        found = read(text, unit)
    except LengthError:
        return
    assert 0 <= found <= 20_000


EXACT = [
    (Fraction(381, 20), "19.05"),
    (Fraction(254, 5) * 10, "508"),
    (INCH / 128, "0.1984375"),
    (Fraction(-127, 20), "-6.35"),
    (Fraction(0), "0"),
    (INCH / 3, "127/15"),
    (Fraction(1, 5**9), "0.000000512"),
    (Fraction(3, 2**9), "0.005859375"),
    (Fraction(-12_345_678_901_234_567_890_123_456_789, 10), "-1234567890123456789012345678.9"),
]


@pytest.mark.parametrize(("length", "text"), EXACT, ids=[text for _, text in EXACT])
def test_exact_decimal_millimetres(length: Fraction, text: str) -> None:
    """Outputs are exact, without trailing zeros; what no decimal states is a ratio."""
    assert exact(length) == text


@pytest.mark.parametrize("text", ["23 - 5/8", "23 -5/8", "23- ⅝", "1' - 11"])
def test_a_hyphen_apart_from_its_number_is_a_minus(text: str) -> None:
    """A single length has none: refused, not read as more than was meant."""
    with pytest.raises(LengthError, match="is not a length"):
        read(text, "in")


OUTPUTS = [
    (INCH / 128, "0.1984375"),
    (Fraction(1, 5**12), "0.000000004096"),
    (INCH / 3, "8.466666667"),
    (-INCH / 3, "-8.466666667"),
    (INCH * 3 / 7, "10.885714286"),
]


@pytest.mark.parametrize(("length", "text"), OUTPUTS, ids=[text for _, text in OUTPUTS])
def test_outputs_are_decimals(length: Fraction, text: str) -> None:
    """Exact where a decimal can be, else to a millionth of a micrometre: never a ratio."""
    assert as_output(length) == text


def test_a_third_of_an_inch_is_not_kept_as_a_decimal() -> None:
    """It is refused, not rounded."""
    with pytest.raises(LengthError, match="can't be kept exactly"):
        as_decimal(INCH / 3)
    assert as_decimal(INCH / 64) == Decimal("0.396875")


@LAW
@given(st.fractions(-5000, 5000), st.sampled_from([INCH / 16, INCH / 32, Fraction(1, 2)]))
def test_down_to_the_step(length: Fraction, step: Fraction) -> None:
    """Whole steps, not over the length, and less than a step under it."""
    found = floor_to(length, step)

    assert (found / step).denominator == 1
    assert 0 <= length - found < step

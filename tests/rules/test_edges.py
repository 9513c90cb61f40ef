"""Where a new front's edges lie: by amount, by reveal, inset; shares of a span; lean."""

from fractions import Fraction
from math import isqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.edges import Division, Rect, divide, lean, members, opening_rect, rule_overlays
from fronts.rules.kitchen import Measured
from fronts.rules.lengths import INCH, Mm
from fronts.rules.standard_keys import Reveal, Settled, Sides, Standard
from fronts.rules.standards import settled
from tests.rules.laws import LAW
from tests.rules.small_kitchens import all_round, cabinet, inch, opening

STEP = inch("1/16")
# Two openings side by side, 2 in apart, in a cabinet 36 × 30 in with 1 1/2 in stiles.
OUTER = Rect(Mm(0), Mm(0), inch("36"), inch("30"))
LEFT = Rect(inch("1 1/2"), inch("1 1/2"), inch("15 1/2"), inch("27"))
RIGHT = Rect(inch("19"), inch("1 1/2"), inch("15 1/2"), inch("27"))
REVEAL = Reveal(inch("1/8"), Sides(inch("1/4"), inch("3/8"), inch("1/2"), inch("0")))
# Every value here is worked by hand from the trade rule; the rules are common practice, no source.


def _overlays(rect: Rect, other: Rect, standard: Settled) -> Sides[Mm]:
    found = rule_overlays(rect, [other], OUTER, standard)
    assert found is not None
    return found


def test_overlay_by_amount() -> None:
    """The edge lies the amount outside the opening, on each side its own."""
    own = Sides(inch("1/2"), inch("3/8"), inch("1/4"), inch("5/8"))

    assert _overlays(LEFT, RIGHT, settled(Standard(overlay=own))) == own


def test_overlay_by_reveal_across_a_shared_member() -> None:
    """Two fronts share a 2 in stile and leave 1/8 in between: 15/16 in each."""
    standard = settled(Standard(reveal=REVEAL))

    assert _overlays(LEFT, RIGHT, standard).right == inch("15/16")
    assert _overlays(RIGHT, LEFT, standard).left == inch("15/16")


def test_overlay_by_reveal_at_the_cabinets_end() -> None:
    """A member that ends at the cabinet's edge keeps the end's reveal, per side."""
    overlays = _overlays(LEFT, RIGHT, settled(Standard(reveal=REVEAL)))

    assert overlays.left == inch("1 1/4")
    assert overlays.top == inch("1")
    assert overlays.bottom == inch("1 1/2")
    assert _overlays(RIGHT, LEFT, settled(Standard(reveal=REVEAL))).right == inch("1 1/8")


def test_inset_lies_its_gap_inside() -> None:
    """The gap is taken off every side, per side."""
    gaps = Sides(inch("3/32"), inch("1/16"), inch("1/8"), inch("0"))

    found = _overlays(LEFT, RIGHT, settled(Standard(mount="inset", inset_gap=gaps)))

    assert found == Sides(inch("-3/32"), inch("-1/16"), inch("-1/8"), inch("0"))


def test_inset_holds_where_a_farther_level_gives_an_overlay() -> None:
    """A mount of inset leaves an overlay that was said elsewhere unused."""
    standard = settled(Standard(mount="inset"), Standard(overlay=all_round("1/2")))

    assert _overlays(LEFT, RIGHT, standard).left == inch("-3/32")


def test_nobody_said_how_far() -> None:
    """Overlay without an amount or a reveal gives no edges at all."""
    assert rule_overlays(LEFT, [RIGHT], OUTER, settled(Standard())) is None


def test_a_member_is_shared_only_with_what_stands_across_it() -> None:
    """An opening diagonally above shares no member; the cabinet's end counts."""
    above_right = Rect(inch("19"), inch("28 1/2"), inch("15 1/2"), inch("1"))

    assert members(LEFT, [above_right], OUTER)["right"] == (inch("19"), False)
    assert members(LEFT, [RIGHT], OUTER)["right"] == (inch("2"), True)


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


lengths = st.integers(1, 4000).map(lambda n: n * INCH / 128)


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
    """What was measured writer, the drawing's size does not."""
    of = opening(measured=Measured(width_top=inch("14 7/8")))

    assert opening_rect(cabinet(of), of, greatest=True).width == inch("14 7/8")


@LAW
@given(st.integers(200, 1200), st.integers(200, 2400), st.integers(-30, 30))
def test_lean_of_a_racked_opening(width: int, height: int, shift: int) -> None:
    """A parallelogram whose top is shifted to the right leans by that shift.

    Source: Euclid; a diagonal's square is (w ± shift)² + h². The diagonals come in as they would
    be measured, here to a billionth of a millimetre.
    """
    longer, shorter = (
        _root((width + shift) ** 2 + height**2),
        _root((width - shift) ** 2 + height**2),
    )

    assert abs(lean(Mm(width), longer, shorter) - shift) < Mm(1, 10**6)


def _root(square: int) -> Mm:
    return Mm(isqrt(square * 10**18), 10**9)


def test_lean_on_a_3_4_5_opening() -> None:
    """3-4-5 against 5.1: by hand (5.1² - 5²) / (4·3) = 1.01 / 12."""
    assert lean(Fraction(3), Fraction("5.1"), Fraction(5)) == Fraction("1.01") / 12
    assert lean(Fraction(3), Fraction(5), Fraction(5)) == 0
    assert lean(Fraction(3), Fraction(5), Fraction("5.1")) == -Fraction("1.01") / 12

"""How a square front lies in an opening that tapers or leans."""

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Kitchen, Measured
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Reveal, Sides, Standard
from fronts.rules.wall_results import OpeningEnds
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import (
    all_round,
    cabinet,
    findings_of,
    inch,
    kitchen,
    only_front,
    opening,
)

INSET = Standard(mount="inset", inset_gap=all_round("1/8"))


def _measured(standard: Standard | None = None, **taken: str) -> Kitchen:
    sizes = Measured(**{name: inch(text) for name, text in taken.items()})
    of = opening(measured=sizes)
    return kitchen(cabinet(of), standard=standard or Standard(overlay=all_round("1/2")))


def _ends(of: Kitchen) -> Sides[tuple[Mm, Mm]]:
    (found,) = schedule(of).openings
    assert found.opening == "B1.a"
    return found.ends


def _pair(first: str, second: str) -> tuple[Mm, Mm]:
    return inch(first), inch(second)


def test_an_inset_front_in_an_opening_wider_at_the_bottom() -> None:
    """15 in at the top and 15 1/4 at the bottom: a front of 14 3/4 with 1/8, and 1/4 below."""
    ends = _ends(_measured(INSET, width_top="15", width_bottom="15 1/4"))

    assert ends.left == ends.right == _pair("1/8", "1/4")
    assert ends.top == ends.bottom == _pair("1/8", "1/8")


def test_an_overlay_front_over_an_opening_higher_at_the_right() -> None:
    """Sized against the greatest, it laps the lower end by half the difference more."""
    ends = _ends(_measured(height_left="27", height_right="27 1/2"))

    assert ends.top == ends.bottom == _pair("3/4", "1/2")
    assert ends.left == ends.right == _pair("1/2", "1/2")


def test_what_was_measured_at_one_end_is_the_same_at_the_other() -> None:
    """No taper, so nothing to tell."""
    assert schedule(_measured(width_top="15 1/4", height_left="27")).openings == ()


def test_an_opening_that_leans_to_the_right() -> None:
    """Diagonal 1 the longer: its top is to the right, where the front comes near at the bottom."""
    of = _measured(INSET, diagonal_1="31 5/16", diagonal_2="31 1/4")
    e = (inch("31 5/16") ** 2 - inch("31 1/4") ** 2) / (4 * inch("15"))
    ends = _ends(of)

    assert ends.left == (inch("1/8") - e / 2, inch("1/8") + e / 2)
    assert ends.right == (inch("1/8") + e / 2, inch("1/8") - e / 2)


def test_only_one_front_alone_is_told_of() -> None:
    """A pair has gaps of its own in the middle; it tapers all the same."""
    of = opening("pair", measured=Measured(width_top=inch("15"), width_bottom=inch("15 1/2")))
    pair = kitchen(cabinet(of))

    assert schedule(pair).openings == ()
    assert len(findings_of(pair, "opening-tapers")) == 1


def test_an_open_opening_may_taper() -> None:
    """Nothing closes it, so nothing looks crooked."""
    of = opening("open", measured=Measured(width_top=inch("15"), width_bottom=inch("15 1/2")))

    assert findings_of(kitchen(cabinet(of)), "opening-tapers") == []


def test_a_lean_alone_is_no_taper() -> None:
    """It is told as a lean."""
    of = _measured(INSET, diagonal_1="31 3/8", diagonal_2="31 1/8")

    assert findings_of(of, "opening-tapers") == []
    assert len(findings_of(of, "opening-out-of-square")) == 1


def test_both_ways_out_are_named() -> None:
    """Cut the front, or scribe a strip; by how much, and where."""
    of = _measured(
        width_top="15", width_bottom="15 1/4", height_left="27 3/4", height_right="27 1/2"
    )
    (found,) = findings_of(of, "opening-tapers")

    assert found.message == (
        "B1.a tapers: round a square front it differs from end to end at its sides by 1/8 in and "
        "above and below by 1/8 in. Cut the front to the taper, or scribe a strip beside it."
    )


@pytest.mark.parametrize(
    ("unit", "differs", "told"),
    [
        ("mm", "3.2", False), ("mm", "3.21", True), ("in", "3.175", False), ("in", "3.19", True),
    ],
)  # fmt: skip
def test_each_unit_has_its_limit(unit: Unit, differs: str, told: bool) -> None:
    """1/16 in or 1.6 mm, half of what the widths differ: common practice, no source."""
    wide = Fraction(400)
    taken = Measured(width_top=wide, width_bottom=wide + Fraction(differs))
    of = kitchen(cabinet(opening(measured=taken)), unit=unit)

    assert bool(findings_of(of, "opening-tapers")) is told


Corner = tuple[Mm, Mm]


def corners(wide: dict[str, Mm], high: dict[str, Mm], middle: Corner, e: Mm) -> dict[str, Corner]:
    """The corners of an opening about the middle of its rectangle, sheared by its lean.

    Each lies half of its own width from the middle line upwards, half of its own height from
    the one across; the top goes half the lean to the right, the bottom to the left.
    """
    x, y = middle
    out, up = {"left": -1, "right": 1}, {"bottom": -1, "top": 1}
    return {
        f"{end} {side}": (
            x + out[side] * wide[end] / 2 + up[end] * e / 2,
            y + up[end] * high[side] / 2,
        )
        for end in wide
        for side in high
    }


sixteenths = st.integers(-8, 8).map(lambda n: n * inch("1/16"))


@KITCHEN_LAW
@given(sixteenths, sixteenths, sixteenths, sixteenths, sixteenths, st.booleans())
def test_ends_are_where_the_corners_are(
    top: Mm, bottom: Mm, left: Mm, right: Mm, diagonal: Mm, inset: bool
) -> None:
    """Against the four corners of the opening, drawn by their coordinates, round the front's."""
    wide = {"top": inch("15") + top, "bottom": inch("15") + bottom}
    high = {"left": inch("27 1/2") + left, "right": inch("27 1/2") + right}
    first, second = inch("31 1/4") + diagonal, inch("31 1/4")
    taken = Measured(
        width_top=wide["top"], width_bottom=wide["bottom"],
        height_left=high["left"], height_right=high["right"],
        diagonal_1=first, diagonal_2=second,
    )  # fmt: skip
    sides = Sides(inch("1/8"), inch("3/16"), inch("1/4"), inch("5/16"))
    rule: dict[str, Any] = {"mount": "inset", "inset_gap": sides}
    standard = Standard(**rule) if inset else Standard(overlay=sides)
    of = kitchen(cabinet(opening("fixed", measured=taken)), standard=standard)
    front = only_front(of)
    found = schedule(of).openings
    e = (first**2 - second**2) / (2 * (wide["top"] + wide["bottom"]))
    if top == bottom and left == right and not diagonal:
        assert found == ()
        return

    # The middle of the rectangle that the front is sized by, as the wall has it.
    pick = min if inset else max
    x = inch("1 1/2") + inch("15") / 2 + pick(top, bottom) / 2
    y = inch("4") + inch("1 1/2") + inch("27 1/2") / 2 + pick(left, right) / 2
    corner = corners(wide, high, (x, y), e)
    gaps: dict[str, tuple[Mm, Mm]] = {
        "left": (front.x - corner["top left"][0], front.x - corner["bottom left"][0]),
        "right": (corner["top right"][0] - front.right, corner["bottom right"][0] - front.right),
        "top": (corner["top left"][1] - front.top, corner["top right"][1] - front.top),
        "bottom": (front.y - corner["bottom left"][1], front.y - corner["bottom right"][1]),
    }
    sign = 1 if inset else -1
    expected = {side: (sign * one, sign * other) for side, (one, other) in gaps.items()}

    assert found == (OpeningEnds("B1.a", Sides(**expected)),)


def test_members_beside_it_are_as_wide_as_fronts_are_sized_by() -> None:
    """By reveal: the stile beside a wider opening is 1 1/4 in, not 1 1/2: 3/8 of it is lapped."""
    reveal = Reveal(between=inch("1/2"), end=all_round("1"))
    taken = Measured(width_top=inch("15"), width_bottom=inch("15 1/4"))
    of = cabinet(
        opening(measured=taken), opening(label="b", x=inch("18")), width=inch("34 1/2")
    )  # fmt: skip

    front = schedule(kitchen(of, standard=Standard(reveal=reveal))).front("B1.a")

    assert (front.edges.left.overlay, front.edges.right.overlay) == (inch("1/2"), inch("3/8"))

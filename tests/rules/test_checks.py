"""What is wrong with an opening or a front by itself, and the way out that is told."""

import pytest

from fronts.rules.kitchen import FrontFacts, Measured
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases import one, with_door
from tests.rules.small_kitchens import (
    all_round,
    findings_of,
    inch,
    only_front,
    opening,
)

INSET = Standard(mount="inset", inset_gap=all_round("3/32"))


def test_mixed_says_where_and_what_to_trim_to() -> None:
    """A door that laps across and falls inside upwards: both told, and the size to cut it to."""
    (found,) = findings_of(one(with_door("15 1/2", "27")), "mixed-overlay-and-inset")

    assert found.message == (
        "B1.a laps the opening (left, right) and falls inside it (top, bottom); "
        "trimmed to 14 13/16 in × 27 in it lies inside."
    )


def test_too_tight_says_what_to_trim_to() -> None:
    """1/32 in each side of a door that was meant to lie inside."""
    (found,) = findings_of(one(with_door("14 15/16", "27 7/16")), "gap-too-small")

    assert found.message == (
        "B1.a leaves 1/32 in inside its opening; the least gap is 1/16 in; "
        "trim it to 14 13/16 in × 27 5/16 in to lie inside."
    )


@pytest.mark.parametrize("trimmed", [("14 13/16", "27"), ("14 13/16", "27 5/16")])
def test_trimmed_to_what_was_told_it_fits(trimmed: tuple[str, str]) -> None:
    """The way out is one: after trimming nothing is told."""
    of = one(with_door(*trimmed))

    assert findings_of(of, "mixed-overlay-and-inset") == []
    assert findings_of(of, "gap-too-small") == []


def test_a_front_flush_with_its_opening_laps_it_by_nothing() -> None:
    """Both at least zero: it laps (common practice, no source)."""
    front = only_front(one(with_door("15", "27 1/2")))

    assert front.plane == "overlay"
    assert front.edges.left.overlay == 0


def test_off_centre_one_side_may_fall_inside() -> None:
    """A door of 15 1/2 in that was shifted by 3/8: 1/8 in of the opening shows at one side."""
    wish = FrontFacts(width=inch("15 1/2"), height=inch("28"), shift_x=inch("3/8"))

    (found,) = findings_of(one(opening(front=wish)), "mixed-overlay-and-inset")

    assert "(left)" in found.message


TOO_SMALL = [("no width", "3/16", "27 1/2"), ("no height", "15", "3/16")]


@pytest.mark.parametrize(
    ("width", "height"), [row[1:] for row in TOO_SMALL], ids=[row[0] for row in TOO_SMALL]
)
def test_an_opening_that_two_gaps_fill_holds_no_inset_front(width: str, height: str) -> None:
    """Two gaps of 3/32 in leave nothing of 3/16 to trim a front to."""
    wish = FrontFacts(width=inch("5"), height=inch("5"))
    small = opening(width=inch(width), height=inch(height), front=wish)

    (found,) = findings_of(one(small), "mixed-overlay-and-inset")

    assert "too small for an inset front" in found.message


def test_an_opening_that_holds_a_sliver_is_no_way_out_of_none() -> None:
    """1/64 in more than its gaps: however thin, that is what it would be trimmed to."""
    wish = FrontFacts(width=inch("5"), height=inch("5"))
    thin = opening(width=inch("13/64"), height=inch("27 1/2"), front=wish)
    low = opening(width=inch("15"), height=inch("13/64"), front=wish)
    messages = [
        findings_of(one(of, step=inch("1/64")), "mixed-overlay-and-inset")[0].message
        for of in (thin, low)
    ]

    assert "trimmed to 1/64 in × 5 in" in messages[0]
    assert "trimmed to 5 in × 1/64 in" in messages[1]


ALREADY_RIGHT = [
    ("its width is right", "14 13/16", "27 7/16", "trim it to 14 13/16 in × 27 5/16 in"),
    ("its height is right", "14 15/16", "27 5/16", "trim it to 14 13/16 in × 27 5/16 in"),
    ("it is less wide than that", "14 3/4", "27 7/16", "trimmed to 14 3/4 in × 27 5/16 in"),
    ("it is less high than that", "14 15/16", "27", "trimmed to 14 13/16 in × 27 in"),
]


@pytest.mark.parametrize(
    ("width", "height", "way_out"),
    [row[1:] for row in ALREADY_RIGHT],
    ids=[row[0] for row in ALREADY_RIGHT],
)
def test_what_is_right_already_is_not_trimmed(width: str, height: str, way_out: str) -> None:
    """A door 1/32 in too near at one direction, the other as the rule would have it, or less."""
    (found,) = findings_of(one(with_door(width, height)), "gap-too-small")

    assert way_out in found.message


def test_it_is_trimmed_to_go_in_where_the_opening_is_least() -> None:
    """Two widths and two heights were measured: it must pass the lesser of each."""
    taper = Measured(inch("15"), inch("14 3/4"), inch("27"), inch("27 1/2"))
    wish = FrontFacts(width=inch("15 1/2"), height=inch("26"))

    (found,) = findings_of(one(opening(measured=taper, front=wish)), "mixed-overlay-and-inset")

    assert "trimmed to 14 9/16 in × 26 in" in found.message
    low = FrontFacts(width=inch("14"), height=inch("28"))
    (found,) = findings_of(one(opening(measured=taper, front=low)), "mixed-overlay-and-inset")
    assert "trimmed to 14 in × 26 13/16 in" in found.message


@pytest.mark.parametrize("width", ["15", "15 1/128"])
@pytest.mark.parametrize("standard", [None, INSET], ids=["overlay", "inset"])
def test_flush_across_and_inside_upwards_is_mixed(width: str, standard: Standard | None) -> None:
    """A front that exists laps by nothing or a hair; that new ones lie inside is no matter."""
    (found,) = findings_of(one(with_door(width, "27"), standard), "mixed-overlay-and-inset")

    assert "laps the opening (left, right) and falls inside it (top, bottom)" in found.message


def test_a_new_inset_front_is_never_mixed() -> None:
    """Moved 3/16 in to the right it would lie on the opening's edge: its gap is told."""
    moved = opening(front=FrontFacts(shift_x=inch("3/16")))
    of = one(moved, INSET, step=inch("1/32"))

    assert findings_of(of, "mixed-overlay-and-inset") == []
    assert len(findings_of(of, "gap-too-small")) == 1

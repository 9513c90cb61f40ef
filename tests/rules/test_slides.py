"""Slides: the longest stocked that fits, of a class that carries the box."""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.rules.kinds import Mount, SlideKind
from fronts.rules.practice import POUND, PRACTICE
from fronts.rules.slides import (
    SlideOutline,
    expected_load,
    slide_class,
    slide_length,
    slide_outlines,
    slide_room,
)
from tests.rules.small_kitchens import (
    BOX,
    STOCK,
    cabinet,
    inch,
    inches,
    kitchen,
    only_front,
    opening,
)

FRONT = only_front(kitchen(cabinet(opening("pull-out", boxes=(BOX,)))))
SQUARE_FOOT = inch("12") ** 2


@pytest.mark.parametrize(
    ("box_depth", "plane", "room"),
    [
        (None, "overlay", "23 1/2"),
        ("21", "overlay", "21"),
        ("23 3/4", "overlay", "23 1/2"),
        (None, "inset", "22 3/4"),
    ],
    ids=["24 in deep, 1/2 in behind", "the box is shorter", "the box is deeper", "inset"],
)
def test_room(box_depth: str | None, plane: Mount, room: str) -> None:
    """The inside depth less 1/2 in behind (common practice, no source), no longer than the box."""
    box = replace(BOX, depth=None if box_depth is None else inch(box_depth))
    front = replace(FRONT, plane=plane)

    assert slide_room(box, inch("24"), front, PRACTICE) == inch(room)


@pytest.mark.parametrize(
    ("room", "length"), [("24", "24"), ("23 1/2", "22"), ("12", "12"), ("11 15/16", None)]
)
def test_longest_that_fits(room: str, length: str | None) -> None:
    """A slide as long as the room fits."""
    found = slide_length(STOCK.slide_lengths, inch(room))

    assert found == (None if length is None else inch(length))


def test_load_of_a_square_foot_of_drawer() -> None:
    """Source: ANSI/KCMA A161.1, drawers loaded at 15 lb/ft² (718 Pa)."""
    pressure = PRACTICE.drawer_load * SQUARE_FOOT / POUND

    assert float(pressure) == pytest.approx(15, rel=0.005)


def test_expected_load() -> None:
    """14 × 21 in at 15 lb/ft² is 30.6 lb; the front's weight comes on top."""
    load = expected_load(BOX, inch("24"), 5 * POUND, PRACTICE)

    assert float(load / POUND) == pytest.approx(14 * 21 / 144 * 15 + 5, rel=0.005)


def test_a_box_of_unknown_depth_is_taken_as_deep_as_the_cabinet() -> None:
    """On the safe side."""
    load = expected_load(replace(BOX, depth=None), inch("24"), Fraction(0), PRACTICE)

    assert load == inch("14") * inch("24") * PRACTICE.drawer_load


OUTLINES: list[tuple[SlideKind, list[tuple[str, str, str, str]]]] = [
    ("bottom", [("6 1/8", "-1/2", "7 7/8", "0")]),
    ("under", [("0", "-1/2", "1 3/4", "0"), ("12 1/4", "-1/2", "14", "0")]),
    ("side", [("-1 3/4", "11 3/4", "0", "12 1/4"), ("14", "11 3/4", "15 3/4", "12 1/4")]),
]
SLIDING = replace(BOX, slide="side", slide_width=inch("1 3/4"), slide_height=inch("1/2"))


@pytest.mark.parametrize(("slide", "outlines"), OUTLINES, ids=[kind for kind, _ in OUTLINES])
def test_where_a_slide_lies(slide: SlideKind, outlines: list[tuple[str, str, str, str]]) -> None:
    """A box 14 × 24 in: in the middle below it, below its edges, or halfway up its sides."""
    assert slide_outlines(replace(SLIDING, slide=slide)) == tuple(
        SlideOutline(*inches(*each)) for each in outlines
    )


@pytest.mark.parametrize("unknown", ["slide", "slide_width", "slide_height"])
def test_a_slide_that_nobody_measured_lies_nowhere(unknown: str) -> None:
    """Kind, width and height are all needed."""
    box = replace(SLIDING, **{unknown: None})  # type: ignore[arg-type]

    assert slide_outlines(box) == ()


@pytest.mark.parametrize(
    ("load", "carries"), [(1, 50), (50, 50), (51, 75), (75, 75), (76, 100), (199, 200), (201, None)]
)
def test_load_class(load: int, carries: int | None) -> None:
    """Source: Architectural Woodwork Standards, 1st ed. 2009, slide guide: 50, 75 and 100 lb
    static; 150 and 200 lb from memory.
    """
    found = slide_class(load * POUND, PRACTICE)

    assert found == (None if carries is None else carries * POUND)

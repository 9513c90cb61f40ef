"""Where knobs go: common practice, no source."""

import pytest

from fronts.rules.kinds import FrontKind, Hinged
from fronts.rules.kitchen import Point
from fronts.rules.knobs import knob_count, knob_places, over_box
from fronts.rules.practice import PRACTICE
from fronts.rules.rect import Rect
from tests.rules.small_kitchens import BOX as DRAWER_BOX
from tests.rules.small_kitchens import cabinet, inch, kitchen, only_front, opening

W, H = inch("16"), inch("28")
COUNTS: list[tuple[FrontKind, str, int]] = [
    ("door", "40", 1), ("pull-out", "40", 1), ("drawer", "23 15/16", 1), ("drawer", "24", 2),
    ("fixed", "40", 0),
]  # fmt: skip


@pytest.mark.parametrize(
    ("kind", "width", "count"), COUNTS, ids=[f"{k}, {w}" for k, w, _ in COUNTS]
)
def test_how_many(kind: FrontKind, width: str, count: int) -> None:
    """One, two on a drawer front 24 in or wider, none on a fixed front."""
    assert knob_count(kind, inch(width), PRACTICE) == count


DOORS: list[tuple[Hinged, str, str, str]] = [
    ("left", "5", "14 7/8", "25"),
    ("right", "5", "1 1/8", "25"),
    ("left", "54", "14 7/8", "3"),
    ("right", "30", "1 1/8", "14"),
    ("left", "20", "14 7/8", "25"),
    ("left", "20 1/16", "14 7/8", "14"),
    ("left", "48", "14 7/8", "3"),
    ("top", "54", "8", "3"),
    ("bottom", "5", "8", "25"),
]


@pytest.mark.parametrize(
    ("hinged", "bottom", "x", "y"), DOORS, ids=[f"{h}, {b} in up" for h, b, *_ in DOORS]
)
def test_on_a_door(hinged: Hinged, bottom: str, x: str, y: str) -> None:
    """At the free edge: high below easy reach, low above it, halfway on a door across it."""
    assert knob_places("door", hinged, inch(bottom), W, H, PRACTICE) == (Point(inch(x), inch(y)),)


def test_on_drawers_and_pull_outs() -> None:
    """In the middle of a drawer front, at its quarters where two; high on a pull-out."""
    narrow = knob_places("drawer", None, inch("5"), W, inch("6"), PRACTICE)
    wide = knob_places("drawer", None, inch("5"), inch("32"), inch("6"), PRACTICE)

    assert narrow == (Point(inch("8"), inch("3")),)
    assert wide == (Point(inch("8"), inch("3")), Point(inch("24"), inch("3")))
    assert knob_places("pull-out", None, inch("5"), W, H, PRACTICE) == (
        Point(inch("8"), inch("25")),
    )


@pytest.mark.parametrize("size", ["1", "2", "5"])
def test_on_a_small_door_it_stays_on_it(size: str) -> None:
    """No knob lies outside a door, or past its middle, however small."""
    small = inch(size)
    for hinged in ("left", "right", "top", "bottom"):
        for bottom in ("5", "46", "54"):
            (knob,) = knob_places("door", hinged, inch(bottom), small, small, PRACTICE)
            middle = small / 2
            assert knob.x == middle or middle > PRACTICE.knob_from_side
            assert knob.y == middle
            assert 0 < knob.x < small


def test_only_a_knob_without_a_box_behind_it_has_a_screw_of_the_fronts() -> None:
    """A box's fitting says the other; a fixed front has no knob."""
    door = only_front(kitchen(cabinet(opening())))
    on_box = only_front(kitchen(cabinet(opening("pull-out", boxes=(DRAWER_BOX,)))))
    fixed = only_front(kitchen(cabinet(opening("fixed"))))

    assert (door.knob_screw, on_box.knob_screw, fixed.knob_screw) == (inch("1"), None, None)


BOX = Rect(inch("1"), inch("1"), inch("14"), inch("20"))
MOVED = [("8", "10", "8", "10"), ("8", "25", "8", "20 1/4"), ("0", "0", "1 3/4", "1 3/4"),
         ("20", "10", "14 1/4", "10")]  # fmt: skip


@pytest.mark.parametrize(
    ("x", "y", "to_x", "to_y"), MOVED, ids=["on it", "above", "left of it", "right of it"]
)
def test_moved_over_the_box(x: str, y: str, to_x: str, to_y: str) -> None:
    """As little as may be, to 3/4 in inside the box front's edge."""
    found = over_box(Point(inch(x), inch(y)), BOX, PRACTICE)

    assert found == Point(inch(to_x), inch(to_y))


def test_over_a_box_too_low_it_goes_to_its_middle() -> None:
    """Where both margins don't go in, halfway is farthest from both edges."""
    low = Rect(inch("1"), inch("2"), inch("14"), inch("1"))

    assert over_box(Point(inch("8"), inch("25")), low, PRACTICE).y == inch("2 1/2")

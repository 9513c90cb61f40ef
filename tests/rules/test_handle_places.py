"""Where knobs and pulls go: common practice, no source, but for the reach.

Reach: 2010 ADA Standards for Accessible Design and ICC A117.1, 308.2.1: 48 in at most.
"""

from dataclasses import replace

import pytest

from fronts.rules.face import Face
from fronts.rules.handle_places import handle_places
from fronts.rules.handle_settling import over_box
from fronts.rules.items import HandleItem
from fronts.rules.kinds import CabinetKind, FrontKind, Hinged
from fronts.rules.kitchen import FrontFacts, HandlePlace, Point
from fronts.rules.practice import PRACTICE
from fronts.rules.rect import Rect
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides
from tests.rules.handles_on_fronts import front_of, listing
from tests.rules.small_kitchens import BOX as DRAWER_BOX
from tests.rules.small_kitchens import cabinet, inch, inches, kitchen, only_front, opening

W, H = inch("16"), inch("28")
NO_SPAN = inch("0"), inch("0")
SLAB = Face(W, H, inch("3/4"))
FRAMED = Face(W, H, inch("3/4"), True, Sides(*inches("2", "2 1/4", "2 1/2", "3")), inch("1/4"))
COUNTS: list[tuple[FrontKind, str, int]] = [
    ("door", "40", 1), ("pull-out", "40", 1), ("drawer", "23 15/16", 1), ("drawer", "24", 2),
    ("fixed", "40", 0), ("appliance-panel", "40", 0), ("lift-up", "40", 1), ("tip-out", "40", 1),
]  # fmt: skip


@pytest.mark.parametrize(
    ("kind", "width", "count"), COUNTS, ids=[f"{k}, {w}" for k, w, _ in COUNTS]
)
def test_how_many(kind: FrontKind, width: str, count: int) -> None:
    """One, two on a drawer front 24 in or wider, none on what does not open."""
    face = replace(SLAB, width=inch(width))
    assert len(handle_places(kind, "base", None, face, NO_SPAN, inch("5"), PRACTICE)) == count


DOORS: list[tuple[CabinetKind, Hinged, str, str, str]] = [
    ("base", "left", "5", "14 7/8", "25"),
    ("base", "right", "5", "1 1/8", "25"),
    ("wall", "left", "54", "14 7/8", "3"),
    ("wall", "right", "20", "1 1/8", "3"),
    ("base", "left", "20", "14 7/8", "25"),
    ("base", "left", "24", "14 7/8", "24"),
    ("tall", "left", "5", "14 7/8", "25"),
    ("tall", "left", "20", "14 7/8", "20"),
    ("tall", "left", "60", "14 7/8", "3"),
    ("wall", "top", "54", "8", "3"),
    ("base", "bottom", "5", "8", "25"),
]


@pytest.mark.parametrize(
    ("kind", "hinged", "bottom", "x", "y"),
    DOORS,
    ids=[f"{kind}, {hinged}, {up} up" for kind, hinged, up, *_ in DOORS],
)
def test_on_a_door(kind: CabinetKind, hinged: Hinged, bottom: str, x: str, y: str) -> None:
    """At the free edge: low on a wall cabinet, high on a base, never above 48 in where it can."""
    found = handle_places("door", kind, hinged, SLAB, NO_SPAN, inch(bottom), PRACTICE)
    assert found == (Point(inch(x), inch(y)),)


@pytest.mark.parametrize(
    ("hinged", "place"),
    [("left", ("14 7/8", "25")), ("right", ("1", "25")), ("top", ("8", "1 1/2")),
     ("bottom", ("8", "26 3/4"))],
)  # fmt: skip
def test_on_a_frame_in_the_middle_of_its_wood(hinged: Hinged, place: tuple[str, str]) -> None:
    """In mid-stile opposite the hinges, in mid-rail where they are above or below."""
    found = handle_places("door", "base", hinged, FRAMED, NO_SPAN, inch("5"), PRACTICE)
    assert found == (Point(*inches(*place)),)


def test_on_drawers_and_pull_outs() -> None:
    """In the middle of a drawer front, at its quarters where two; high on a pull-out."""
    low = replace(SLAB, height=inch("6"))
    wide = replace(low, width=inch("32"))

    def places(kind: FrontKind, face: Face) -> tuple[Point, ...]:
        return handle_places(kind, "base", None, face, NO_SPAN, inch("5"), PRACTICE)

    assert places("drawer", low) == (Point(*inches("8", "3")),)
    assert places("drawer", wide) == (Point(*inches("8", "3")), Point(*inches("24", "3")))
    assert places("pull-out", SLAB) == (Point(*inches("8", "25")),)


@pytest.mark.parametrize(("panel", "up"), [("1/4", "26 3/4"), ("1/2", "14")])
def test_never_in_a_thin_panel(panel: str, up: str) -> None:
    """A panel under 1/2 in sends it to the top rail's middle."""
    face = replace(FRAMED, panel_thickness=inch(panel))
    (place,) = handle_places("drawer", "base", None, face, NO_SPAN, inch("5"), PRACTICE)
    assert place.y == inch(up)


@pytest.mark.parametrize("size", ["1", "2", "5"])
def test_on_a_small_door_it_stays_on_it(size: str) -> None:
    """No knob lies outside a door, or past its middle, however small."""
    small = Face(inch(size), inch(size), inch("3/4"))
    for hinged in ("left", "right", "top", "bottom"):
        for bottom in ("5", "46", "54"):
            for kind in ("base", "wall", "tall"):
                (knob,) = handle_places(
                    "door", kind, hinged, small, NO_SPAN, inch(bottom), PRACTICE
                )
                assert 0 < knob.x < small.width
                assert knob.y == small.height / 2


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
    moved = over_box(Point(inch(x), inch(y)), BOX, NO_SPAN, PRACTICE)
    assert moved == Point(inch(to_x), inch(to_y))


def test_both_screws_of_a_pull_come_over_the_box() -> None:
    """A pull of 4 in moves 2 in further than a knob."""
    across = inch("2"), inch("0")
    assert over_box(Point(*inches("0", "10")), BOX, across, PRACTICE).x == inch("3 3/4")
    assert over_box(Point(*inches("20", "10")), BOX, across, PRACTICE).x == inch("12 1/4")


def test_over_a_box_too_low_it_goes_to_its_middle() -> None:
    """Where both margins don't go in, halfway is farthest from both edges."""
    low = Rect(inch("1"), inch("2"), inch("14"), inch("1"))

    assert over_box(Point(inch("8"), inch("25")), low, NO_SPAN, PRACTICE).y == inch("2 1/2")


# Items of the shop's list, and what they do to a whole kitchen.

PULL = HandleItem("P4", centres=inch("4"), thread="M4")


def test_a_pull_has_two_screws_upright_on_a_door_and_across_on_a_drawer_front() -> None:
    """So far apart as it says; both are drilled for and counted."""
    (on_door,), (on_drawer,) = front_of("door", PULL).handles, front_of("drawer", PULL).handles

    assert [(hole.x, hole.y - on_door.y) for hole in on_door.holes] == [
        (on_door.x, inch("-2")), (on_door.x, inch("2")),
    ]  # fmt: skip
    assert [(hole.x - on_drawer.x, hole.y) for hole in on_drawer.holes] == [
        (inch("-2"), on_drawer.y), (inch("2"), on_drawer.y),
    ]  # fmt: skip
    assert (on_door.code, on_door.screws, on_door.thread) == ("P4", 2, "M4")


def test_a_place_of_its_own_holds() -> None:
    """Somebody's word comes before the rule."""
    front = front_of("door", PULL, handles=(HandlePlace(*inches("5", "6")),))
    assert [(handle.x, handle.y) for handle in front.handles] == [tuple(inches("5", "6"))]


def test_a_pull_out_follows_the_door_beside_it() -> None:
    """Its knob is as high above the floor as the door's, in its own middle."""
    door = cabinet(opening(), label="B1")
    box = replace(DRAWER_BOX, height=inch("26"))
    pulled = replace(
        cabinet(opening("pull-out", boxes=(box,)), label="B2"), x=inch("18"), y=inch("5")
    )
    found = schedule(kitchen(door, pulled))
    first, second = found.front("B1.a"), found.front("B2.a")

    assert second.y + second.handles[0].y == first.y + first.handles[0].y
    assert second.handles[0].x == second.width / 2


def test_what_somebody_chose_that_is_not_in_the_list_is_told() -> None:
    """And the shop's first is taken."""
    hole = opening()
    hole = replace(hole, fronts=(FrontFacts(handle="P9"),))
    found = schedule(listing(PULL, of=kitchen(cabinet(hole))))

    assert [one.where for one in found.findings if one.code == "handle-unknown"] == [("B1.a",)]
    assert found.fronts[0].handles[0].code == "P4"

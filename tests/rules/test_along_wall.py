"""What a front meets along its wall, and in which words it is told."""

from dataclasses import replace

import pytest

from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases import lapping
from tests.rules.small_kitchens import beside, cabinet, findings_of, inch, kitchen, opening

# Limits (3 in of depth, 3 in of filler, lines by 1/4 in): common practice, no source.
WIDE_LAP = lapping("1 1/2", "1 1/2", "1/2", "1/2")


def _pair_of(first: Cabinet, **changes: object) -> Kitchen:
    return kitchen(first, beside(first, **changes))


def test_neighbours_touch_across_two_cabinets() -> None:
    """Each door laps its whole stile: no gap, and both are named."""
    of = _pair_of(cabinet(opening(standard=WIDE_LAP)))

    (found,) = findings_of(of, "fronts-too-close")

    assert found.message == "B1.a and B2.a are 0 in apart; the least gap is 1/16 in."


def test_overlapping_neighbours_say_by_how_much() -> None:
    """Two doors that would lie on each other."""
    of = _pair_of(cabinet(opening(standard=lapping("1 5/8", "1 5/8", "1/2", "1/2"))))

    (found,) = findings_of(of, "fronts-too-close")

    assert found.message == "B1.a and B2.a overlap by 1/4 in."


@pytest.mark.parametrize(("depth", "told"), [("24", True), ("21", True), ("20 15/16", False)])
def test_faces_that_stand_far_behind_don_t_meet(depth: str, told: bool) -> None:
    """A shallow cabinet's fronts lie in another plane from 3 in on."""
    of = _pair_of(cabinet(opening(standard=WIDE_LAP)), depth=inch(depth))

    assert bool(findings_of(of, "fronts-too-close")) is told


def test_each_two_are_told_once() -> None:
    """Three doors in a row that touch: two findings, not four."""
    first = cabinet(opening(standard=WIDE_LAP))
    third = beside(first, label="B3", x=2 * first.width)
    of = kitchen(first, beside(first), third)

    assert [each.where for each in findings_of(of, "fronts-too-close")] == [
        ("B1.a", "B2.a"),
        ("B2.a", "B3.a"),
    ]


def test_lines_that_miss_are_told_together() -> None:
    """A door that is 1/8 in higher at its top and 3/16 in at its bottom."""
    other = opening(y=inch("1 11/16"), height=inch("27 7/16"))

    (found,) = findings_of(_pair_of(cabinet(opening()), openings=(other,)), "lines-miss")

    assert found.message == (
        "B1.a and B2.a miss each other's line: tops by 1/8 in and bottoms by 3/16 in."
    )


def test_lines_are_looked_at_sideways_only() -> None:
    """A narrow drawer over a wide door misses nobody's line."""
    drawer = opening("drawer", label="b", x=inch("1 5/8"), y=inch("30"), height=inch("6"))
    of = kitchen(cabinet(opening(), drawer, height=inch("40")))

    assert findings_of(of, "lines-miss") == []


def test_a_run_goes_on_over_a_cabinet_without_fronts() -> None:
    """A front may lap past its cabinet where another stands, open or not."""
    first = cabinet(opening("fixed", standard=lapping("1/2", "1 9/16", "1/2", "1/2")))
    alone = kitchen(first)
    followed = kitchen(first, beside(first, openings=()))

    assert len(findings_of(alone, "past-cabinet-edge")) == 1
    assert findings_of(followed, "past-cabinet-edge") == []


def test_fronts_of_two_cabinets_over_each_other() -> None:
    """A wall cabinet close above a tall one: the gap is told upwards too."""
    first = cabinet(opening(standard=lapping("1/2", "1/2", "1 1/2", "1 1/2")))
    upper = replace(first, label="B2", y=first.y + first.height)

    (found,) = findings_of(kitchen(first, upper), "fronts-too-close")

    assert found.where == ("B1.a", "B2.a")


def test_corner_walls_are_walls_of_their_own() -> None:
    """What stands at the same x on another wall faces nothing here."""
    first = cabinet(opening(standard=WIDE_LAP))
    front = schedule(_pair_of(first, wall="East")).fronts[0]

    assert front.edges.right.faces is None


def test_an_inset_front_is_held_to_its_own_opening() -> None:
    """Inset neighbours are a stile and two gaps apart."""
    front = schedule(
        kitchen(
            cabinet(opening()),
            beside(cabinet(opening())),
            standard=Standard(mount="inset"),
            step=inch("1/32"),
        )
    ).fronts[0]

    assert front.edges.right.gap == inch("3 3/16")


# Where the next cabinet, as large as the first (18 × 30 1/2 in), stands from it.
RUN = [
    ("close to its left", "left", "-18", "0", True),
    ("3 in to its left", "left", "-21", "0", True),
    ("3 1/16 in to its left", "left", "-21 1/16", "0", False),
    ("3 in into it", "left", "-15", "0", True),
    ("3 1/16 in into it", "left", "-14 15/16", "0", False),
    ("to its left, higher by less than itself", "left", "-18", "30", True),
    ("to its left and on top", "left", "-18", "30 1/2", False),
    ("to its left and underneath", "left", "-18", "-30 1/2", False),
    ("on its other side", "left", "18", "0", False),
    ("3 in to its right", "right", "21", "0", True),
    ("3 1/16 in to its right", "right", "21 1/16", "0", False),
    ("on it", "top", "0", "30 1/2", True),
    ("3 in above", "top", "0", "33 1/2", True),
    ("3 1/16 in above", "top", "0", "33 9/16", False),
    ("above, reaching over its end", "top", "17", "30 1/2", True),
    ("above, from its right end on", "top", "18", "30 1/2", False),
    ("above, up to its left end", "top", "-18", "30 1/2", False),
    ("close below", "bottom", "0", "-30 1/2", True),
    ("3 1/16 in below", "bottom", "0", "-33 9/16", False),
]


@pytest.mark.parametrize(
    ("side", "across", "up", "goes_on"), [row[1:] for row in RUN], ids=[row[0] for row in RUN]
)
def test_where_a_run_goes_on(side: Side, across: str, up: str, goes_on: bool) -> None:
    """A front past its cabinet's edge is told where the next stands not beside it, or too far."""
    lap = lapping(*("1 9/16" if each == side else "1/2" for each in SIDES))
    first = cabinet(opening("fixed", standard=lap), x=inch("40"), y=inch("40"))
    bare = beside(first, openings=(), x=first.left + inch(across), y=first.y + inch(up))

    assert bool(findings_of(kitchen(first, bare), "past-cabinet-edge")) is not goes_on
    elsewhere = replace(bare, wall="West")
    assert findings_of(kitchen(first, elsewhere), "past-cabinet-edge")


STANDS = [
    ("1 in into its side", "17", "0", {}, "1 in"),
    ("1/2 in into its top", "2", "30", {}, "1/2 in"),
    ("1/128 in into its top", "0", "30 63/128", {}, "1/128 in"),
    ("a narrow one in its middle", "2", "0", {"width": inch("3")}, "3 in"),
    ("a low one in its middle", "2", "5", {"height": inch("4")}, "4 in"),
]


@pytest.mark.parametrize(
    ("across", "up", "size", "by"), [row[1:] for row in STANDS], ids=[row[0] for row in STANDS]
)
def test_overlapping_cabinets_say_by_how_much(
    across: str, up: str, size: dict[str, Mm], by: str
) -> None:
    """By the lesser of what they share across and upwards."""
    first = cabinet()
    other = beside(first, x=inch(across), y=first.y + inch(up), **size)

    (found,) = findings_of(kitchen(first, other), "cabinets-overlap")

    assert found.message == f"B1 and B2 overlap by {by} on their wall. Measure again."


def test_a_kitchen_typed_over_itself_is_not_told_at_length() -> None:
    """Of seven cabinets in one place, each is told of the next five."""
    same = [cabinet(label=f"B{number}") for number in range(1, 8)]

    met = [found.where[0] for found in findings_of(kitchen(*same), "cabinets-overlap")]

    assert [met.count(each.label) for each in same] == [5, 5, 4, 3, 2, 1, 0]


TOUCHING = [("right", "15", "0"), ("left", "-15", "0"), ("above", "0", "12"), ("below", "0", "-12")]


@pytest.mark.parametrize(("across", "up"), [row[1:] for row in TOUCHING])
def test_fronts_of_touching_openings_are_too_close(across: str, up: str) -> None:
    """The openings are right by themselves, so it is told of their fronts."""
    first = opening("fixed", x=inch("20"), y=inch("20"), height=inch("12"))
    second = replace(first, label="b", x=first.x + inch(across), y=first.y + inch(up))
    of = kitchen(cabinet(first, second, width=inch("60"), height=inch("60"), kind="tall"))

    (found,) = findings_of(of, "fronts-too-close")

    assert found.message == "B1.a and B1.b overlap by 1 in."
    assert findings_of(of, "openings-overlap") == []


def test_overlapping_openings_are_told_once() -> None:
    """Where the openings themselves are wrong, nothing is said of their fronts."""
    first = opening("fixed", x=inch("20"), y=inch("20"), height=inch("12"))
    second = replace(first, label="b", x=inch("30"), y=inch("30"))
    of = kitchen(cabinet(first, second, width=inch("60"), height=inch("60"), kind="tall"))

    assert len(findings_of(of, "openings-overlap")) == 1
    assert findings_of(of, "fronts-too-close") == []


def test_a_front_below_the_floor_says_by_how_much() -> None:
    """A base cabinet without a toe kick, its front 1/16 in past its bottom."""
    low = cabinet(opening(standard=lapping("1/2", "1/2", "1/2", "1 9/16")), y=inch("0"))

    messages = [found.message for found in findings_of(kitchen(low), "past-cabinet-edge")]

    assert "B1.a reaches 1/16 in below the floor." in messages


def test_a_hair_past_the_edge_is_past_it() -> None:
    """1/128 in is told like an inch."""
    fine = inch("1/128")
    first = cabinet(opening(standard=lapping("1/2", "1 65/128", "1/2", "1/2")))

    (found,) = findings_of(kitchen(first, step=fine), "past-cabinet-edge")

    assert found.message == "B1.a goes 1/128 in past the right edge of B1, where the run ends."

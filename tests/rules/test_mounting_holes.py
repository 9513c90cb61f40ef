"""Mounting holes: in solid wood, clear of everything, moved as little as may be."""

from dataclasses import replace
from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.rules.box_facts import Box, ShelfPins
from fronts.rules.fitting_results import Hole
from fronts.rules.hole_grid import Round, Site
from fronts.rules.hole_spans import hole_spans
from fronts.rules.kinds import SlideKind
from fronts.rules.kitchen import Point
from fronts.rules.lengths import INCH, Mm
from fronts.rules.mounting_holes import is_near_pin, mounting_holes
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Front
from fronts.rules.slides import slide_outlines
from fronts.rules.standard_keys import Sides
from tests.rules.laws import LAW
from tests.rules.small_kitchens import BOX, all_round, cabinet, inch, kitchen, only_front, opening

STEP = inch("1/16")
FLOOR = inch("1/2")
"""Where the bottom panel ends, so that holes are 3/4 in up and more."""
# 1/4 in holes, 1 1/2 in from sides and ends, 3/8 in from an edge of wood, 3/16 in clear, edge to
# edge; heads of 1/2 in, 1/8 in from a side, 3/4 in apart: common practice, no source.


def _front() -> Front:
    return only_front(kitchen(cabinet(opening("pull-out", boxes=(BOX,)))))


PLAIN_FRONT = _front()


def _site(box: Box = BOX, front: Front = PLAIN_FRONT, rounds: tuple[Round, ...] = ()) -> Site:
    side = (front.width - box.width) / 2
    spans = hole_spans(box, FLOOR, PRACTICE)
    return Site(box, front, side, inch("1"), rounds, spans, PRACTICE)


def _places(found: tuple[Hole, ...]) -> list[tuple[Mm, Mm]]:
    return [(each.box_x, each.box_y) for each in found]


def test_one_in_each_corner_at_the_default_place() -> None:
    """1 1/2 in from the sides and ends, from the lower left one clockwise."""
    found = mounting_holes(_site(), STEP)
    near, across, up = inch("1 1/2"), BOX.width - inch("1 1/2"), BOX.height - inch("1 1/2")

    assert _places(found) == [(near, near), (near, up), (across, up), (across, near)]
    assert not any(each.moved for each in found)
    assert found[0].front_x == near + inch("1")
    assert found[0].front_y == near + inch("1")
    assert found[0].diameter == inch("1/4")


def test_moved_off_a_shelf_pin() -> None:
    """A 1/4 in pin in the very place: the centre moves 7/16 in, edge to edge 3/16."""
    pins = ShelfPins(inch("1 1/2"), inch("1 1/2"), inch("1"), 1, inch("1/4"))

    found = mounting_holes(_site(replace(BOX, shelf_pins=(pins,))), STEP)

    assert found[0].moved
    assert (found[0].box_x - pins.x) ** 2 + (found[0].box_y - pins.y) ** 2 == inch("7/16") ** 2
    assert not any(each.moved for each in found[1:])


def test_moved_into_the_stile_of_a_five_piece_front() -> None:
    """2 1/2 in from the front's edge is past a 2 1/4 in stile less 3/8 in: out to 1 7/8 in."""
    front = replace(PLAIN_FRONT, build="five-piece", frame=all_round("2 1/4"))

    found = mounting_holes(_site(replace(BOX, front_thickness=inch("1/2")), front), STEP)

    assert [each.front_x for each in found] == [
        inch("1 7/8"), inch("1 7/8"), front.width - inch("1 7/8"), front.width - inch("1 7/8"),
    ]  # fmt: skip


def test_no_place_over_a_panel() -> None:
    """A narrow box high up in the panel of a wide front has no solid wood behind its corners."""
    front = replace(
        PLAIN_FRONT, build="five-piece", width=inch("36"), height=inch("36"),
        frame=all_round("2"),
    )  # fmt: skip
    spans = hole_spans(BOX, FLOOR, PRACTICE)
    site = Site(BOX, front, inch("10"), inch("5"), (), spans, PRACTICE)

    assert mounting_holes(site, STEP) == ()


def test_no_place_in_a_box_too_low() -> None:
    """3/4 in up from the bottom and 3/8 in down from the top want 1 1/8 in."""
    assert mounting_holes(_site(replace(BOX, height=inch("1 1/16"))), STEP) == ()


def test_a_low_box_takes_one_at_each_side() -> None:
    """1 3/4 in high: two at mid-height, since two above each other want 3/4 + 3/4 + 3/8 in."""
    low = replace(BOX, height=inch("1 3/4"))

    found = mounting_holes(_site(low), STEP)

    assert _places(found) == [
        (inch("1 1/2"), inch("7/8")), (BOX.width - inch("1 1/2"), inch("7/8"))
    ]  # fmt: skip
    assert not any(each.moved for each in found)


def test_holes_do_not_meet_in_the_middle_of_a_narrow_box() -> None:
    """In 4 in of width, pins leave room near the middle line only, and too little for two."""
    columns = ("1 1/4", "2 3/4")
    pins = tuple(ShelfPins(inch(x), inch("0"), inch("1/16"), 400, inch("1/4")) for x in columns)
    narrow = replace(BOX, width=inch("4"), shelf_pins=pins)

    assert mounting_holes(_site(narrow), STEP) == ()


@pytest.mark.parametrize("slide", ["bottom", "side", "under"])
def test_slides_lie_outside_the_box(slide: SlideKind) -> None:
    """A slide hangs below the box or at its sides; holes in the box keep clear by being in it."""
    box = replace(BOX, slide=slide, slide_width=inch("1 3/4"), slide_height=inch("1/2"))

    for bar in slide_outlines(box):
        below = bar.top <= 0
        beside = bar.right <= 0 or bar.left >= box.width
        assert below or beside


# Three pins of 1/4 in at 10, 12 and 14 in: 3/16 in of wood is 5/16 in from a pin's centre.
ROW = ShelfPins(inch("7"), inch("10"), inch("2"), 3, inch("1/4"))
NEAR = [
    ("on the first", "7", "10", True),
    ("5/16 in under it", "7", "9 11/16", False),
    ("a hair less", "7", "9 89/128", True),
    ("where one under it would be", "7", "8", False),
    ("halfway to the second", "7", "11", False),
    ("5/16 in from the second, slantwise", "7 3/16", "12 1/4", False),
    ("a hair less, slantwise", "7 3/16", "12 31/128", True),
    ("5/16 in beside the second", "6 11/16", "12", False),
    ("a hair less beside it", "6 89/128", "12", True),
    ("on the last", "7", "14", True),
    ("5/16 in over it", "7", "14 5/16", False),
    ("where one over it would be", "7", "16", False),
]


@pytest.mark.parametrize(("x", "y", "near"), [row[1:] for row in NEAR], ids=[r[0] for r in NEAR])
def test_what_is_near_a_row_of_pins(x: str, y: str, near: bool) -> None:
    """From edge to edge, to the nearest pin that there is."""
    assert is_near_pin(ROW, Point(inch(x), inch(y)), inch("3/16")) is near


eighths = st.integers(0, 40).map(lambda n: n * INCH / 8)


@st.composite
def _sites(draw: st.DrawFn) -> Site:
    """Low boxes, so that places run out; pins, rounds and frames in the way."""
    width = draw(st.integers(8, 40)) * INCH / 4
    box = Box(
        width=width,
        height=draw(st.integers(2, 24)) * INCH / 4,
        front_thickness=inch("3/4"),
        rise=inch("1/2"),
        slide=draw(st.sampled_from([None, "bottom", "side", "under"])),
        slide_width=inch("1 3/4"),
        slide_height=inch("1/2"),
        shelf_pins=tuple(
            ShelfPins(draw(eighths), draw(eighths), inch("1"), draw(st.integers(1, 6)), inch("1/4"))
            for _ in range(draw(st.integers(0, 2)))
        ),
    )
    front = replace(
        PLAIN_FRONT,
        width=width + draw(st.integers(-8, 24)) * INCH / 8,
        height=box.height + draw(st.integers(-8, 24)) * INCH / 8,
        build=draw(st.sampled_from(["slab", "five-piece"])),
        frame=Sides(*(draw(st.integers(4, 24)) * INCH / 8 for _ in range(4))),
    )
    rounds = tuple(
        Round(draw(eighths), draw(eighths), draw(st.sampled_from([inch("3/16"), Fraction(35)])))
        for _ in range(draw(st.integers(0, 2)))
    )
    side, jig = draw(st.integers(-8, 12)) * INCH / 8, draw(st.integers(-8, 12)) * INCH / 8
    return Site(box, front, side, jig, rounds, hole_spans(box, FLOOR, PRACTICE), PRACTICE)


def _allowed(site: Site, x: Mm, y: Mm) -> bool:
    """The rule in its own words, for a hole's centre in the box front's places."""
    edge, radius, clear = inch("3/8"), inch("1/8"), inch("3/16")
    box, front = site.box, site.front
    beside, over = inch("1 1/8"), inch("3/4")  # 3/4 + 1/4 + 1/8 in; 1/2 + 1/4 in
    in_box = beside <= x <= box.width - beside and over <= y <= box.height - edge
    fx, fy = x + site.side_offset, y + site.jig_thickness
    in_front = edge <= fx <= front.width - edge and edge <= fy <= front.height - edge
    frame, right, top = front.frame, front.width - fx, front.height - fy
    in_stile = fx <= frame.left - edge or right <= frame.right - edge
    in_member = in_stile or fy <= frame.bottom - edge or top <= frame.top - edge
    pins = [
        (p.x, p.y + n * p.pitch, p.diameter / 2) for p in box.shelf_pins for n in range(p.count)
    ]
    rounds = [*pins, *((r.x, r.y, r.diameter / 2) for r in site.rounds)]
    apart = all((x - cx) ** 2 + (y - cy) ** 2 >= (radius + clear + r) ** 2 for cx, cy, r in rounds)
    return in_box and in_front and apart and (front.build == "slab" or in_member)


@LAW
@given(_sites())
def test_every_hole_obeys_every_constraint(site: Site) -> None:
    """In the box, in the front's solid wood, clear of pins, knob and bores, and of each other."""
    found = mounting_holes(site, STEP)

    for hole in found:
        assert _allowed(site, hole.box_x, hole.box_y)
        assert hole.front_x == hole.box_x + site.side_offset
        assert hole.front_y == hole.box_y + site.jig_thickness
    for index, one in enumerate(found):
        for other in found[index + 1 :]:
            apart = (one.box_x - other.box_x) ** 2 + (one.box_y - other.box_y) ** 2
            assert apart >= inch("3/4") ** 2


def _inwards(site: Site) -> dict[bool, tuple[tuple[Mm, Mm, Mm], tuple[Mm, Mm, Mm]]]:
    """Least, wished and most across and along, of low and of high holes, in the rule's own words.

    3/4 in from hole to hole; none high where two do not go above each other.
    """
    box, half = site.box, inch("3/8")
    across = _wished(inch("1 1/8"), box.width / 2 - half, inch("1 1/2"))
    between = max(box.height / 2, inch("3/4") + half)
    high = box.height - between - half
    if high < half:
        low = _wished(inch("3/4"), box.height - half, box.height / 2)
        return {False: (across, low)}
    low = _wished(inch("3/4"), between - half, inch("1 1/2"))
    return {False: (across, low), True: (across, _wished(half, high, inch("1 1/2")))}


def _wished(least: Mm, most: Mm, wish: Mm) -> tuple[Mm, Mm, Mm]:
    return least, min(max(wish, least), most), most


def _least_move(
    site: Site, spans: tuple[tuple[Mm, Mm, Mm], tuple[Mm, Mm, Mm]], *, right: bool, top: bool
) -> Mm | None:
    """The square of the shortest way, in steps, to a place that is allowed; by trying all."""
    box, (across, along) = site.box, (spans[0][1], spans[1][1])
    reach = [
        range(-int((wish - least) // STEP), int((most - wish) // STEP) + 1) if least <= most else ()
        for least, wish, most in spans
    ]
    for far, i, j in sorted((i * i + j * j, i, j) for i, j in product(*reach)):
        inward, up = across + i * STEP, along + j * STEP
        x, y = box.width - inward if right else inward, box.height - up if top else up
        if _allowed(site, x, y):
            return Fraction(far)
    return None


@settings(LAW, max_examples=25)
@given(_sites())
def test_moved_as_little_as_may_be(site: Site) -> None:
    """Against every place that the corner leaves on the same grid."""
    box, inwards = site.box, _inwards(site)
    holes = mounting_holes(site, STEP)
    low_box = True not in inwards
    found = {
        (hole.box_x > box.width / 2, not low_box and hole.box_y > _between(site)): hole
        for hole in holes
    }

    assert len(found) == len(holes)
    for right, top in product((False, True), inwards):
        moved, hole = None, found.get((right, top))
        if hole is not None:
            inward = box.width - hole.box_x if right else hole.box_x
            up = box.height - hole.box_y if top else hole.box_y
            (_, wide, _), (_, tall, _) = inwards[top]
            moved = ((inward - wide) / STEP) ** 2 + ((up - tall) / STEP) ** 2
        assert moved == _least_move(site, inwards[top], right=right, top=top)


def _between(site: Site) -> Mm:
    return max(site.box.height / 2, inch("1 1/8"))

"""Fronts at the limits of their rules, worked by hand: common practice, no source."""

from dataclasses import replace

import pytest

from fronts.rules.kitchen import FrontFacts, Measured
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Reveal, Standard
from tests.rules.small_kitchens import (
    all_round,
    cabinet,
    codes_of,
    inch,
    kitchen,
    only_front,
    opening,
)

INSET = Standard(mount="inset", inset_gap=all_round("3/32"))
TAPER = Measured(width_top=inch("15"), width_bottom=inch("15 1/8"))


def test_fronts_meet_over_the_member_that_they_share_in_whatever_order_they_were_entered() -> None:
    """Three openings in a row, 2 in apart: 1/8 in stays between fronts, 1/4 in at the ends."""
    standard = Standard(reveal=Reveal(inch("1/8"), all_round("1/4")))
    row = [
        opening("fixed", label=label, x=inch(x), width=inch("10"))
        for label, x in (("a", "1 1/2"), ("b", "13 1/2"), ("c", "25 1/2"))
    ]
    for openings in (row, row[::-1], [row[1], row[2], row[0]]):
        of = kitchen(cabinet(*openings, width=inch("37")), standard=standard)
        laps = {
            front.label: (front.edges.left.overlay, front.edges.right.overlay)
            for front in schedule(of).fronts
        }

        assert laps == {
            "B1.a": (inch("1 1/4"), inch("15/16")),
            "B1.b": (inch("15/16"), inch("15/16")),
            "B1.c": (inch("15/16"), inch("1 1/4")),
        }


WIDTHS = [
    ("over the greatest", "15 1/4", "1/16"),
    ("as wide as the greatest", "15 1/8", "1/16"),
    ("between least and greatest", "15 1/16", "1/32"),
    ("as wide as the least", "15", "0"),
]


@pytest.mark.parametrize(
    ("width", "laps"), [row[1:] for row in WIDTHS], ids=[row[0] for row in WIDTHS]
)
def test_a_front_goes_by_the_least_width_unless_it_laps_the_greatest(width: str, laps: str) -> None:
    """An opening of 15 in at the top, 15 1/8 at the bottom."""
    wish = FrontFacts(width=inch(width), height=inch("28"))
    front = only_front(kitchen(cabinet(opening(measured=TAPER, front=wish))))

    assert front.edges.left.overlay == inch(laps)


def test_a_pair_as_wide_as_the_greatest_width_goes_by_the_least() -> None:
    """Two leaves of 7 1/2 in with 1/8 between come to 15 1/8."""
    leaf = FrontFacts(width=inch("7 1/2"), height=inch("28"))
    of = kitchen(cabinet(replace(opening("pair"), fronts=(leaf, leaf), measured=TAPER)))

    assert schedule(of).fronts[0].edges.left.overlay == inch("1/16")


def test_the_widest_front_of_a_stack_decides() -> None:
    """One that laps the greatest width, one that lies between: both are centred on it."""
    stack = opening("drawers", count=2, measured=TAPER)
    wide, narrow = (replace(stack.fronts[0], width=inch(each)) for each in ("16 1/8", "15 1/16"))
    of = kitchen(cabinet(replace(stack, fronts=(wide, narrow))))

    assert [front.edges.left.overlay for front in schedule(of).fronts] == [
        inch("1/2"), inch("-1/32"),
    ]  # fmt: skip


def test_one_new_leaf_wants_a_rule() -> None:
    """The other exists: of that alone nobody need say how far it laps."""
    there = FrontFacts(width=inch("7"), height=inch("28"))
    pair = replace(opening("pair"), fronts=(there, FrontFacts()))

    assert "no-overlay-rule" in codes_of(kitchen(cabinet(pair), standard=Standard()))


SHARES = [("1/64 in left", "28 23/64", True), ("nothing left", "28 3/8", False)]


@pytest.mark.parametrize(("top", "room"), [row[1:] for row in SHARES], ids=[r[0] for r in SHARES])
def test_any_height_is_room_for_a_front(top: str, room: bool) -> None:
    """28 1/2 in less 1/8 between two, of which one has a height of its own."""
    stack = opening("drawers", count=2, heights=(inch(top), None))
    of = kitchen(cabinet(stack), step=inch("1/64"))

    assert ("no-room-for-front" not in codes_of(of)) is room


def test_leaves_of_a_pair_stay_equal() -> None:
    """33 15/16 in for two is a step too much: neither leaf gets it, it comes off the edges."""
    wide = cabinet(opening("pair", width=inch("33 1/16")), width=inch("36 1/16"))
    left, right = schedule(kitchen(wide)).fronts

    assert left.width == right.width == inch("16 15/16")
    assert left.edges.left.overlay == right.edges.right.overlay == inch("15/32")


def test_overlays_are_told_towards_the_openings_edges_only() -> None:
    """Between the leaves of a pair, and between drawer fronts, there is a gap instead."""
    pair = schedule(kitchen(cabinet(opening("pair")))).fronts
    stack = schedule(kitchen(cabinet(opening("drawers", count=3)))).fronts

    assert [
        [side for side in ("left", "right", "top", "bottom") if front.edges[side].overlay is None]
        for front in (*pair, *stack)
    ] == [["right"], ["left"], ["bottom"], ["top", "bottom"], ["top"]]


PLANES = [
    ("laps all round", "16", "28 1/2", "overlay"),
    ("inside upwards", "16", "27", "inset"),
    ("inside across", "14 1/2", "28 1/2", "inset"),
    ("flush", "15", "27 1/2", "overlay"),
]


@pytest.mark.parametrize("standard", [INSET, Standard(overlay=all_round("1/2"))], ids=["in", "out"])
@pytest.mark.parametrize(
    ("width", "height", "plane"), [row[1:] for row in PLANES], ids=[row[0] for row in PLANES]
)
def test_a_front_that_exists_lies_where_its_size_puts_it(
    standard: Standard, width: str, height: str, plane: str
) -> None:
    """Whatever new fronts do in this kitchen."""
    wish = FrontFacts(width=inch(width), height=inch(height))

    assert only_front(kitchen(cabinet(opening(front=wish)), standard=standard)).plane == plane

"""Boxes to be made: their size for the slides of a shop.

Figures of slides and room: common practice, no source; by hand from the opening's sizes.
"""

from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest

from fronts.rules.box_facts import BoxesMadeOf
from fronts.rules.kitchen import Kitchen, Measured
from fronts.rules.lengths import Mm
from fronts.rules.practice import POUND
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases_boxes import SIDE, UNDER, to_make, with_slides
from tests.rules.made_boxes import outside
from tests.rules.small_kitchens import all_round, findings_of, inch, inches, kitchen

INSET = Standard(mount="inset", inset_gap=all_round("1/8"))
LISTED = BoxesMadeOf(heights=inches("3", "4", "6", "8", "10"))

# An opening 15 × 27 1/2 in in a cabinet 24 in deep with a back of 1/4 in: 23 1/4 in for a slide.
SIZES: list[tuple[str, Kitchen, tuple[str, str, str, str]]] = [
    ("side: 1/2 in all round", to_make("side"), ("14", "26 1/2", "20", "1/2")),
    ("bottom: 3/16 in a side", to_make("bottom", load_kg=Fraction(5)),
     ("14 5/8", "26 1/2", "18", "1/2")),
    ("the shop's first kind", to_make(), ("14", "26 1/2", "20", "1/2")),
    ("the highest of the list that goes in", to_make("side", made_of=LISTED, closed_by="drawer",
     height=inch("10 7/8")), ("14", "8", "20", "1/2")),
    ("a hair more", to_make("side", made_of=LISTED, closed_by="drawer", height=inch("11")),
     ("14", "10", "20", "1/2")),
    ("a pull-out is no drawer of the list", to_make("side", made_of=LISTED),
     ("14", "26 1/2", "20", "1/2")),
    ("down to the step", to_make("side", width=inch("15 1/32"), height=inch("27 17/32")),
     ("14", "26 1/2", "20", "1/2")),
    ("the least of what was measured", to_make("side", measured=Measured(
        width_top=inch("15 1/4"), width_bottom=inch("14 3/4"), height_left=inch("27"))),
     ("13 3/4", "26", "20", "1/2")),
    ("inset: from the front's edge, and less deep", to_make("side", standard=INSET),
     ("14", "26 1/4", "20", "5/8")),
]  # fmt: skip


@pytest.mark.parametrize(("of", "size"), [row[1:] for row in SIZES], ids=[row[0] for row in SIZES])
def test_outside_sizes(of: Kitchen, size: tuple[str, str, str, str]) -> None:
    """Width and height as the slide asks, length the longest slide's, rise from the room."""
    assert outside(of) == inches(*size)


def test_under_slides_ask_for_the_inside_width_exactly() -> None:
    """15 in - 42 mm + 2 × 1/2 in is 364.4 mm: 1/16 in steps would lose more than 1/32 in."""
    width, height, depth, rise = outside(to_make("under"))

    assert (width, rise, depth) == (Mm("364.4"), inch("9/16"), inch("21"))
    assert height == inch("26 11/16")


def test_metric_shops_have_metric_figures() -> None:
    """12.7 mm beside, 12 below and above, back 6 and 12 behind: common practice, no source."""
    of = to_make("side", width=Mm(400), height=Mm(700))
    of = replace(of, job=replace(of.job, unit="mm", step=Mm(1)))
    of = with_slides(of, replace(SIDE, lengths=(Mm(500), Mm(591), Mm(592))))
    (cabinet,) = of.cabinets

    (box,) = schedule(replace(of, cabinets=(replace(cabinet, depth=Mm(609)),))).boxes

    assert (box.width, box.height, box.rise) == (Mm(374), Mm(676), Mm(12))
    assert (box.depth, box.side_thickness) == (Mm(591), Mm(12))


THICKNESS_AND_BACK: list[tuple[str, Standard, str]] = [
    ("an overlay front takes nothing", Standard(back=inch("1 1/2")), "22"),
    ("a thicker back", Standard(back=inch("1 17/32")), "20"),
    ("an inset front its thickness", replace(INSET, back=inch("3/4")), "22"),
    ("and its back", replace(INSET, back=inch("25/32")), "20"),
]


@pytest.mark.parametrize(
    ("standard", "length"), [r[1:] for r in THICKNESS_AND_BACK],
    ids=[r[0] for r in THICKNESS_AND_BACK],
)  # fmt: skip
def test_how_deep_a_cabinet_is(standard: Standard, length: str) -> None:
    """24 in less back, front where it lies inset, and 1/2 in behind the slide."""
    slides = replace(SIDE, lengths=inches("20", "22"))

    (box,) = schedule(with_slides(to_make("side", standard=standard), slides)).boxes

    assert box.slide_length == inch(length)


def test_the_first_in_the_shops_order_that_carries_it() -> None:
    """A light one comes first; one with 70 lb in it wants the next that is strong enough."""
    light = replace(SIDE, code="S-L", load_kg=50 * POUND)
    heavy = replace(SIDE, code="S-H", load_kg=150 * POUND)
    strongest = replace(SIDE, code="S-X", load_kg=200 * POUND)

    def chosen(pounds: int) -> str | None:
        of = with_slides(to_make("side", load_kg=pounds * POUND), light, heavy, strongest)
        return schedule(of).boxes[0].slide

    assert [chosen(10), chosen(70)] == ["S-L", "S-H"]


def test_want_of_room_is_said_before_want_of_a_slide() -> None:
    """One item leaves no room and the other is too long: the room is what to look at."""
    long = replace(UNDER, kind="side", code="S-2", lengths=inches("30"))

    codes = [each.code for each in schedule(
        with_slides(to_make("side", width=inch("3")), long, SIDE)).findings]  # fmt: skip

    assert "no-room-for-box" in codes
    assert "no-slide-fits" not in codes


def test_no_item_of_the_kind() -> None:
    """A shop whose list has no bottom slides makes no box for one."""
    (finding,) = findings_of(with_slides(to_make("bottom"), SIDE), "no-slide-fits")

    assert "bottom slide" in finding.message


def test_a_shop_without_a_list_has_plain_slides() -> None:
    """The lengths of its stock and its load classes, the lowest that carries the box."""
    of = to_make()
    plain = schedule(kitchen(*of.cabinets))

    (box,) = plain.boxes

    assert (box.slide, box.slide_length) == ("side-2", inch("22"))
    assert box.class_kg == 75 * POUND


def test_a_made_box_is_fixed_as_one_that_was_measured() -> None:
    """Its fitting is that of a found box of its sizes."""
    made: Any = to_make("side")
    (fitting,) = schedule(made).fittings

    assert (fitting.side_offset, fitting.jig_thickness) == (inch("1"), inch("1"))
    assert fitting.jig_length == inch("14")
    assert len(fitting.holes) == 4


def test_hardware_names_the_slide() -> None:
    """One line a real thing, with its code beside it."""
    needs = {each.code: each for each in schedule(to_make("side")).hardware if each.code}

    assert needs["S-1"].item == "S-1 side slides, pair, 20 in, 100 lb"
    assert needs["S-1"].need == 1

"""A front from its back: mirrored, holes where the fitting says, figures that close."""

from dataclasses import replace

import pytest

from fronts.drawings.front_back import front_from_back
from fronts.drawings.geometry import Area
from fronts.figures.boxes import mirrored
from fronts.rules.fitting_results import Fitting
from fronts.rules.lengths import show
from fronts.rules.results import Front
from fronts.rules.schedule import schedule
from tests.drawings.kitchens import BORES, demo, pull_out
from tests.drawings.reading import SVG, meetings, parsed, px, rects, texts
from tests.rules.small_kitchens import kitchen


def off_centre() -> tuple[Front, Fitting]:
    """A pull-out whose box stands nearer to the left."""
    worked_out = schedule(kitchen(pull_out()))
    (front,), (fitting,) = worked_out.fronts, worked_out.fittings
    assert fitting.side_offset < fitting.right_offset
    return front, fitting


def circles(svg: str, kind: str) -> list[tuple[int, int]]:
    """The middles of a line kind's circles."""
    return [
        (px(each.attrib["cx"]), px(each.attrib["cy"]))
        for each in parsed(svg).iter(f"{SVG}circle")
        if each.attrib["class"] == f"line-{kind}"
    ]


def test_left_and_right_change_over() -> None:
    """Seen from the back, the box's wide side and every hole lie where they are mirrored."""
    front, fitting = off_centre()
    svg = front_from_back(front, fitting, BORES, unit="in", room=(700_00, 700_00))
    (outline,), (box,) = rects(svg, "front"), rects(svg, "box")
    scale = outline.width / float(front.width)
    assert box.left - outline.left == pytest.approx(float(fitting.right_offset) * scale, abs=2)
    assert outline.right - box.right == pytest.approx(float(fitting.side_offset) * scale, abs=2)
    assert outline.bottom - box.bottom == pytest.approx(float(fitting.jig_thickness) * scale, abs=2)
    drawn = circles(svg, "front")
    assert len(drawn) == len(fitting.holes) == 4
    for (x, y), hole in zip(drawn, fitting.holes, strict=True):
        assert x - outline.left == pytest.approx(float(front.width - hole.front_x) * scale, abs=2)
        assert outline.bottom - y == pytest.approx(float(hole.front_y) * scale, abs=2)


def test_holes_are_dimensioned_from_the_front_and_from_the_box() -> None:
    """Below from the front's edge as it lies there, above from the box's corner."""
    front, fitting = off_centre()
    svg = front_from_back(front, fitting, BORES, unit="in", room=(700_00, 700_00))
    (outline,) = rects(svg, "front")
    below = [each.text for each in texts(svg) if each.area.top > outline.bottom]
    above = [each.text for each in texts(svg) if each.area.bottom < outline.top]
    first = min(mirrored(front, each.front_x) for each in fitting.holes)
    assert show(first, "in") in below
    assert show(fitting.right_offset, "in") in above
    assert show(min(each.box_x for each in fitting.holes), "in") in above


@pytest.mark.parametrize("hinged", ["left", "right"])
def test_cups_lie_on_the_hinge_side_from_behind(hinged: str) -> None:
    """A door hinged left has its cups at the right when it lies face down."""
    worked_out = demo()[1]
    door = next(each for each in worked_out.fronts if each.hinged == hinged and each.hinge_centres)
    bare = replace(door, handles=(), bores=())
    svg = front_from_back(bare, None, BORES, unit="in")
    (outline,) = rects(svg, "front")
    cups = circles(svg, "cabinet")
    assert len(cups) == door.hinges
    for x, _ in cups:
        assert (x > outline.middle[0]) == (hinged == "left")


@pytest.mark.parametrize("room", [(334_00, 300_00), (206_00, 240_00), (334_00, 138_00)])
def test_no_text_stands_on_another(room: tuple[int, int]) -> None:
    """Every front of the demo kitchen, in the rooms that the sheets give."""
    worked_out = demo()[1]
    for front in worked_out.fronts:
        fitting = worked_out.fitting(front.label)
        svg = front_from_back(front, fitting, BORES, unit="in", room=room)
        assert (front.label, meetings(svg)) == (front.label, [])


def test_a_five_piece_front_shows_its_stiles_and_rails() -> None:
    """Its frame is drawn, changed over, so that one sees whether a hole is in solid wood."""
    worked_out = demo()[1]
    five = next(each for each in worked_out.fronts if each.build == "five-piece")
    narrow = five.frame.left / 2
    five = replace(five, frame=replace(five.frame, left=narrow))
    svg = front_from_back(replace(five, handles=(), hinge_centres=()), None, BORES, unit="in")
    (outline,) = rects(svg, "front")
    scale = outline.width / float(five.width)
    lines = [
        Area(*(px(each.attrib[key]) for key in ("x1", "y1", "x2", "y2")))
        for each in parsed(svg).iter(f"{SVG}line")
        if each.attrib["class"] == "line-cabinet"
    ]
    upright = sorted(each.left - outline.left for each in lines
                     if each.width == 0 and each.height != 0)  # fmt: skip
    assert upright[0] == pytest.approx(float(2 * narrow) * scale, abs=2)
    assert upright[-1] == pytest.approx(float(five.width - narrow) * scale, abs=2)

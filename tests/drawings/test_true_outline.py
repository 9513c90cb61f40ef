"""An opening that tapers or leans, drawn and said with what there is at both ends of each side."""

from xml.etree import ElementTree

import pytest

from fronts.drawings.cabinet import cabinet_elevation
from fronts.figures.opening_ends import opening_ends
from fronts.rules.kitchen import Kitchen, Measured
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.drawings.reading import SVG, meetings, parsed, px, rects, texts
from tests.rules.small_kitchens import HALF_LAP, all_round, cabinet, inch, kitchen, opening

INSET = Standard(mount="inset", inset_gap=all_round("1/8"))
ROOM = (400_00, 500_00)


def _measured(standard: Standard, **taken: str) -> Kitchen:
    sizes = Measured(**{name: inch(text) for name, text in taken.items()})
    return kitchen(cabinet(opening(measured=sizes)), standard=standard)


def _drawn(of: Kitchen) -> str:
    return cabinet_elevation(schedule(of), of, "B1", unit="in", room=ROOM)


def _corners(svg: str) -> list[tuple[int, int]]:
    """Of the opening: from its upper left one on, clockwise."""
    (outline,) = [each for each in parsed(svg).iter(f"{SVG}polyline") if _is_opening(each)]
    places = (place.split(",") for place in outline.attrib["points"].split())
    return [(px(x), px(y)) for x, y in places][:4]


def _is_opening(element: ElementTree.Element) -> bool:
    return element.attrib["class"] == "line-opening"


def test_an_inset_fronts_opening_is_wider_where_it_is_wider() -> None:
    """15 in at the top and 15 1/4 at the bottom: 1/8 and 1/4 beside a front of 14 3/4."""
    svg = _drawn(_measured(INSET, width_top="15", width_bottom="15 1/4"))
    (front,) = rects(svg, "front")
    upper_left, upper_right, lower_right, lower_left = _corners(svg)

    above, below = front.left - upper_left[0], front.left - lower_left[0]
    assert below == pytest.approx(2 * above, abs=2)
    assert upper_right[0] - front.right == above
    assert lower_right[0] - front.right == below
    assert upper_left[1] < front.top
    assert lower_left[1] > front.bottom
    assert {"1/8", "1/4"} <= {each.text for each in texts(svg)}
    assert meetings(svg) == []


def test_a_front_that_would_not_go_in_is_drawn_touching() -> None:
    """14 1/2 at the top under a front for 15: the opening's corners lie behind the front."""
    svg = _drawn(_measured(INSET, diagonal_1="32", diagonal_2="31", width_top="15"))
    (front,) = rects(svg, "stop")
    corners = _corners(svg)
    assert corners[0][0] > front.left
    assert corners[1][0] > front.right


def test_laps_are_drawn_inside_the_front() -> None:
    """27 at the left and 27 1/2 at the right: it laps the left end by 1/4 in more."""
    svg = _drawn(_measured(HALF_LAP, height_left="27", height_right="27 1/2"))
    (front,) = rects(svg, "front")
    upper_left, upper_right, lower_right, lower_left = _corners(svg)
    assert front.top < upper_right[1] < upper_left[1]
    assert lower_left[1] < lower_right[1] < front.bottom
    assert front.left < upper_left[0] == lower_left[0]
    assert {"3/4", "1/2"} <= {each.text for each in texts(svg)}


def test_all_eight_are_said_in_words() -> None:
    """Beside the drawing, each side with both its ends."""
    of = _measured(HALF_LAP, height_left="27", height_right="27 1/2")
    worked_out = schedule(of)
    assert opening_ends(worked_out, worked_out.fronts, "in") == [
        (
            "B1.a",
            "laps left +1/2 at the top, +1/2 at the bottom; right +1/2 at the top, +1/2 at the "
            "bottom; top +3/4 at the left, +1/2 at the right; bottom +3/4 at the left, +1/2 at "
            "the right",
        )
    ]


def test_a_true_opening_is_drawn_as_it_is() -> None:
    """Nothing is exaggerated where nothing differs."""
    of = _measured(INSET, width_top="15", width_bottom="15")
    assert rects(_drawn(of), "opening")
    assert opening_ends(schedule(of), schedule(of).fronts, "in") == []

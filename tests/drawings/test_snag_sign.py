"""The flag of open snags keeps clear of what is there, and of what is written after it."""

from collections.abc import Mapping

import pytest

from fronts.drawings.drawing import Drawing, text_area
from fronts.drawings.elevation import wall_elevation
from fronts.drawings.geometry import Area
from fronts.drawings.snag_sign import draw_snag_sign
from fronts.rules.schedule import schedule
from fronts.rules.snags import OpenSnags
from tests.kitchen_files import demo_kitchen

FRONT = Area(0, 0, 100_00, 80_00)


@pytest.mark.parametrize(
    ("taken", "x"),
    [
        ([], "79.5"),
        ([Area(70_00, 0, 100_00, 20_00)], "0"),
    ],
)
def test_it_stands_in_a_free_corner(taken: list[Area], x: str) -> None:
    """The upper right one, else the next that is free."""
    drawing = Drawing(taken=[*taken])
    draw_snag_sign(drawing, FRONT, OpenSnags(2))
    pole = drawing.parts[0]
    left = float(pole.split('x1="')[1].split('"')[0])
    assert left == 0 if x == "0" else left > 70
    assert not drawing.free(text_area(round(left * 100) + 8_00, 8_00, "1", 11_00))


def test_where_there_is_no_room_there_is_none() -> None:
    """What is on the front is said in words all the same."""
    drawing = Drawing()
    draw_snag_sign(drawing, Area(0, 0, 10_00, 80_00), OpenSnags(2))
    assert drawing.parts == []


def test_a_walls_drawing_says_it_in_words_and_by_a_number() -> None:
    """On a front within its link, on a cabinet beside its name; nothing where none is open."""
    kitchen = demo_kitchen()
    found = schedule(kitchen)
    front = next(each for each in found.fronts if each.wall == "North")
    snags = {front.label: OpenSnags(3, 1), front.cabinet: OpenSnags(7)}

    def drawn(shown: Mapping[str, OpenSnags]) -> str:
        return wall_elevation(
            found, kitchen, "North", unit="in", links=lambda label: f"#{label}", snags=shown
        )

    svg = drawn(snags)
    assert ", 3 snags, 1 late" in svg
    assert svg.count("drawn-snags") == 2
    assert "drawn-snags" not in drawn({})

"""One cabinet's elevation: members, openings, fronts, gaps, within its room."""

import pytest

from fronts.drawings.cabinet import cabinet_elevation
from fronts.rules.lengths import show
from fronts.rules.schedule import schedule
from tests.drawings.kitchens import HOSTILE, demo, demo_cabinets, hostile
from tests.drawings.reading import meetings, parsed, px, rects, texts
from tests.rules.small_kitchens import cabinet, kitchen, opening


@pytest.mark.parametrize("label", demo_cabinets())
@pytest.mark.parametrize("room", [(334_00, 300_00), (206_00, 240_00), (520_00, 460_00)])
def test_no_text_stands_on_another(label: str, room: tuple[int, int]) -> None:
    """In the rooms that the sheets and the page give, every figure keeps clear of the rest."""
    of, worked_out = demo()
    assert meetings(cabinet_elevation(worked_out, of, label, unit="in", room=room)) == []


@pytest.mark.parametrize("label", demo_cabinets())
def test_it_stays_in_its_room(label: str) -> None:
    """The drawing with all its dimensions is no larger than what it was given."""
    of, worked_out = demo()
    svg = cabinet_elevation(worked_out, of, label, unit="in", room=(334_00, 300_00))
    root = parsed(svg)
    assert px(root.attrib["width"]) <= 334_00
    assert px(root.attrib["height"]) <= 300_00
    fronts = [each for each in worked_out.fronts if each.cabinet == label]
    drawn = rects(svg, "front") + rects(svg, "stop")
    assert len(drawn) == len(fronts)


def test_members_opening_front_and_laps_are_dimensioned() -> None:
    """A door 16 × 28 1/2 on an opening 15 × 27 1/2 between stiles of 1 1/2, lapping 1/2."""
    plain = kitchen(cabinet(opening()))
    said = [each.text for each in texts(cabinet_elevation(schedule(plain), plain, "B1", unit="in"))]
    for figure in ("1 1/2", "15", "27 1/2", "16", "28 1/2", "1/2", "B1.a"):
        assert figure in said
    assert said.count("1/2") == 4


def test_an_inset_door_shows_its_gaps() -> None:
    """Inside its opening the figure is the gap, on all four sides."""
    of, worked_out = demo()
    front = next(each for each in worked_out.fronts if each.plane == "inset")
    said = [
        each.text for each in texts(cabinet_elevation(worked_out, of, front.cabinet, unit="in"))
    ]
    overlay = front.edges.left.overlay
    assert overlay is not None
    assert show(-overlay, "in") in said


def test_hostile_labels_stay_text() -> None:
    """A cabinet named with markup is drawn like any other."""
    bad = hostile()
    for label in (HOSTILE, "W" * 40):
        svg = cabinet_elevation(schedule(bad), bad, label, unit="in")
        parsed(svg)
        assert "<script" not in svg
        assert meetings(svg) == []

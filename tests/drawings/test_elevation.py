"""The wall elevation: to scale, every front, findings marked, nothing on top of anything."""

import re

import pytest
from django.test import override_settings
from django.utils import translation

from fronts.drawings.drawing import PAPER
from fronts.drawings.elevation import wall_elevation
from fronts.drawings.svg import safe_id
from fronts.rules.kinds import name_of
from fronts.rules.lengths import show
from fronts.rules.schedule import schedule
from fronts.rules.wall_facts import Thing
from tests.drawings.kitchens import HOSTILE, demo, demo_walls, hostile, too_close
from tests.drawings.reading import SVG, meetings, parsed, rects, texts
from tests.rules.small_kitchens import cabinet, inch, kitchen, opening


@pytest.mark.parametrize("wall", demo_walls())
def test_no_text_stands_on_another(wall: str) -> None:
    """Labels, sizes, gaps and dimensions of a real wall keep clear of each other."""
    kitchen, worked_out = demo()
    assert meetings(wall_elevation(worked_out, kitchen, wall, unit="in")) == []


@pytest.mark.parametrize("wall", demo_walls())
def test_every_front_of_the_wall_is_there_once(wall: str) -> None:
    """Each front has its own group, and a link that says what it is."""
    kitchen, worked_out = demo()
    svg = wall_elevation(
        worked_out, kitchen, wall, unit="in", links=lambda label: f"/fronts/{label}"
    )
    groups = list(parsed(svg).iter(f"{SVG}g"))
    fronts = [each for each in worked_out.fronts if each.wall == wall]
    assert [each.attrib["id"] for each in groups] == [
        safe_id("front", each.label) for each in fronts
    ]
    for group, front in zip(groups, fronts, strict=True):
        (link,) = group.iter(f"{SVG}a")
        assert link.attrib["href"] == f"/fronts/{front.label}"
        size = f"{show(front.width, 'in')} × {show(front.height, 'in')}"
        assert link.attrib["aria-label"].startswith(f"{front.label} {size} {name_of(front.kind)}")


def test_fronts_are_drawn_to_scale_and_in_place() -> None:
    """Widths, heights and places are those of the schedule at one scale, to 1/50 px."""
    kitchen, worked_out = demo()
    wall = demo_walls()[0]
    fronts = [each for each in worked_out.fronts if each.wall == wall]
    drawn = rects(wall_elevation(worked_out, kitchen, wall, unit="in"), "front")
    assert len(drawn) == len(fronts)
    scale = (drawn[-1].right - drawn[0].left) / float(fronts[-1].right - fronts[0].x)
    for front, area in zip(fronts, drawn, strict=True):
        assert area.left - drawn[0].left == pytest.approx(
            float(front.x - fronts[0].x) * scale, abs=2
        )
        assert area.width == pytest.approx(float(front.width) * scale, abs=2)
        assert area.height == pytest.approx(float(front.height) * scale, abs=2)
        assert drawn[0].bottom - area.bottom == pytest.approx(
            float(front.y - fronts[0].y) * scale, abs=2
        )


def test_a_stop_is_marked_by_more_than_colour() -> None:
    """A front that must not be cut has a heavy hatched frame, a sign, and says so."""
    trouble = too_close()
    worked_out = schedule(trouble)
    assert {each.code for each in worked_out.findings if each.level == "stop"}
    svg = wall_elevation(worked_out, trouble, "North", unit="in", links=lambda label: f"#{label}")
    assert len(rects(svg, "stop")) == 2
    hatches = [each for each in parsed(svg).iter(f"{SVG}path")
               if each.attrib["class"] == "line-hatch"]  # fmt: skip
    assert len(hatches) == 2
    assert all(each.attrib["d"].count("M") > 10 for each in hatches)
    assert [each.text for each in texts(svg)].count("!") == 2
    assert svg.count("stop, do not cut") == 2
    sound = kitchen(cabinet(opening()))
    calm = wall_elevation(schedule(sound), sound, "North", unit="in")
    assert "line-hatch" not in calm
    assert "!" not in [each.text for each in texts(calm)]


def test_small_gaps_carry_their_figure() -> None:
    """The 1/8 in between a pair's leaves is dimensioned."""
    pair = kitchen(cabinet(opening("pair", hinged=None)))
    svg = wall_elevation(schedule(pair), pair, "North", unit="in")
    assert "1/8" in [each.text for each in texts(svg)]


def test_dimensions_below_add_up() -> None:
    """The cabinets' widths and the spaces between them, and the whole."""
    first = cabinet(opening())
    second = cabinet(opening(), label="B2", x=inch("21"))
    both = kitchen(first, second)
    said = [each.text for each in texts(wall_elevation(schedule(both), both, "North", unit="in"))]
    assert [said.count(each) for each in ("18", "3", "39")] == [2, 1, 1]


@pytest.mark.parametrize("hinged", ["left", "right"])
def test_the_hands_lines_meet_at_the_hinge_side(hinged: str) -> None:
    """Two dashed lines start in the middle of the side where the door is hinged."""
    sound = kitchen(cabinet(opening(hinged=hinged)))
    svg = wall_elevation(schedule(sound), sound, "North", unit="in")
    (area,) = rects(svg, "front")
    side = area.left if hinged == "left" else area.right
    lines = [each for each in parsed(svg).iter(f"{SVG}line") if each.attrib["class"] == "line-hand"]
    at_side = [each for each in lines if round(float(each.attrib["x1"]) * 100) == side]
    assert len(at_side) == 2
    assert all(round(float(each.attrib["y1"]) * 100) == area.middle[1] for each in at_side)
    assert all(each.attrib["stroke-dasharray"] for each in lines)


@pytest.mark.parametrize("language", ["en", "de", "fr"])
def test_geometry_is_the_same_in_every_language(language: str) -> None:
    """No language's decimal comma or thousands mark gets into a drawing."""
    kitchen, worked_out = demo()
    wall = demo_walls()[0]
    plain = wall_elevation(worked_out, kitchen, wall, unit="in", ink=PAPER)
    with override_settings(USE_THOUSAND_SEPARATOR=True), translation.override(language):
        assert wall_elevation(worked_out, kitchen, wall, unit="in", ink=PAPER) == plain


def test_hostile_labels_stay_text() -> None:
    """Whatever a label says, the drawing stays one picture with links of our own."""
    bad = hostile()
    svg = wall_elevation(schedule(bad), bad, HOSTILE, unit="in", links=lambda _: "/x/")
    names = {each.tag.removeprefix(SVG) for each in parsed(svg).iter()}
    assert "script" not in names
    assert names <= {
        "svg",
        "title",
        "g",
        "a",
        "rect",
        "line",
        "path",
        "polyline",
        "polygon",
        "circle",
        "text",
    }
    assert {each.attrib["href"] for each in parsed(svg).iter(f"{SVG}a")} == {"/x/"}
    assert meetings(svg) == []


def test_on_screen_the_page_gives_the_ink_and_on_paper_it_is_black() -> None:
    """Drawings follow the page's colour; the sheets' are black; neither needs a style attribute."""
    kitchen, worked_out = demo()
    wall = demo_walls()[0]
    screen = wall_elevation(worked_out, kitchen, wall, unit="in")
    paper = wall_elevation(worked_out, kitchen, wall, unit="in", ink=PAPER)
    assert set(re.findall(r' (?:stroke|fill)="([^"]+)"', screen)) == {"currentColor", "none"}
    assert set(re.findall(r' (?:stroke|fill)="([^"]+)"', paper)) == {"#000", "none"}
    assert " style=" not in screen + paper


def test_a_picture_has_a_name_and_links_are_reached() -> None:
    """Without links it is an image with a title; with links a group, so that they are read out."""
    kitchen, worked_out = demo()
    wall = demo_walls()[0]
    plain = parsed(wall_elevation(worked_out, kitchen, wall, unit="in"))
    linked = parsed(wall_elevation(worked_out, kitchen, wall, unit="in", links=lambda _: "#"))
    assert (plain.attrib["role"], linked.attrib["role"]) == ("img", "group")
    assert plain.findtext(f"{SVG}title") == f"Elevation of wall {wall}, sizes in inches"


def test_an_empty_wall_says_so() -> None:
    """A wall without cabinets is no empty picture."""
    nothing = kitchen()
    svg = wall_elevation(schedule(nothing), nothing, "North", unit="in")
    assert [each.text for each in texts(svg)] == ["No cabinets on this wall yet"]


def test_the_whole_run_is_dimensioned() -> None:
    """An appliance at its end and a filler before it count, as they do along the wall."""
    alone = cabinet(opening())
    things = [
        Thing("F", "filler", "North", inch("3"), after="B1"),
        Thing("R", "appliance", "North", inch("30"), after="F", height=inch("36")),
    ]
    whole = kitchen(alone, others=things)
    said = {each.text for each in texts(wall_elevation(schedule(whole), whole, "North", unit="in"))}
    assert {"18", "3", "30", "51"} <= said

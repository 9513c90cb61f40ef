"""How a fitting sheet uses its paper: few pages, all of them full, the cabinet large."""

import re
from collections import Counter
from functools import cache

import pytest

from fronts.drawings.geometry import Area
from fronts.figures.boxes import hole_places
from fronts.sheets import fitting
from fronts.sheets.pdf import PAPERS, Paper
from tests.drawings.kitchens import demo, demo_cabinets
from tests.drawings.reading import SVG, parsed, px, rects, texts
from tests.sheets.printed import demo_pages, demo_source

pytestmark = pytest.mark.slow

MOST_PAGES = 22
"""For the demo's nineteen cabinets that have fronts."""
LETTER_HIGH = 1056_00
"""Hundredths of a CSS pixel: 11 in of 96 (ANSI/ASME Y14.1 size A)."""
SEVEN_POINTS = 933
"""Hundredths of a CSS pixel: 7/72 of 96."""


def cabinet_of(page: str) -> str:
    """The cabinet that a page is for."""
    found = re.search(r"Fitting sheet (\S+)", page)
    assert found
    return found[1]


@cache
def drawings(label: str) -> tuple[str, ...]:
    """The drawings of a cabinet's sheet, in their order."""
    html = fitting.content(demo_source(), [label])
    return tuple(re.findall(r"<svg.*?</svg>", html, flags=re.DOTALL))


@pytest.mark.parametrize("paper", PAPERS)
def test_the_demo_takes_few_pages(paper: Paper) -> None:
    """A page a cabinet, and a second for few of them."""
    pages = Counter(cabinet_of(page) for page in demo_pages("fitting", paper))
    assert len(pages) == len(fitting.fitted_cabinets(demo_source()))
    assert pages.total() <= MOST_PAGES
    assert max(pages.values()) <= 2


@pytest.mark.parametrize("paper", PAPERS)
def test_no_page_is_nearly_empty(paper: Paper) -> None:
    """The first has the cabinet's drawing and room for its gaps, the last the order of work."""
    pages = demo_pages("fitting", paper)
    labels = [cabinet_of(page) for page in pages]
    for at, (label, page) in enumerate(zip(labels, pages, strict=True)):
        if labels.index(label) == at:
            assert f"{label} from the front" in page
            assert "Gap left" in page
        if at == len(pages) - 1 or labels[at + 1] != label:
            assert "Order of work" in page, label


def test_the_cabinet_fills_the_first_of_two_pages() -> None:
    """Its gaps can be read: P3's drawing has at least three fifths of its page's height."""
    svg = parsed(drawings("P3")[0])
    assert svg.attrib["aria-label"] == "Elevation of cabinet P3"
    assert px(svg.attrib["height"]) >= LETTER_HIGH * 3 // 5
    planned = {text.text for text in svg.iter(f"{SVG}text")}
    assert {"1/8", "3/32"} <= planned


@pytest.mark.parametrize("label", ["B4", "B5"])
def test_a_cabinet_with_doors_and_a_drawer_is_not_squeezed(label: str) -> None:
    """Its jig stands aside, so that it is drawn at least 1 1/2 in high on its one page."""
    elevation = drawings(label)[0]
    assert parsed(elevation).attrib["aria-label"] == f"Elevation of cabinet {label}"
    assert rects(elevation, "cabinet")[0].height >= 144_00


@pytest.mark.parametrize("label", demo_cabinets())
def test_every_text_of_a_drawing_can_be_read(label: str) -> None:
    """None is under 7 pt on paper."""
    for svg in drawings(label):
        for text in parsed(svg).iter(f"{SVG}text"):
            assert px(text.attrib["font-size"]) >= SEVEN_POINTS, text.text


def test_no_bore_is_drawn_through_a_name() -> None:
    """A bore's name stands clear of all bores, those that are drawn after its own too."""
    named = 0
    for svg in (each for label in demo_cabinets() for each in drawings(label)):
        bores = [Area(x, y, x, y).grown(2_00) for x, y in middles(svg)]
        for each in texts(svg):
            if each.text in {"knob", "pull", "cup", "old bore"}:
                named += 1
                assert not any(each.area.overlaps(bore) for bore in bores), each.text
    assert named


def middles(svg: str) -> list[tuple[int, int]]:
    """The middles of its circles."""
    found = parsed(svg).iter(f"{SVG}circle")
    return [(px(each.attrib["cx"]), px(each.attrib["cy"])) for each in found]


def test_every_jig_is_drawn() -> None:
    """Once on each sheet whose fronts need it, thick or thin."""
    for label in fitting.fitted_cabinets(demo_source()):
        fronts = {each.label for each in demo()[1].fronts_of(label)}
        jigs = [each for each in demo()[1].jigs if not fronts.isdisjoint(each.fronts)]
        drawn = [each for each in drawings(label) if 'drawing-jig"' in each]
        assert len(drawn) == len(jigs), label


def test_holes_bear_the_same_numbers_in_drawing_and_table() -> None:
    """Each hole of a back has the number that the table gives its corner."""
    of, worked_out = demo()
    for fit in worked_out.fittings:
        front = worked_out.front(fit.front)
        backs = [each for each in drawings(front.cabinet) if f"{fit.front} seen from" in each]
        (root,) = map(parsed, backs)
        places = hole_places(front, fit, of.job.unit)
        rings = [each for each in root.iter(f"{SVG}circle") if each.attrib["class"] == "line-front"]
        numbers = [each for each in root.iter(f"{SVG}text") if each.attrib["class"] == "drawn-hole"]
        assert [each.number for each in places] == [each.text for each in numbers], fit.front
        for number, ring in zip(numbers, rings, strict=True):
            away = [abs(px(number.attrib[text]) - px(ring.attrib[centre]))
                    for text, centre in (("x", "cx"), ("y", "cy"))]  # fmt: skip
            assert max(away) <= 25_00, (fit.front, number.text)

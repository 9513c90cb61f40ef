"""The one door to WeasyPrint: bundled files only, bundled fonts only, both papers."""

import io
from collections.abc import Iterator

import pytest
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]
from pypdf import PdfReader
from pypdf.generic import DictionaryObject

from fronts.sheets import fitting
from fronts.sheets.pdf import BUNDLED, PAPERS, Paper, is_bundled, render, unbroken
from fronts.sheets.registry import SHEETS
from tests.pdf_text import page_texts
from tests.sheets.printed import demo_pages, demo_pdf, demo_source

SIZES = {"letter": (612, 792), "a4": (595, 842)}
"""Points: ANSI/ASME Y14.1 size A, 8 1/2 × 11 in; ISO 216 A4, 210 × 297 mm."""


def inside(part: DictionaryObject, *keys: str) -> DictionaryObject:
    """The dictionary that the keys lead to."""
    for key in keys:
        found = part[key].get_object()
        assert isinstance(found, DictionaryObject)
        part = found
    return part


@pytest.mark.slow
@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", SHEETS)
def test_pages_are_of_the_paper_asked_for(name: str, paper: Paper) -> None:
    """Every page, but for elevations, which lie on their side."""
    for page in PdfReader(io.BytesIO(demo_pdf(name, paper))).pages:
        size = round(page.mediabox.width), round(page.mediabox.height)
        assert size in (SIZES[paper], SIZES[paper][::-1])


@pytest.mark.slow
@pytest.mark.parametrize("name", SHEETS)
def test_only_the_bundled_font_is_used(name: str) -> None:
    """No font of the machine gets into a sheet, so that it looks the same everywhere."""
    used = set()
    for page in PdfReader(io.BytesIO(demo_pdf(name, "letter"))).pages:
        fonts = inside(page, "/Resources", "/Font")
        used |= {str(inside(fonts, key)["/BaseFont"]).split("+")[-1] for key in fonts}
    assert used
    assert all(each.startswith("Sheet-Sans") for each in used), used


@pytest.mark.slow
@pytest.mark.parametrize("name", SHEETS)
def test_the_bundled_fonts_have_every_printed_character(name: str) -> None:
    """What is missing in a font prints as an empty box, and yet extracts as text."""
    printed = set("".join(demo_pages(name))) - set("\n")
    for file in ("DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf"):
        covered = TTFont(BUNDLED / "fonts" / file).getBestCmap()
        assert {each for each in printed if ord(each) not in covered} == set()


def test_the_signs_of_the_trade_are_in_the_fonts() -> None:
    """Fractions, diameters, times, boxes, about and at most."""
    for file in ("DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf"):
        covered = TTFont(BUNDLED / "fonts" / file).getBestCmap()
        assert [each for each in "½⅝⁄⌀×☐≈≤→↑·—µ³é" if ord(each) not in covered] == []


def test_the_fonts_licence_lies_beside_them() -> None:
    """It asks to be kept with every copy."""
    text = (BUNDLED / "fonts" / "LICENSE").read_text("utf-8")
    assert "Bitstream" in text
    assert "Permission is hereby granted" in text


@pytest.mark.parametrize(
    "url",
    [
        "https://example.org/a.png",
        "http://localhost/",
        "file:///etc/passwd",
        "file://host/etc/passwd",
        f"{BUNDLED.as_uri()}/../../shopjobs/settings.py",
        f"{BUNDLED.as_uri()}/%2e%2e/%2e%2e/pyproject.toml",
        "data:text/plain,x",
        "ftp://example.org/x",
    ],
)
def test_nothing_outside_the_bundle_is_opened(url: str) -> None:
    """Neither the net nor any other file of the machine."""
    assert not is_bundled(url)
    with_image = render(f'<html lang="en"><img src="{url}" alt="left out">', "a4")
    assert "/Image" not in str(PdfReader(io.BytesIO(with_image)).pages[0].get("/Resources"))


def test_bundled_files_are_known() -> None:
    """The fonts can be loaded."""
    assert is_bundled(f"{BUNDLED.as_uri()}/fonts/DejaVuSansCondensed.ttf")


@pytest.mark.slow
def test_sheets_are_tagged_for_reading_aloud() -> None:
    """With a structure and a language."""
    root = inside(PdfReader(io.BytesIO(demo_pdf("hardware", "a4"))).trailer, "/Root")
    assert bool(inside(root, "/MarkInfo")["/Marked"])
    assert str(root["/Lang"]) == "en"


@pytest.mark.slow
def test_a_sign_that_no_font_has_prints_as_an_open_box() -> None:
    """The rest of the page stays readable to search and to readers."""
    pdf = render('<html lang="en"><title>t</title><p>Saw 🪚 and 漢, Łódź ½</p>', "a4")
    assert "Saw □ and □, Łódź ½" in page_texts(pdf)[0]


@pytest.mark.parametrize(
    ("said", "printed"),
    [("1 1/4 × 2", "1\u00a01/4 × 2"), ("≈20 11/32 long", "≈20\u00a011/32 long"),
     ("4 8", "4 8"), ("#8 × 3/4", "#8 × 3/4")],
)  # fmt: skip
def test_no_line_breaks_within_a_mixed_number(said: str, printed: str) -> None:
    """`1` at a line's end and `1/4` on the next are read as two figures."""
    assert unbroken(said) == printed


@pytest.mark.slow
def test_every_drawing_is_read_out_by_what_it_shows() -> None:
    """ISO 32000-1, 14.9.3: each figure has a text in its place; and no line of it is lost."""
    pdf = PdfReader(io.BytesIO(demo_pdf("fitting", "letter")))
    said = [str(part["/Alt"]) for part in _figures(inside(pdf.root_object, "/StructTreeRoot"))]

    assert len(said) == fitting.content(demo_source()).count("<svg")
    assert "Elevation of cabinet B1" in said
    assert "B1.a seen from the back" in said


def _figures(part: DictionaryObject) -> Iterator[DictionaryObject]:
    """All figures within a part of a file's structure."""
    kids = part.get("/K", [])
    for kid in kids if isinstance(kids, list) else [kids]:
        found = kid.get_object()
        if isinstance(found, DictionaryObject):
            if found.get("/S") == "/Figure":
                yield found
            yield from _figures(found)


def test_a_sheet_opens_no_drawing_but_its_own() -> None:
    """What names a drawing that is not there leaves an empty place, and opens nothing."""
    html = '<html lang="en"><title>x</title><img src="drawing:7" alt="gone"><p>left</p></html>'
    (page,) = page_texts(render(html, "letter"))
    assert {"gone", "left"} <= set(page.split())

"""A sheet or stick cut up, drawn to scale."""

import re
from fractions import Fraction
from xml.etree import ElementTree

from fronts.cutting.model import Layout, Request, StockSize, WantedPart
from fronts.cutting.plan import plan
from fronts.drawings.cut_layout import layout_drawing
from fronts.rules.lengths import INCH, Mm

SVG = "{http://www.w3.org/2000/svg}"
ROOM = (900_00, 500_00)
SHEET = Request(
    kerf=INCH / 8,
    trim=INCH / 4,
    stock=(StockSize("sheet", 96 * INCH, 48 * INCH, None, "length"),),
    parts=(
        WantedPart("B1.a", 28 * INCH, 16 * INCH, 2, "length"),
        WantedPart("B<2>", 40 * INCH, 20 * INCH, 1, "length"),
    ),
)
STICK = Request(
    kerf=Mm(3),
    trim=Mm(15),
    stock=(StockSize("stick", Mm(2440)),),
    parts=(WantedPart("stile", Mm(700)),),
)


def drawn(layout: Layout, unit: str = "in") -> ElementTree.Element:
    """The drawing as a tree, so that what is not well formed fails."""
    return ElementTree.fromstring(layout_drawing(layout, unit=unit, room=ROOM))


def layout_of(request: Request) -> Layout:
    """The plan's only layout."""
    return plan(request, 2.0).layouts[0]


def texts(svg: ElementTree.Element) -> list[str]:
    """Every word and figure of the drawing."""
    return [each.text or "" for each in svg.iter(f"{SVG}text")]


def test_every_part_is_drawn_to_scale_with_its_label_and_size() -> None:
    """Outlines keep the proportions of the sizes; labels are text, whatever they hold."""
    layout = layout_of(SHEET)
    svg = drawn(layout)

    parts = [each for each in svg.iter(f"{SVG}rect") if each.get("class") == "line-front"]
    sizes = sorted(
        (Fraction(each.get("width", "")), Fraction(each.get("height", ""))) for each in parts
    )
    wanted = sorted((each.length, each.width or Mm(0)) for each in layout.placed)
    scale = sizes[0][0] / wanted[0][0]
    for (width, height), (length, across) in zip(sizes, wanted, strict=True):
        assert abs(width - length * scale) < Fraction(1, 10)
        assert abs(height - across * scale) < Fraction(1, 10)
    assert {"B1.a", "B<2>", "28 × 16", "40 × 20"} <= set(texts(svg))
    assert {"96", "48"} <= set(texts(svg))


def test_cuts_are_numbered_and_offcuts_marked() -> None:
    """Each cut after the trims has its number; what goes back to stock says so."""
    layout = layout_of(SHEET)
    found = texts(drawn(layout))

    numbers = {str(cut.number) for cut in layout.cuts if cut.kind != "trim"}
    assert numbers <= set(found)
    assert any(each.startswith("keep") for each in found)


def test_grain_is_shown_where_there_is_one() -> None:
    """A part with grain has an arrow with two heads."""
    svg = drawn(layout_of(SHEET))

    assert len(list(svg.iter(f"{SVG}polygon"))) == 2 * len(layout_of(SHEET).placed)


def test_a_stick_is_drawn_with_what_is_sawn_from_it() -> None:
    """Lengths only, in the unit of the shop."""
    found = texts(drawn(layout_of(STICK), "mm"))

    assert {"stile", "700"} <= set(found)
    assert "2440" in found


def test_a_short_stick_part_keeps_its_length() -> None:
    """Where the label is too long for its piece, the label is cut short and the length is not."""
    short = Request(
        kerf=Mm(3), trim=Mm(15), stock=(StockSize("stick", Mm(2440)),),
        parts=(WantedPart("Cabinet North 12.a.1 rail", Mm(190)),),
    )  # fmt: skip
    found = texts(drawn(layout_of(short), "mm"))

    assert "190" in found
    assert any(each.startswith("Cabinet") and each.endswith("…") for each in found)


def test_the_drawing_stays_in_its_room() -> None:
    """The stock is no larger than the room that it is given."""
    svg = drawn(layout_of(SHEET))
    stock = next(each for each in svg.iter(f"{SVG}rect") if each.get("class") == "line-cabinet")

    assert Fraction(stock.get("width", "")) <= 900
    assert Fraction(stock.get("height", "")) <= 500
    assert re.fullmatch(r"[-\d. ]+", svg.get("viewBox", ""))

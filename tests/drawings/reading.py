"""Reading a drawing back: its elements, its texts and where they stand."""

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from xml.etree import ElementTree

from fronts.drawings.drawing import Anchor, text_area
from fronts.drawings.geometry import Area

ANCHORS: dict[str, Anchor] = {"start": "start", "middle": "middle", "end": "end"}
SVG = "{http://www.w3.org/2000/svg}"


@dataclass(frozen=True)
class Written:
    """A text of a drawing and the place that it takes, in hundredths of a pixel."""

    text: str
    area: Area


def parsed(svg: str) -> ElementTree.Element:
    """The drawing's root; fails where the drawing is not XML."""
    return ElementTree.fromstring(svg)


def px(number: str) -> int:
    """A written number in hundredths of a pixel; fails where it has more places."""
    hundredths = Decimal(number) * 100
    assert hundredths == int(hundredths)
    return int(hundredths)


def texts(svg: str) -> list[Written]:
    """Every text of the drawing, its place reckoned back from its attributes."""
    return list(_texts(parsed(svg)))


def _texts(root: ElementTree.Element) -> Iterator[Written]:
    for each in root.iter(f"{SVG}text"):
        size, x = px(each.attrib["font-size"]), px(each.attrib["x"])
        middle = px(each.attrib["y"]) - size * 36 // 100
        anchor = ANCHORS[each.attrib.get("text-anchor", "start")]
        bold = each.attrib.get("font-weight") == "700"
        text = each.text or ""
        yield Written(text, text_area(x, middle, text, size, anchor, bold=bold))


def meetings(svg: str) -> list[tuple[str, str]]:
    """Pairs of texts that stand on one another."""
    found = texts(svg)
    return [
        (one.text, other.text)
        for index, one in enumerate(found)
        for other in found[index + 1 :]
        if one.area.overlaps(other.area)
    ]


def rects(svg: str, kind: str) -> list[Area]:
    """The rectangles of a line kind, in drawing order."""
    found = []
    for each in parsed(svg).iter(f"{SVG}rect"):
        if each.attrib["class"] == f"line-{kind}":
            x, y = px(each.attrib["x"]), px(each.attrib["y"])
            wide, high = px(each.attrib["width"]), px(each.attrib["height"])
            found.append(Area(x, y, x + wide, y + high))
    return found

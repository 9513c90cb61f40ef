"""The drawing of a sheet: to scale, everything labelled, nothing that a page must restyle."""

import json
from xml.etree import ElementTree

from fronts.cutting.plan import plan
from fronts.cutting_file import read_request
from fronts.drawings.cutting import sheet_svg
from tests.cutting.test_plan import kitchen

SVG = "{http://www.w3.org/2000/svg}"


def drawn(label: str = "Door") -> tuple[ElementTree.Element, int, int]:
    """The drawing of a sheet with a door, with how many parts and cuts it has."""
    request = kitchen()
    request["parts"][0]["label"] = label
    layouts = plan(read_request(json.dumps(request).encode()), 2).layouts
    layout = next(one for one in layouts if any(placed.part == label for placed in one.placed))
    tree = ElementTree.fromstring(sheet_svg(layout, "mm", name="one"))
    return tree, len(layout.placed), len(layout.cuts)


def test_every_part_and_cut_is_drawn() -> None:
    """Each part has its outline and label, each cut its line and number."""
    tree, parts, cuts = drawn()
    kinds = [element.get("class", "").split(" ")[0] for element in tree.iter()]
    assert kinds.count("part") == kinds.count("part-label") == parts
    assert kinds.count("cut") == kinds.count("cut-number") == cuts
    assert "grain" in kinds
    assert "offcut" in kinds


def test_parts_are_to_scale() -> None:
    """A door of 720 × 396 is drawn so, in the drawing's millimetres."""
    tree, _, _ = drawn()
    sizes = {(r.get("width"), r.get("height")) for r in tree.iter(f"{SVG}rect")}
    assert ("2440", "1220") in sizes
    assert ("720", "396") in sizes


def test_labels_are_text_and_no_style_is_set() -> None:
    """A label with markup stays text; looks come from classes alone."""
    tree, _, _ = drawn('<b>&"x"</b>')
    texts = {element.text for element in tree.iter(f"{SVG}text")}
    assert '<b>&"x"</b>' in texts
    assert all("style" not in e.attrib and "fill-opacity" not in e.attrib for e in tree.iter())

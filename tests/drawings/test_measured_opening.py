"""The opening as it is measured: one line of its six is thick, and has its name."""

import pytest

from fronts.drawings.measured_opening import measured_opening
from fronts.rules.kitchen import Measured
from fronts.rules.site_sizes import NAMES
from tests.drawings.reading import SVG, meetings, parsed, texts
from tests.rules.small_kitchens import cabinet, inch, opening

MEASURED = Measured(*[inch(text) for text in ("14 15/16", "15", "27 1/2", "27 9/16", "31", "32")])


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize(("width", "height"), [("15", "27 1/2"), ("33", "5"), ("4", "27")])
def test_one_line_is_thick_and_named(name: str, width: str, height: str) -> None:
    """Whatever the opening's shape, and no text stands on another."""
    hole = opening(width=inch(width), height=inch(height), measured=MEASURED)

    svg = measured_opening(cabinet(hole), hole, name, unit="in")

    thick = [line for line in parsed(svg).iter(f"{SVG}line")
             if line.get("class") == "line-measured"]  # fmt: skip
    assert len(thick) == 1
    ends = [thick[0].get(end) for end in ("x1", "y1", "x2", "y2")]
    is_level, is_upright = ends[1] == ends[3], ends[0] == ends[2]
    kind, _, _ = name.partition("_")
    assert (is_level, is_upright) == (kind == "width", kind == "height")
    names = [each.text for each in texts(svg) if each.text.startswith(("width", "height", "diag"))]
    assert [words.partition(" ")[0] for words in names] == [kind]
    assert meetings(svg) == []


def test_what_was_measured_stands_on_its_line() -> None:
    """The others of the six, each with its figure."""
    hole = opening(measured=MEASURED)
    figures = [each.text for each in texts(
        measured_opening(cabinet(hole), hole, "width_top", unit="in")
    )]  # fmt: skip

    assert {"15", "27 1/2", "27 9/16", "31", "32"} <= set(figures)
    assert "14 15/16" not in figures

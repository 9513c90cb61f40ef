"""How far a front lies within its cabinet."""

import pytest

from fronts.rules.cabinet_edges import to_cabinet_edges
from fronts.rules.rect import Rect
from fronts.rules.standard_keys import Sides
from tests.rules.small_kitchens import cabinet, inch, inches

# A cabinet 18 × 30 1/2 in, 4 in above the floor, 20 in from the wall's left end.
CABINET = cabinet(x=inch("20"))
PLACES = [
    ("in its middle", ("21", "5", "16", "28 1/2"), ("1", "1", "1", "1")),
    ("off centre", ("20 1/2", "6", "16", "28"), ("1/2", "1 1/2", "1/2", "2")),
    ("as large as it", ("20", "4", "18", "30 1/2"), ("0", "0", "0", "0")),
    ("past it at the left and top", ("19", "5", "18", "30"), ("-1", "1", "-1/2", "1")),
]


@pytest.mark.parametrize(
    ("place", "edges"), [row[1:] for row in PLACES], ids=[row[0] for row in PLACES]
)
def test_from_each_edge_to_the_cabinets(place: tuple[str, ...], edges: tuple[str, ...]) -> None:
    """Left, right, top, bottom; below zero where the front goes past."""
    left, right, top, bottom = inches(*edges)

    found = to_cabinet_edges(Rect(*inches(*place)), CABINET)

    assert found == Sides(left=left, right=right, top=top, bottom=bottom)

"""Where a box stands: the trade's check values (common practice, no source)."""

from dataclasses import replace

import pytest

from fronts.rules.box_place import side_clearance
from tests.rules.small_kitchens import BOX, inch

CLEARANCES = [("centred", None, "1/2"), ("measured", "3/8", "3/8"), ("against the side", "0", "0")]


@pytest.mark.parametrize(
    ("measured", "clearance"), [row[1:] for row in CLEARANCES], ids=[row[0] for row in CLEARANCES]
)
def test_a_box_that_nobody_measured_stands_centred(measured: str | None, clearance: str) -> None:
    """A box 14 in wide in an opening of 15 in."""
    box = replace(BOX, side_clearance=None if measured is None else inch(measured))

    assert side_clearance(inch("15"), box) == inch(clearance)

"""Shims of an inset front: common practice, no source."""

import pytest

from fronts.rules.lengths import Mm
from fronts.rules.results import Shims
from fronts.rules.shims import shims_for
from fronts.rules.standard_keys import Sides
from tests.rules.small_kitchens import inch

CASES = [
    ("its gaps", ("-3/32", "-3/32", "-1/8"), ("3/32", "3/32", "1/8")),
    ("a side that differs", ("-1/16", "-3/32", "-1/8"), ("1/16", "3/32", "1/8")),
    ("a front below it", ("-3/32", "-3/32", None), ("3/32", "3/32", "1/4")),
    ("an edge that laps", ("1/4", "-3/32", "-1/8"), ("0", "3/32", "1/8")),
]


@pytest.mark.parametrize(
    ("overlays", "shims"), [row[1:] for row in CASES], ids=[row[0] for row in CASES]
)
def test_shims_are_as_thick_as_the_gaps(
    overlays: tuple[str | None, ...], shims: tuple[str, ...]
) -> None:
    """Left, right and below; 1/4 in stays between two fronts of one opening."""
    left, right, bottom = (None if each is None else inch(each) for each in overlays)
    of_edges: Sides[Mm | None] = Sides(left, right, inch("-1/8"), bottom)

    assert shims_for(of_edges, inch("1/4")) == Shims(*(inch(each) for each in shims))

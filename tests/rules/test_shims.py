"""Shims of an inset front: common practice, no source."""

import pytest

from fronts.rules.fitting_results import Shims
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from fronts.rules.shims import shims_for
from fronts.rules.standard_keys import Sides, Standard
from tests.rules.small_kitchens import BOX, cabinet, inch, inches, kitchen, opening

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


def test_a_shim_of_nothing_is_none_to_be_made() -> None:
    """However thin one is, it is; a front flush with its opening's edge needs none there."""
    gaps = Sides(*inches("0", "1/64", "1/8", "1/8"))
    inset = opening("pull-out", boxes=(BOX,), standard=Standard(mount="inset", inset_gap=gaps))

    shims = schedule(kitchen(cabinet(inset), step=inch("1/64"))).shims

    assert [(shim.thickness, shim.side, shim.bottom) for shim in shims] == [
        (inch("1/64"), 1, 0), (inch("1/8"), 0, 2),
    ]  # fmt: skip

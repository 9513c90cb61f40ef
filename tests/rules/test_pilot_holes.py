"""Pilot holes. Source: Wood Handbook (FPL), lead holes for wood screws in withdrawal: about 70 %
of the root diameter in softwood, 90 % in hardwood. Boards: common practice, no source."""

import pytest

from fronts.rules.pilot_holes import ROOT_OF_SHANK, pilot_hole
from fronts.rules.practice import PRACTICE
from fronts.rules.screws import diameter_of_number
from tests.rules.finding_cases import boxed
from tests.rules.small_kitchens import inch, only_fitting

ROOT = PRACTICE.screw_diameter * ROOT_OF_SHANK


@pytest.mark.parametrize(
    ("material", "share"),
    [("eastern white pine", 70), ("douglas fir", 70), ("hard maple", 90), ("yellow-poplar", 90),
     ("MDF", 90), ("birch plywood", 90), ("something else", 90)],
)  # fmt: skip
def test_diameter(material: str, share: int) -> None:
    """A share of the root; what is not known is not split by too small a hole."""
    assert pilot_hole(material, inch("1/2"), PRACTICE).diameter == ROOT * share / 100


ROOTS = [(4, "0.075"), (6, "0.094"), (8, "0.112"), (10, "0.130"), (12, "0.148"), (14, "0.165")]


@pytest.mark.parametrize(("number", "root"), ROOTS, ids=[f"#{number}" for number, _ in ROOTS])
def test_a_root_is_two_thirds_of_its_shank(number: int, root: str) -> None:
    """Within 3 % of a trade table, which names no source."""
    ours = diameter_of_number(number) * ROOT_OF_SHANK

    assert float(ours) == pytest.approx(float(inch(root)), rel=0.03)


def test_a_number_8_pilot_lies_between_root_and_shank() -> None:
    """The trade's charts have 5/64 to 1/8 in for #8 (they disagree, so only their span holds)."""
    soft, hard = (
        pilot_hole(wood, inch("1/2"), PRACTICE).diameter for wood in ("pine", "hard maple")
    )

    assert inch("5/64") - inch("1/128") <= soft < hard <= inch("1/8")


@pytest.mark.parametrize(("enters", "deep"), [("1/2", "3/8"), ("1/8", "0"), ("1/16", "0")])
def test_depth(enters: str, deep: str) -> None:
    """1/8 in less than the screw enters, and nothing less than nothing."""
    assert pilot_hole("MDF", inch(enters), PRACTICE).depth == inch(deep)


def test_on_a_fitting() -> None:
    """A 1 1/4 in screw through 3/4 in of box enters the front by 1/2 in."""
    pilot = only_fitting(boxed()).pilot

    assert pilot is not None
    assert pilot.depth == inch("3/8")

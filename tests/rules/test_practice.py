"""The shop's own numbers: each is worded, sourced, and as the trade has it."""

from fractions import Fraction

import pytest

from fronts.rules.practice import NUMBERS, PRACTICE
from tests.rules.small_kitchens import inch

# Common practice, no source, but where an id names one.
VALUES = [
    ("hole_diameter", "1/4"),
    ("hole_inset", "1 1/2"),
    ("hole_to_edge", "3/8"),
    ("hole_clear", "3/16"),
    ("ledge_thickness", "1/4"),
    ("ledge_length", "2 1/4"),
    ("slot_wider", "1/8"),
    ("slot_deeper", "1/16"),
    ("bottom_shim_length", "12"),
    ("tape_width", "1"),
    ("tape_thickness", "1/8"),
    ("drill_past", "1/16"),
    ("recess_width", "1/2"),
    ("recess_depth", "1/4"),
    ("recess_wall", "1/8"),
    ("wide_drawer", "24"),
    ("lines_seen", "1/4"),
    ("rear_clearance", "1/2"),
    ("stile", "2 1/4"),
    ("rail", "2 1/4"),
    ("tongue", "3/8"),
    ("panel_clearance", "1/16"),
    ("knob_hole", "3/16"),
    ("middle_rail_over", "60"),
    ("cup_diameter", "35 mm"),
    ("cup_from_edge", "22.5 mm"),
    ("screw_diameter", "4.1656 mm"),  # 0.060 + 0.013 × 8 in, ASME B18.6.1.
    ("hole_move", "1/16"),
    ("knob_from_end", "3"),
    ("knob_from_side", "1 1/8"),
    ("easy_reach", "48"),  # 2010 ADA Standards, 308.
    ("near_plane", "3"),
    ("filler", "3"),
    ("panel_thickness", "1/4"),
    ("hinge_half", "1"),
    ("hinge_overlay_most", "1 1/2"),
    ("hinge_inset_most", "1/4"),
    ("hinge_adjust_side", "2 mm"),
    ("hinge_adjust_height", "2 mm"),
]

# Common practice, no source, but the wood made at 6–8 %: Wood Handbook.
PLAIN_VALUES = [
    ("solid_panels", 0),
    ("humidity_low", 30),
    ("humidity_high", 55),
    ("site_celsius", 21),
    ("made_at", 7),
    ("jig_play", 50),
    ("bumpers", 2),
    ("hinge_screws", 4),
    ("slide_screws", 8),
    ("spares", 5),
]


@pytest.mark.parametrize(("name", "value"), VALUES, ids=[name for name, _ in VALUES])
def test_common_practice(name: str, value: str) -> None:
    """Common practice, no source; the middle rail over 60 in: Architectural Woodwork Standards,
    1st ed. 2009.
    """
    assert getattr(PRACTICE, name) == inch(value)


@pytest.mark.parametrize(("name", "value"), PLAIN_VALUES, ids=[name for name, _ in PLAIN_VALUES])
def test_counts_and_percentages(name: str, value: int) -> None:
    """A plain number is no length: it stands as it is written."""
    assert getattr(PRACTICE, name) == value


@pytest.mark.parametrize("number", NUMBERS, ids=lambda each: each.name)
def test_every_number_says_what_it_is_and_whence(number: object) -> None:
    """A shop that changes a number reads what it does and where ours comes from."""
    name = getattr(number, "name")  # noqa: B009
    metadata = getattr(number, "metadata")  # noqa: B009

    assert metadata["says"]
    assert metadata["source"]
    assert getattr(PRACTICE, name) >= 0


@pytest.mark.parametrize("table", ["hinges_by_height", "hinges_by_weight"])
def test_hinge_tables_rise(table: str) -> None:
    """No standard gives hinge counts; a table can only be held to rise."""
    rows: tuple[tuple[Fraction, int], ...] = getattr(PRACTICE, table)

    assert list(rows) == sorted(rows)
    assert [count for _, count in rows] == sorted({count for _, count in rows})

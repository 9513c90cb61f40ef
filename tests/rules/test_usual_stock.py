"""What a shop saws with and from where nobody says: common practice, no source."""

import pytest

from fronts.rules.kinds import Unit
from fronts.rules.lengths import show
from fronts.rules.usual_stock import USUAL_SAW, USUAL_SHEET, USUAL_STICK

UNITS: list[tuple[Unit, str, str]] = [
    ("in", "95 1/2 × 47 1/2", "95"),
    ("mm", "2420 × 1200", "2410"),
]


@pytest.mark.parametrize(("unit", "sheet", "stick"), UNITS, ids=[unit for unit, *_ in UNITS])
def test_what_is_left_of_the_stock_once_it_is_trimmed(unit: Unit, sheet: str, stick: str) -> None:
    """Both edges of a sheet and both ends of a stick are trimmed off what is sold."""
    saw = USUAL_SAW[unit]
    sizes = [show(size - 2 * saw.trim, unit) for size in USUAL_SHEET[unit]]

    assert " × ".join(sizes) == sheet
    assert show(USUAL_STICK[unit] - 2 * saw.ends, unit) == stick

"""How wide members are where nobody says: common practice, no source."""

import pytest

from fronts.rules.kinds import CabinetBuild, Unit
from fronts.rules.lengths import show
from fronts.rules.member_width import member_width

WIDTHS: list[tuple[CabinetBuild, Unit, str]] = [
    ("face-frame", "in", "1 1/2"),
    ("frameless", "in", "3/4"),
    ("face-frame", "mm", "40"),
    ("frameless", "mm", "18"),
]


@pytest.mark.parametrize(
    ("build", "unit", "width"), WIDTHS, ids=[f"{build}, {unit}" for build, unit, _ in WIDTHS]
)
def test_a_usual_member(build: CabinetBuild, unit: Unit, width: str) -> None:
    """A stile of a face frame, or the thickness of a panel, in whole sizes of the shop's unit."""
    assert show(member_width(build, unit), unit) == width

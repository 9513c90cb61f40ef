"""Gaps: a pair of doors that lies in its opening, and two fronts anywhere."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_LEFT, _RIGHT, _TOP, _BOTTOM = 90_00, 310_00, 40_00, 220_00
_MIDDLE: Px = 200_00
_GAP: Px = 14_00
_MEMBER: Px = 26_00


def gaps_drawing(figures: Figures) -> str:
    """The pair in its opening; below it the least gap."""
    plate = Plate(figures)
    plate.rect("cabinet", _LEFT - _MEMBER, _TOP - _MEMBER, _RIGHT + _MEMBER, _BOTTOM + _MEMBER)
    plate.rect("opening", _LEFT, _TOP, _RIGHT, _BOTTOM)
    left, right = _LEFT + plate.size("inset_left", _GAP), _RIGHT - plate.size("inset_right", _GAP)
    top, bottom = _TOP + plate.size("inset_top", _GAP), _BOTTOM - plate.size("inset_bottom", _GAP)
    half = plate.size("gap_between", _GAP) // 2
    plate.rect("front", left, top, _MIDDLE - half, bottom)
    plate.rect("front", _MIDDLE + half, top, right, bottom)
    plate.across("gap_between", _MIDDLE - half, _MIDDLE + half, 95_00, "between")
    plate.across("inset_left", _LEFT, left, 150_00, "left")
    plate.across("inset_right", right, _RIGHT, 150_00, "right")
    plate.upright("inset_top", _TOP, top, 130_00, "top")
    plate.upright("inset_bottom", bottom, _BOTTOM, 130_00, "bottom")
    least = plate.size("least_gap", 10_00) // 2
    plate.rect("front", _LEFT, 280_00, _MIDDLE - least, 330_00)
    plate.rect("front", _MIDDLE + least, 280_00, _RIGHT, 330_00)
    plate.across("least_gap", _MIDDLE - least, _MIDDLE + least, 345_00, "nowhere less than",
                 base=330_00)  # fmt: skip
    return plate.svg("Gaps between fronts, and round fronts in their opening")

"""How close the shop works: an opening as measured, a front as cut, and where it is set."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_LEFT: Px = 70_00
_RIGHT: Px = 290_00
_TOP: Px = 40_00
_BOTTOM: Px = 270_00
_GAP: Px = 26_00


def errors_drawing(figures: Figures) -> str:
    """What each is meant to be, and dashed how far off it may be."""
    plate = Plate(figures)
    measured = plate.size("measuring_error", 18_00)
    cut = plate.size("cutting_error", 18_00, most=24_00)
    low = plate.size("setting_error", 18_00, most=24_00)
    plate.rect("cabinet", _LEFT, _TOP, _RIGHT, _BOTTOM)
    plate.line("hidden", _LEFT - measured, _TOP - 14_00, _LEFT - measured, _BOTTOM + 14_00)
    left, right = _LEFT + _GAP, _RIGHT - _GAP - cut
    top, bottom = _TOP + _GAP, _BOTTOM - _GAP - low
    plate.rect("front", left, top, right, bottom)
    plate.line("hidden", right + cut, top, right + cut, bottom)
    plate.line("hidden", left, bottom + low, right, bottom + low)
    plate.across("measuring_error", _LEFT - measured, _LEFT, 20_00, "measured, off by", base=_TOP)
    plate.across("cutting_error", right, right + cut, 120_00, "cut, off by")
    plate.upright("setting_error", bottom, bottom + low, 150_00, "set, off by")
    return plate.svg("An opening and its front, and how far off each of them may be")

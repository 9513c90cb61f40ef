"""How far off a size that is measured on site is asked about: from its plan, from its pair."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_LEFT: Px = 60_00
_RIGHT: Px = 240_00
_TOP: Px = 70_00
_BOTTOM: Px = 250_00


def measuring_drawing(figures: Figures) -> str:
    """An opening as planned, dashed, and as it was measured at its top and at its bottom."""
    plate = Plate(figures)
    top = _RIGHT + plate.size("asked_off_plan", 40_00)
    bottom = top + plate.size("asked_off_pair", 24_00)
    plate.rect("hidden", _LEFT, _TOP, _RIGHT, _BOTTOM)
    plate.line("cabinet", _LEFT, _TOP, top, _TOP)
    plate.line("cabinet", top, _TOP, bottom, _BOTTOM)
    plate.line("cabinet", bottom, _BOTTOM, _LEFT, _BOTTOM)
    plate.line("cabinet", _LEFT, _BOTTOM, _LEFT, _TOP)
    plate.line("hidden", top, _TOP, top, _BOTTOM + 20_00)
    plate.across("asked_off_plan", _RIGHT, top, 40_00, "off its plan from", base=_TOP)
    plate.across("asked_off_pair", top, bottom, 285_00, "off its pair from", base=_BOTTOM)
    return plate.svg("An opening as planned, and as it was measured at both ends")

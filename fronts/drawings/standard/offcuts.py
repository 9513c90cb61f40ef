"""Offcuts: the least piece of a sheet, and of a stick, that is worth keeping."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_LEFT: Px = 110_00
_RIGHT: Px = 385_00
_TOP: Px = 50_00
_BOTTOM: Px = 190_00
_STICK: Px = 240_00
_WIDE: Px = 18_00


def offcuts_drawing(figures: Figures) -> str:
    """What is left in the corner of a sheet, and at the end of a stick below it."""
    plate = Plate(figures)
    bottom = _TOP + plate.size("offcut_narrow", 50_00, most=110_00)
    right = _LEFT + plate.size("offcut_long", 120_00, most=245_00)
    end = _LEFT + plate.size("offcut_stick", 160_00, most=245_00)
    plate.rect("opening", _LEFT, _TOP, _RIGHT, _BOTTOM)
    plate.rect("front", _LEFT, _TOP, right, bottom)
    plate.rect("opening", _LEFT, _STICK, _RIGHT, _STICK + _WIDE)
    plate.rect("front", _LEFT, _STICK, end, _STICK + _WIDE)
    plate.upright("offcut_narrow", _TOP, bottom, 88_00, "wide", base=_LEFT)
    plate.across("offcut_long", _LEFT, right, 28_00, "long", base=_TOP)
    plate.across("offcut_stick", _LEFT, end, 280_00, "of a stick", base=_STICK + _WIDE)
    return plate.svg("A piece of a sheet and one of a stick, worth keeping from these sizes on")

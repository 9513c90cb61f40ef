"""Doors on hand: one with what may be sawn off it."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate

_LEFT, _RIGHT, _TOP, _BOTTOM = 70_00, 330_00, 50_00, 280_00
_FRAME = 66_00


def trimming_drawing(figures: Figures) -> str:
    """The door as it was, the saw's line, and the stile that is left."""
    plate = Plate(figures)
    trimmed = _RIGHT - plate.size("trim_limit", 30_00, most=50_00)
    inner = trimmed - plate.size("least_stile", 60_00, most=100_00)
    plate.rect("hidden", _LEFT, _TOP, _RIGHT, _BOTTOM)
    plate.rect("front", _LEFT, _TOP, trimmed, _BOTTOM)
    plate.rect("cabinet", _LEFT + _FRAME, _TOP + _FRAME // 2, inner, _BOTTOM - _FRAME // 2)
    plate.across("trim_limit", trimmed, _RIGHT, 30_00, "sawn off at most", base=_TOP)
    plate.across("least_stile", inner, trimmed, 300_00, "stile left at least", base=_BOTTOM)
    return plate.svg("A door on hand, trimmed at its side")

"""Screws: one cut along through box and front, and the recess for a knob screw's head."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_INSIDE, _MEETS, _FACE = 60_00, 170_00, 340_00
"""Inside of the box, where box and front meet, and the front's face."""
_TOP, _BOTTOM, _AXIS = 60_00, 150_00, 105_00


def screws_drawing(figures: Figures) -> str:
    """Box front and front as they meet; below, the box front with its recess."""
    plate = Plate(figures)
    plate.rect("cabinet", _INSIDE, _TOP, _MEETS, _BOTTOM)
    plate.rect("front", _MEETS, _TOP, _FACE, _BOTTOM)
    plate.note(72_00, _BOTTOM - 10_00, "box", "start")
    plate.note(_FACE - 8_00, _BOTTOM - 10_00, "front", "end")
    _screw(plate)
    _recess(plate)
    return plate.svg("A mounting screw in box and front, cut along")


def _screw(plate: Plate) -> None:
    half = plate.size("screw_diameter", 14_00, most=30_00) // 2
    tip = _FACE - plate.size("skin", 34_00, most=60_00)
    plate.rect("box", _INSIDE - 8_00, _AXIS - 2 * half, _INSIDE, _AXIS + 2 * half)
    plate.rect("box", _INSIDE, _AXIS - half, tip - 10_00, _AXIS + half)
    plate.path("box", [
        (tip - 10_00, _AXIS - half), (tip, _AXIS), (tip - 10_00, _AXIS + half),
    ])  # fmt: skip
    pilot = tip - plate.size("pilot_short", 22_00, most=40_00)
    plate.line("hidden", _MEETS, _AXIS - half - 5_00, pilot, _AXIS - half - 5_00)
    plate.line("hidden", _MEETS, _AXIS + half + 5_00, pilot, _AXIS + half + 5_00)
    plate.upright("screw_diameter", _AXIS - half, _AXIS + half, 40_00, "⌀", base=_INSIDE)
    bite = _MEETS + plate.size("bite", 50_00, most=90_00)
    plate.across("bite", _MEETS, bite, 172_00, "bites at least", base=_AXIS)
    plate.across("skin", tip, _FACE, 172_00, "left", base=_AXIS)
    plate.across("pilot_short", pilot, tip, 46_00, "pilot short by", base=_AXIS)
    past = _MEETS + plate.size("drill_past", 14_00)
    plate.across("drill_past", _MEETS, past, 22_00, "drilled past", base=_AXIS - half)
    plate.points("pilot_softwood", 200_00, 204_00, "pilot in softwood {} of the root")
    plate.points("pilot_hardwood", 200_00, 224_00, "in hardwood and boards {}")


def _recess(plate: Plate) -> None:
    left, middle, top, bottom = 90_00, 300_00, 250_00, 370_00
    depth, wall = plate.size("recess_depth", 40_00, most=60_00), plate.size("recess_wall", 24_00)
    half: Px = plate.size("recess_width", 44_00, most=80_00) // 2
    face, y = left + depth + wall, (top + bottom) // 2
    plate.path("box", [
        (left, top), (face, top), (face, bottom), (left, bottom), (left, y + half),
        (left + depth, y + half), (left + depth, y - half), (left, y - half), (left, top),
    ])  # fmt: skip
    plate.line("hand", left - 10_00, y, middle, y)
    plate.upright("recess_width", y - half, y + half, 70_00, "recess", base=left)
    plate.across("recess_depth", left, left + depth, bottom + 14_00, "deep", base=y + half)
    plate.across("recess_wall", left + depth, face, top - 8_00, "left in front", base=y - half)

"""Hinges: a door from behind, and how far its hinge reaches, cut level."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_LEFT, _RIGHT, _TOP, _BOTTOM = 60_00, 180_00, 20_00, 290_00
_SIDE, _FACE = 322_00, 16_00
"""The inner face of the cabinet's side, and how thick it and the door are drawn."""


def hinges_drawing(figures: Figures) -> str:
    """The door with its cups; beside it an overlay door and an inset one on their hinges."""
    plate = Plate(figures)
    plate.rect("front", _LEFT, _TOP, _RIGHT, _BOTTOM)
    end, from_edge = plate.size("hinge_end", 50_00), plate.size("cup_from_edge", 24_00, most=50_00)
    radius = plate.size("cup_diameter", 26_00, most=44_00) // 2
    x, first, last = _RIGHT - from_edge, _TOP + end, _BOTTOM - end
    half = plate.size("hinge_half", 22_00, most=40_00)
    for y in (first, last):
        plate.circle("box", x, y, radius)
        plate.rect("hidden", x, y - half, _RIGHT, y + half)
    plate.upright("hinge_end", _TOP, first, 200_00, "from end", base=_RIGHT)
    plate.across("cup_from_edge", x, _RIGHT, first + half + 12_00, "cup", base=first)
    plate.across("cup_diameter", x - radius, x + radius, last, "⌀")
    plate.upright("hinge_half", last, last + half, 192_00, "half a plate", base=_RIGHT)
    _moves(plate)
    _reaches(plate)
    plate.points("front_hinge", 120_00, 155_00, "{}")
    plate.points("hinges_by_height", 200_00, 350_00, "hinges up to {}")
    plate.points("hinges_by_weight", 200_00, 372_00, "and up to {}")
    return plate.svg("Hinges of a door, seen from behind")


def _moves(plate: Plate) -> None:
    """The door as its hinges can move it."""
    aside, down = plate.size("hinge_adjust_side", 8_00), plate.size("hinge_adjust_height", 8_00)
    plate.rect("hidden", _LEFT - aside, _TOP + down, _RIGHT - aside, _BOTTOM + down)
    plate.across("hinge_adjust_side", _LEFT - aside, _LEFT, 180_00, "moves")
    plate.upright("hinge_adjust_height", _BOTTOM, _BOTTOM + down, 90_00, "moves")


def _reaches(plate: Plate) -> None:
    """A cabinet's side with a door over it, and one with a door beside it."""
    over = plate.size("hinge_overlay_most", 14_00, most=26_00)
    plate.cut(_SIDE - 2 * _FACE, 40_00, _SIDE, 110_00)
    plate.rect("front", _SIDE - over, 112_00, 396_00, 112_00 + _FACE)
    plate.across("hinge_overlay_most", _SIDE - over, _SIDE, 145_00, "laps to", base=128_00)
    gap: Px = plate.size("hinge_inset_most", 12_00, most=40_00)
    plate.cut(_SIDE - 2 * _FACE, 165_00, _SIDE, 218_00)
    plate.rect("front", _SIDE + gap, 202_00, 396_00, 202_00 + _FACE)
    plate.across("hinge_inset_most", _SIDE, _SIDE + gap, 234_00, "inset gap to", base=218_00)

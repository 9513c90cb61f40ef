"""Mounting holes: the front of a drawer box, seen from inside the box."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_LEFT, _RIGHT, _TOP, _BOTTOM = 30_00, 370_00, 40_00, 290_00
_SIDE: Px = 20_00


def mounting_holes_drawing(figures: Figures) -> str:
    """A hole for each number that says where one may be."""
    plate = Plate(figures)
    plate.rect("front", _LEFT, _TOP, _RIGHT, _BOTTOM)
    for x in (_LEFT + _SIDE, _RIGHT - _SIDE):
        plate.line("hidden", x, _TOP, x, _BOTTOM)
    radius = plate.size("hole_diameter", 16_00, most=30_00) // 2
    _from_edges(plate, radius)
    _head(plate, radius)
    _apart(plate, radius)
    return plate.svg("Mounting holes in the front of a drawer box, from inside")


def _from_edges(plate: Plate, radius: Px) -> None:
    x, y = _LEFT + plate.size("hole_inset", 56_00, most=110_00), 240_00
    plate.circle("box", x, y, radius)
    plate.across("hole_inset", _LEFT, x, 308_00, "from sides", base=y)
    plate.across("hole_diameter", x - radius, x + radius, y, "⌀")
    edge = _TOP + plate.size("hole_to_edge", 30_00, most=50_00)
    plate.circle("box", 110_00, edge, radius)
    plate.upright("hole_to_edge", _TOP, edge, 130_00, "to edge", base=110_00)
    step = plate.size("hole_move", 18_00, most=40_00)
    plate.circle("box", 90_00, 160_00, radius)
    plate.circle("hidden", 90_00 + step, 160_00, radius)
    plate.across("hole_move", 90_00, 90_00 + step, 160_00 + radius + 12_00, "moved by",
                 base=160_00)  # fmt: skip


def _head(plate: Plate, radius: Px) -> None:
    """A washer head, clear of the box's side."""
    half, clear = plate.size("head_half", 26_00, most=50_00), plate.size("head_clear", 14_00)
    x, y = _RIGHT - _SIDE - clear - half, 110_00
    plate.circle("box", x, y, radius)
    plate.circle("cabinet", x, y, half)
    plate.across("head_half", x - half, x, y + half + 12_00, "half a head", base=y)
    plate.across("head_clear", x + half, x + half + clear, 24_00, "head clear", base=y)


def _apart(plate: Plate, radius: Px) -> None:
    """Two mounting holes, and one beside another hole."""
    y, start = 240_00, 190_00
    end = start + max(2 * radius, plate.size("hole_apart", 54_00, most=80_00))
    for x in (start, end):
        plate.circle("box", x, y, radius)
    plate.across("hole_apart", start, end, 332_00, "apart", base=y)
    clear = plate.size("hole_clear", 14_00)
    other = end + 2 * radius + clear
    plate.circle("cabinet", other, y, radius)
    plate.across("hole_clear", end + radius, other - radius, 218_00, "wood left", base=y)

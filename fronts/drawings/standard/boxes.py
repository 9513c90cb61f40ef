"""Drawer boxes: one cut across in its opening, and its corner from above."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_LEFT, _RIGHT, _TOP, _BOTTOM = 40_00, 250_00, 24_00, 174_00
_AIR: Px = 14_00


def boxes_drawing(figures: Figures) -> str:
    """Thicknesses and groove above, the joint below."""
    plate = Plate(figures)
    side = plate.size("boxes_side", 18_00)
    _across(plate, side)
    _corner(plate, side)
    return plate.svg("A drawer box, cut across and from above")


def _across(plate: Plate, side: Px) -> None:
    plate.rect("opening", _LEFT, _TOP, _RIGHT, _BOTTOM)
    clear = plate.size("box_clear", 12_00)
    low, high = _BOTTOM - clear, _TOP + clear + 10_00
    left, right = _LEFT + _AIR, _RIGHT - _AIR
    panel, groove = plate.size("boxes_bottom", 12_00), plate.size("boxes_groove", 10_00)
    groove = min(groove, side - 3_00)
    floor = low - 22_00
    plate.cut(left, high, left + side, low)
    plate.cut(right - side, high, right, low)
    plate.cut(left + side - groove, floor - panel, right - side + groove, floor, leaning=-1)
    plate.across("boxes_side", left, left + side, 12_00, "sides", base=high)
    plate.upright("boxes_bottom", floor - panel, floor, 130_00, "bottom")
    plate.across("boxes_groove", right - side, right - side + groove, floor - panel - 12_00,
                 "groove")  # fmt: skip
    plate.upright("box_clear", low, _BOTTOM, 268_00, "free", base=right)
    plate.upright("boxes_heights", high, low, 292_00, "high", base=right)
    plate.points("boxes_material", 145_00, 80_00, "of {}")


def _corner(plate: Plate, side: Px) -> None:
    joint = plate.figures["boxes_joint"].value
    left, top = 60_00, 230_00
    inner = left + side
    depth = {"butt": 0, "through-dovetail": side}.get(str(joint), _joint_depth(plate, side))
    front = top + (18_00 if joint == "dado" else 0)
    plate.cut(left, top, inner, 340_00)
    plate.cut(inner - depth, front, 260_00, front + side, leaning=-1)
    plate.across("boxes_joint_depth", inner - _joint_depth(plate, side), inner, 215_00, "depth",
                 base=top)  # fmt: skip
    plate.points("boxes_joint", 180_00, 300_00, "corners: {}")


def _joint_depth(plate: Plate, side: Px) -> Px:
    """Where nobody says half the side."""
    figures = plate.figures
    depth, thick = figures["boxes_joint_depth"].value, figures["boxes_side"].value
    if isinstance(depth, str) or not depth or not thick:
        return side // 2
    return min(side, int(depth / thick * side))

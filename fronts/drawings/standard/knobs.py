"""Knobs and pulls: on a door, on drawer fronts, above the floor, and cut along."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_KNOB: Px = 6_00
_FLOOR: Px = 370_00


def knobs_drawing(figures: Figures) -> str:
    """Where they go; below, how high, and what they are screwed through."""
    plate = Plate(figures)
    _on_a_door(plate)
    _on_drawers(plate)
    _above_the_floor(plate)
    _screwed(plate)
    return plate.svg("Where knobs and pulls go")


def _on_a_door(plate: Plate) -> None:
    left, right, top, bottom = 20_00, 120_00, 30_00, 180_00
    plate.rect("front", left, top, right, bottom)
    x = right - plate.size("knob_from_side", 26_00, most=50_00)
    y = top + plate.size("knob_from_end", 50_00, most=110_00)
    plate.circle("front", x, y, _KNOB)
    plate.points("front_handle", 70_00, 120_00, "{}")
    plate.across("knob_from_side", x, right, 14_00, "from edge", base=y)
    plate.upright("knob_from_end", top, y, 140_00, "from end", base=x)


def _on_drawers(plate: Plate) -> None:
    wide = plate.size("wide_drawer", 130_00, most=150_00)
    left, y = 235_00, 44_00
    plate.rect("front", left, 30_00, left + wide, 62_00)
    for x in (left + wide // 4, left + wide * 3 // 4):
        plate.circle("front", x, y, _KNOB)
    plate.across("wide_drawer", left, left + wide, 80_00, "two knobs from", base=62_00)
    miss, x = plate.size("knobs_line", 18_00), 280_00
    for top, at in ((108_00, x), (140_00, x + miss)):
        plate.rect("front", left, top, left + 100_00, top + 28_00)
        plate.circle("front", at, top + 14_00, _KNOB)
    plate.across("knobs_line", x, x + miss, 186_00, "miss shows", base=154_00)


def _above_the_floor(plate: Plate) -> None:
    plate.line("floor", 20_00, _FLOOR, 200_00, _FLOOR)
    reach, knob = plate.size("easy_reach", 120_00, most=140_00), plate.size("knob_height", 92_00,
                                                                       most=140_00)  # fmt: skip
    plate.rect("front", 30_00, _FLOOR - 150_00, 80_00, _FLOOR - 4_00)
    plate.circle("front", 70_00, _FLOOR - knob, _KNOB)
    plate.upright("knob_height", _FLOOR - knob, _FLOOR, 92_00, "tall door", base=70_00)
    plate.line("hand", 84_00, _FLOOR - reach, 200_00, _FLOOR - reach)
    plate.upright("easy_reach", _FLOOR - reach, _FLOOR, 190_00, "easy reach")


def _screwed(plate: Plate) -> None:
    face, y = 330_00, 300_00
    panel, out = plate.size("knob_panel", 26_00), plate.size("handle_projection", 36_00, most=60_00)
    hole = plate.size("knob_hole", 12_00)
    plate.cut(face - panel, y - 45_00, face, y - hole // 2)
    plate.cut(face - panel, y + hole // 2, face, y + 45_00)
    plate.rect("front", face, y - 5_00, face + out - 10_00, y + 5_00)
    plate.rect("front", face + out - 10_00, y - 14_00, face + out, y + 14_00)
    plate.across("knob_panel", face - panel, face, y - 60_00, "panel from", base=y - 45_00)
    plate.across("handle_projection", face, face + out, y + 62_00, "stands out", base=y)
    plate.upright("knob_hole", y - hole // 2, y + hole // 2, face - panel - 14_00, "⌀",
                  base=face - panel)  # fmt: skip

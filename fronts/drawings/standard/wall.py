"""What stands side by side: two cabinets from the front, and a corner from above."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_WALL: Px = 200_00
_FACE: Px = 255_00
"""The back wall, and the front faces along it, seen from above."""
_CORNER: Px = 385_00
_SIDE_FACE: Px = 325_00


def wall_drawing(figures: Figures) -> str:
    """Lines and runs above, what opens past something below."""
    plate = Plate(figures)
    _from_the_front(plate)
    _from_above(plate)
    return plate.svg("Cabinets side by side, from the front and from above")


def _from_the_front(plate: Plate) -> None:
    end = 150_00
    start = end + plate.size("filler", 24_00)
    miss = plate.size("lines_seen", 14_00)
    for left, right, line in ((40_00, end, 60_00), (start, start + 110_00, 60_00 + miss)):
        plate.rect("cabinet", left, 20_00, right, 150_00)
        plate.rect("front", left + 8_00, 28_00, right - 8_00, line - 4_00)
        plate.rect("front", left + 8_00, line + 4_00, right - 8_00, 142_00)
    plate.across("filler", end, start, 165_00, "still one run", base=150_00)
    plate.line("dimension", 150_00 - 8_00, 64_00, start + 124_00, 64_00)
    plate.upright("lines_seen", 64_00, 64_00 + miss, start + 122_00, "shows from",
                  base=start + 102_00)  # fmt: skip


def _from_above(plate: Plate) -> None:
    plate.line("floor", 30_00, _WALL, _CORNER, _WALL)
    plate.line("floor", _CORNER, _WALL, _CORNER, 375_00)
    deeper = plate.size("near_plane", 16_00)
    plate.rect("cabinet", 30_00, _WALL, 110_00, _FACE)
    plate.rect("cabinet", 110_00, _WALL, 180_00, _FACE + deeper)
    plate.upright("near_plane", _FACE, _FACE + deeper, 100_00, "one plane to", base=110_00)
    filler = plate.size("corner_filler", 26_00)
    last = _SIDE_FACE - filler
    plate.rect("cabinet", 180_00, _WALL, last, _FACE)
    plate.rect("box", last, _FACE - 10_00, _SIDE_FACE, _FACE)
    plate.rect("cabinet", _SIDE_FACE, _FACE + filler, _CORNER, 375_00)
    plate.rect("box", _SIDE_FACE, _FACE, _SIDE_FACE + 10_00, _FACE + filler)
    plate.across("corner_filler", last, _SIDE_FACE, 235_00, "filler", base=_FACE)
    knob = _SIDE_FACE - 14_00
    plate.rect("front", knob, 340_00, _SIDE_FACE, 352_00)
    edge = knob - plate.size("passing_clear", 14_00)
    plate.rect("hidden", 200_00, 325_00, edge, 335_00)
    for x in (212_00, edge - 12_00):
        plate.line("hidden", x, _FACE, x, 325_00)
    plate.across("passing_clear", edge, knob, 366_00, "passes with", base=335_00)

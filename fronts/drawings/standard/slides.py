"""Slides and loads: a drawer from its side, and a tall pull-out."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_FRONT, _BACK, _TOP, _BOTTOM = 50_00, 360_00, 30_00, 150_00
_FLOOR: Px = 370_00


def slides_drawing(figures: Figures) -> str:
    """How deep slides may be, and what they carry; below, when a pull-out wants a guide."""
    plate = Plate(figures)
    back, rear = plate.size("back", 12_00), plate.size("rear_clearance", 24_00)
    inside = _BACK - back
    plate.rect("cabinet", _FRONT, _TOP, _BACK, _BOTTOM)
    plate.cut(inside, _TOP, _BACK, _BOTTOM)
    plate.rect("front", _FRONT - 14_00, _TOP + 4_00, _FRONT, _BOTTOM - 4_00)
    plate.rect("box", _FRONT, 60_00, inside - rear - 10_00, 130_00)
    plate.rect("hidden", _FRONT, 116_00, inside - rear, 126_00)
    plate.across("rear_clearance", inside - rear, inside, 170_00, "free behind", base=126_00)
    plate.across("back", inside, _BACK, 14_00, "back", base=_TOP)
    for x in range(80_00, inside - rear - 30_00, 40_00):
        plate.line("dimension", x, 92_00, x, 110_00)
        plate.drawing.solid([(x - 3_00, 104_00), (x + 3_00, 104_00), (x, 112_00)])
    plate.points("drawer_load", 165_00, 82_00, "load {}")
    plate.points("load_margin", 200_00, 198_00, "class at least {} of what it carries")
    plate.points("slide_classes", 200_00, 220_00, "classes {}")
    _pull_out(plate)
    return plate.svg("A drawer on its slide from the side, and a tall pull-out")


def _pull_out(plate: Plate) -> None:
    left, right = 150_00, 200_00
    top = _FLOOR - plate.size("guide_over", 100_00, most=130_00)
    plate.rect("box", left, top, right, _FLOOR)
    plate.rect("hidden", left + 15_00, top - 8_00, right - 15_00, top)
    plate.upright("guide_over", top, _FLOOR, 225_00, "guide at the top over", base=right)
    plate.points("guide_times", left - 10_00, (top + _FLOOR) // 2, "or {} × its width")

"""Fixed fronts and tip-outs: screws from behind, and a tray from above."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_MOST_DRAWN = 8


def fixed_drawing(figures: Figures) -> str:
    """The fixed front cut along above, the tray in its opening below."""
    plate = Plate(figures)
    _fixed(plate)
    _tray(plate)
    return plate.svg("A fixed front cut along, and a tip-out tray from above")


def _fixed(plate: Plate) -> None:
    left, right, face = 60_00, 330_00, 90_00
    wood = plate.size("fixed_behind", 30_00, most=56_00)
    plate.cut(left, face - wood, right, face)
    plate.cut(left, face, right, face + 26_00, leaning=-1)
    count = min(_MOST_DRAWN, int(plate.figures["fixed_screws"].value))
    for place in range(count):
        x = left + (right - left) * (2 * place + 1) // (2 * count)
        plate.rect("front", x - 6_00, face - wood - 4_00, x + 6_00, face - wood)
        plate.line("front", x, face - wood, x, face + 16_00)
    plate.upright("fixed_behind", face - wood, face, 345_00, "through", base=right)
    plate.points("fixed_screws", 195_00, 136_00, "{} screws a front")


def _tray(plate: Plate) -> None:
    left, right, face = 60_00, 330_00, 300_00
    aside = plate.size("tray_side", 30_00, most=60_00)
    deep = plate.size("tray_depth", 60_00, most=90_00)
    top: Px = face - deep
    plate.rect("front", left - 10_00, face, right + 10_00, face + 16_00)
    plate.line("cabinet", left, face, left, 190_00)
    plate.line("cabinet", right, face, right, 190_00)
    plate.rect("box", left + aside, top, right - aside, face)
    plate.across("tray_side", left, left + aside, 285_00, "shorter")
    plate.upright("tray_depth", top, face, 352_00, "deep", base=right - aside)

"""What goes with an order: parts counted with a front, a hinge and slides; spares on top."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_MOST_DRAWN = 16
_ORDERED = 20
_ROUND: Px = 4_00


def order_drawing(figures: Figures) -> str:
    """Each part with as many marks as are counted with it."""
    plate = Plate(figures)
    plate.rect("front", 40_00, 30_00, 120_00, 150_00)
    _marks(plate, "bumpers", 40_00, 120_00, 140_00)
    plate.points("bumpers", 80_00, 166_00, "{} bumpers")
    plate.rect("front", 170_00, 60_00, 270_00, 120_00)
    plate.circle("front", 195_00, 90_00, 18_00)
    _marks(plate, "hinge_screws", 215_00, 268_00, 90_00)
    plate.points("hinge_screws", 220_00, 136_00, "{} screws a hinge")
    for y in (200_00, 230_00):
        plate.rect("front", 40_00, y, 360_00, y + 16_00)
    _marks(plate, "slide_screws", 44_00, 356_00, 223_00)
    plate.points("slide_screws", 200_00, 262_00, "{} screws a pair of slides")
    _spares(plate)
    return plate.svg("What is counted with each part, and spares")


def _marks(plate: Plate, name: str, left: Px, right: Px, y: Px) -> None:
    count = min(_MOST_DRAWN, int(plate.figures[name].value))
    for place in range(count):
        plate.circle("box", left + (right - left) * (2 * place + 1) // (2 * count), y, _ROUND)


def _spares(plate: Plate) -> None:
    """Of twenty ordered, so many more."""
    left, y, pitch = 40_00, 310_00, 12_00
    for place in range(_ORDERED):
        plate.circle("box", left + pitch * place, y, _ROUND)
    more = -(-_ORDERED * plate.figures["spares"].value // 100)
    for place in range(min(_ORDERED, int(more))):
        x = left + pitch * (_ORDERED + place % 6 + 1)
        plate.circle("hidden", x, y + pitch * (place // 6), _ROUND)
    plate.points("spares", 160_00, 330_00, "spares: {} more")

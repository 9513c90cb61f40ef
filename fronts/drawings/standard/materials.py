"""Materials and the air: a slab and a five-piece front, and scales of moisture and warmth."""

from fractions import Fraction

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_START, _END = 40_00, 360_00


def materials_drawing(figures: Figures) -> str:
    """What fronts are of above, what the air does to them below."""
    plate = Plate(figures)
    plate.rect("front", 40_00, 40_00, 150_00, 160_00)
    plate.rect("front", 250_00, 40_00, 360_00, 160_00)
    plate.rect("cabinet", 274_00, 64_00, 336_00, 136_00)
    thick = plate.size("front_thickness", 20_00)
    plate.cut(200_00 - thick // 2, 40_00, 200_00 + thick // 2, 160_00)
    plate.across("front_thickness", 200_00 - thick // 2, 200_00 + thick // 2, 22_00, "thick",
                 base=40_00)  # fmt: skip
    plate.points("front_build", 95_00, 24_00, "built as: {}")
    plate.points("front_material", 200_00, 204_00, "all fronts: {}")
    plate.points("material", 95_00, 178_00, "slab: {}")
    plate.points("frame_material", 300_00, 178_00, "frame: {}")
    _scale(plate, 235_00, "humidity_low", "driest air", Fraction(100))
    _scale(plate, 275_00, "humidity_high", "dampest air", Fraction(100))
    _scale(plate, 315_00, "made_at", "wood when made", Fraction(30))
    _scale(plate, 355_00, "site_celsius", "room", Fraction(60))
    return plate.svg("What fronts are made of, and the air on site")


def _scale(plate: Plate, y: Px, name: str, says: str, most: Fraction) -> None:
    """A line as long as the number's range, and how much of it the number is."""
    value = plate.figures[name].value
    part = max(Fraction(0), min(Fraction(1), Fraction(value) / most))
    plate.line("cabinet", _START, y, _END, y)
    plate.line("cabinet", _END, y - 4_00, _END, y + 4_00)
    end = _START + int((_END - _START) * part)
    plate.across(name, _START, max(end, _START + 1_00), y, says)

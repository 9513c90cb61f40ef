"""Five-piece fronts and glass: a door and a low drawer front, and their edges cut across."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px


def five_piece_drawing(figures: Figures) -> str:
    """Frames from the front above, grooves and rabbets cut across below."""
    plate = Plate(figures)
    _door(plate)
    _low_front(plate)
    _groove(plate)
    _rabbet(plate)
    return plate.svg("Five-piece fronts, and their panels and glass cut across")


def _door(plate: Plate) -> None:
    left, right, top = 100_00, 200_00, 30_00
    bottom = top + plate.size("middle_rail_over", 140_00, most=190_00)
    stile, rail = plate.size("stile", 24_00, most=44_00), plate.size("rail", 24_00, most=50_00)
    plate.rect("front", left, top, right, bottom)
    plate.rect("cabinet", left + stile, top + rail, right - stile, bottom - rail)
    y = (top + bottom) // 2
    plate.rect("hidden", left + stile, y - 8_00, right - stile, y + 8_00)
    plate.across("stile", left, left + stile, 14_00, "stile", base=top)
    plate.upright("rail", top, top + rail, 88_00, "rail", base=left)
    plate.upright("middle_rail_over", top, bottom, 216_00, "middle rail over", base=right)


def _low_front(plate: Plate) -> None:
    left, right, top, bottom = 270_00, 390_00, 8_00, 78_00
    rail, shows = plate.size("narrow_rail", 18_00, most=26_00), plate.size("least_panel", 22_00,
                                                                      most=26_00)  # fmt: skip
    middle = (top + bottom) // 2
    plate.rect("front", left, top, right, bottom)
    plate.rect("cabinet", left + 20_00, middle - shows // 2, right - 20_00, middle + shows // 2)
    plate.upright("narrow_rail", middle - shows // 2 - rail, middle - shows // 2, 300_00, "rail to")
    plate.upright("least_panel", middle - shows // 2, middle + shows // 2, 330_00, "shows")


def _groove(plate: Plate) -> None:
    """The stile's groove with the panel in it."""
    left, edge, y = 40_00, 120_00, 275_00
    tongue, panel = plate.size("tongue", 34_00, most=60_00), plate.size("panel_thickness", 16_00,
                                                                  most=30_00)  # fmt: skip
    short = min(plate.size("panel_clearance", 12_00), tongue - 3_00)
    floor, half = edge - tongue, panel // 2
    plate.path("box", [
        (left, y - 26_00), (edge, y - 26_00), (edge, y - half), (floor, y - half),
        (floor, y + half), (edge, y + half), (edge, y + 26_00), (left, y + 26_00),
        (left, y - 26_00),
    ])  # fmt: skip
    plate.cut(floor + short, y - half, 200_00, y + half)
    plate.across("tongue", floor, edge, y - 40_00, "tongue", base=y - half)
    plate.across("panel_clearance", floor, floor + short, y + 40_00, "play", base=y + half)
    plate.upright("panel_thickness", y - half, y + half, 212_00, "panel", base=200_00)
    plate.points("solid_panels", 250_00, y + 40_00, "panel: {}")


def _rabbet(plate: Plate) -> None:
    """The stile's rabbet with the glass in it."""
    left, edge, y = 40_00, 120_00, 370_00
    deep, glass = plate.size("glass_rabbet", 34_00, most=60_00), plate.size("glass_thickness",
                                                                   14_00)  # fmt: skip
    short: Px = min(plate.size("glass_play", 10_00), deep - 3_00)
    floor = edge - deep
    plate.path("box", [
        (left, y - 24_00), (floor, y - 24_00), (floor, y), (edge, y), (edge, y + 20_00),
        (left, y + 20_00), (left, y - 24_00),
    ])  # fmt: skip
    plate.rect("front", floor + short, y - glass, 200_00, y)
    plate.across("glass_rabbet", floor, edge, y + 34_00, "rabbet", base=y)
    plate.across("glass_play", floor, floor + short, y - 38_00, "play", base=y - glass)
    plate.upright("glass_thickness", y - glass, y, 212_00, "glass", base=200_00)

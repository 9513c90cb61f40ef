"""What a door maker is told: a five-piece door, each word at the part that it is about."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate


def bought_drawing(figures: Figures) -> str:
    """The door from the front, and its edge cut across."""
    plate = Plate(figures)
    plate.rect("front", 130_00, 60_00, 270_00, 250_00)
    plate.rect("cabinet", 158_00, 88_00, 242_00, 222_00)
    plate.rect("cabinet", 166_00, 96_00, 234_00, 214_00)
    plate.points("made_by", 200_00, 20_00, "{}")
    plate.points("door_style", 200_00, 40_00, "style: {}")
    plate.points("species", 220_00, 130_00, "species: {}")
    plate.points("finish", 220_00, 170_00, "finish: {}")
    plate.path("box", [
        (110_00, 290_00), (100_00, 296_00), (100_00, 312_00), (106_00, 318_00), (170_00, 318_00),
        (170_00, 300_00), (160_00, 290_00), (110_00, 290_00),
    ])  # fmt: skip
    plate.cut(162_00, 302_00, 290_00, 312_00)
    plate.points("edge_profile", 100_00, 340_00, "edge: {}")
    plate.points("panel_profile", 280_00, 335_00, "panel: {}")
    return plate.svg("A door as its maker is told of it")

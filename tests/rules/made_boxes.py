"""Boxes to be made, worked out from a kitchen of one front."""

from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.results import Part
from fronts.rules.schedule import schedule


def parts_of_box(of: Kitchen) -> dict[str, Part]:
    """The pieces of the one box, by their names."""
    return {part.part: part for part in schedule(of).parts if part.part.startswith("box-")}


def outside(of: Kitchen) -> tuple[Mm, Mm, Mm | None, Mm]:
    """Width, height, depth and rise of the one box."""
    (box,) = schedule(of).boxes
    return box.width, box.height, box.depth, box.rise

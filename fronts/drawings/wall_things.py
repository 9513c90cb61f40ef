"""What stands between cabinets, in a wall's elevation: outlines, with their names."""

from collections.abc import Sequence

from fronts.drawings.drawing import Drawing
from fronts.drawings.front_marks import Letters
from fronts.drawings.lettering import shortened
from fronts.drawings.scale import Scale
from fronts.drawings.svg import Px
from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.rect import Rect
from fronts.rules.runs import Placed, is_solid
from fronts.rules.wall_facts import Thing

_AIR: Px = 4_00


def things_on_wall(standing: Sequence[Placed]) -> list[tuple[Thing, Rect]]:
    """The things of one run that are there to be seen, each with its outline on the wall.

    One whose height nobody gave is as high as the cabinet beside it.
    """
    cabinets = [placed for placed in standing if isinstance(placed.what, Cabinet)]
    seen: list[tuple[Thing, Rect]] = []
    for placed in standing:
        thing = placed.what
        if not isinstance(thing, Thing) or not is_solid(thing):
            continue
        beside = min(cabinets, key=lambda one: abs(one.x - placed.x), default=None)
        y, height = _upright(thing, placed.y, beside)
        if height > 0:
            seen.append((thing, Rect(placed.x, y, thing.width, height)))
    return seen


def _upright(thing: Thing, y: Mm | None, beside: Placed | None) -> tuple[Mm, Mm]:
    """Its lower edge above the floor, and its height; 0 where nothing tells it."""
    if beside is None:
        return y or NOTHING, thing.height or NOTHING
    low = y if y is not None and (y or thing.height is not None) else beside.y or NOTHING
    return low, thing.height if thing.height is not None else beside.top - low


def draw_thing(drawing: Drawing, scale: Scale, thing: Thing, place: Rect, letters: Letters) -> None:
    """Its outline, and what it is called where there is room."""
    area = scale.area(place.x, place.y, place.width, place.height)
    drawing.rect("cabinet", area)
    x, y = area.middle
    for row, words in enumerate([thing.label, thing.name]):
        text = shortened(words, letters.figure, area.width - _AIR, bold=True)
        if text:
            drawing.text(x, y + row * letters.name, text, letters.figure, bold=not row, kind="name")

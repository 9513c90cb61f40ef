"""A door on hand as it is, with its bores and its knob hole; and laid over its opening."""

from dataclasses import dataclass

from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.scale import Scale, fitted
from fronts.drawings.svg import Px
from fronts.rules.kinds import FRONT_BUILDS
from fronts.rules.kitchen import DoorOnHand, Opening
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Front

_ROOM: tuple[Px, Px] = (170_00, 190_00)
_TIGHT: Px = 10_00
_NOTE: Px = 14_00


@dataclass(frozen=True, slots=True)
class Hole:
    """An opening where it is on its wall."""

    x: Mm
    y: Mm
    opening: Opening


def door_alone(door: DoorOnHand) -> str:
    """The door as an `<svg>`, seen from the front: its frame, old bores, old knob hole."""
    drawing = Drawing(SCREEN)
    scale = Scale(fitted(door.width, door.height, room=_ROOM))
    drawing.rect("front", scale.area(NOTHING, NOTHING, door.width, door.height))
    _inside(drawing, scale, door, NOTHING, NOTHING)
    return drawing.svg(f"Door {door.label}", "door")


def door_over_opening(door: DoorOnHand, front: Front, hole: Hole) -> str:
    """The front that the door becomes, over its opening; what is sawn off the door is hatched."""
    left, bottom = front.x - front.trim.left, front.y - front.trim.bottom
    drawing = Drawing(SCREEN)
    size = fitted(max(door.width, hole.opening.width), max(door.height, hole.opening.height),
                  room=_ROOM)  # fmt: skip
    scale = Scale(size, left=min(left, hole.x), bottom=min(bottom, hole.y))
    for x, y, width, height in (
        (left, bottom, front.trim.left, door.height),
        (front.right, bottom, front.trim.right, door.height),
        (front.x, front.top, front.width, front.trim.top),
        (front.x, bottom, front.width, front.trim.bottom),
    ):
        if width and height:
            _hatched(drawing, scale, (x, y, width, height))
    drawing.rect("opening", scale.area(hole.x, hole.y, hole.opening.width, hole.opening.height))
    drawing.rect("hidden", scale.area(left, bottom, door.width, door.height))
    drawing.rect("front", scale.area(front.x, front.y, front.width, front.height))
    _inside(drawing, scale, door, left, bottom)
    middle = scale.area(front.x, front.y, front.width, front.height).middle
    drawing.text(*middle, front.label, _NOTE, bold=True, kind="name")
    return drawing.svg(f"Door {door.label} over {front.label}", "door")


def _inside(drawing: Drawing, scale: Scale, door: DoorOnHand, left: Mm, bottom: Mm) -> None:
    if FRONT_BUILDS[door.build].framed:
        stile, rail = door.stile or PRACTICE.stile, door.rail or PRACTICE.rail
        panel = door.width - 2 * stile, door.height - 2 * rail
        if min(panel) > 0:
            drawing.rect("cabinet", scale.area(left + stile, bottom + rail, *panel))
    holes = [(bore.x, bore.y, door.bore_diameter) for bore in door.hinge_bores]
    if door.knob_hole is not None:
        holes.append((door.knob_hole.x, door.knob_hole.y, door.knob_hole.diameter))
    for x, y, diameter in holes:
        radius = max(150, scale.length(diameter) // 2)
        drawing.circle("box", scale.x(left + x), scale.y(bottom + y), radius)


def _hatched(drawing: Drawing, scale: Scale, strip: tuple[Mm, Mm, Mm, Mm]) -> None:
    """A strip that is sawn off, with strokes across it."""
    area = scale.area(*strip)
    across = area.width < area.height
    start, end = (area.top, area.bottom) if across else (area.left, area.right)
    for at in range(start, end, _TIGHT):
        to = min(at + _TIGHT, end)
        if across:
            drawing.line("hatch", area.left, at, area.right, to)
        else:
            drawing.line("hatch", at, area.top, to, area.bottom)

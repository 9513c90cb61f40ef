"""A door on hand as it is, with its bores and its knob hole; and laid over its opening."""

from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.front_marks import front_area, hatching
from fronts.drawings.scale import Scale, fitted
from fronts.drawings.svg import Px
from fronts.rules.kinds import FRONT_BUILDS
from fronts.rules.kitchen import DoorOnHand
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.practice import PRACTICE
from fronts.rules.rect import Rect
from fronts.rules.results import Front

_ROOM: tuple[Px, Px] = (170_00, 190_00)
_PITCH: Px = 10_00
_NOTE: Px = 14_00


def door_alone(door: DoorOnHand) -> str:
    """The door as an `<svg>`, seen from the front: its frame, old bores, old knob hole."""
    drawing = Drawing(SCREEN)
    scale = Scale(fitted(door.width, door.height, room=_ROOM))
    drawing.rect("front", scale.area(NOTHING, NOTHING, door.width, door.height))
    _inside(drawing, scale, door, NOTHING, NOTHING)
    return drawing.svg(f"Door {door.label}", "door")


def door_over_opening(door: DoorOnHand, front: Front, hole: Rect) -> str:
    """The front that the door becomes, over its opening; what is sawn off the door is hatched."""
    left, bottom = front.x - front.trim.left, front.y - front.trim.bottom
    drawing = Drawing(SCREEN)
    size = fitted(max(door.width, hole.width), max(door.height, hole.height),
                  room=_ROOM)  # fmt: skip
    scale = Scale(size, left=min(left, hole.x), bottom=min(bottom, hole.y))
    for x, y, width, height in (
        (left, bottom, front.trim.left, door.height),
        (front.right, bottom, front.trim.right, door.height),
        (front.x, front.top, front.width, front.trim.top),
        (front.x, bottom, front.width, front.trim.bottom),
    ):
        if width and height:
            drawing.lines("hatch", hatching(scale.area(x, y, width, height), _PITCH))
    drawing.rect("opening", scale.area(hole.x, hole.y, hole.width, hole.height))
    drawing.rect("hidden", scale.area(left, bottom, door.width, door.height))
    drawing.rect("front", front_area(scale, front))
    _inside(drawing, scale, door, left, bottom)
    middle = front_area(scale, front).middle
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

"""Where handles that the rule places end up: level with the doors beside, and over the box where
one stands behind.
"""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from fronts.rules.box_place import box_on_front
from fronts.rules.boxes_on_slides import Standing
from fronts.rules.handle_level import DoorOnWall, DoorsOnWalls
from fronts.rules.handle_places import pulled_at
from fronts.rules.handles import HalfSpan, half_span
from fronts.rules.kinds import FRONT_KINDS
from fronts.rules.kitchen import Point
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.making import Make
from fronts.rules.practice import Practice
from fronts.rules.rect import Rect


def settle_handles(
    laid: Sequence[Laid], makes: Sequence[Make], boxes: Mapping[str, Standing], practice: Practice
) -> list[Make]:
    """The makes with their handles where they end up: pull-outs' level with the doors beside
    them, and over its box what stands on one. What a hole or somebody's word says is not moved.
    """
    fronts = list(zip(laid, makes, strict=True))
    doors = DoorsOnWalls([
        DoorOnWall(front.cabinet.wall, _outline(front), front.y + make.middles[0].y)
        for front, make in fronts
        if FRONT_KINDS[make.kind].swings and make.middles
    ])  # fmt: skip
    settled = []
    for front, make in fronts:
        middles = make.middles
        if middles and not make.settled:
            if FRONT_KINDS[make.kind].pulled_high:
                level = doors.handle_beside(front.cabinet.wall, _outline(front))
                span = half_span(make.handle, make.kind)
                up = pulled_at(make.face, level, span, front.y, practice)
                middles = tuple(Point(middle.x, up) for middle in middles)
            standing = boxes.get(front.label)
            if standing is not None:
                outline = box_on_front(front, standing.box)
                middles = tuple(_over(make, middle, outline, practice) for middle in middles)
        settled.append(replace(make, middles=middles))
    return settled


def _outline(front: Laid) -> Rect:
    return Rect(front.x, front.y, front.width, front.height)


def _over(make: Make, middle: Point, outline: Rect, practice: Practice) -> Point:
    """Over the box, but never for that from the frame into a panel too thin for a screw."""
    moved = over_box(middle, outline, half_span(make.handle, make.kind), practice)
    into_panel = make.face.is_thin_at(moved.x, moved.y, practice.knob_panel)
    return middle if into_panel else moved


def over_box(middle: Point, box: Rect, span: HalfSpan, practice: Practice) -> Point:
    """The middle moved, as little as may be, to where the screws go through the box front too."""
    margin, (across, up) = 2 * practice.hole_to_edge, span
    return Point(
        _between(middle.x, box.x + margin + across, box.right - margin - across),
        _between(middle.y, box.y + margin + up, box.top - margin - up),
    )


def _between(place: Mm, low: Mm, high: Mm) -> Mm:
    """As near to `place` as the limits allow; in their middle where they leave no room."""
    middle = (low + high) / 2
    return min(max(place, min(low, middle)), max(high, middle))

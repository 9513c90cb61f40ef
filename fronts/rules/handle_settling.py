"""Where each front's handles end up: stated, by an old hole, by rule; level with the doors
beside, and over the box where one stands behind.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.rules.box_facts import Box
from fronts.rules.box_place import box_on_front
from fronts.rules.face import Face
from fronts.rules.handle_places import handle_places, pulled_at
from fronts.rules.handles import half_span
from fronts.rules.items import HandleItem
from fronts.rules.kinds import FRONT_KINDS, FrontKind
from fronts.rules.kitchen import DoorOnHand, Point
from fronts.rules.laying import Laid
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.practice import Practice
from fronts.rules.rect import Rect


def stated_places(laid: Laid, door: DoorOnHand | None) -> tuple[Point, ...]:
    """The middles that somebody stated, else the knob hole of the door; `door` is trimmed."""
    own = laid.decided.handles
    if own:
        return tuple(Point(place.x, place.y) for place in own)
    hole = door.knob_hole if door else None
    opens = FRONT_KINDS[laid.opening.closing.front].opens
    return (Point(hole.x, hole.y),) if hole and opens else ()


def ruled_places(laid: Laid, face: Face, practice: Practice) -> tuple[Point, ...]:
    """The middles by the rule; what does not open has a handle where somebody chose one."""
    kind = laid.opening.closing.front
    places = handle_places(kind, laid.cabinet.kind, laid.hinged, face, laid.y, practice)
    if places or not laid.decided.handle:
        return places
    return (Point(face.width / 2, pulled_at(face, None, laid.y, practice)),)


@dataclass(frozen=True, slots=True)
class Handled:
    """A front with the middles of its handles, on its wall; `settled` ones are not moved."""

    laid: Laid
    kind: FrontKind
    face: Face
    handle: HandleItem | None
    middles: tuple[Point, ...]
    settled: bool

    @property
    def heights(self) -> tuple[Mm, ...]:
        """How high above the floor its handles are."""
        return tuple(self.laid.y + middle.y for middle in self.middles)


def settle(
    fronts: Sequence[Handled], boxes: Mapping[str, Box], practice: Practice
) -> list[tuple[Point, ...]]:
    """The middles of each front's handles: pull-outs level with the doors beside them, and all
    that stand on a box over it.
    """
    doors = [one for one in fronts if FRONT_KINDS[one.kind].swings and one.middles]
    settled = []
    for front in fronts:
        middles = front.middles
        if middles and not front.settled:
            if FRONT_KINDS[front.kind].pulled_high:
                level = _level_beside(front, doors)
                up = pulled_at(front.face, level, front.laid.y, practice)
                middles = tuple(Point(middle.x, up) for middle in middles)
            box = boxes.get(front.laid.label)
            if box is not None:
                outline = box_on_front(front.laid, box)
                middles = tuple(_over(front, middle, outline, practice) for middle in middles)
        settled.append(middles)
    return settled


def _over(front: Handled, middle: Point, outline: Rect, practice: Practice) -> Point:
    """Over the box, but never for that from the frame into a panel too thin for a screw."""
    moved = over_box(middle, outline, half_span(front.handle, front.kind), practice)
    into_panel = front.face.is_thin_at(moved.x, moved.y, practice.knob_panel)
    return middle if into_panel else moved


def over_box(middle: Point, box: Rect, span: tuple[Mm, Mm], practice: Practice) -> Point:
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


def _level_beside(front: Handled, doors: Sequence[Handled]) -> Mm | None:
    """How high the handle is of the nearest door beside it: on its wall, at its heights."""
    laid = front.laid
    beside = [
        (_apart(laid, door.laid), door.heights[0])
        for door in doors
        if door.laid.cabinet.wall == laid.cabinet.wall
        and door.laid.y < laid.top
        and laid.y < door.laid.top
        and laid.y < door.heights[0] < laid.top
    ]
    return min(beside, default=(NOTHING, None), key=lambda one: one[0])[1]


def _apart(one: Laid, other: Laid) -> Mm:
    return max(other.x - one.right, one.x - other.right, NOTHING)

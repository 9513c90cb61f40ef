"""Where the middle of a knob or pull goes on a front (common practice, no source).

A door: opposite its hinges, in mid-stile where it has one, else the shop's distance from the
edge; from the bottom corner on a wall cabinet, from the top corner on a base, at the shop's
height on a tall door, and nowhere above easy reach that it can be below (2010 ADA Standards
and ICC A117.1, 308: 48 in). A drawer front: its middle, in the top rail where the panel is
thin; two on a wide one, at the quarter points.
"""

from fractions import Fraction

from fronts.rules.face import Face
from fronts.rules.kinds import CABINET_KINDS, FRONT_KINDS, CabinetKind, FrontKind, Hinged
from fronts.rules.kitchen import DoorOnHand, Point
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice

QUARTER = Fraction(1, 4)


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


def handle_places(
    kind: FrontKind,
    cabinet: CabinetKind,
    hinged: Hinged | None,
    face: Face,
    bottom: Mm,
    practice: Practice,
) -> tuple[Point, ...]:
    """The middles of a front's handles by the rule; `bottom` is the front's, from the floor."""
    traits = FRONT_KINDS[kind]
    if not traits.opens:
        return ()
    if traits.swings:
        return (_on_door(cabinet, hinged, face, bottom, practice),)
    if traits.pulled_high:
        return (Point(face.width / 2, pulled_at(face, None, bottom, practice)),)
    up = _drawer_height(face, practice)
    if traits.two_knobs_when_wide and face.width >= practice.wide_drawer:
        return (Point(face.width * QUARTER, up), Point(face.width * (1 - QUARTER), up))
    return (Point(face.width / 2, up),)


def pulled_at(face: Face, beside: Mm | None, bottom: Mm, practice: Practice) -> Mm:
    """How high on a pull-out front: level with the doors beside it, else near its top.

    `beside` is how high above the floor their handles are, None where there are none. Never in
    a panel too thin for a screw: then in the middle of the top rail.
    """
    up = _near(face.height, practice.knob_from_end)
    if beside is not None and 0 < beside - bottom < face.height:
        up = beside - bottom
    if face.framed and face.panel_thickness < practice.knob_panel:
        in_panel = face.through(face.width / 2, up) == "panel"
        return face.height - face.frame.top / 2 if in_panel else up
    return up


def _drawer_height(face: Face, practice: Practice) -> Mm:
    if face.framed and face.panel_thickness < practice.knob_panel:
        return face.height - face.frame.top / 2
    return face.height / 2


def _on_door(
    cabinet: CabinetKind, hinged: Hinged | None, face: Face, bottom: Mm, practice: Practice
) -> Point:
    if hinged in ("top", "bottom"):
        end = face.frame.bottom if hinged == "top" else face.frame.top
        from_end = end / 2 if face.framed else min(practice.knob_from_end, face.height / 2)
        return Point(face.width / 2, from_end if hinged == "top" else face.height - from_end)
    free = face.frame.left if hinged == "right" else face.frame.right
    aside = free / 2 if face.framed else min(practice.knob_from_side, face.width / 2)
    up = _door_height(cabinet, face.height, bottom, practice)
    return Point(aside if hinged == "right" else face.width - aside, up)


def _door_height(cabinet: CabinetKind, height: Mm, bottom: Mm, practice: Practice) -> Mm:
    """From the door's bottom: by the cabinet's kind, and within reach where the door is."""
    low, high = min(practice.knob_from_end, height / 2), _near(height, practice.knob_from_end)
    traits = CABINET_KINDS[cabinet]
    if traits.hangs:
        return low
    wished = practice.knob_height - bottom if traits.pulled_at_height else high
    return max(low, min(high, wished, practice.easy_reach - bottom))


def _near(height: Mm, from_end: Mm) -> Mm:
    return max(height - from_end, height / 2)

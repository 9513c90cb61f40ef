"""Where the middle of a knob or pull goes on a front (common practice, no source).

A door: opposite its hinges, in mid-stile where it has one, else the shop's distance from the
edge; from the bottom corner on a wall cabinet, from the top corner on a base, at the shop's
height on a tall door, and nowhere above easy reach that it can be below (2010 ADA Standards
and ICC A117.1, 308: 48 in). What is so far from a corner is a knob's hole, or the nearer one of
a pull. A drawer front: its middle, in the top rail where the panel is thin; two on a wide one,
at the quarter points.
"""

from fractions import Fraction

from fronts.rules.face import Face
from fronts.rules.handles import HalfSpan, half_span
from fronts.rules.items import HandleItem
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


def ruled_places(
    laid: Laid, face: Face, item: HandleItem | None, practice: Practice
) -> tuple[Point, ...]:
    """The middles by the rule; what does not open has a handle where somebody chose one."""
    kind = laid.opening.closing.front
    span = half_span(item, kind)
    places = handle_places(kind, laid.cabinet.kind, laid.hinged, face, span, laid.y, practice)
    if places or not laid.decided.handle:
        return places
    return (Point(face.width / 2, pulled_at(face, None, span, laid.y, practice)),)


def handle_places(
    kind: FrontKind,
    cabinet: CabinetKind,
    hinged: Hinged | None,
    face: Face,
    span: HalfSpan,
    bottom: Mm,
    practice: Practice,
) -> tuple[Point, ...]:
    """The middles of a front's handles by the rule; `bottom` is the front's, from the floor."""
    traits = FRONT_KINDS[kind]
    if not traits.opens:
        return ()
    if traits.swings:
        return (_on_door(cabinet, hinged, face, span, bottom, practice),)
    if traits.pulled_high:
        return (Point(face.width / 2, pulled_at(face, None, span, bottom, practice)),)
    up = _drawer_height(face, span, practice)
    if traits.two_knobs_when_wide and face.width >= practice.wide_drawer:
        return (Point(face.width * QUARTER, up), Point(face.width * (1 - QUARTER), up))
    return (Point(face.width / 2, up),)


def pulled_at(face: Face, beside: Mm | None, span: HalfSpan, bottom: Mm, practice: Practice) -> Mm:
    """How high on a pull-out front: level with the doors beside it, else near its top.

    `beside` is how high above the floor their handles are, None where there are none. Never in
    a panel too thin for a screw: then in the middle of the top rail.
    """
    up = _near(face.height, practice.knob_from_end + span[1])
    if beside is not None and 0 < beside - bottom < face.height:
        up = beside - bottom
    if face.framed and face.panel_thickness < practice.knob_panel:
        in_panel = face.through(face.width / 2, up) == "panel"
        return _in_top_rail(face, span, practice) if in_panel else up
    return up


def _drawer_height(face: Face, span: HalfSpan, practice: Practice) -> Mm:
    if face.framed and face.panel_thickness < practice.knob_panel:
        return _in_top_rail(face, span, practice)
    return face.height / 2


def _in_top_rail(face: Face, span: HalfSpan, practice: Practice) -> Mm:
    return face.height - _in_wood(face.frame.top, span[1], practice)


def _on_door(
    cabinet: CabinetKind,
    hinged: Hinged | None,
    face: Face,
    span: HalfSpan,
    bottom: Mm,
    practice: Practice,
) -> Point:
    across, up = span
    if hinged in ("top", "bottom"):
        rail = face.frame.bottom if hinged == "top" else face.frame.top
        usual = min(practice.knob_from_end + up, face.height / 2)
        from_end = _in_wood(rail, up, practice) if face.framed else usual
        return Point(face.width / 2, from_end if hinged == "top" else face.height - from_end)
    stile = face.frame.left if hinged == "right" else face.frame.right
    usual = min(practice.knob_from_side + across, face.width / 2)
    aside = _in_wood(stile, across, practice) if face.framed else usual
    height = _door_height(cabinet, face.height, up, bottom, practice)
    return Point(aside if hinged == "right" else face.width - aside, height)


def _in_wood(wood: Mm, half: Mm, practice: Practice) -> Mm:
    """From the edge: the middle of a stile or rail, or further in so that a pull ends on it."""
    return max(wood / 2, half + practice.hole_to_edge) if half else wood / 2


def _door_height(cabinet: CabinetKind, height: Mm, half: Mm, bottom: Mm, practice: Practice) -> Mm:
    """From the door's bottom: by the cabinet's kind, and within reach where the door is."""
    from_end = practice.knob_from_end + half
    low, high = min(from_end, height / 2), _near(height, from_end)
    traits = CABINET_KINDS[cabinet]
    if traits.hangs:
        return low
    wished = practice.knob_height - bottom if traits.pulled_at_height else high
    return max(low, min(high, wished, practice.easy_reach - bottom))


def _near(height: Mm, from_end: Mm) -> Mm:
    return max(height - from_end, height / 2)

"""Where a front's knob goes, and how many it takes.

One knob a front, two on a wide drawer front (practice). A door on hand keeps the knob hole
that it has. On a door: at the free edge, low where the door begins above easy reach, high where
it ends below it, else halfway up (common practice, no source).
"""

from fractions import Fraction

from fronts.rules.kinds import FRONT_KINDS, FrontKind, Hinged
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice
from fronts.rules.rect import Rect

QUARTER = Fraction(1, 2) / 2


def knob_count(kind: FrontKind, width: Mm, practice: Practice) -> int:
    """Knobs on a front: none where it does not open, two on a wide drawer front."""
    traits = FRONT_KINDS[kind]
    if not traits.opens:
        return 0
    return 2 if traits.two_knobs_when_wide and width >= practice.wide_drawer else 1


def knob_places(
    kind: FrontKind,
    hinged: Hinged | None,
    bottom: Mm,
    width: Mm,
    height: Mm,
    practice: Practice,
) -> tuple[Point, ...]:
    """Places of a new front's knobs, from its lower left corner; `bottom` is from the floor."""
    count = knob_count(kind, width, practice)
    if FRONT_KINDS[kind].swings:
        return (_on_door(hinged, bottom, width, height, practice),)
    if FRONT_KINDS[kind].pulled_high:
        return (Point(width / 2, _near(height, practice.knob_from_end)),)
    if count == 2:
        return (Point(width * QUARTER, height / 2), Point(width * (1 - QUARTER), height / 2))
    return tuple(Point(width / 2, height / 2) for _ in range(count))


def over_box(knob: Point, box: Rect, practice: Practice) -> Point:
    """The knob moved, as little as may be, to where its screw goes through the box front too."""
    margin = 2 * practice.hole_to_edge
    return Point(
        _between(knob.x, box.x + margin, box.right - margin),
        _between(knob.y, box.y + margin, box.top - margin),
    )


def _between(place: Mm, low: Mm, high: Mm) -> Mm:
    """As near to `place` as the limits allow; in their middle where they leave no room."""
    middle = (low + high) / 2
    return min(max(place, min(low, middle)), max(high, middle))


def _on_door(hinged: Hinged | None, bottom: Mm, width: Mm, height: Mm, practice: Practice) -> Point:
    aside = min(practice.knob_from_side, width / 2)
    if hinged == "top":
        return Point(width / 2, min(practice.knob_from_end, height / 2))
    if hinged == "bottom":
        return Point(width / 2, _near(height, practice.knob_from_end))
    if bottom >= practice.easy_reach:
        up = min(practice.knob_from_end, height / 2)
    elif bottom + height <= practice.easy_reach:
        up = _near(height, practice.knob_from_end)
    else:
        up = height / 2
    return Point(aside if hinged == "right" else width - aside, up)


def _near(height: Mm, from_end: Mm) -> Mm:
    return max(height - from_end, height / 2)

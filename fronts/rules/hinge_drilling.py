"""Where a door's hinge cups are bored, and where their plates go in its opening.

      +-----------+
      | o         |   o  a cup: its centre B and half its diameter in from the hinge side,
      |           |      and as far along the door as its hinge
      | o         |
      +-----------+

A plate stands level with its cup, so measured from the opening's edge it is nearer by what
the door laps past that edge, or farther by the gap of an inset door.
"""

from fronts.rules.hinge_results import DoorHinge
from fronts.rules.kinds import Side, is_inset, is_upright
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm
from fronts.rules.results import Front

PLATE_ROW = Mm(37)
"""From a cabinet side's front edge to its row of plate screws (common practice, no source)."""
PLATE_PITCH = Mm(32)
"""From one screw of a hinge plate to the next (common practice, no source)."""


def hinges_upright(front: Front) -> bool:
    """Whether the hinges stand one over another, at the door's left or right."""
    return is_upright(front.hinged)


def cup_centre(front: Front, along: Mm, from_edge: Mm) -> Point:
    """The middle of the hinge cup that is so far along its door, seen from the front."""
    if front.hinged in ("left", "bottom"):
        inward = from_edge
    else:
        inward = (front.width if hinges_upright(front) else front.height) - from_edge
    return Point(inward, along) if hinges_upright(front) else Point(along, inward)


def plate_row(front: Front) -> Mm:
    """From the cabinet side's front edge to the plates' screws: behind an inset door's back."""
    return PLATE_ROW + front.thickness if is_inset(front.plane) else PLATE_ROW


def plate_centres(front: Front) -> tuple[Mm, ...]:
    """Plates in the opening: up from its bottom, or from its left where a door swings up or down.

    None where the door's edge there is a front of the same opening: nothing to measure from.
    """
    measured_from: Side = "bottom" if hinges_upright(front) else "left"
    overlay = front.edges[measured_from].overlay
    return () if overlay is None else tuple(centre - overlay for centre in front.hinge_centres)


def hinge_to_bore(front: Front) -> DoorHinge | None:
    """The hinge whose cups are bored in the shop: none where a door maker does, or they are old."""
    hinge = front.hinge
    return None if hinge is None or front.bought or hinge.in_old_bores else hinge

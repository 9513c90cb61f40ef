"""The hinge bores that a door has from before: used again, or kept clear of.

They are used again where at least as many as the door needs lie on its hinge side, all at one
distance from its edge, and a hinge of the shop's, whose cup fits them, makes the overlay with
that distance. Else new cups keep clear of them.
"""

from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass

from fronts.rules.hinge_choice import HingeSetting, OldBore
from fronts.rules.kinds import Hinged, is_upright
from fronts.rules.kitchen import DoorOnHand, Point
from fronts.rules.lengths import Mm
from fronts.rules.roots import root_up

CLEAR = Mm(45)
"""From a new cup's middle to an old one's, at least (common practice, no source)."""
FINEST = 1000
"""Parts of a millimetre in which a distance is taken that no fraction tells exactly."""


@dataclass(frozen=True, slots=True)
class Reused:
    """A hinge that is set for the bores a door has, and where along the door these are."""

    setting: HingeSetting
    centres: tuple[Mm, ...]


def reused(
    door: DoorOnHand,
    hinged: Hinged,
    count: int,
    choose: Callable[[OldBore], HingeSetting | None],
) -> Reused | None:
    """The bores on the hinge side that serve again, those nearest the edge first; None: none do.

    `choose` picks a hinge for bores of such a diameter and distance.
    """
    along: dict[Mm, set[Mm]] = defaultdict(set)
    for bore in door.hinge_bores:
        if at_hinge_side(bore, door, hinged):
            along[from_edge(bore, door, hinged)].add(_along(bore, hinged))
    for inward, places in sorted(along.items()):
        if len(places) >= count:
            setting = choose(OldBore(door.bore_diameter, inward - door.bore_diameter / 2))
            if setting is not None:
                return Reused(setting, tuple(sorted(places)))
    return None


def plugged(door: DoorOnHand, hinged: Hinged, again: Reused | None) -> list[Point]:
    """The old bores that no hinge uses."""
    if again is None:
        return list(door.hinge_bores)
    inward = again.setting.bore + door.bore_diameter / 2
    return [
        bore
        for bore in door.hinge_bores
        if from_edge(bore, door, hinged) != inward or not at_hinge_side(bore, door, hinged)
    ]


def too_near(door: DoorOnHand, hinged: Hinged, cup_from_edge: Mm) -> list[tuple[Mm, Mm]]:
    """Between which places along the door a new cup comes too near to an old bore."""
    near = []
    for bore in door.hinge_bores:
        aside = from_edge(bore, door, hinged) - cup_from_edge
        room = CLEAR**2 - aside**2
        if room > 0:
            half, at = root_up(room, Mm(1, FINEST)), _along(bore, hinged)
            near.append((at - half, at + half))
    return near


def at_hinge_side(place: Point, door: DoorOnHand, hinged: Hinged) -> bool:
    """Whether a place lies in the half of the door where its hinges are."""
    half = (door.width if is_upright(hinged) else door.height) / 2
    return from_edge(place, door, hinged) < half


def from_edge(place: Point, door: DoorOnHand, hinged: Hinged) -> Mm:
    """How far a place is from the edge that the door is hinged at."""
    match hinged:
        case "left":
            return place.x
        case "right":
            return door.width - place.x
        case "bottom":
            return place.y
        case "top":
            return door.height - place.y


def _along(place: Point, hinged: Hinged) -> Mm:
    return place.y if is_upright(hinged) else place.x

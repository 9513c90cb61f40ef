"""How much is sawn off which side of a door on hand, so that no hole of it is cut.

What comes off in width and in height is tried in order, and the first way is taken that cuts
no hole (the rim of a bore or knob hole stays 3 mm from every sawn edge) and leaves enough of a
five-piece door's frame:

    slab, width          all from the only side without holes; half each; all left; all right
    five-piece, width    half each; all left; all right; where its bores are used again,
                         first all from the side without them
    height               half each; all top; all bottom
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from fronts.rules.kinds import FRONT_BUILDS
from fronts.rules.kitchen import DoorOnHand, KnobHole, Point
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.practice import Practice
from fronts.rules.standard_keys import Sides

LEAST_RIM = Mm(3)
"""From a sawn edge to a hole's rim, at least (common practice, no source)."""

Way = tuple[Mm, Mm]
"""What comes off the low side (left, bottom) and off the high one."""
_Span = tuple[Mm, Mm]
"""A hole from rim to rim in one direction."""


@dataclass(frozen=True, slots=True)
class DoorTrim:
    """What comes off each side; `cuts` where no way spares every hole and the frame.

    `uneven` where a five-piece door loses more from one side than from the other.
    """

    sides: Sides[Mm]
    cuts: bool = False
    uneven: bool = False


NO_TRIM = DoorTrim(Sides(NOTHING, NOTHING, NOTHING, NOTHING))


def trim_of(
    door: DoorOnHand,
    width: Mm,
    height: Mm,
    least_stile: Mm,
    practice: Practice,
    *,
    spare_bores: bool = False,
) -> DoorTrim:
    """How the door is trimmed to this size; `spare_bores` where hinges use its bores again."""
    framed = FRONT_BUILDS[door.build].framed
    over, up = door.width - width, door.height - height
    across, along = _holes(door, across=True), _holes(door, across=False)
    stile = (door.stile or practice.stile) - least_stile if framed else None
    rail = (door.rail or practice.rail) - least_stile if framed else None
    if framed:
        bores = _holes(door, across=True, knob=False)
        bare = _bare_side(over, bores, door.width) if spare_bores else []
    else:
        bare = _bare_side(over, across, door.width)
    half, all_low, all_high = _ways(over)
    (left, right), wide = _first([*bare, half, all_low, all_high], across, door.width, stile)
    half, all_low, all_high = _ways(up)
    (bottom, top), high = _first([half, all_high, all_low], along, door.height, rail)
    return DoorTrim(
        Sides(left, right, top, bottom),
        cuts=not (wide and high),
        uneven=framed and (left != right or top != bottom),
    )


def trimmed(door: DoorOnHand, off: Sides[Mm]) -> DoorOnHand:
    """The door once that is sawn off, its holes reckoned from its new edges."""
    hole = door.knob_hole
    return replace(
        door,
        width=door.width - off.left - off.right,
        height=door.height - off.top - off.bottom,
        knob_hole=hole and replace(hole, x=hole.x - off.left, y=hole.y - off.bottom),
        hinge_bores=tuple(
            Point(bore.x - off.left, bore.y - off.bottom) for bore in door.hinge_bores
        ),
    )


def _ways(trim: Mm) -> tuple[Way, Way, Way]:
    """Half from each side, all from the low side, all from the high one."""
    return (trim / 2, trim / 2), (trim, NOTHING), (NOTHING, trim)


def _bare_side(trim: Mm, holes: Sequence[_Span], size: Mm) -> list[Way]:
    """All from the side in whose half there is no hole, if it is the only one."""
    low = any(start + end < size for start, end in holes)
    high = any(start + end > size for start, end in holes)
    if low == high:
        return []
    return [(NOTHING, trim)] if low else [(trim, NOTHING)]


def _first(
    ways: Sequence[Way], holes: Sequence[_Span], size: Mm, most: Mm | None
) -> tuple[Way, bool]:
    """The first way that cuts no hole and takes at most so much off a side; else just the first."""
    sound = (way for way in ways if not _cuts(way, holes, size) and _leaves_frame(way, most))
    way = next(sound, None)
    return (ways[0], False) if way is None else (way, True)


def _leaves_frame(way: Way, most: Mm | None) -> bool:
    """Whether what is sawn off leaves enough of the frame; a side that stays may be narrow."""
    return most is None or max(way) == 0 or max(way) <= most


def _cuts(way: Way, holes: Sequence[_Span], size: Mm) -> bool:
    low, high = way
    return any(
        (low > 0 and start - low < LEAST_RIM) or (high > 0 and size - high - end < LEAST_RIM)
        for start, end in holes
    )


def _holes(door: DoorOnHand, *, across: bool, knob: bool = True) -> list[_Span]:
    """Its bores, and the hole of its knob, from rim to rim."""
    holes: list[tuple[Point | KnobHole, Mm]] = [
        (bore, door.bore_diameter) for bore in door.hinge_bores
    ]
    if knob and door.knob_hole:
        holes.append((door.knob_hole, door.knob_hole.diameter))
    places = [(hole.x if across else hole.y, diameter / 2) for hole, diameter in holes]
    return [(at - half, at + half) for at, half in places]

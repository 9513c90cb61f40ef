"""A tight solid-wood slab over the year: how far it moves, and the least gap that is left.

A hinged door is held at its hinges and moves towards its free edge; anything else moves
half each way.
"""

from collections.abc import Mapping, Sequence
from typing import Literal

from fronts.rules.kinds import FRONT_BUILDS, OPPOSITE, Side, is_inset
from fronts.rules.laying import Laid
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.making import Make
from fronts.rules.materials import Wood, material_of
from fronts.rules.movement import change, resting_moisture
from fronts.rules.neighbours import Facing
from fronts.rules.practice import Practice
from fronts.rules.results import Movement

ACROSS: dict[Literal["width", "height"], tuple[Side, Side]] = {
    "width": ("left", "right"),
    "height": ("top", "bottom"),
}


def movements(
    fronts: Sequence[Laid],
    makes: Sequence[Make],
    faced: Sequence[Mapping[Side, Facing]],
    practice: Practice,
) -> list[Movement | None]:
    """For each front how it moves, or None where it is no tight slab of solid wood."""
    growths = [_growth(laid, make, practice) for laid, make in zip(fronts, makes, strict=True)]
    moves: list[Movement | None] = []
    for index, growth in enumerate(growths):
        if growth is None:
            moves.append(None)
            continue
        across, shrinks, _ = growth
        left = [
            gap - _towards(index, side, fronts, growths) - other
            for side in ACROSS[across]
            for gap, other in _gap(index, side, fronts, faced, growths, practice)
        ]
        moves.append(Movement(across, shrinks, growth[2], min(left)) if left else None)
    return moves


_Growth = tuple[Literal["width", "height"], Mm, Mm] | None


def _growth(laid: Laid, make: Make, practice: Practice) -> _Growth:
    wood = material_of(make.material)
    if FRONT_BUILDS[make.build].framed or not isinstance(wood, Wood):
        return None
    across: Literal["width", "height"] = "width" if make.grain_upright else "height"
    size = laid.width if across == "width" else laid.height
    dry = resting_moisture(practice.site_celsius, practice.humidity_low)
    damp = resting_moisture(practice.site_celsius, practice.humidity_high)
    shrinks = max(-change(size, wood, practice.made_at, dry), NOTHING)
    grows = max(change(size, wood, practice.made_at, damp), NOTHING)
    return across, shrinks, grows


def _towards(index: int, side: Side, fronts: Sequence[Laid], growths: Sequence[_Growth]) -> Mm:
    """How far a front grows towards one of its sides."""
    growth = growths[index]
    if growth is None or side not in ACROSS[growth[0]]:
        return NOTHING
    hinged = fronts[index].hinged
    if hinged == side:
        return NOTHING
    return growth[2] if hinged == OPPOSITE[side] else growth[2] / 2


def _gap(
    index: int,
    side: Side,
    fronts: Sequence[Laid],
    faced: Sequence[Mapping[Side, Facing]],
    growths: Sequence[_Growth],
    practice: Practice,
) -> list[tuple[Mm, Mm]]:
    """The tight gap at a side, with what the neighbour there grows into it; none: not tight."""
    front = fronts[index]
    overlay = front.overlays[side]
    if is_inset(front.plane) and overlay is not None:
        return [(-overlay, NOTHING)]
    facing = faced[index].get(side)
    if facing is None or facing.gap >= practice.lines_seen:
        return []
    others = [_towards(other, OPPOSITE[side], fronts, growths) for other in facing.fronts]
    return [(facing.gap, max(others))]

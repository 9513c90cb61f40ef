"""The house standard: its defaults, and which level's word holds.

A key is taken from the opening if it says something, else from its cabinet, else from
the job (which already holds the shop's). A level that gives `overlay` or `reveal`
replaces both of a farther level; other keys fall through one by one.
"""

from dataclasses import dataclass, fields, replace

from fronts.rules.kitchen import Mount, Reveal, Sides, Standard, Stock
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches

EMPTY = Standard()


@dataclass(frozen=True, slots=True)
class Settled:
    """A standard with every key settled; at most one of `overlay` and `reveal` is set."""

    mount: Mount
    overlay: Sides[Mm] | None
    reveal: Reveal | None
    gap_between: Mm
    least_gap: Mm
    inset_gap: Sides[Mm]
    front_thickness: Mm
    trim_limit: Mm
    least_stile: Mm
    skin: Mm
    bite: Mm
    hinge_end: Mm


DEFAULTS = Settled(
    mount="overlay",
    overlay=None,  # no default: a shop must say how far its fronts lap
    reveal=None,
    gap_between=inches(1, 8),  # practice
    least_gap=inches(1, 16),  # practice
    inset_gap=Sides(inches(3, 32), inches(3, 32), inches(3, 32), inches(3, 32)),  # practice
    front_thickness=inches(3, 4),  # Architectural Woodwork Standards, 1st ed.: doors >= 3/4 in
    trim_limit=inches(1),  # practice
    least_stile=inches(7, 4),  # practice
    skin=inches(1, 8),  # practice
    bite=inches(3, 8),  # practice
    hinge_end=inches(7, 2),  # practice
)

COMMON_STOCK = Stock(
    screw_lengths=(inches(3, 4), inches(1), inches(5, 4), inches(3, 2)),
    knob_screw_lengths=(inches(1), inches(7, 4)),
    knob_thread="8-32",
    knob_thread_depth=inches(1, 2),
    slide_lengths=tuple(inches(each) for each in (12, 14, 16, 18, 20, 22, 24)),
)
"""What is taken to lie on the shelf where nobody says (common practice, no source)."""


def settled(*levels: Standard) -> Settled:
    """The standard in force, from `levels` nearest first."""
    merged = merge(*levels)
    said = {each.name: getattr(merged, each.name) for each in fields(Standard)}
    return replace(DEFAULTS, **{key: value for key, value in said.items() if value is not None})


def merge(*levels: Standard) -> Standard:
    """One level that says what all `levels`, nearest first, say together."""
    merged = EMPTY
    for level in levels:
        if level is not EMPTY and level != EMPTY:
            merged = _under(merged, level)
    return merged


def _under(near: Standard, far: Standard) -> Standard:
    laps_said = near.overlay is not None or near.reveal is not None
    taken = {}
    for each in fields(Standard):
        if laps_said and each.name in ("overlay", "reveal"):
            continue
        if getattr(near, each.name) is None:
            taken[each.name] = getattr(far, each.name)
    return replace(near, **taken)

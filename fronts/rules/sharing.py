"""Jigs and shims for the whole kitchen: what several fronts share is made once."""

from collections import defaultdict
from collections.abc import Sequence

from fronts.rules.fixing import ledges_for
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice
from fronts.rules.results import Fitting, Front, Jig, Shim


def shared_jigs(
    fittings: Sequence[Fitting], thickness_of: dict[str, Mm], practice: Practice
) -> tuple[Jig, ...]:
    """One jig for all fronts with the same jig thickness and box width; thickest last."""
    groups: dict[tuple[Mm, Mm], list[Fitting]] = defaultdict(list)
    for fitting in fittings:
        if fitting.method == "jig":
            groups[fitting.jig_thickness, fitting.jig_length].append(fitting)
    jigs = []
    for (thickness, length), group in sorted(groups.items()):
        slots = [fitting.slot for fitting in group if fitting.slot]
        jigs.append(
            Jig(
                thickness=thickness,
                length=length,
                ledges=ledges_for(max(thickness_of[fitting.front] for fitting in group), practice),
                slot=max(slots, key=lambda slot: (slot.width, slot.depth), default=None),
                fronts=tuple(fitting.front for fitting in group),
            )
        )
    return tuple(jigs)


def shared_shims(fittings: Sequence[Fitting]) -> tuple[Shim, ...]:
    """Shims by thickness: two at the sides and two below serve every front in turn."""
    side: dict[Mm, int] = defaultdict(int)
    bottom: dict[Mm, int] = defaultdict(int)
    fronts: dict[Mm, list[str]] = defaultdict(list)
    for fitting in fittings:
        if fitting.shims is None:
            continue
        left, right, below = fitting.shims.side, fitting.shims.right, fitting.shims.bottom
        for thickness in {left, right}:
            side[thickness] = max(side[thickness], [left, right].count(thickness))
        bottom[below] = 2
        for thickness in sorted({left, right, below}):
            fronts[thickness].append(fitting.front)
    return tuple(
        Shim(thickness, side[thickness], bottom[thickness], tuple(fronts[thickness]))
        for thickness in sorted(fronts)
        if thickness > 0
    )


def thicknesses(fronts: Sequence[Front]) -> dict[str, Mm]:
    """Each front's thickness by its label."""
    return {front.label: front.thickness for front in fronts}

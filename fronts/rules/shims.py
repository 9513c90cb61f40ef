"""Shims that hold an inset front's gaps while it is fixed: one at each side, two below."""

from collections import defaultdict
from collections.abc import Sequence

from fronts.rules.fitting_results import Fitting, Shim, Shims
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.standard_keys import Sides

BELOW = 2


def shims_for(overlays: Sides[Mm | None], gap_between: Mm) -> Shims:
    """The shims of one inset front.

    Towards another front of its opening (overlay None) it is spaced by the gap between them;
    an edge that laps needs none.
    """

    def gap(overlay: Mm | None) -> Mm:
        return gap_between if overlay is None else max(-overlay, NOTHING)

    return Shims(side=gap(overlays.left), right=gap(overlays.right), bottom=gap(overlays.bottom))


def shared_shims(fittings: Sequence[Fitting]) -> tuple[Shim, ...]:
    """The shims of the whole kitchen by thickness: one set serves every front in turn."""
    side: dict[Mm, int] = defaultdict(int)
    bottom: dict[Mm, int] = defaultdict(int)
    fronts: dict[Mm, list[str]] = defaultdict(list)
    for fitting in fittings:
        if fitting.shims is None:
            continue
        left, right, below = fitting.shims.side, fitting.shims.right, fitting.shims.bottom
        for thickness in {left, right}:
            side[thickness] = max(side[thickness], [left, right].count(thickness))
        bottom[below] = BELOW
        for thickness in sorted({left, right, below}):
            fronts[thickness].append(fitting.front)
    return tuple(
        Shim(thickness, side[thickness], bottom[thickness], tuple(fronts[thickness]))
        for thickness in sorted(fronts)
        if thickness > 0
    )

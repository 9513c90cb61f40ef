"""The figures of a side's gap that was measured at both its ends."""

from collections.abc import Sequence

from fronts.rules.fits import ENDS
from fronts.rules.kinds import Side


def at_its_ends(side: Side, figures: Sequence[str]) -> tuple[str, ...]:
    """One figure as it is; two with the ends at which they are: `top 3/16`, `bottom 1/8`."""
    if len(figures) < 2:
        return tuple(figures)
    return tuple(f"{end} {figure}" for end, figure in zip(ENDS[side], figures, strict=True))

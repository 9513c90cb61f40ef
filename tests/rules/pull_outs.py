"""Kitchens of pull-outs that make no line with one another, so that their jigs may be merged."""

from dataclasses import replace

from fronts.rules.kitchen import Cabinet, Kitchen
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening


def pull_out(label: str, wall: str, rise: str, width: str = "14", **changes: object) -> Cabinet:
    """A cabinet with one pull-out that makes no line with another: on a wall of its own."""
    hole = opening("pull-out", boxes=(replace(BOX, rise=inch(rise), width=inch(width)),))
    return replace(cabinet(hole, label=label, wall=wall), **changes)  # type: ignore[arg-type]


def apart(*rises: str, **changes: object) -> Kitchen:
    """Pull-outs whose boxes stand so high, each on its own wall."""
    cabinets = [pull_out(f"B{n}", f"W{n}", rise) for n, rise in enumerate(rises, 1)]
    return kitchen(*cabinets, **changes)  # type: ignore[arg-type]

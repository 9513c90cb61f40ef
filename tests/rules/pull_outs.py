"""Kitchens of pull-outs that make no line with one another, so that their jigs may be merged."""

from dataclasses import replace

from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.merged_jigs import JigPlan, merged_jigs
from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening

WIDE_PLAY = replace(PRACTICE, hole_diameter=inch("3/8"))
"""Play of (3/8 − 0.164)/2 = 0.1055 in, of which a merged jig may take 0.0527 in."""


def pull_out(label: str, wall: str, rise: str, width: str = "14", **changes: object) -> Cabinet:
    """A cabinet with one pull-out that makes no line with another: on a wall of its own."""
    hole = opening("pull-out", boxes=(replace(BOX, rise=inch(rise), width=inch(width)),))
    return replace(cabinet(hole, label=label, wall=wall), **changes)  # type: ignore[arg-type]


def apart(*rises: str, **changes: object) -> Kitchen:
    """Pull-outs whose boxes stand so high, each on its own wall."""
    cabinets = [pull_out(f"B{n}", f"W{n}", rise) for n, rise in enumerate(rises, 1)]
    return kitchen(*cabinets, **changes)  # type: ignore[arg-type]


def plan_of(of: Kitchen) -> JigPlan:
    """The kitchen's jigs as they are made."""
    return merged_jigs(schedule(of), of)


def thicknesses(plan: JigPlan) -> list[Mm]:
    """How thick its jigs are."""
    return [jig.thickness for jig in plan.jigs]

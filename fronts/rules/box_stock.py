"""What drawer boxes are made of: as the shop says, else as is usual in the job's unit."""

from dataclasses import dataclass

from fronts.rules.box_facts import BoxesMadeOf
from fronts.rules.item_kinds import Joint
from fronts.rules.kinds import Unit
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.unit_figures import UNIT_FIGURES

MATERIAL = "plywood"
"""What boxes are made of where nobody says (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class BoxStock:
    """Thicknesses, the groove's depth, and how far a box's front goes into its sides."""

    side: Mm
    bottom: Mm
    groove: Mm
    joint: Mm
    material: str
    play: Mm
    low_side: Mm


def box_stock(made_of: BoxesMadeOf, unit: Unit, *, side: Mm | None = None) -> BoxStock:
    """The stock of boxes to be made; with `side`, of one that exists and has such sides."""
    usual = UNIT_FIGURES[unit]
    thick = side or made_of.side or usual.side
    return BoxStock(
        side=thick,
        bottom=made_of.bottom or usual.bottom,
        groove=made_of.groove or usual.groove,
        joint=_joint(made_of.joint, made_of.joint_depth, thick),
        material=made_of.material or MATERIAL,
        play=usual.play,
        low_side=usual.low_side,
    )


def _joint(joint: Joint, depth: Mm | None, side: Mm) -> Mm:
    """A rabbet or dado goes half into the side where nobody says (common practice, no source)."""
    if joint == "butt":
        return NOTHING
    if joint == "through-dovetail":
        return side
    return side / 2 if depth is None else depth

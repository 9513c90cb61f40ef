"""What a box's slides carry: its load, the box itself and the front, with a margin.

Load = the box's floor at 15 lb/ft² a tier (ANSI/KCMA A161.1-2012, drawer operation), or what
somebody states. The margin is the shop's.
"""

from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.lengths import Mm
from fronts.rules.materials import PERCENT
from fronts.rules.practice import Practice


@dataclass(frozen=True, slots=True)
class BoxLoad:
    """Kilograms: what is put into a box, and what its slides must be made for."""

    load_kg: Fraction
    needed_kg: Fraction


def box_load(
    width: Mm,
    depth: Mm,
    shelves: int,
    stated_kg: Fraction | None,
    own_kg: Fraction,
    practice: Practice,
) -> BoxLoad:
    """The load of a box with so many shelves above its floor; `own_kg` is box and front."""
    tiers = 1 + shelves
    load = width * depth * practice.drawer_load * tiers if stated_kg is None else stated_kg
    return BoxLoad(load, (load + own_kg) * practice.load_margin / PERCENT)

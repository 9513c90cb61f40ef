"""Pilot holes in a front for its mounting screws: their diameter and how deep.

A share of the screw's root: about 70 % in softwood and 90 % in hardwood (Wood Handbook, lead
holes for wood screws in withdrawal); boards as hardwood (common practice, no source). The
root of a wood screw is about 2/3 of its shank (a trade table that names no source).
"""

from fractions import Fraction

from fronts.rules.fitting_results import Pilot
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.materials import PERCENT, Wood, material_of
from fronts.rules.practice import Practice

ROOT_OF_SHANK = Fraction(2, 3)


def pilot_hole(material: str, enters: Mm, practice: Practice) -> Pilot:
    """The hole for a screw that enters the front so far."""
    wood = material_of(material)
    soft = isinstance(wood, Wood) and wood.soft
    share = practice.pilot_softwood if soft else practice.pilot_hardwood
    return Pilot(
        diameter=practice.screw_diameter * ROOT_OF_SHANK * share / PERCENT,
        depth=max(enters - practice.pilot_short, NOTHING),
    )

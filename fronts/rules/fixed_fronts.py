"""The screws of a front that is fixed from behind, through the cabinet or a cleat of it.

They are chosen as those of a box are; how many, and how thick the wood is that they go through,
are the shop's numbers (common practice, no source).
"""

from fronts.rules.fitting_results import FixedScrews
from fronts.rules.kinds import FRONT_KINDS
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.screws import mounting_screw


def fixed_screws(laid: Laid, thickness: Mm, kitchen: Kitchen) -> FixedScrews | None:
    """None for a front that opens, or that a machine carries."""
    traits, practice = FRONT_KINDS[laid.opening.closing.front], kitchen.practice
    if traits.opens or traits.on_machine:
        return None
    skin, bite = laid.standard.skin, laid.standard.bite
    length = mounting_screw(
        kitchen.stock.screw_lengths, practice.fixed_behind, thickness, skin, bite
    )
    return FixedScrews(length, int(practice.fixed_screws), practice.fixed_behind)

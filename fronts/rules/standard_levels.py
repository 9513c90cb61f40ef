"""Which levels of the house standard hold at a place of the kitchen, nearest first."""

from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.results import Front
from fronts.rules.standard_keys import Settled, Standard
from fronts.rules.standards import settled


def levels_of(cabinet: Cabinet, kitchen: Kitchen) -> tuple[Standard, ...]:
    """What the cabinet says, then all of its kind, then the whole kitchen."""
    return cabinet.standard, kitchen.standard_of(cabinet.kind), kitchen.standard


def standard_at(front: Front, kitchen: Kitchen) -> Settled:
    """The standard in force at a front's opening."""
    cabinet = kitchen.cabinet(front.cabinet)
    opening = next(one for one in cabinet.openings if one.label == front.opening)
    return settled(opening.standard, *levels_of(cabinet, kitchen))

"""What a case of a finding is, and how openings and runs of them are put together."""

from dataclasses import dataclass, replace
from typing import Any

from fronts.rules.kitchen import Cabinet, FrontFacts, Kitchen, Opening
from fronts.rules.lengths import Mm
from fronts.rules.results import Level
from fronts.rules.standard_keys import Sides, Standard
from tests.rules.small_kitchens import BOX, beside, cabinet, inch, inches, kitchen, opening


@dataclass(frozen=True, slots=True)
class Case:
    """The smallest kitchen that raises a finding, and a near miss that does not.

    `eased`: the near miss raises the finding still, but at this lower level.
    """

    says: str
    code: str
    level: Level
    where: tuple[str, ...]
    raises: Kitchen
    spares: Kitchen
    eased: Level | None = None


def lapping(left: str, right: str, top: str, bottom: str) -> Standard:
    """An overlay of its own on every side."""
    sides: Sides[Mm] = Sides(*inches(left, right, top, bottom))
    return Standard(overlay=sides)


def one(of: Opening, standard: Standard | None = None, **changes: Any) -> Kitchen:
    """A kitchen of one cabinet with one opening."""
    if standard is None:
        return kitchen(cabinet(of), **changes)
    return kitchen(cabinet(of), standard=standard, **changes)


def boxed(**changes: Any) -> Kitchen:
    """A pull-out on a box that is so."""
    return one(opening("pull-out", boxes=(replace(BOX, **changes),)))


def with_door(width: str, height: str) -> Opening:
    """An opening closed by a front of this size that exists."""
    return opening(front=FrontFacts(width=inch(width), height=inch(height)))


def two(first: Cabinet, **changes: Any) -> Kitchen:
    """The same cabinet twice, the second changed."""
    return kitchen(first, beside(first, **changes))


def above(lower: Opening, apart: str, **changes: Any) -> Kitchen:
    """A tall cabinet with an opening over the lower one, so far apart."""
    upper = replace(lower, label="b", y=lower.y + lower.height + inch(apart), **changes)
    return kitchen(cabinet(lower, upper, height=inch("66"), kind="tall"))

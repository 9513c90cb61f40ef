"""What comes of walls and openings that were measured: frozen results, exact millimetres."""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Sides
from fronts.rules.thing_kinds import Run


@dataclass(frozen=True, slots=True)
class CabinetPlace:
    """Where a cabinet stands on its wall: its outer lower left corner."""

    label: str
    x: Mm
    y: Mm


@dataclass(frozen=True, slots=True)
class RunLength:
    """How far a run reaches, and what it leaves of its wall: below zero where it goes past.

    `left_over` None: the wall has no length yet.
    """

    length: Mm
    left_over: Mm | None


@dataclass(frozen=True, slots=True)
class WallRuns:
    """The runs of one wall that anything stands in."""

    label: str
    runs: Mapping[Run, RunLength]


@dataclass(frozen=True, slots=True)
class OpeningEnds:
    """The gap (inset) or overlay at both ends of each side of the one front of an opening.

    Those of a left or right side at its top and at its bottom, of the others left and right.
    """

    opening: str
    ends: Sides[tuple[Mm, Mm]]

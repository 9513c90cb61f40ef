"""Templates at true size: frozen results, all lengths exact millimetres.

A template is paper that is laid on a face, its edge lines on the edges of the wood, to mark
through it where that is bored or cut.
"""

from dataclasses import dataclass
from typing import Literal, TypeAlias

from fronts.rules.fitting_results import Ledges, Slot
from fronts.rules.kinds import Side
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm

TemplateFace: TypeAlias = Literal["box", "back", "front", "cabinet-side", "cabinet-level"]
"""What the template is laid on, and one looks at: the box's front, a front's back, its face; from
inside the cabinet a side of it, or its top or bottom."""
Purpose: TypeAlias = Literal["mounting", "pilot", "recess", "handle", "cup", "plate"]
Hand: TypeAlias = Literal["left", "right"]


@dataclass(frozen=True, slots=True)
class TemplateRoom:
    """How far from its edges a template may reach: across, and up.

    `one` is what a single sheet of paper holds, `most` as many as are taped together; `both` is
    the widest that is drawn for either hand at once.
    """

    one: tuple[Mm, Mm]
    most: tuple[Mm, Mm]
    both: Mm


@dataclass(frozen=True, slots=True)
class TemplateUse:
    """A front that the template is for, and which of its face's sides the paper is laid along.

    `across` and `up` are how far from those sides the template's own line is marked on the
    wood first; None where the paper lies along the edge itself.
    """

    front: str
    upright: Side
    level: Side
    across: Mm | None
    up: Mm | None


@dataclass(frozen=True, slots=True)
class HoleTemplate:
    """One drawing, for every use that it serves.

    `marks` are the holes' centres: across inwards from its upright edge, up from its level edge;
    from a line in their middle where there is no such edge. `hands` are the sides on which it has
    an upright edge, `level_edge` is below. A use at the other end turns the paper half round, one
    on the other hand turns it over.
    """

    purpose: Purpose
    face: TemplateFace
    diameter: Mm | None
    hands: tuple[Hand, ...]
    level_edge: bool
    marks: tuple[Point, ...]
    uses: tuple[TemplateUse, ...]

    @property
    def fronts(self) -> tuple[str, ...]:
        """Each once."""
        return tuple(dict.fromkeys(use.front for use in self.uses))

    @property
    def upside_down(self) -> bool:
        """Whether all its uses would turn it half round, so that it is printed so."""
        return all(at_far_end(use, level_edge=self.level_edge) for use in self.uses)

    def turned(self, use: TemplateUse) -> bool:
        """Whether the paper is turned half round for this use."""
        return at_far_end(use, level_edge=self.level_edge) and not self.upside_down

    def turned_over(self, use: TemplateUse) -> bool:
        """Whether its printed side lies on the wood."""
        return bool(self.hands) and hand_of(use, level_edge=self.level_edge) not in self.hands


def at_far_end(use: TemplateUse, *, level_edge: bool) -> bool:
    """Whether it is laid along the top; where it has no level edge, along the right."""
    if level_edge:
        return use.level == "top"
    return use.across is None and use.upright == "right"


def hand_of(use: TemplateUse, *, level_edge: bool) -> Hand:
    """On which side its upright edge is once the paper is turned half round for what is far."""
    return "left" if (use.upright == "left") != at_far_end(use, level_edge=level_edge) else "right"


@dataclass(frozen=True, slots=True)
class JigProfile:
    """The end of a jig, and its slot from the front: for jigs that differ in length alone."""

    thickness: Mm
    ledges: Ledges
    slot: Slot | None
    lengths: tuple[Mm, ...]
    fronts: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class BoredBefore:
    """Fronts of which something is bored already, so that it has no template."""

    what: Literal["cups-bought", "cups-old", "handle"]
    fronts: tuple[str, ...]

"""A front's face as hands and screws meet it: its stiles and rails, and what lies behind a place.

A slab is one piece. A five-piece front has stiles as high as it is, rails between them, and a
panel that stands back from its plane, so that a void lies behind it before anything else.
"""

from dataclasses import dataclass
from typing import Literal, TypeAlias

from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.standard_keys import Sides

NO_FRAME = Sides(NOTHING, NOTHING, NOTHING, NOTHING)
Through: TypeAlias = Literal["slab", "stile", "rail", "panel"]


@dataclass(frozen=True, slots=True)
class Face:
    """A front seen from the front; places from its lower left corner.

    `frame` holds the widths of its stiles and rails; a slab has no use for them, or for a panel.
    """

    width: Mm
    height: Mm
    thickness: Mm
    framed: bool = False
    frame: Sides[Mm] = NO_FRAME
    panel_thickness: Mm = NOTHING

    @property
    def stile(self) -> Mm:
        """The mean of both, by which a front is weighed."""
        return (self.frame.left + self.frame.right) / 2

    @property
    def rail(self) -> Mm:
        """The mean of both."""
        return (self.frame.top + self.frame.bottom) / 2

    def through(self, x: Mm, y: Mm) -> Through:
        """What a screw at this place goes through."""
        if not self.framed:
            return "slab"
        if x <= self.frame.left or x >= self.width - self.frame.right:
            return "stile"
        if y <= self.frame.bottom or y >= self.height - self.frame.top:
            return "rail"
        return "panel"

    def is_thin_at(self, x: Mm, y: Mm, least: Mm) -> bool:
        """Whether a panel thinner than `least` is all that is there."""
        return self.through(x, y) == "panel" and self.panel_thickness < least

    @property
    def void(self) -> Mm:
        """How far a panel stands back from the plane of the front's back: half of what is over."""
        return (self.thickness - self.panel_thickness) / 2 if self.framed else NOTHING

    def stack(self, through: Through, box_front: Mm | None) -> Mm:
        """What a screw goes through: the wood there, and the box front with the void before it."""
        wood = self.panel_thickness if through == "panel" else self.thickness
        if box_front is None:
            return wood
        return wood + box_front + (self.void if through == "panel" else NOTHING)

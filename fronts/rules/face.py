"""A front's face as hands and screws meet it: its stiles and rails, and what lies behind a place.

A slab is one piece. A five-piece front has stiles as high as it is, rails between them, and a
panel that stands back from its plane, so that a void lies behind it before anything else.
"""

from dataclasses import dataclass
from typing import Literal, TypeAlias

from fronts.rules.lengths import NOTHING, Mm

Through: TypeAlias = Literal["slab", "stile", "rail", "panel"]


@dataclass(frozen=True, slots=True)
class Face:
    """A front seen from the front; places from its lower left corner.

    The frame's widths are nothing on a slab, whose panel is as thick as itself.
    """

    width: Mm
    height: Mm
    thickness: Mm
    framed: bool = False
    stile_left: Mm = NOTHING
    stile_right: Mm = NOTHING
    rail_top: Mm = NOTHING
    rail_bottom: Mm = NOTHING
    panel_thickness: Mm = NOTHING

    def through(self, x: Mm, y: Mm) -> Through:
        """What a screw at this place goes through."""
        if not self.framed:
            return "slab"
        if x <= self.stile_left or x >= self.width - self.stile_right:
            return "stile"
        if y <= self.rail_bottom or y >= self.height - self.rail_top:
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

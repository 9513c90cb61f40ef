"""What kinds of thing a kitchen holds, and what each kind is like: one row of a table a kind.

Whoever wants to know whether a front stands on a box asks the row, not the word: a new
kind is a new row. The words are what files, tables and pages share.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, TypeAlias

Unit: TypeAlias = Literal["in", "mm"]
Mount: TypeAlias = Literal["overlay", "inset"]
CabinetKind: TypeAlias = Literal["base", "wall", "tall"]
CabinetBuild: TypeAlias = Literal["face-frame", "frameless"]
FrontBuild: TypeAlias = Literal["slab", "five-piece"]
FrontKind: TypeAlias = Literal["door", "drawer", "pull-out", "fixed"]
ClosedBy: TypeAlias = Literal["door", "pair", "drawer", "drawers", "pull-out", "fixed", "open"]
Hinged: TypeAlias = Literal["left", "right", "top", "bottom"]
SlideKind: TypeAlias = Literal["bottom", "side", "under"]
Side: TypeAlias = Literal["left", "right", "top", "bottom"]

SIDES: tuple[Side, ...] = ("left", "right", "top", "bottom")
MOST_FRONTS = 20
"""More drawer fronts than this above each other are a slip of the finger."""


@dataclass(frozen=True, slots=True)
class Closing:
    """One way to close an opening.

    `fronts` are how many it has at least and at most, side by side where `across`, else
    above each other. `hinged`: one of its sides is chosen for the hinges; `leaves` are
    the hinge sides of fronts that leave no choice.
    """

    says: str
    front: FrontKind
    fronts: tuple[int, int] = (1, 1)
    across: bool = False
    on_box: bool = False
    hinged: bool = False
    leaves: tuple[Hinged, ...] = ()

    @property
    def single(self) -> bool:
        """Whether exactly one front closes it."""
        return self.fronts == (1, 1)

    @property
    def stack(self) -> bool:
        """Whether its fronts stand above each other, as many as somebody says."""
        return self.fronts[0] != self.fronts[1]


CLOSINGS: Mapping[ClosedBy, Closing] = {
    "door": Closing("Door", "door", hinged=True),
    "pair": Closing("Pair of doors", "door", (2, 2), across=True, leaves=("left", "right")),
    "drawer": Closing("Drawer", "drawer", on_box=True),
    "drawers": Closing("Stack of drawers", "drawer", (1, MOST_FRONTS), on_box=True),
    "pull-out": Closing("Pull-out", "pull-out", on_box=True),
    "fixed": Closing("Fixed front", "fixed"),
    "open": Closing("Nothing, it stays open", "fixed", (0, 0)),
}
CABINET_KINDS: Mapping[CabinetKind, str] = {"base": "Base", "wall": "Wall", "tall": "Tall"}
CABINET_BUILDS: Mapping[CabinetBuild, str] = {
    "face-frame": "Face-frame",
    "frameless": "Frameless",
}
FRONT_BUILDS: Mapping[FrontBuild, str] = {"slab": "Slab", "five-piece": "Five-piece"}
HINGE_SIDES: Mapping[Hinged, str] = {
    "left": "Left",
    "right": "Right",
    "top": "At the top",
    "bottom": "At the bottom",
}
SLIDES: Mapping[SlideKind, str] = {
    "bottom": "Bottom, in the middle",
    "side": "At the sides",
    "under": "Under, hidden",
}
MOUNTS: Mapping[Mount, str] = {"overlay": "Overlay", "inset": "Inset"}
UNITS: Mapping[Unit, str] = {"in": "Inches", "mm": "Millimetres"}

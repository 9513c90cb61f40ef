"""What kinds of thing a kitchen holds, and what each kind is like: one row of a table a kind.

Whoever wants to know whether a front stands on a box asks the row, not the word: a new
kind is a new row. The words are what files, tables and pages share.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Literal, Protocol, TypeAlias

Unit: TypeAlias = Literal["in", "mm"]
Mount: TypeAlias = Literal["overlay", "inset"]
CabinetKind: TypeAlias = Literal["base", "wall", "tall"]
CabinetBuild: TypeAlias = Literal["face-frame", "frameless"]
GrainWay: TypeAlias = Literal["upright", "level"]
FrontBuild: TypeAlias = Literal["slab", "five-piece"]
FrontKind: TypeAlias = Literal[
    "door", "drawer", "pull-out", "fixed", "lift-up", "tip-out", "appliance-panel"
]
ClosedBy: TypeAlias = Literal[
    "door", "pair", "drawer", "drawers", "pull-out", "fixed", "open", "lift-up", "tip-out",
    "appliance-panel",
]  # fmt: skip
Hinged: TypeAlias = Literal["left", "right", "top", "bottom"]
MadeBy: TypeAlias = Literal["here", "bought"]
SlideKind: TypeAlias = Literal["bottom", "side", "under"]
Side: TypeAlias = Literal["left", "right", "top", "bottom"]

SIDES: tuple[Side, ...] = ("left", "right", "top", "bottom")
OPPOSITE: Mapping[Side, Side] = {
    "left": "right", "right": "left", "top": "bottom", "bottom": "top",
}  # fmt: skip
"""The side across from each."""
MOST_FRONTS = 20
"""More drawer fronts than this above each other are a slip of the finger."""


@dataclass(frozen=True, slots=True)
class Closing:
    """One way to close an opening.

    `fronts` are how many it has at least and at most, side by side where `across`, else
    above each other. `hinged`: one of its sides is chosen for the hinges; `leaves` are
    the hinge sides of fronts that leave no choice. `is_newer`: files of version 1 have no word
    for it.
    """

    says: str
    front: FrontKind
    fronts: tuple[int, int] = (1, 1)
    across: bool = False
    on_box: bool = False
    hinged: bool = False
    leaves: tuple[Hinged, ...] = ()
    is_newer: bool = False

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
    "lift-up": Closing("Door that lifts up", "lift-up", leaves=("top",), is_newer=True),
    "tip-out": Closing("Front that tips out", "tip-out", leaves=("bottom",), is_newer=True),
    "appliance-panel": Closing("Panel of an appliance", "appliance-panel", is_newer=True),
}


@dataclass(frozen=True, slots=True)
class FrontTraits:
    """What every front of a kind is like.

    `opens`: it takes a knob and bumpers; `swings`: it hangs on hinges; `pulled_high`: its
    knob is near its top. `two_knobs_when_wide` says for itself. `upright`: its grain runs up
    (common practice, no source). `low_sides`: its box has low sides, to reach in over. `named`:
    its outline alone does not tell what it is, so a drawing says it. `tips`: pulled out, it can
    tip its cabinet over. `needs_lift`: it stays open only on a stay or lift. `narrow_rails`:
    made five-piece and low, it takes the shop's narrow rails. `tips_out`: it hangs on tip-out
    hinges, with a tray behind it. `on_machine`: a machine's door carries it. `called`: its
    name where that is not its kind's word.
    """

    opens: bool = True
    swings: bool = False
    upright: bool = False
    pulled_high: bool = False
    two_knobs_when_wide: bool = False
    named: bool = False
    tips: bool = False
    low_sides: bool = False
    needs_lift: bool = False
    narrow_rails: bool = False
    tips_out: bool = False
    on_machine: bool = False
    called: str = ""


FRONT_KINDS: Mapping[FrontKind, FrontTraits] = {
    "door": FrontTraits(swings=True, upright=True),
    "drawer": FrontTraits(two_knobs_when_wide=True, narrow_rails=True),
    "pull-out": FrontTraits(upright=True, pulled_high=True, named=True, tips=True, low_sides=True),
    "fixed": FrontTraits(opens=False, named=True),
    "lift-up": FrontTraits(swings=True, named=True, needs_lift=True),
    "tip-out": FrontTraits(named=True, tips_out=True),
    "appliance-panel": FrontTraits(
        opens=False, upright=True, named=True, on_machine=True, called="appliance panel"
    ),
}


def name_of(kind: FrontKind) -> str:
    """What a front of this kind is called."""
    return FRONT_KINDS[kind].called or kind


@dataclass(frozen=True, slots=True)
class CabinetTraits:
    """What every cabinet of a kind is like.

    `hangs`: it hangs on its wall. `run` is the row of cabinets that it goes on; `ends` are
    the rows in which it stands in the way: a tall one stands in both. `tips`: it can fall
    over before it is fixed. `pulled_at_height`: its doors are pulled at the shop's height above
    the floor, not near an end.
    """

    says: str
    first_label: str
    run: Literal["standing", "hung"] = "standing"
    ends: frozenset[str] = frozenset({"standing"})
    tips: bool = False
    pulled_at_height: bool = False

    @property
    def hangs(self) -> bool:
        """Whether it hangs on its wall."""
        return self.run == "hung"


CABINET_KINDS: Mapping[CabinetKind, CabinetTraits] = {
    "base": CabinetTraits("Base", "B1"),
    "wall": CabinetTraits("Wall", "W1", run="hung", ends=frozenset({"hung"})),
    "tall": CabinetTraits(
        "Tall", "T1", ends=frozenset({"standing", "hung"}), tips=True, pulled_at_height=True
    ),
}


@dataclass(frozen=True, slots=True)
class BuildTraits:
    """How a cabinet or a front is built: `framed` with stiles and rails."""

    says: str
    framed: bool


CABINET_BUILDS: Mapping[CabinetBuild, BuildTraits] = {
    "face-frame": BuildTraits("Face-frame", framed=True),
    "frameless": BuildTraits("Frameless", framed=False),
}
FRONT_BUILDS: Mapping[FrontBuild, BuildTraits] = {
    "slab": BuildTraits("Slab", framed=False),
    "five-piece": BuildTraits("Five-piece", framed=True),
}
GRAIN_WAYS: Mapping[GrainWay, str] = {
    "upright": "Up and down",
    "level": "From side to side",
}
HINGE_SIDES: Mapping[Hinged, str] = {
    "left": "Left",
    "right": "Right",
    "top": "At the top",
    "bottom": "At the bottom",
}


@dataclass(frozen=True, slots=True)
class SlideTraits:
    """Where a kind of slide lies: `single` in the middle, or one at each end of the box.

    `below` the box, or at its sides. `notched`: its box is notched behind and exactly as long.
    `item` is what is ordered.
    """

    says: str
    item: str
    single: bool = False
    below: bool = False
    notched: bool = False


SLIDES: Mapping[SlideKind, SlideTraits] = {
    "bottom": SlideTraits("Bottom, in the middle", "bottom slide", single=True, below=True),
    "side": SlideTraits("At the sides", "side slides, pair"),
    "under": SlideTraits("Under, hidden", "under slides, pair", below=True, notched=True),
}


@dataclass(frozen=True, slots=True)
class MountTraits:
    """How a front lies to its opening: `laps` over its edges, or inside them."""

    says: str
    laps: bool


MOUNTS: Mapping[Mount, MountTraits] = {
    "overlay": MountTraits("Overlay", laps=True),
    "inset": MountTraits("Inset", laps=False),
}
MADE_BY: Mapping[MadeBy, str] = {"here": "Made here", "bought": "Bought from a door maker"}
UNITS: Mapping[Unit, str] = {"in": "Inches", "mm": "Millimetres"}


class _Said(Protocol):
    @property
    def says(self) -> str: ...


def words_of(table: Mapping[Any, _Said]) -> dict[str, str]:
    """What people call each kind of a table."""
    return {kind: traits.says for kind, traits in table.items()}


def is_inset(mount: Mount) -> bool:
    """Whether a front that is mounted so lies inside its opening."""
    return not MOUNTS[mount].laps


def is_upright(hinged: Hinged | None) -> bool:
    """Whether hinges at this side stand one over another."""
    return hinged in ("left", "right")

"""What stands on a wall beside cabinets, and how walls end: a row of a table a kind."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, TypeAlias

ThingKind: TypeAlias = Literal["appliance", "filler", "end-panel", "gap"]
Run: TypeAlias = Literal["floor", "upper"]
WallEnding: TypeAlias = Literal["inside", "outside", "free", "doorway", "window"]

RUNS: Mapping[Run, str] = {"floor": "On the floor", "upper": "Above"}
WALL_ENDS: Mapping[WallEnding, str] = {
    "inside": "In an inside corner",
    "outside": "In an outside corner",
    "free": "Free",
    "doorway": "At a doorway",
    "window": "At a window",
}
CORNERS: tuple[WallEnding, ...] = ("inside", "outside")
"""The ends at which a wall meets another."""


@dataclass(frozen=True, slots=True)
class ThingTraits:
    """What everything of a kind is like.

    `stands_out`: it may be deeper than a cabinet's face. `grounded`: it stands on the floor
    unless it says otherwise. `solid`: nothing else can be where it is. `goes_on`: fronts may
    lap it, as they lap the next cabinet.
    """

    says: str
    letter: str
    stands_out: bool = False
    grounded: bool = False
    solid: bool = True
    goes_on: bool = False


THING_KINDS: Mapping[ThingKind, ThingTraits] = {
    "appliance": ThingTraits("Appliance", "A", stands_out=True, grounded=True),
    "filler": ThingTraits("Filler", "F", goes_on=True),
    "end-panel": ThingTraits("End panel", "E", goes_on=True),
    "gap": ThingTraits("Gap", "G", solid=False),
}

"""What a door maker is told of fronts that are bought: frozen results, all lengths exact.

Each fact is declared, so that pages, files and the record of what came share its words.
"""

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass, fields
from fractions import Fraction
from typing import Annotated, Any

from fronts.rules import limits
from fronts.rules.fact_kinds import Length, Lengths, Text, Word, YesNo
from fronts.rules.kinds import (
    FRONT_BUILDS,
    HINGE_SIDES,
    FrontBuild,
    FrontKind,
    Hinged,
    words_of,
)
from fronts.rules.lengths import Mm

CALLED: Mapping[FrontKind, str] = {
    "door": "door",
    "drawer": "drawer front",
    "pull-out": "pull-out front",
    "fixed": "fixed front",
    "lift-up": "lift-up front",
    "tip-out": "tip-out front",
    "appliance-panel": "appliance panel",
}
"""What a maker calls them."""
LETTERS = 16
KEPT = 8
"""Decimal places of a millimetre that are kept of what came."""


@dataclass(frozen=True, slots=True)
class BoughtFront:
    """One front as its maker has to make it; fronts of which all is equal are one line.

    `panel_thickness` is None without a panel, `middle_rail` has a five-piece front that is high.
    The bores of its hinge cups are on its `hand`: their centres from the front's bottom, or
    from its left where it is hinged at an end, and so far from that edge.
    """

    kind: Annotated[FrontKind, Word("kind", CALLED)]
    width: Annotated[Mm, Length("width")]
    height: Annotated[Mm, Length("height")]
    thickness: Annotated[Mm, Length("thickness", small=True)]
    build: Annotated[FrontBuild, Word("built as", words_of(FRONT_BUILDS))]
    hand: Annotated[Hinged | None, Word("hinged", HINGE_SIDES)] = None
    style: Annotated[str, Text("door style", limits.LONGEST_MAKERS_WORD)] = ""
    material: Annotated[str, Text("material", limits.LONGEST_MATERIAL)] = ""
    species: Annotated[str, Text("species", limits.LONGEST_MAKERS_WORD)] = ""
    stile: Annotated[Mm | None, Length("stiles")] = None
    rail: Annotated[Mm | None, Length("rails")] = None
    middle_rail: Annotated[bool, YesNo("middle rail")] = False
    panel: Annotated[str, Text("panel", limits.LONGEST_MATERIAL)] = ""
    panel_thickness: Annotated[Mm | None, Length("panel thickness", small=True)] = None
    edge_profile: Annotated[str, Text("edge profile", limits.LONGEST_MAKERS_WORD)] = ""
    panel_profile: Annotated[str, Text("panel profile", limits.LONGEST_MAKERS_WORD)] = ""
    grain: Annotated[str, Text("grain", limits.LONGEST_MAKERS_WORD)] = ""
    bores: Annotated[tuple[Mm, ...], Lengths("bore centres", limits.MOST_HINGES)] = ()
    bore_diameter: Annotated[Mm | None, Length("bore diameter", small=True)] = None
    bore_depth: Annotated[Mm | None, Length("bore depth", small=True)] = None
    bore_from_edge: Annotated[Mm | None, Length("bore centre from the edge", small=True)] = None
    glass: Annotated[bool, YesNo("ready for glass")] = False
    finish: Annotated[str, Text("finish", limits.LONGEST_MAKERS_WORD)] = ""

    @property
    def as_kept(self) -> "BoughtFront":
        """The same to the decimals that are kept: what is reckoned may have no end of them."""
        told = {fact.name: getattr(self, fact.name) for fact in fields(self)}
        return BoughtFront(**{name: _as_kept(value) for name, value in told.items()})

    @property
    def short_name(self) -> str:
        """A short name of all that it says: another one where anything of it is."""
        return hashlib.sha256(repr(self.as_kept).encode()).hexdigest()[:LETTERS]


@dataclass(frozen=True, slots=True)
class BoughtLine:
    """Fronts that are alike to their maker, by their labels in the schedule's order."""

    front: BoughtFront
    labels: tuple[str, ...]

    @property
    def count(self) -> int:
        return len(self.labels)


def _as_kept(value: Any) -> Any:
    match value:
        case Fraction():
            return round(value, KEPT)
        case tuple():
            return tuple(_as_kept(one) for one in value)
    return value

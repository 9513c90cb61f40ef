"""What a door maker is told of fronts that are bought: frozen results, all lengths exact.

Each fact is declared, so that pages, files and the record of what came share its words.
"""

import hashlib
from dataclasses import dataclass
from typing import Annotated

from fronts.rules import limits
from fronts.rules.fact_kinds import Length, Lengths, Text, Word, YesNo
from fronts.rules.kinds import (
    FRONT_BUILDS,
    FRONT_KINDS,
    HINGE_SIDES,
    FrontBuild,
    FrontKind,
    Hinged,
    words_of,
)
from fronts.rules.lengths import Mm

LETTERS = 16


@dataclass(frozen=True, slots=True)
class BoughtFront:
    """One front as its maker has to make it; fronts of which all is equal are one line.

    `panel_thickness` is None without a panel, `middle_rail` has a five-piece front that is high.
    The bores of its hinge cups are on its `hand`: their centres from the front's bottom, or
    from its left where it is hinged at an end, and so far from that edge.
    """

    kind: Annotated[FrontKind, Word("front", {kind: kind for kind in FRONT_KINDS})]
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
    def short_name(self) -> str:
        """A short name of all that it says: another one where anything of it is."""
        return hashlib.sha256(repr(self).encode()).hexdigest()[:LETTERS]


@dataclass(frozen=True, slots=True)
class BoughtLine:
    """Fronts that are alike to their maker, by their labels in the schedule's order."""

    front: BoughtFront
    labels: tuple[str, ...]

    @property
    def count(self) -> int:
        return len(self.labels)

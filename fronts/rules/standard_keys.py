"""The keys of the house standard, each declared once with what is usual and where that is from."""

from dataclasses import dataclass
from typing import Annotated, Any, Generic, TypeVar

from fronts.rules.fact_kinds import EachSide, Group, ItemCode, Length, Text, Word
from fronts.rules.items import BY_RULE, PLAIN_BAND
from fronts.rules.kinds import (
    FRONT_BUILDS,
    MADE_BY,
    MOUNTS,
    FrontBuild,
    MadeBy,
    Mount,
    Side,
    words_of,
)
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.limits import LONGEST_MAKERS_WORD, LONGEST_MATERIAL
from fronts.rules.practice import inches

T = TypeVar("T")
BY_BUILD = "by build"
"""In place of a material: the shop's for slabs, or frames, whatever a farther level says."""


@dataclass(frozen=True, slots=True)
class Sides(Generic[T]):
    """One thing for each side, as seen from the front."""

    left: T
    right: T
    top: T
    bottom: T

    def __getitem__(self, side: Side) -> T:
        return getattr(self, side)  # type: ignore[no-any-return]


_A_SIDE = Length("", zero=True, small=True)


@dataclass(frozen=True, slots=True)
class Reveal:
    """How much of a member stays visible: between two openings, and at the cabinet's ends."""

    between: Annotated[Mm, Length("between openings", zero=True, small=True)]
    end: Annotated[Sides[Mm], EachSide("reveal at the cabinet's edges", "", _A_SIDE)]


Size = TypeVar("Size")
How = TypeVar("How")
AllRound = TypeVar("AllRound")
Codes = TypeVar("Codes")
UNSAID: Any = None


@dataclass(frozen=True, slots=True)
class StandardKeys(Generic[How, Size, AllRound, Codes]):
    """The keys of the house standard, each with what holds where nobody says (`usual`).

    Overlay and reveal have nothing usual: a shop must say how far its fronts lap. A back is as
    usual in the job's unit (`inside_depth`). What a front says itself goes before `front_build`,
    `front_material`, `front_handle`, `front_hinge`, and so does the door that it is made from;
    a code that is in no list counts as unsaid, and is told. `band` has the code of a band for
    each edge of a front, or one of `EDGE_WORDS`. From `door_style` on it is what a door maker is
    told of fronts that are bought, in the shop's own words (`bought_fronts`).
    """

    mount: Annotated[
        How, Word("fronts are", words_of(MOUNTS), usual="overlay", source="practice")
    ] = UNSAID
    overlay: Annotated[Sides[Mm] | None, EachSide("overlay", "overlay_", _A_SIDE)] = None
    reveal: Annotated[Reveal | None, Group("reveal", "reveal_")] = None
    gap_between: Annotated[
        Size,
        Length(
            "gap between two fronts in one opening",
            zero=True,
            small=True,
            usual=inches(1, 8),
            source="practice",
        ),
    ] = UNSAID
    least_gap: Annotated[
        Size,
        Length("least gap anywhere", zero=True, small=True, usual=inches(1, 16), source="practice"),
    ] = UNSAID
    inset_gap: Annotated[
        AllRound,
        EachSide("inset gap", "inset_", _A_SIDE, usual=inches(3, 32), source="practice"),
    ] = UNSAID
    front_thickness: Annotated[
        Size,
        Length(
            "thickness of a front",
            small=True,
            usual=inches(3, 4),
            source="Architectural Woodwork Standards, 1st ed.: doors >= 3/4 in",
        ),
    ] = UNSAID
    front_build: Annotated[
        FrontBuild | None,
        Word("fronts are built as", words_of(FRONT_BUILDS), usual="slab", source="practice"),
    ] = None
    front_material: Annotated[
        str | None,
        Text("material of fronts", LONGEST_MATERIAL, usual=BY_BUILD),
    ] = None
    front_handle: Annotated[
        str | None,
        ItemCode("knob or pull", words=((BY_RULE, "The first of the list"),), usual=BY_RULE),
    ] = None
    front_hinge: Annotated[
        str | None, ItemCode("hinge", words=((BY_RULE, "Chosen by the rule"),), usual=BY_RULE)
    ] = None
    trim_limit: Annotated[
        Size,
        Length(
            "most to trim off a door on hand",
            zero=True,
            small=True,
            usual=inches(1),
            source="practice",
        ),
    ] = UNSAID
    least_stile: Annotated[
        Size,
        Length(
            "least stile left after trimming",
            zero=True,
            small=True,
            usual=inches(7, 4),
            source="practice",
        ),
    ] = UNSAID
    skin: Annotated[
        Size,
        Length(
            "wood left before a screw's tip",
            zero=True,
            small=True,
            usual=inches(1, 8),
            source="practice",
        ),
    ] = UNSAID
    bite: Annotated[
        Size,
        Length(
            "least bite of a mounting screw",
            zero=True,
            small=True,
            usual=inches(3, 8),
            source="practice",
        ),
    ] = UNSAID
    hinge_end: Annotated[
        Size,
        Length(
            "first hinge from a door's end",
            zero=True, small=True, usual=inches(7, 2), source="practice",
        ),
    ] = UNSAID  # fmt: skip
    back: Annotated[
        Mm | None,
        Length("thickness of cabinets' backs", zero=True, small=True, empty="1/4 in, or 6 mm"),
    ] = None
    band: Annotated[
        Codes,
        EachSide("edge band", "band_", ItemCode(""), usual=PLAIN_BAND, source="practice"),
    ] = UNSAID
    premill: Annotated[
        AllRound,
        EachSide(
            "milled off before the band", "premill_", _A_SIDE, usual=NOTHING, source="practice"
        ),
    ] = UNSAID
    made_by: Annotated[
        MadeBy | None, Word("fronts are made", MADE_BY, usual="here", source="practice")
    ] = None
    door_style: Annotated[str | None, Text("door style", LONGEST_MAKERS_WORD)] = None
    species: Annotated[
        str | None, Text("species, as the door maker calls it", LONGEST_MAKERS_WORD)
    ] = None
    edge_profile: Annotated[str | None, Text("edge profile", LONGEST_MAKERS_WORD)] = None
    panel_profile: Annotated[str | None, Text("panel profile", LONGEST_MAKERS_WORD)] = None
    finish: Annotated[str | None, Text("finish", LONGEST_MAKERS_WORD)] = None


@dataclass(frozen=True, slots=True)
class Standard(StandardKeys[Mount | None, Mm | None, Sides[Mm] | None, Sides[str] | None]):
    """One level of the house standard: shop, job, cabinet or opening."""


@dataclass(frozen=True, slots=True)
class Settled(StandardKeys[Mount, Mm, Sides[Mm], Sides[str]]):
    """A standard with every key settled; at most one of `overlay` and `reveal` is set."""

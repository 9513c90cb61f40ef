"""What a front was cut as, and what a later change makes of it: as it is, trimmed, or anew.

A front's edges are told from the lower left corner of its cabinet, so that it is known which
side a change is at: an edge that has moved in is trimmed there. A front that would have to be
larger, of another thickness or wood, or built otherwise, is made again; so is one that would
lose more than the shop trims, or whose stile or rail would get too narrow.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Annotated, Literal, TypeAlias

from fronts.rules.fact_kinds import EachSide, Length, Text, Word, YesNo
from fronts.rules.kinds import (
    FRONT_BUILDS,
    GRAIN_WAYS,
    HINGE_SIDES,
    SIDES,
    FrontBuild,
    GrainWay,
    Hinged,
    Side,
    words_of,
)
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.limits import LONGEST_MATERIAL
from fronts.rules.materials import has_grain
from fronts.rules.results import Front
from fronts.rules.standard_keys import Sides
from fronts.rules.standard_levels import standard_at

KEPT = 8
"""Decimal places of a millimetre that are kept: what is reckoned may have no end of them."""
Make: TypeAlias = Literal["on_hand", "build", "material", "grain", "glass", "frame"]
"""A fact that makes it another front."""


@dataclass(frozen=True, slots=True)
class CutTo:
    """A front when it was marked as cut: its size, its lower left corner in its cabinet, its make.

    `build` is None where nobody noted how it was made: then nothing is known of that but its
    size. `grain` is None where its material has none, `frame` has what is framed. `hinged` is
    where it is bored for hinge cups, `on_hand`: it was a door on hand.
    """

    width: Annotated[Mm, Length("width")]
    height: Annotated[Mm, Length("height")]
    thickness: Annotated[Mm, Length("thickness", small=True)]
    left: Annotated[Mm, Length("left edge in its cabinet", signed=True, zero=True)]
    bottom: Annotated[Mm, Length("bottom edge in its cabinet", signed=True, zero=True)]
    build: Annotated[FrontBuild | None, Word("built as", words_of(FRONT_BUILDS))] = None
    material: Annotated[str, Text("material", LONGEST_MATERIAL)] = ""
    grain: Annotated[GrainWay | None, Word("grain", GRAIN_WAYS)] = None
    frame: Annotated[Sides[Mm] | None, EachSide("stiles and rails", "frame_", Length("wide"))] = (
        None
    )
    glass: Annotated[bool, YesNo("ready for glass")] = False
    hinged: Annotated[Hinged | None, Word("hinged", HINGE_SIDES)] = None
    on_hand: Annotated[bool, YesNo("a door on hand")] = False


@dataclass(frozen=True, slots=True)
class RecordedCut:
    """A front that was marked as cut: what it is called, when, and by whom."""

    front: str
    at: datetime
    by: str
    facts: CutTo


@dataclass(frozen=True, slots=True)
class AfterCut:
    """What is to be done with a front that was cut: `trims` by side; or made again, and why.

    `lacks` are the sizes that it lacks by their names, `too_far` what would be trimmed too far
    by side, `otherwise` the facts that `was` and `now` differ in. `rehung`: it is bored for cups
    where it hangs no more.
    """

    was: CutTo
    now: CutTo
    trims: Mapping[Side, Mm]
    lacks: Mapping[str, Mm]
    too_far: Mapping[Side, Mm]
    otherwise: tuple[Make, ...]
    rehung: bool

    @property
    def make_again(self) -> bool:
        """Whether nothing but another front will do."""
        return bool(self.lacks or self.too_far or self.otherwise)

    @property
    def holds(self) -> bool:
        """Whether it is right as it was cut."""
        return not (self.make_again or self.trims or self.rehung)


def cut_to(front: Front, kitchen: Kitchen) -> CutTo:
    """What is kept of a front that is cut now."""
    cabinet = kitchen.cabinet(front.cabinet)
    way: GrainWay = "upright" if front.grain_upright else "level"
    is_framed = FRONT_BUILDS[front.build].framed
    frame = Sides(*(round(front.frame[side], KEPT) for side in SIDES))
    is_whole = all(frame[side] > 0 for side in SIDES)  # Else one is sawn off: told as a stop.
    return CutTo(
        width=round(front.width, KEPT),
        height=round(front.height, KEPT),
        thickness=round(front.thickness, KEPT),
        left=round(front.x - cabinet.left, KEPT),
        bottom=round(front.y - cabinet.y, KEPT),
        build=front.build,
        material=front.material,
        grain=way if is_framed or has_grain(front.material) else None,
        frame=frame if is_framed and is_whole else None,
        glass=front.glass,
        hinged=front.hinged if front.hinges else None,
        on_hand=front.door_on_hand is not None,
    )


def after_cut(cut: CutTo, front: Front, kitchen: Kitchen) -> AfterCut:
    """What a front that was cut needs to become the front that the kitchen wants now."""
    now, standard = cut_to(front, kitchen), standard_at(front, kitchen)
    wanted = {
        "width": now.width - cut.width,
        "height": now.height - cut.height,
        "thickness": abs(now.thickness - cut.thickness),
    }
    lacks = {name: by for name, by in wanted.items() if by > 0}
    otherwise = tuple(_made_otherwise(cut, now))
    if lacks or otherwise:
        return AfterCut(cut, now, {}, lacks, {}, otherwise, rehung=False)
    trims = {
        **_trims("left", "right", now.left - cut.left, -wanted["width"]),
        **_trims("bottom", "top", now.bottom - cut.bottom, -wanted["height"]),
    }
    frame = cut.frame or now.frame
    too_far = {
        side: trim
        for side, trim in trims.items()
        if trim > standard.trim_limit
        or (frame is not None and frame[side] - trim < standard.least_stile)
    }
    # Cups that are there and are not wanted; new ones alone take nothing but boring.
    rehung = not too_far and cut.hinged not in (None, now.hinged)
    return AfterCut(cut, now, trims, {}, too_far, (), rehung)


def _made_otherwise(cut: CutTo, now: CutTo) -> Iterator[Make]:
    """What nobody noted then, or names now, is no other."""
    if cut.build is None:
        return
    if cut.on_hand != now.on_hand:
        yield "on_hand"
    if cut.build != now.build:
        yield "build"
    if cut.material and now.material and cut.material.casefold() != now.material.casefold():
        yield "material"
    if cut.grain and now.grain and cut.grain != now.grain and cut.build == now.build:
        yield "grain"
    if cut.glass != now.glass and cut.build == now.build:
        yield "glass"
    # What is left of a door's own stiles follows from its size.
    if cut.frame and now.frame and cut.frame != now.frame and not now.on_hand:
        yield "frame"


def _trims(low: Side, high: Side, moved: Mm, less: Mm) -> dict[Side, Mm]:
    """What comes off the two edges of one axis: off the low one as far as it has moved in."""
    at_low = min(max(moved, NOTHING), less)
    return {side: trim for side, trim in ((low, at_low), (high, less - at_low)) if trim}

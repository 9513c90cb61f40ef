"""Walls, and what stands on them beside cabinets."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Annotated

from fronts.rules import limits
from fronts.rules.fact_kinds import Group, Label, Length, Number, Text, Word, YesNo
from fronts.rules.kinds import words_of
from fronts.rules.lengths import Mm
from fronts.rules.thing_kinds import RUNS, THING_KINDS, WALL_ENDS, Run, ThingKind, WallEnding

SQUARE = Fraction(90)


@dataclass(frozen=True, slots=True)
class WallEnd:
    """How a wall ends: at another wall in a corner of some angle, or otherwise."""

    corner: Annotated[WallEnding, Word("ends", WALL_ENDS, empty="Not known")]
    wall: Annotated[str | None, Text("next wall", limits.LONGEST_LABEL)] = None
    angle: Annotated[Fraction, Number("angle", "°", Fraction(1), Fraction(359))] = SQUARE


@dataclass(frozen=True, slots=True)
class Wall:
    """A wall by the name that its cabinets say; `length` None: not measured."""

    label: Annotated[str, Label("wall", example="North")]
    length: Annotated[Mm | None, Length("length")] = None
    left: Annotated[WallEnd | None, Group("left end", "left_")] = None
    right: Annotated[WallEnd | None, Group("right end", "right_")] = None


@dataclass(frozen=True, slots=True)
class Thing:
    """What stands in a run beside cabinets; it follows `after`, or is first on its wall.

    `x` None: where the one before it ends. `height` and `depth` None: not known.
    """

    label: Annotated[str, Label("label", example="F1")]
    kind: Annotated[ThingKind, Word("kind", words_of(THING_KINDS))]
    wall: Annotated[str, Label("wall", example="North")]
    width: Annotated[Mm, Length("width")]
    after: Annotated[str | None, Text("after", limits.LONGEST_LABEL)] = None
    run: Annotated[Run | None, Word("run", RUNS, empty="As what it follows")] = None
    x: Annotated[
        Mm | None, Length("from the wall's left end", signed=True, zero=True, empty="in its run")
    ] = None
    y: Annotated[Mm | None, Length("above the floor", zero=True)] = None
    height: Annotated[Mm | None, Length("height")] = None
    depth: Annotated[Mm | None, Length("depth")] = None
    panel: Annotated[bool, YesNo("takes a panel")] = False
    name: Annotated[str, Text("name", limits.LONGEST_ITEM_NAME)] = ""

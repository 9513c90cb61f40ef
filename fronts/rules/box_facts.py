"""Drawer boxes: one that exists, one that is to be made, and how the shop makes them."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Annotated

from fronts.rules import limits
from fronts.rules.fact_kinds import Count, Length, Lengths, Number, Rows, Text, Word
from fronts.rules.item_kinds import JOINTS, Joint
from fronts.rules.kinds import SLIDES, SlideKind, words_of
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches

QUARTER_INCH = inches(1, 4)


@dataclass(frozen=True, slots=True)
class ShelfPins:
    """A row of shelf-pin holes, upwards from x, y; from the box front's lower left corner."""

    x: Annotated[
        Mm,
        Length("from the left", zero=True, small=True, asks="how far the holes are from the left"),
    ]
    y: Annotated[
        Mm,
        Length(
            "lowest above the bottom", zero=True, small=True, asks="how far up the lowest hole is"
        ),
    ]
    pitch: Annotated[Mm, Length("hole to hole", small=True, asks="the distance from hole to hole")]
    count: Annotated[int, Count("holes", 1, limits.MOST_PINS, asks="how many holes, like 5")]
    diameter: Annotated[Mm, Length("diameter", small=True)] = QUARTER_INCH


@dataclass(frozen=True, slots=True)
class Box:
    """A drawer box; `rise` is its bottom edge above the opening's bottom edge.

    `side_clearance` is the measured distance from the opening's left edge to the box, or
    None where the box stands centred. `depth` None: not known.
    """

    width: Annotated[Mm, Length("width")]
    height: Annotated[Mm, Length("height")]
    front_thickness: Annotated[Mm, Length("thickness of the box front", small=True)]
    rise: Annotated[
        Mm,
        Length(
            "bottom above the opening's bottom",
            zero=True,
            small=True,
            asks="how far the box's bottom is above the opening's bottom",
            hint="For an upper drawer too: from the bottom of the whole opening.",
        ),
    ]
    depth: Annotated[Mm | None, Length("depth", empty="not known")] = None
    side_clearance: Annotated[
        Mm | None, Length("from the opening's left", zero=True, small=True, empty="centred")
    ] = None
    slide: Annotated[SlideKind | None, Word("slide", words_of(SLIDES), empty="Not known yet")] = (
        None
    )
    slide_width: Annotated[Mm | None, Length("width of the slide", small=True)] = None
    slide_height: Annotated[Mm | None, Length("height of the slide", small=True)] = None
    shelves: Annotated[int, Count("shelves above its floor", 0, limits.MOST_SHELVES)] = 0
    load_kg: Annotated[Fraction | None, Number("load", "kg", limits.LEAST_KG, limits.MOST_KG)] = (
        None
    )
    shelf_pins: Annotated[
        tuple[ShelfPins, ...], Rows("shelf-pin holes", limits.MOST_PIN_ROWS, "row of holes")
    ] = ()


@dataclass(frozen=True, slots=True)
class BoxToMake:
    """What is decided about a box that is to be made: its sizes are the rules' (`box_sizes`)."""

    slide: Annotated[
        SlideKind | None, Word("slide", words_of(SLIDES), empty="The shop's usual kind")
    ] = None
    shelves: Annotated[int, Count("shelves above its floor", 0, limits.MOST_SHELVES)] = 0
    load_kg: Annotated[Fraction | None, Number("load", "kg", limits.LEAST_KG, limits.MOST_KG)] = (
        None
    )


@dataclass(frozen=True, slots=True)
class BoxesMadeOf:
    """How a shop makes its boxes; None leaves it to what is usual in the job's unit.

    A rabbet or dado is `joint_depth` deep in the sides.
    """

    side: Annotated[Mm | None, Length("thickness of sides, front and back", small=True)] = None
    bottom: Annotated[Mm | None, Length("thickness of the bottom", small=True)] = None
    groove: Annotated[Mm | None, Length("depth of the bottom's groove", small=True)] = None
    joint: Annotated[Joint, Word("corner joint", JOINTS)] = "butt"
    joint_depth: Annotated[Mm | None, Length("depth of a rabbet or dado", small=True)] = None
    heights: Annotated[tuple[Mm, ...], Lengths("heights of drawer boxes", limits.MOST_LENGTHS)] = ()
    material: Annotated[str | None, Text("material", limits.LONGEST_MATERIAL)] = None


USUAL_BOXES = BoxesMadeOf()

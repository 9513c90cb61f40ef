"""The snapshot that a schedule is reckoned from: what was measured and decided, frozen.

Every fact is declared here once, as `rules.facts` says: its words, its limits, what holds
where it is left out. Lengths are exact millimetres. `None` in a `Standard` means that the
level says nothing and the farther level holds.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Annotated

from fronts.rules import limits
from fronts.rules.box_facts import USUAL_BOXES, Box, BoxesMadeOf, BoxToMake
from fronts.rules.fact_kinds import (
    DoorName,
    Group,
    ItemCode,
    Label,
    Length,
    Rows,
    Text,
    Word,
    YesNo,
)
from fronts.rules.facts import facts_of, rows_of
from fronts.rules.items import CUP, NO_ITEMS, Hardware
from fronts.rules.job_facts import NO_STOCK, JobFacts, Stock
from fronts.rules.kinds import (
    CABINET_BUILDS,
    CABINET_KINDS,
    CLOSINGS,
    FRONT_BUILDS,
    GRAIN_WAYS,
    HINGE_SIDES,
    MADE_BY,
    CabinetBuild,
    CabinetKind,
    ClosedBy,
    Closing,
    FrontBuild,
    GrainWay,
    Hinged,
    MadeBy,
    words_of,
)
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.machine_facts import ANY_MACHINE, Machine
from fronts.rules.practice import PRACTICE, Practice, inches
from fronts.rules.standard_keys import Standard
from fronts.rules.wall_facts import Thing, Wall

CHOOSE = "choose"
"""In place of a door's label: pick one of the doors on hand by assignment."""

SAME_NAME = "The same name for all fronts that read as one piece"

KNOB_HOLE = inches(3, 16)
THREE_QUARTERS = inches(3, 4)


@dataclass(frozen=True, slots=True)
class Point:
    """A place, x to the right and y up from a lower left corner."""

    x: Annotated[Mm, Length("from the left", zero=True)]
    y: Annotated[Mm, Length("from the bottom", zero=True)]


@dataclass(frozen=True, slots=True)
class HandlePlace:
    """A place of its own for a knob, or for the middle of a pull, on its front."""

    x: Annotated[Mm, Length("from the left", zero=True)]
    y: Annotated[Mm, Length("from the bottom", zero=True)]


@dataclass(frozen=True, slots=True)
class KnobHole:
    """An old hole for a knob, from the door's lower left corner seen from the front."""

    x: Annotated[Mm, Length("from the left", zero=True)]
    y: Annotated[Mm, Length("from the bottom", zero=True)]
    diameter: Annotated[Mm, Length("diameter of the knob hole", small=True)] = KNOB_HOLE


@dataclass(frozen=True, slots=True)
class DoorOnHand:
    """A door that exists and may become a front."""

    label: Annotated[str, Label("label", example="D1")]
    width: Annotated[Mm, Length("width")]
    height: Annotated[Mm, Length("height")]
    thickness: Annotated[Mm, Length("thickness", small=True)] = THREE_QUARTERS
    build: Annotated[FrontBuild, Word("built as", words_of(FRONT_BUILDS))] = "slab"
    stile: Annotated[Mm | None, Length("width of the stiles")] = None
    rail: Annotated[Mm | None, Length("width of the rails")] = None
    panel_thickness: Annotated[Mm | None, Length("thickness of the panel", small=True)] = None
    knob_hole: Annotated[KnobHole | None, Group("knob hole", "knob_")] = None
    hinge_bores: Annotated[tuple[Point, ...], Rows("hinge bores", limits.MOST_BORES, "bore")] = ()
    bore_diameter: Annotated[Mm, Length("diameter of the bores", small=True)] = CUP
    material: Annotated[str | None, Text("material", limits.LONGEST_MATERIAL)] = None


@dataclass(frozen=True, slots=True)
class FrontFacts:
    """What is decided about one front; None leaves it to the rules.

    `own_height` is its part of a stack; `width` and `height` state a front that exists.
    `door_on_hand` names a door or is CHOOSE; `hinge` and `handle` name items by their codes.
    A front stands on a box that exists, or on one that is to be made. `machine` is what a
    machine's booklet says of its panel, `room_behind` what the sink leaves a tip-out.
    """

    own_height: Annotated[Mm | None, Length("height in the stack", empty="shares the rest")] = None
    door_on_hand: Annotated[str | None, DoorName("door on hand")] = None
    width: Annotated[Mm | None, Length("width of the front")] = None
    height: Annotated[Mm | None, Length("height of the front")] = None
    thickness: Annotated[Mm | None, Length("thickness", small=True)] = None
    build: Annotated[
        FrontBuild | None, Word("built as", words_of(FRONT_BUILDS), empty="As usual")
    ] = None
    material: Annotated[str | None, Text("material", limits.LONGEST_MATERIAL)] = None
    shift_x: Annotated[Mm, Length("moved to the right", signed=True, zero=True, small=True)] = (
        NOTHING
    )
    shift_y: Annotated[Mm, Length("moved up", signed=True, zero=True, small=True)] = NOTHING
    hinged: Annotated[Hinged | None, Word("hinged", HINGE_SIDES, empty="Left")] = None
    handle: Annotated[str | None, ItemCode("knob or pull", empty="The shop's first")] = None
    hinge: Annotated[str | None, ItemCode("hinge", empty="By rule")] = None
    glass: Annotated[bool, YesNo("glass instead of a panel")] = False
    machine: Annotated[Machine, Group("what its machine takes", "machine_")] = ANY_MACHINE
    room_behind: Annotated[
        Mm | None, Length("room behind it, to the sink", zero=True, empty="not measured")
    ] = None
    grain: Annotated[GrainWay | None, Word("grain runs", GRAIN_WAYS, empty="As usual")] = None
    grain_set: Annotated[
        str | None,
        Text("grain set", limits.LONGEST_SET, empty="by itself", hint=SAME_NAME),
    ] = None
    made_by: Annotated[MadeBy | None, Word("made", MADE_BY, empty="As the standard says")] = None
    handles: Annotated[
        tuple[HandlePlace, ...], Rows("places of handles", limits.MOST_HANDLES, "place")
    ] = ()
    box: Annotated[Box | None, Rows("box", 1, "box")] = None
    box_to_make: Annotated[BoxToMake | None, Rows("box to be made", 1, "box to be made")] = None


@dataclass(frozen=True, slots=True)
class Measured:
    """Sizes taken on site; diagonal 1 runs from bottom left to top right."""

    width_top: Annotated[Mm | None, Length("width at the top")] = None
    width_bottom: Annotated[Mm | None, Length("width at the bottom")] = None
    height_left: Annotated[Mm | None, Length("height at the left")] = None
    height_right: Annotated[Mm | None, Length("height at the right")] = None
    diagonal_1: Annotated[Mm | None, Length("diagonal, bottom left to top right")] = None
    diagonal_2: Annotated[Mm | None, Length("diagonal, top left to bottom right")] = None


@dataclass(frozen=True, slots=True)
class Opening:
    """The hole in a cabinet's face; x, y from the cabinet's outer lower left corner.

    `fronts` run from the left or from the top. An opening always has the fronts that close
    it: those that nobody decided anything about are left to the rules.
    """

    label: Annotated[str, Label("label", example="a")]
    x: Annotated[
        Mm,
        Length("from the cabinet's left", zero=True, asks="how far it is from the cabinet's left"),
    ]
    y: Annotated[
        Mm, Length("above the cabinet's bottom", zero=True, asks="how far it is above the bottom")
    ]
    width: Annotated[Mm, Length("width")]
    height: Annotated[Mm, Length("height")]
    closed_by: Annotated[ClosedBy, Word("closed by", words_of(CLOSINGS))]
    fronts: Annotated[tuple[FrontFacts, ...], Rows("fronts", limits.MOST_FRONTS, "front")] = ()
    measured: Annotated[Measured, Group("measured on site", "measured_")] = Measured()
    standard: Annotated[Standard, Group("standard", "")] = Standard()

    def __post_init__(self) -> None:
        least, most = self.closing.fronts
        missing = (FrontFacts(),) * (least - len(self.fronts))
        object.__setattr__(self, "fronts", (*self.fronts, *missing)[:most])

    @property
    def closing(self) -> Closing:
        """What is true of every opening that is closed so."""
        return CLOSINGS[self.closed_by]


@dataclass(frozen=True, slots=True)
class Cabinet:
    """A cabinet on a wall; x, y of its outer lower left corner, y from the floor.

    `x` None: where the one before it in its run ends.
    """

    label: Annotated[str, Label("label", example="B1")]
    kind: Annotated[CabinetKind, Word("kind", words_of(CABINET_KINDS))]
    build: Annotated[CabinetBuild, Word("build", words_of(CABINET_BUILDS))]
    wall: Annotated[str, Label("wall", example="A")]
    x: Annotated[
        Mm | None,
        Length("from the wall's left end", signed=True, zero=True, empty="beside the one before"),
    ]
    y: Annotated[Mm, Length("above the floor", signed=True, zero=True)]
    width: Annotated[Mm, Length("width")]
    height: Annotated[Mm, Length("height")]
    depth: Annotated[Mm, Length("depth")]
    openings: Annotated[tuple[Opening, ...], Rows("openings", limits.MOST_OPENINGS, "opening")] = ()
    standard: Annotated[Standard, Group("standard", "")] = Standard()

    @property
    def left(self) -> Mm:
        """Where it stands: `x`, once its run gave it one (`rules.runs.stood`)."""
        if self.x is None:
            raise TypeError(f"{self.label} has no place yet: its run was not laid out")
        return self.x


@dataclass(frozen=True, slots=True)
class KindStandard:
    """What all cabinets of one kind in a job do otherwise than the job."""

    kind: Annotated[CabinetKind, Word("kind", words_of(CABINET_KINDS))]
    standard: Annotated[Standard, Group("standard", "")] = Standard()


@dataclass(frozen=True, slots=True)
class Kitchen:
    """Everything a schedule depends on."""

    job: Annotated[JobFacts, Group("job", "")]
    standard: Annotated[Standard, Group("standard", "")] = Standard()
    doors_on_hand: Annotated[
        tuple[DoorOnHand, ...], Rows("doors on hand", limits.MOST_DOORS, "door")
    ] = ()
    cabinets: Annotated[tuple[Cabinet, ...], Rows("cabinets", limits.MOST_CABINETS, "cabinet")] = ()
    others: Annotated[
        tuple[Thing, ...], Rows("appliances, fillers, panels and gaps", limits.MOST_THINGS, "thing")
    ] = ()
    walls: Annotated[tuple[Wall, ...], Rows("walls", limits.MOST_WALLS, "wall")] = ()
    kind_standards: Annotated[
        tuple[KindStandard, ...],
        Rows("standards of cabinet kinds", len(CABINET_KINDS), "standard of a cabinet kind"),
    ] = ()
    stock: Annotated[Stock, Group("stock", "")] = NO_STOCK
    hardware: Annotated[Hardware, Group("hardware", "")] = NO_ITEMS
    boxes_made_of: Annotated[BoxesMadeOf, Group("boxes made of", "")] = USUAL_BOXES
    practice: Annotated[Practice, Group("shop's numbers", "")] = PRACTICE

    @property
    def wall_names(self) -> tuple[str, ...]:
        """The walls that cabinets stand on, in the order in which these name them."""
        return tuple(dict.fromkeys(cabinet.wall for cabinet in self.cabinets))

    def cabinet(self, label: str) -> Cabinet:
        """Its cabinet of this label."""
        return next(cabinet for cabinet in self.cabinets if cabinet.label == label)

    def standard_of(self, kind: CabinetKind) -> Standard:
        """What all cabinets of a kind do otherwise than the job."""
        said = (one.standard for one in self.kind_standards if one.kind == kind)
        return next(said, Standard())


BESIDE_CABINETS: Mapping[type, Rows] = {
    fact.kind: declared
    for fact, declared in rows_of(Kitchen)
    if fact.kind is not Cabinet and any(one.name == "label" for one in facts_of(fact.kind))
}
"""The kinds of thing with labels beside the cabinets: all are entered and kept in one way."""

"""What a schedule consists of: frozen results, all lengths exact millimetres.

Places on a front are from its lower left corner as seen from the front; places on a
box from the box front's lower left corner; places on a wall from its left end and the floor.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

from fronts.rules.job_facts import JobFacts
from fronts.rules.kinds import ClosedBy, FrontBuild, FrontKind, Hinged, Mount
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Sides

Level: TypeAlias = Literal["stop", "check", "note"]
Method: TypeAlias = Literal["jig", "shims"]


@dataclass(frozen=True, slots=True)
class Edge:
    """One side of a front.

    `overlay` past the opening's edge (negative: inside it), None towards a front of the
    same opening; `gap` to the front that faces this side, None where none does.
    """

    overlay: Mm | None
    gap: Mm | None = None
    faces: str | None = None


@dataclass(frozen=True, slots=True)
class Movement:
    """How a solid-wood slab moves over the year: growth from made to dampest, and the gap left."""

    across: Literal["width", "height"]
    shrinks: Mm
    grows: Mm
    least_gap: Mm


@dataclass(frozen=True, slots=True)
class Front:
    """One front: its size, its place on its wall, and what it is made of.

    `hinge_centres` are from the bottom for a door hinged at a side, else from the left.
    `knob_screw` goes through the front alone, None where a box stands behind it or none fits.
    `lean` is the opening's lean over its height, None where no diagonals were taken.
    """

    label: str
    cabinet: str
    opening: str
    wall: str
    kind: FrontKind
    closed_by: ClosedBy
    plane: Mount
    hinged: Hinged | None
    width: Mm
    height: Mm
    thickness: Mm
    x: Mm
    y: Mm
    edges: Sides[Edge]
    build: FrontBuild
    material: str
    stile: Mm
    rail: Mm
    panel_thickness: Mm
    door_on_hand: str | None
    trim_width: Mm
    trim_height: Mm
    is_new: bool
    knobs: tuple[Point, ...]
    knob_screw: Mm | None
    bores: tuple[Point, ...]
    hinges: int
    hinge_centres: tuple[Mm, ...]
    weight_kg: Fraction
    lean: Mm | None
    movement: Movement | None

    @property
    def right(self) -> Mm:
        return self.x + self.width

    @property
    def top(self) -> Mm:
        return self.y + self.height


@dataclass(frozen=True, slots=True)
class Ledges:
    """The two strips under a jig's block: they carry the front's bottom edge.

    `overhang` stands proud at the front; the block is `block_depth` deep.
    """

    thickness: Mm
    length: Mm
    overhang: Mm
    block_depth: Mm
    count: int = 2


@dataclass(frozen=True, slots=True)
class Slot:
    """The notch at a jig's mid-length that clears a bottom slide."""

    width: Mm
    depth: Mm


@dataclass(frozen=True, slots=True)
class Shims:
    """Shims for an inset front: one at each side (`right` where it differs), two below."""

    side: Mm
    right: Mm
    bottom: Mm


@dataclass(frozen=True, slots=True)
class Tape:
    """Whether foam tape may be used to hang this front, and why not where it may not."""

    suggested: bool
    why: str


@dataclass(frozen=True, slots=True)
class Hole:
    """A mounting hole: its place on the box front and on the front; `moved` from its default."""

    box_x: Mm
    box_y: Mm
    front_x: Mm
    front_y: Mm
    diameter: Mm
    moved: bool


@dataclass(frozen=True, slots=True)
class Screw:
    """The mounting screws of a front."""

    length: Mm
    count: int


@dataclass(frozen=True, slots=True)
class Recess:
    """A flat-bottomed hole in the box front for the head of a knob screw."""

    width: Mm
    depth: Mm


@dataclass(frozen=True, slots=True)
class KnobScrew:
    """The screw of a knob or pull."""

    length: Mm
    through_box: bool
    recess: Recess | None
    count: int


@dataclass(frozen=True, slots=True)
class Fitting:
    """How one front is fixed to its box.

    `jig_thickness` is the box's bottom above the front's bottom edge; not above zero: no jig.
    `side_offset` is the front's edge beyond the box's left side, `right_offset` the right.
    """

    front: str
    method: Method
    side_offset: Mm
    right_offset: Mm
    side_clearance: Mm
    jig_thickness: Mm
    jig_length: Mm
    box_height: Mm
    ledges: Ledges | None
    slot: Slot | None
    shims: Shims | None
    tape: Tape
    holes: tuple[Hole, ...]
    screw: Screw | None
    knob_screw: KnobScrew | None
    drill_stop: Mm
    play: Mm
    slide: str | None
    slide_length: Mm | None


@dataclass(frozen=True, slots=True)
class Jig:
    """One jig that serves all its fronts; the same thickness shares a blank."""

    thickness: Mm
    length: Mm
    ledges: Ledges
    slot: Slot | None
    fronts: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Shim:
    """Shims of one thickness for the whole kitchen: how many at a side, how many below."""

    thickness: Mm
    side: int
    bottom: int
    fronts: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class DoorUse:
    """A door on hand, the front that it becomes, and what is trimmed off in all."""

    door: str
    front: str
    trim_width: Mm
    trim_height: Mm


@dataclass(frozen=True, slots=True)
class Need:
    """A hardware item, how many the kitchen needs, and which fronts need it.

    `why` in words; `spares` are to be ordered beside the need.
    """

    item: str
    need: int
    fronts: tuple[str, ...]
    why: str
    per_front: Mapping[str, int]
    spares: int


@dataclass(frozen=True, slots=True)
class Part:
    """A piece to cut; grain runs along `length`."""

    label: str
    front: str
    part: str
    length: Mm
    width: Mm
    thickness: Mm
    material: str
    count: int
    stack: str | None = None


@dataclass(frozen=True, slots=True)
class Finding:
    """Something a person must know: `stop` before cutting, `check` (measure, decide), `note`."""

    level: Level
    code: str
    where: tuple[str, ...]
    message: str


@dataclass(frozen=True, slots=True)
class Schedule:
    """The whole kitchen worked out."""

    job: JobFacts
    fronts: tuple[Front, ...]
    fittings: tuple[Fitting, ...]
    jigs: tuple[Jig, ...]
    shims: tuple[Shim, ...]
    doors_on_hand: tuple[DoorUse, ...]
    hardware: tuple[Need, ...]
    parts: tuple[Part, ...]
    findings: tuple[Finding, ...]

    def front(self, label: str) -> Front:
        return next(each for each in self.fronts if each.label == label)

    def fronts_of(self, cabinet: str) -> list[Front]:
        """The fronts of the cabinet of this label, in their order."""
        return [each for each in self.fronts if each.cabinet == cabinet]

    def fitting(self, label: str) -> Fitting | None:
        return next((each for each in self.fittings if each.front == label), None)

    def fittings_of(self, fronts: Iterable[Front]) -> dict[str, Fitting]:
        """How those of the fronts that stand on boxes do so, by their labels."""
        return {each.label: fit for each in fronts if (fit := self.fitting(each.label))}

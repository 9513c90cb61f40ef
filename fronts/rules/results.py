"""What a schedule consists of: frozen results, all lengths exact millimetres.

Places on a front are from its lower left corner as seen from the front; places on a
box from the box front's lower left corner; places on a wall from its left end and the floor.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal, TypeAlias

from fronts.rules.banded_edges import Banding
from fronts.rules.bought_results import BoughtLine
from fronts.rules.box_results import BoxOnSlide
from fronts.rules.error_results import ErrorToExpect
from fronts.rules.face import Face
from fronts.rules.fitting_results import Fitting, FixedScrews, Jig, Shim, Tray
from fronts.rules.grain_results import GrainPlace, GrainSet
from fronts.rules.handles import Handle
from fronts.rules.hinge_results import DoorHinge
from fronts.rules.job_facts import JobFacts
from fronts.rules.kinds import FRONT_BUILDS, ClosedBy, FrontBuild, FrontKind, Hinged, Mount
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm
from fronts.rules.machine_facts import Machine
from fronts.rules.standard_keys import Sides
from fronts.rules.wall_results import CabinetPlace, OpeningEnds, WallRuns

Level: TypeAlias = Literal["stop", "check", "note"]


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
    `frame` holds the widths of its stiles and rails; where `glass` is, its panel is a pane that
    is `panel_thickness` thick. `trim` is what is sawn off each side of its
    door on hand, `plugged` those of its old `bores` that serve no hinge.
    `knob_screw` goes through the front alone, None where a box stands behind it or none fits.
    `lean` is the opening's lean over its height, None where no diagonals were taken. `fixed_by`
    holds what does not open, `tray` is a tip-out's, `machine` what a panel hangs on.
    `grain_upright` is its slab's grain, or its panel's.
    `bought`: a door maker makes it; the schedule's name has that from `bought` of the schedule.
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
    frame: Sides[Mm]
    panel_thickness: Mm
    glass: bool
    door_on_hand: str | None
    trim: Sides[Mm]
    is_new: bool
    handles: tuple[Handle, ...]
    knob_screw: Mm | None
    bores: tuple[Point, ...]
    plugged: tuple[Point, ...]
    hinges: int
    hinge_centres: tuple[Mm, ...]
    hinge: DoorHinge | None
    weight_kg: Fraction
    lean: Mm | None
    movement: Movement | None
    fixed_by: FixedScrews | None
    tray: Tray | None
    machine: Machine | None
    grain_upright: bool
    bought: bool = field(repr=False)

    @property
    def right(self) -> Mm:
        return self.x + self.width

    @property
    def top(self) -> Mm:
        return self.y + self.height

    @property
    def face(self) -> Face:
        """It as hands and screws meet it."""
        return Face(
            self.width, self.height, self.thickness, FRONT_BUILDS[self.build].framed, self.frame,
            self.panel_thickness,
        )  # fmt: skip

    @property
    def knobs(self) -> tuple[Point, ...]:
        """Where the screws of its knobs and pulls go through it."""
        return tuple(hole for handle in self.handles for hole in handle.holes)

    @property
    def stile(self) -> Mm:
        """The narrower one, where trimming left them different."""
        return min(self.frame.left, self.frame.right)

    @property
    def rail(self) -> Mm:
        """The narrower one."""
        return min(self.frame.top, self.frame.bottom)

    @property
    def trim_width(self) -> Mm:
        return self.trim.left + self.trim.right

    @property
    def trim_height(self) -> Mm:
        return self.trim.top + self.trim.bottom

    @property
    def hinge_words(self) -> str | None:
        """Its hinge and how that is set, None where it has none."""
        return self.hinge.words if self.hinge else None


@dataclass(frozen=True, slots=True)
class DoorUse:
    """A door on hand, the front that it becomes, and what is trimmed off each side."""

    door: str
    front: str
    trim: Sides[Mm]

    @property
    def trim_width(self) -> Mm:
        return self.trim.left + self.trim.right

    @property
    def trim_height(self) -> Mm:
        return self.trim.top + self.trim.bottom


@dataclass(frozen=True, slots=True)
class Need:
    """A hardware item, how many the kitchen needs, and which fronts need it.

    `code` is the item's on the shop's list, `kind` what any of its kind is called, where
    the item has a name of its own; `why` in words; `spares` are to be ordered beside the need.
    `unit` is what `need` counts where that is no pieces: feet or metres, of whole ones the need,
    of exact ones what each front takes. `is_screw`: it is driven, so it is taken along; `group` is
    what its facts and its place in the schedule go by, `length` in words of what has several
    under one code. None of these three is a part of the schedule's name.
    """

    item: str
    need: int
    fronts: tuple[str, ...]
    why: str
    per_front: Mapping[str, int | Fraction]
    spares: int
    code: str | None = None
    kind: str = ""
    unit: str = ""
    is_screw: bool = field(default=False, repr=False)
    group: str = field(default="", repr=False)
    length: str = field(default="", repr=False)


@dataclass(frozen=True, slots=True)
class Part:
    """A piece to cut, as large as it is cut; grain runs along `length`.

    `stack` is the opening whose drawer fronts it is one of, `grain` its place among fronts whose
    grain runs on.
    """

    label: str
    front: str
    part: str
    length: Mm
    width: Mm
    thickness: Mm
    material: str
    count: int
    stack: str | None = None
    grain: GrainPlace | None = None
    banding: Banding | None = None

    @property
    def finished_length(self) -> Mm:
        """With its bands on."""
        if self.banding is None:
            return self.length
        return self.banding.height if self.banding.upright else self.banding.width

    @property
    def finished_width(self) -> Mm:
        """With its bands on."""
        if self.banding is None:
            return self.width
        return self.banding.width if self.banding.upright else self.banding.height


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
    boxes: tuple[BoxOnSlide, ...]
    fittings: tuple[Fitting, ...]
    jigs: tuple[Jig, ...]
    shims: tuple[Shim, ...]
    doors_on_hand: tuple[DoorUse, ...]
    hardware: tuple[Need, ...]
    parts: tuple[Part, ...]
    findings: tuple[Finding, ...]
    cabinets: tuple[CabinetPlace, ...]
    walls: tuple[WallRuns, ...]
    openings: tuple[OpeningEnds, ...]
    grain_sets: tuple[GrainSet, ...]
    bought: tuple[BoughtLine, ...]
    errors: tuple[ErrorToExpect, ...]

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

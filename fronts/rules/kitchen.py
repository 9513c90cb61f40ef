"""The snapshot that a schedule is reckoned from: what was measured and decided, frozen.

Lengths are exact millimetres. `None` in a `Standard` means that the level says nothing
and the farther level holds.
"""

from dataclasses import dataclass
from datetime import date
from typing import Generic, Literal, TypeAlias, TypeVar

from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE, Practice, inches

Unit: TypeAlias = Literal["in", "mm"]
Mount: TypeAlias = Literal["overlay", "inset"]
Kind: TypeAlias = Literal["base", "wall", "tall"]
CabinetBuild: TypeAlias = Literal["face-frame", "frameless"]
FrontBuild: TypeAlias = Literal["slab", "five-piece"]
ClosedBy: TypeAlias = Literal["door", "pair", "drawer", "drawers", "pull-out", "fixed", "open"]
Hinged: TypeAlias = Literal["left", "right", "top", "bottom"]
SlideKind: TypeAlias = Literal["bottom", "side", "under"]
Side: TypeAlias = Literal["left", "right", "top", "bottom"]

SIDES: tuple[Side, ...] = ("left", "right", "top", "bottom")
CHOOSE = "choose"
"""In place of a door's label: pick one of the doors on hand by assignment."""

NOTHING = Mm(0)
CUP = Mm(35)
HALF_INCH = inches(1, 2)
SIXTEENTH = inches(1, 16)

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Sides(Generic[T]):
    """One thing for each side, as seen from the front."""

    left: T
    right: T
    top: T
    bottom: T

    def __getitem__(self, side: Side) -> T:
        return getattr(self, side)  # type: ignore[no-any-return]


@dataclass(frozen=True, slots=True)
class Point:
    """A place, x to the right and y up from a lower left corner."""

    x: Mm
    y: Mm


@dataclass(frozen=True, slots=True)
class Reveal:
    """How much of a member stays visible: between two openings, and at the cabinet's ends."""

    between: Mm
    end: Sides[Mm]


@dataclass(frozen=True, slots=True)
class Standard:
    """One level of the house standard: shop, job, cabinet or opening."""

    mount: Mount | None = None
    overlay: Sides[Mm] | None = None
    reveal: Reveal | None = None
    gap_between: Mm | None = None
    least_gap: Mm | None = None
    inset_gap: Sides[Mm] | None = None
    front_thickness: Mm | None = None
    trim_limit: Mm | None = None
    least_stile: Mm | None = None
    skin: Mm | None = None
    bite: Mm | None = None
    hinge_end: Mm | None = None


@dataclass(frozen=True, slots=True)
class KnobHole:
    """An old hole for a knob, from the door's lower left corner seen from the front."""

    x: Mm
    y: Mm
    diameter: Mm


@dataclass(frozen=True, slots=True)
class DoorOnHand:
    """A door that exists and may become a front."""

    label: str
    width: Mm
    height: Mm
    thickness: Mm
    build: FrontBuild = "slab"
    stile: Mm | None = None
    rail: Mm | None = None
    panel_thickness: Mm | None = None
    knob_hole: KnobHole | None = None
    hinge_bores: tuple[Point, ...] = ()
    bore_diameter: Mm = CUP
    material: str | None = None


@dataclass(frozen=True, slots=True)
class ShelfPins:
    """A row of shelf-pin holes, upwards from x, y; from the box front's lower left corner."""

    x: Mm
    y: Mm
    pitch: Mm
    count: int
    diameter: Mm


@dataclass(frozen=True, slots=True)
class Box:
    """A drawer box; `rise` is its bottom edge above the opening's bottom edge.

    `side_clearance` is the measured distance from the opening's left edge to the box, or
    None where the box stands centred. `depth` None: not known.
    """

    width: Mm
    height: Mm
    front_thickness: Mm
    rise: Mm
    depth: Mm | None = None
    side_clearance: Mm | None = None
    slide: SlideKind | None = None
    slide_width: Mm | None = None
    slide_height: Mm | None = None
    shelf_pins: tuple[ShelfPins, ...] = ()


@dataclass(frozen=True, slots=True)
class FrontWish:
    """What is decided about the fronts of an opening; None leaves it to the rules.

    `width` and `height` state a front that exists. `door_on_hand` names a door or is CHOOSE.
    """

    door_on_hand: str | None = None
    width: Mm | None = None
    height: Mm | None = None
    thickness: Mm | None = None
    build: FrontBuild | None = None
    material: str | None = None
    shift_x: Mm = NOTHING
    shift_y: Mm = NOTHING


@dataclass(frozen=True, slots=True)
class Measured:
    """Sizes taken on site; diagonal 1 runs from bottom left to top right."""

    width_top: Mm | None = None
    width_bottom: Mm | None = None
    height_left: Mm | None = None
    height_right: Mm | None = None
    diagonal_1: Mm | None = None
    diagonal_2: Mm | None = None


@dataclass(frozen=True, slots=True)
class Opening:
    """The hole in a cabinet's face; x, y from the cabinet's outer lower left corner.

    `boxes` run from the top, one to a front (None where a front has none).
    `heights` run from the top, None where a front shares what remains.
    """

    label: str
    x: Mm
    y: Mm
    width: Mm
    height: Mm
    closed_by: ClosedBy
    hinged: Hinged | None = None
    count: int = 1
    heights: tuple[Mm | None, ...] = ()
    front: FrontWish = FrontWish()
    boxes: tuple[Box | None, ...] = ()
    measured: Measured = Measured()
    standard: Standard = Standard()


@dataclass(frozen=True, slots=True)
class Cabinet:
    """A cabinet on a wall; x, y of its outer lower left corner, y from the floor."""

    label: str
    kind: Kind
    build: CabinetBuild
    wall: str
    x: Mm
    y: Mm
    width: Mm
    height: Mm
    depth: Mm
    openings: tuple[Opening, ...] = ()
    standard: Standard = Standard()


@dataclass(frozen=True, slots=True)
class Stock:
    """What the shop keeps: lengths on the shelf, and the knobs' thread."""

    screw_lengths: tuple[Mm, ...] = ()
    knob_screw_lengths: tuple[Mm, ...] = ()
    knob_thread: str = "8-32"
    knob_thread_depth: Mm = HALF_INCH
    slide_lengths: tuple[Mm, ...] = ()


@dataclass(frozen=True, slots=True)
class JobFacts:
    """Whose kitchen it is, and in which unit and step the shop works on it."""

    number: str
    client: str = ""
    site: str = ""
    unit: Unit = "in"
    step: Mm = SIXTEENTH
    fit_on: date | None = None


@dataclass(frozen=True, slots=True)
class Kitchen:
    """Everything a schedule depends on."""

    job: JobFacts
    standard: Standard = Standard()
    cabinets: tuple[Cabinet, ...] = ()
    doors_on_hand: tuple[DoorOnHand, ...] = ()
    stock: Stock = Stock()
    practice: Practice = PRACTICE

"""How fronts are fixed to their boxes: frozen results, all lengths exact millimetres.

Places on a front are from its lower left corner as seen from the front; places on a
box from the box front's lower left corner.
"""

from dataclasses import dataclass
from typing import Literal, TypeAlias

from fronts.rules.kinds import SlideKind
from fronts.rules.lengths import Mm

Method: TypeAlias = Literal["jig", "packers", "shims"]


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
class FixedScrews:
    """The screws of a front that is fixed from behind, through wood that is `behind` thick.

    `length` None: none in stock holds without coming through.
    """

    length: Mm | None
    count: int
    behind: Mm


@dataclass(frozen=True, slots=True)
class Pilot:
    """The hole in the front for a mounting screw."""

    diameter: Mm
    depth: Mm


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

    `jig_thickness` is the box's bottom above the front's bottom edge; not above zero: no jig;
    too thin for one: packers as thick.
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
    pilot: Pilot | None
    knob_screw: KnobScrew | None
    drill_stop: Mm
    play: Mm
    slide: SlideKind | None
    slide_length: Mm | None


@dataclass(frozen=True, slots=True)
class Tray:
    """The tray of a front that tips out: `length` at most, and the room that it was measured."""

    length: Mm
    depth: Mm
    room: Mm | None


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

"""What may be entered of each thing, by the names of its table's columns."""

from collections.abc import Sequence
from typing import TypedDict

from fronts.models import DoorOnHand
from fronts.rules.lengths import Mm


class StandardValues(TypedDict, total=False):
    """One level of the house standard; None (mount: "") leaves a key to the farther level."""

    mount: str
    overlay_left: Mm | None
    overlay_right: Mm | None
    overlay_top: Mm | None
    overlay_bottom: Mm | None
    reveal_between: Mm | None
    reveal_left: Mm | None
    reveal_right: Mm | None
    reveal_top: Mm | None
    reveal_bottom: Mm | None
    inset_left: Mm | None
    inset_right: Mm | None
    inset_top: Mm | None
    inset_bottom: Mm | None
    gap_between: Mm | None
    least_gap: Mm | None
    front_thickness: Mm | None
    trim_limit: Mm | None
    least_stile: Mm | None
    skin: Mm | None
    bite: Mm | None
    hinge_end: Mm | None


class CabinetValues(StandardValues, total=False):
    """A cabinet, with what it says of the standard."""

    label: str
    kind: str
    build: str
    wall: str
    x: Mm
    y: Mm
    width: Mm
    height: Mm
    depth: Mm


class OpeningValues(StandardValues, total=False):
    """An opening, with what it says of the standard."""

    label: str
    x: Mm
    y: Mm
    width: Mm
    height: Mm
    closed_by: str
    hinged: str
    count: int
    heights: Sequence[Mm | None]
    measured_width_top: Mm | None
    measured_width_bottom: Mm | None
    measured_height_left: Mm | None
    measured_height_right: Mm | None
    diagonal_1: Mm | None
    diagonal_2: Mm | None
    front_door: DoorOnHand | None
    front_choose: bool
    front_width: Mm | None
    front_height: Mm | None
    front_thickness_own: Mm | None
    front_build: str
    front_material: str
    shift_x: Mm
    shift_y: Mm


class BoxValues(TypedDict, total=False):
    """A drawer box."""

    width: Mm
    height: Mm
    depth: Mm | None
    front_thickness: Mm
    rise: Mm
    side_clearance: Mm | None
    slide: str
    slide_width: Mm | None
    slide_height: Mm | None


class DoorValues(TypedDict, total=False):
    """A door on hand."""

    label: str
    width: Mm
    height: Mm
    thickness: Mm
    build: str
    stile: Mm | None
    rail: Mm | None
    panel_thickness: Mm | None
    knob_x: Mm | None
    knob_y: Mm | None
    knob_diameter: Mm | None
    bore_diameter: Mm
    material: str


class StockValues(TypedDict, total=False):
    """What is kept on the shelf."""

    screw_lengths: Sequence[Mm]
    knob_screw_lengths: Sequence[Mm]
    slide_lengths: Sequence[Mm]
    knob_thread: str
    knob_thread_depth: Mm


class FitValues(TypedDict, total=False):
    """The gaps measured round a front once it hung."""

    gap_left: Mm | None
    gap_right: Mm | None
    gap_top: Mm | None
    gap_bottom: Mm | None
    note: str

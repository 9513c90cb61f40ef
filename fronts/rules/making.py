"""What a laid-out front is: thickness, build, material, knobs, weight, hinges."""

from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.box_place import box_on_front
from fronts.rules.doors_on_hand import after_trim
from fronts.rules.findings import FindingWriter
from fronts.rules.hinges import hinge_centres, hinge_count, makes_overlay, too_heavy
from fronts.rules.kinds import FRONT_BUILDS, FRONT_KINDS, FrontBuild, FrontKind, is_upright
from fronts.rules.kitchen import DoorOnHand, Kitchen, Point
from fronts.rules.knobs import knob_places, over_box
from fronts.rules.laying import Laid
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.materials import LAST_RESORT, density_of, material_of
from fronts.rules.parts import frame_of, has_middle_rail, has_panel
from fronts.rules.practice import Practice
from fronts.rules.results import Finding
from fronts.rules.weight import panel_material, slab_weight, weight_kg


@dataclass(frozen=True, slots=True)
class Make:
    """How a front is made; sizes in mm, already trimmed."""

    kind: FrontKind
    thickness: Mm
    build: FrontBuild
    material: str
    stile: Mm
    rail: Mm
    panel_thickness: Mm
    trim_width: Mm
    trim_height: Mm
    knobs: tuple[Point, ...]
    bores: tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class Hanging:
    """How a door hangs, and what is wrong with it."""

    count: int
    centres: tuple[Mm, ...]
    findings: tuple[Finding, ...]


def make_of(laid: Laid, door: DoorOnHand | None, practice: Practice) -> Make:
    """The make of a front, from what was wished, its door on hand, and the shop's defaults."""
    wish = laid.decided
    build = wish.build or (door.build if door else "slab")
    trim_width = door.width - laid.width if door else NOTHING
    trim_height = door.height - laid.height if door else NOTHING
    default = practice.frame_material if FRONT_BUILDS[build].framed else practice.material
    kind = laid.opening.closing.front
    hole = door.knob_hole if door else None
    if hole and FRONT_KINDS[kind].opens:
        knobs: tuple[Point, ...] = (after_trim(Point(hole.x, hole.y), trim_width, trim_height),)
    else:
        knobs = knob_places(kind, laid.hinged, laid.y, laid.width, laid.height, practice)
        if laid.box:
            outline = box_on_front(laid, laid.box)
            knobs = tuple(over_box(knob, outline, practice) for knob in knobs)
    bores = door.hinge_bores if door else ()
    return Make(
        kind=kind,
        thickness=wish.thickness or (door.thickness if door else laid.standard.front_thickness),
        build=build,
        material=wish.material or (door.material if door else None) or default,
        stile=((door.stile if door else None) or practice.stile) - trim_width / 2,
        rail=((door.rail if door else None) or practice.rail) - trim_height / 2,
        panel_thickness=(door.panel_thickness if door else None) or practice.panel_thickness,
        trim_width=trim_width,
        trim_height=trim_height,
        knobs=knobs,
        bores=tuple(after_trim(bore, trim_width, trim_height) for bore in bores),
    )


def weigh(laid: Laid, make: Make, practice: Practice) -> Fraction:
    """Kilograms of the front, part by part where it is five-piece."""
    if not FRONT_BUILDS[make.build].framed:
        return slab_weight(laid.width, laid.height, make.thickness, make.material, practice)
    frame = frame_of(
        laid.width, laid.height, make.stile, make.rail, practice, practice.panel_clearance
    )
    wood = density_of(make.material, practice.frame_material)
    panel = density_of(panel_material(make.material, practice), practice.material)
    return (
        2 * weight_kg(make.stile, frame.stile_length, make.thickness, wood)
        + frame.rails * weight_kg(make.rail, frame.rail_length, make.thickness, wood)
        + frame.panels
        * weight_kg(frame.panel_width, frame.panel_height, make.panel_thickness, panel)
    )


def make_findings(
    laid: Laid, make: Make, practice: Practice, writer: FindingWriter
) -> list[Finding]:
    """Whether the material's weight is known, and whether a frame has room and a middle rail."""
    findings, framed = [], FRONT_BUILDS[make.build].framed
    if material_of(make.material) is None:
        taken = practice.frame_material if framed else practice.material
        taken = taken if material_of(taken) else LAST_RESORT
        findings.append(writer.material_unknown(laid.label, make.material, taken))
    if not framed:
        return findings
    if has_middle_rail(laid.height, practice):
        findings.append(writer.middle_rail(laid.label))
    if not has_panel(laid.width, laid.height, make.stile, make.rail, practice):
        findings.append(writer.no_room_for_panel(laid.label, laid.width, laid.height))
    return findings


def hang(laid: Laid, weight: Fraction, kitchen: Kitchen, writer: FindingWriter) -> Hanging:
    """Hinges of a door: how many, their centres, and what is wrong."""
    if laid.hinged is None:
        return Hanging(0, (), ())
    practice = kitchen.practice
    upright = is_upright(laid.hinged)
    length = laid.height if upright else laid.width
    findings: list[Finding] = []
    count = hinge_count(length, weight, practice)
    if count is None:
        count = practice.hinges_by_height[-1][1]
        if too_heavy(weight, practice):
            findings.append(writer.too_heavy(laid.label, writer.say_weight(weight)))
        else:
            findings.append(writer.too_tall(laid.label, length))
    overlay = laid.overlays[laid.hinged]
    if overlay is not None and not makes_overlay(overlay, practice):
        findings.append(writer.no_hinge(laid.label, overlay))
    low, start = (laid.rect.y, laid.y) if upright else (laid.rect.x, laid.x)
    high = laid.rect.top if upright else laid.rect.right
    rails = ((NOTHING, low - start), (high - start, length))
    centres = hinge_centres(
        length, count, laid.standard.hinge_end, kitchen.job.step, rails, practice.hinge_half
    )
    if centres is None:
        findings.append(writer.no_hinge_place(laid.label))
    return Hanging(count, centres or (), tuple(findings))

"""What a laid-out front is: thickness, build, material, knobs, weight, what is sawn off it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from fronts.rules.door_trim import NO_TRIM, DoorTrim, trim_of, trimmed
from fronts.rules.face import Face
from fronts.rules.findings import FindingWriter
from fronts.rules.glass import pane_in, pane_weight
from fronts.rules.handle_places import ruled_places, stated_places
from fronts.rules.handles import handle_of
from fronts.rules.hung_door import HungDoor, reused_bores, swings
from fronts.rules.items import HandleItem
from fronts.rules.kinds import FRONT_BUILDS, FRONT_KINDS, FrontBuild, FrontKind
from fronts.rules.kitchen import DoorOnHand, FrontFacts, Kitchen, Point
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.materials import LAST_RESORT, density_of, material_of
from fronts.rules.narrow_rails import drawer_rails
from fronts.rules.parts import Frame, frame_of, has_middle_rail, has_panel
from fronts.rules.practice import Practice
from fronts.rules.results import Finding
from fronts.rules.standard_keys import BY_BUILD, Sides
from fronts.rules.usual_hinges import Hinge
from fronts.rules.weight import panel_material, slab_weight, weight_kg


@dataclass(frozen=True, slots=True)
class Make:
    """How a front is made; sizes in mm, already trimmed, as is its `door` on hand.

    `glass` is in it instead of a panel; `grain_upright` is its slab's grain or its panel's;
    `middles` are those of its handles, `settled` where a hole or somebody's word says where they
    are.
    """

    kind: FrontKind
    build: FrontBuild
    face: Face
    material: str
    glass: bool
    grain_upright: bool
    trim: DoorTrim
    door: DoorOnHand | None
    handle: HandleItem | None
    middles: tuple[Point, ...]
    settled: bool

    @property
    def bores(self) -> tuple[Point, ...]:
        """Old bores, from the front's lower left corner."""
        return self.door.hinge_bores if self.door else ()


def make_of(laid: Laid, kitchen: Kitchen, hinges: Sequence[Hinge]) -> Make:
    """The make of a front, from what was wished, its door on hand, and the shop's defaults."""
    door, practice = laid.door, kitchen.practice
    if door is None:
        return _made(laid, None, NO_TRIM, kitchen)
    trim, sparing = (_trim(laid, door, practice, spare_bores=spare) for spare in (False, True))
    make = _made(laid, door, trim, kitchen)
    if sparing == trim:
        return make
    spared = _made(laid, door, sparing, kitchen)
    hung = hung_door(laid, spared, weigh(spared, practice), kitchen, hinges)
    return spared if hung and reused_bores(hung) else make


def hung_door(
    laid: Laid, make: Make, weight: Fraction, kitchen: Kitchen, hinges: Sequence[Hinge]
) -> HungDoor | None:
    """What decides how a front hangs on hinges; None: it hangs on none."""
    hinged = swings(laid)
    if hinged is None:
        return None
    return HungDoor(laid, hinged, make.face.thickness, make.door, weight, kitchen, hinges)


def _trim(laid: Laid, door: DoorOnHand, practice: Practice, *, spare_bores: bool) -> DoorTrim:
    least = laid.standard.least_stile
    return trim_of(door, laid.width, laid.height, least, practice, spare_bores=spare_bores)


def _made(laid: Laid, whole: DoorOnHand | None, trim: DoorTrim, kitchen: Kitchen) -> Make:
    """The make of a front that is trimmed so from the whole of its door."""
    wish, practice = laid.decided, kitchen.practice
    door = trimmed(whole, trim.sides) if whole else None
    wished = _wished_build(laid, door)
    framed = FRONT_BUILDS[wished].framed
    default = practice.frame_material if framed else practice.material
    thickness = wish.thickness or (door.thickness if door else laid.standard.front_thickness)
    panel = (door.panel_thickness if door else None) or practice.panel_thickness
    panel = practice.glass_thickness if wish.glass and framed else panel
    frame, build = _frame(door, trim, practice), wished
    if framed and door is None and _takes_narrow_rails(laid):
        rails = drawer_rails(laid.height, practice.rail, practice)
        frame = replace(frame, top=rails.rail, bottom=rails.rail)
        build = wished if rails.panel else "slab"
    face = Face(laid.width, laid.height, thickness, FRONT_BUILDS[build].framed, frame, panel)
    places, handle = stated_places(laid, door), handle_of(laid.handle, kitchen)
    return Make(
        kind=laid.opening.closing.front,
        build=build,
        face=face,
        material=_wished_material(laid, door) or default,
        glass=wish.glass and face.framed,
        grain_upright=_grain_upright(wish, laid, face),
        trim=trim,
        door=door,
        handle=handle,
        middles=places or ruled_places(laid, face, handle, practice),
        settled=bool(places),
    )


def _wished_build(laid: Laid, door: DoorOnHand | None) -> FrontBuild:
    """As somebody says, as its door is, five-piece round glass, else as its standard says."""
    wish, usual = laid.decided, laid.standard.front_build or "slab"
    return wish.build or (door.build if door else "five-piece" if wish.glass else usual)


def _wished_material(laid: Laid, door: DoorOnHand | None) -> str | None:
    """As somebody says, as its door is, else as its standard says."""
    usual = laid.standard.front_material
    usual = None if usual == BY_BUILD else usual
    return laid.decided.material or (door.material if door else usual)


def _grain_upright(wish: FrontFacts, laid: Laid, face: Face) -> bool:
    """As somebody says; else up and down in panels, doors, pull-outs (common practice)."""
    if wish.grain is not None:
        return wish.grain == "upright"
    return face.framed or FRONT_KINDS[laid.opening.closing.front].upright


def _takes_narrow_rails(laid: Laid) -> bool:
    """Whether it is made here: one that exists has the rails that it has."""
    return not laid.exists and FRONT_KINDS[laid.opening.closing.front].narrow_rails


def _frame(door: DoorOnHand | None, trim: DoorTrim, practice: Practice) -> Sides[Mm]:
    stile = (door.stile if door else None) or practice.stile
    rail = (door.rail if door else None) or practice.rail
    off = trim.sides
    return Sides(stile - off.left, stile - off.right, rail - off.top, rail - off.bottom)


def weigh(make: Make, practice: Practice) -> Fraction:
    """Kilograms of the front, part by part where it is five-piece."""
    face = make.face
    if not face.framed:
        return slab_weight(face.width, face.height, face.thickness, make.material, practice)
    frame = frame_of(
        face.width, face.height, face.stile, face.rail, practice, practice.panel_clearance
    )
    wood = density_of(make.material, practice.frame_material)
    return (
        2 * weight_kg(face.stile, frame.stile_length, face.thickness, wood)
        + frame.rails * weight_kg(face.rail, frame.rail_length, face.thickness, wood)
        + frame.panels * _panel_weight(make, frame, practice)
    )


def _panel_weight(make: Make, frame: Frame, practice: Practice) -> Fraction:
    """Of one panel, or of the pane in its place."""
    face = make.face
    if make.glass:
        across, up = pane_in(face.width, face.height, face.stile, face.rail, practice)
        return pane_weight(across, up, face.panel_thickness)
    panel = density_of(panel_material(make.material, practice), practice.material)
    return weight_kg(frame.panel_width, frame.panel_height, face.panel_thickness, panel)


def make_findings(
    laid: Laid, make: Make, practice: Practice, writer: FindingWriter
) -> list[Finding]:
    """Whether the material's weight is known, and whether a frame has room and a middle rail."""
    findings, face = _trim_findings(laid, make, writer), make.face
    if material_of(make.material) is None:
        taken = practice.frame_material if face.framed else practice.material
        taken = taken if material_of(taken) else LAST_RESORT
        findings.append(writer.material_unknown(laid.label, make.material, taken))
    if not face.framed:
        if make.door is None and FRONT_BUILDS[_wished_build(laid, None)].framed:
            findings.append(writer.too_little_panel(laid.label, practice.least_panel))
        return findings
    if has_middle_rail(laid.height, practice):
        findings.append(writer.middle_rail(laid.label))
    if not has_panel(laid.width, laid.height, face.stile, face.rail, practice):
        findings.append(writer.no_room_for_panel(laid.label, laid.width, laid.height))
    return findings


def _trim_findings(laid: Laid, make: Make, writer: FindingWriter) -> list[Finding]:
    findings: list[Finding] = []
    if make.door and make.trim.cuts:
        findings.append(writer.trim_cuts_bore(laid.label, make.door.label))
    if make.door and make.trim.uneven:
        findings.append(writer.stiles_differ(laid.label, make.door.label))
    return findings

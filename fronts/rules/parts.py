"""The pieces a front is made of.

Five-piece: stiles = front height; rails = front width - 2·stile + 2·tongue; panel = the
opening in the frame + 2·(groove depth - panel clearance) each way. A door over 60 in high
wants a middle rail (Architectural Woodwork Standards, 1st ed. 2009, stile-and-rail doors).
"""

from dataclasses import dataclass, replace

from fronts.rules.banded_edges import Banding
from fronts.rules.grain_results import GrainPlace
from fronts.rules.kinds import FRONT_BUILDS
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.materials import Wood, material_of
from fronts.rules.movement import change, resting_moisture
from fronts.rules.practice import Practice
from fronts.rules.results import Front, Part
from fronts.rules.weight import panel_material

SLAB, STILE, RAIL, PANEL = "slab", "stile", "rail", "panel"
"""The pieces by their names, which the cut list shares."""


@dataclass(frozen=True, slots=True)
class Frame:
    """Sizes of a five-piece front's pieces; `panel_height` is one panel's."""

    stile_length: Mm
    rail_length: Mm
    panel_width: Mm
    panel_height: Mm
    rails: int
    panels: int


def frame_of(
    width: Mm, height: Mm, stile: Mm, rail: Mm, practice: Practice, clearance: Mm
) -> Frame:
    """The pieces of a five-piece front of this size; `clearance` is the panel's, a side."""
    middle = int(has_middle_rail(height, practice))
    panels = middle + 1
    in_groove = 2 * (practice.tongue - clearance)
    return Frame(
        stile_length=height,
        rail_length=width - 2 * stile + 2 * practice.tongue,
        panel_width=width - 2 * stile + in_groove,
        panel_height=(height - (2 + middle) * rail) / panels + in_groove,
        rails=2 + middle,
        panels=panels,
    )


def has_middle_rail(height: Mm, practice: Practice) -> bool:
    """Whether a five-piece front of this height wants a rail across its middle."""
    return height > practice.middle_rail_over


def has_panel(width: Mm, height: Mm, stile: Mm, rail: Mm, practice: Practice) -> bool:
    """Whether something of the panel shows between the stiles and rails of a front."""
    middle = int(has_middle_rail(height, practice))
    return width > 2 * stile and height > (2 + middle) * rail


def panel_clearance(width: Mm, material: str, step: Mm, practice: Practice) -> Mm:
    """What a panel is left short of its groove's bottom, a side: more for solid wood."""
    wood = material_of(material)
    if not isinstance(wood, Wood):
        return practice.panel_clearance
    damp = resting_moisture(practice.site_celsius, practice.humidity_high)
    grows = max(change(width, wood, practice.made_at, damp) / 2, NOTHING)
    return practice.panel_clearance + -(-grows // step) * step


def parts_of(
    front: Front,
    practice: Practice,
    step: Mm,
    *,
    stack: str | None,
    grain: GrainPlace | None,
    banding: Banding | None = None,
) -> tuple[Part, ...]:
    """The pieces of one new front; grain runs along each part's length.

    `grain` is said of the piece whose grain runs on to other fronts: its slab, its panels. A slab
    is cut as large as its `banding` has it; one that has no room for that is not cut.
    """
    upright, width, height = front.grain_upright, front.width, front.height
    if not FRONT_BUILDS[front.build].framed:
        if banding is not None:
            width, height = banding.cut_width, banding.cut_height
        if min(width, height) <= 0:
            return ()
        length, width = (height, width) if upright else (width, height)
        slab = _part(front, SLAB, length, width, front.thickness, front.material, 1, stack, grain)
        return (replace(slab, banding=banding),)
    if not has_panel(front.width, front.height, front.stile, front.rail, practice):
        return ()
    panel = panel_material(front.material, practice)
    clearance = panel_clearance(front.width - 2 * front.stile, panel, step, practice)
    frame = frame_of(front.width, front.height, front.stile, front.rail, practice, clearance)
    thick = front.thickness
    frame_parts = (
        _part(front, STILE, frame.stile_length, front.stile, thick, front.material, 2, None),
        _part(front, RAIL, frame.rail_length, front.rail, thick, front.material, frame.rails, None),
    )
    if front.glass:  # ordered as a pane
        return frame_parts
    width, height = frame.panel_width, frame.panel_height
    length, width = (height, width) if upright else (width, height)
    return (
        *frame_parts,
        _part(
            front, PANEL, length, width, front.panel_thickness, panel, frame.panels, None, grain
        ),
    )  # fmt: skip


def _part(
    front: Front,
    part: str,
    length: Mm,
    width: Mm,
    thickness: Mm,
    material: str,
    count: int,
    stack: str | None,
    grain: GrainPlace | None = None,
) -> Part:
    return Part(
        label=front.label if part == SLAB else f"{front.label} {part}",
        front=front.label,
        part=part,
        length=length,
        width=width,
        thickness=thickness,
        material=material,
        count=count,
        stack=stack,
        grain=grain,
    )

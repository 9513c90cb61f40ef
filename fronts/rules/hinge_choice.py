"""Which hinge a door takes, on which plate, and how far from its edge the cup is bored.

      door's edge
           |<- B ->( cup )           overlay = fixed distance + B - plate
      -----+                         (the makers' published relation)

Of the hinges that suit the cabinet, the mount and the door's thickness, in the shop's order,
the first is taken that makes the overlay to within 0.5 mm; where there is none, the first whose
side screw takes up the rest with half of its travel. A hinge on plates is bored in the steps of
a boring machine; one that states its overlays (inset: gaps) at its usual B. Below zero an
overlay is an inset gap.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import floor

from fronts.rules.item_kinds import suits_build
from fronts.rules.kinds import CabinetBuild, is_inset
from fronts.rules.lengths import Mm
from fronts.rules.usual_hinges import Hinge

GRID = Mm(1) / 2
"""Step of a boring machine's fence (common practice, no source)."""
NEAR = Mm(1) / 2
"""An overlay that is off by no more is made (common practice, no source)."""
OLD_BORE = Mm(1) / 2
"""How far an old bore may lie off a hinge's one usual B (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class OldBore:
    """The bores that a door has: their diameter, and B, from its edge to their rim."""

    diameter: Mm
    from_edge: Mm


@dataclass(frozen=True, slots=True)
class HingeSetting:
    """A hinge as it is set for a door; `shift` is the overlay wanted less the overlay made."""

    hinge: Hinge
    plate: Mm | None
    bore: Mm
    shift: Mm


@dataclass(frozen=True, slots=True)
class DoorToHang:
    """What of a door decides about its hinge; `overlay` is the one on its hinge side."""

    overlay: Mm
    build: CabinetBuild
    thickness: Mm


def choose_hinge(
    door: DoorToHang, hinges: Sequence[Hinge], old: OldBore | None = None
) -> HingeSetting | None:
    """The first hinge that makes the overlay, with `old` one whose cup fits such bores."""
    adjusted = None
    for hinge in hinges:
        setting = best_setting(hinge, door.overlay, old) if suits(hinge, door) else None
        if setting is None or (old and not within_adjustment(setting)):
            continue
        if abs(setting.shift) <= NEAR:
            return setting
        if adjusted is None and within_adjustment(setting):
            adjusted = setting
    return adjusted


def best_setting(hinge: Hinge, overlay: Mm, old: OldBore | None = None) -> HingeSetting | None:
    """How a hinge comes nearest to an overlay; None where its cup can't be bored so.

    The least shift, then B nearest its usual, then the lower plate, then the lower B; of two
    stated overlays as near as each other the smaller.
    """
    if old and old.diameter != hinge.item.cup_diameter:
        return None
    settings = [
        HingeSetting(hinge, plate, bore, overlay - made)
        for plate, bore, made in _ways(hinge, overlay, old)
    ]
    return min(
        settings,
        key=lambda way: (
            abs(way.shift), abs(way.bore - hinge.usual_bore), way.plate or 0, way.bore,
            abs(overlay - way.shift),
        ),
        default=None,
    )  # fmt: skip


def suits(hinge: Hinge, door: DoorToHang) -> bool:
    """Whether a hinge is for such a cabinet and mount, and for a door that thick."""
    return not any(misfits(hinge, door))


def misfits(hinge: Hinge, door: DoorToHang) -> Iterator[str]:
    """What a hinge is not for, by the name of the fact in its item."""
    item = hinge.item
    if not suits_build(item.frame, door.build):
        yield "frame"
    if is_inset(item.mount) != (door.overlay < 0):
        yield "mount"
    if item.most_door_thickness is not None and door.thickness > item.most_door_thickness:
        yield "most_door_thickness"


def within_adjustment(setting: HingeSetting) -> bool:
    """Whether half of what the side screw moves, each way, takes up the shift."""
    return abs(setting.shift) <= setting.hinge.side / 2


def _ways(hinge: Hinge, overlay: Mm, old: OldBore | None) -> Iterator[tuple[Mm | None, Mm, Mm]]:
    """Plates, B and the overlays made: all among which the nearest can be."""
    item = hinge.item
    if item.fixed_distance is None:
        bore = old.from_edge if old else hinge.usual_bore
        if abs(bore - hinge.usual_bore) <= OLD_BORE:
            for made in _stated(hinge, overlay):
                yield None, bore, made
        return
    for plate in hinge.plates:
        wanted = overlay - item.fixed_distance + plate
        for bore in [old.from_edge] if old else _bores(hinge, wanted):
            if bore in hinge.bore:
                yield plate, bore, item.fixed_distance + bore - plate


def _bores(hinge: Hinge, wanted: Mm) -> list[Mm]:
    """The two steps of the machine, within the hinge's limits, between which `wanted` lies.

    A hinge that states no limits is bored at its usual B.
    """
    if hinge.item.bore is None:
        return [hinge.usual_bore]
    least, most = -floor(-hinge.bore.least / GRID), floor(hinge.bore.most / GRID)
    below = floor(wanted / GRID)
    return [min(max(step, least), most) * GRID for step in (below, below + 1)]


def _stated(hinge: Hinge, overlay: Mm) -> list[Mm]:
    """The overlays that a hinge states, gaps below zero; of a span the nearest one."""
    item = hinge.item
    listed, span = (item.gaps, item.gap_span) if is_inset(item.mount) else (
        item.overlays, item.overlay_span
    )  # fmt: skip
    sign = -1 if is_inset(item.mount) else 1
    nearest = [] if span is None else [span.nearest(sign * overlay)]
    return [sign * made for made in (*listed, *nearest)]

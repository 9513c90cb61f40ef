"""What is bored through templates: groups of holes on a face, each measured from its near sides.

Faces are as one looks at them: a front's back has left and right changed over, as it lies on
the bench. Plates are seen from inside the cabinet, where the front edge of its left side is at
the left; of a top or bottom, the front edge is the top or the bottom of the drawing.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from fronts.rules.fitting_results import Fitting
from fronts.rules.hinge_drilling import (
    PLATE_PITCH,
    cup_centre,
    hinge_to_bore,
    hinges_upright,
    plate_centres,
    plate_row,
)
from fronts.rules.kinds import CABINET_BUILDS, Side
from fronts.rules.kitchen import Kitchen, Point
from fronts.rules.knob_fixing import has_own_hole
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.results import Front, Schedule
from fronts.rules.template_results import BoredBefore, Purpose, TemplateFace


@dataclass(frozen=True, slots=True)
class Along:
    """Where holes lie along one axis of a face: inwards from one of its sides.

    `central`: their middle is the middle of the face. `taped`: what is far is measured with a
    tape, never by paper taped together.
    """

    side: Side
    places: tuple[Mm, ...]
    central: bool = False
    taped: bool = False

    @property
    def middle(self) -> Mm:
        return (min(self.places) + max(self.places)) / 2


@dataclass(frozen=True, slots=True)
class HoleGroup:
    """Holes that one template marks on a face of a front, its box or its cabinet."""

    front: str
    purpose: Purpose
    face: TemplateFace
    diameter: Mm | None
    across: Along
    up: Along


def hole_groups(schedule: Schedule, kitchen: Kitchen) -> Iterator[HoleGroup]:
    """All that is bored, in the order of the work; what is bored already is left out."""
    fronts = schedule.fronts
    boxed = [(front, fit) for front in fronts if (fit := schedule.fitting(front.label))]
    for front, fitting in boxed:
        yield from _on_box(front, fitting)
    for front, fitting in boxed:
        yield from _on_back(front, fitting)
    for front in fronts:
        yield from _handles(front, kitchen)
    for front, fitting in boxed:
        yield from _recesses(front, fitting)
    for front in fronts:
        yield from _cups(front)
    for front in fronts:
        yield from _plates(front, kitchen)


def bored_before(schedule: Schedule, kitchen: Kitchen) -> Iterator[BoredBefore]:
    """What the schedule has that no template is made for, since it is there already."""
    cups = [front for front in schedule.fronts if front.hinge and front.hinge_centres]
    for what, fronts in (
        ("cups-bought", [front for front in cups if front.bought]),
        ("cups-old", [front for front in cups if not front.bought and not hinge_to_bore(front)]),
        ("handle", [front for front in schedule.fronts if has_own_hole(front, kitchen)]),
    ):
        if fronts:
            yield BoredBefore(what, tuple(front.label for front in fronts))  # type: ignore[arg-type]


def _from_near(
    places: Iterable[Mm], extent: Mm, low: Side, high: Side, *, taped: bool = False
) -> Along:
    """From whichever side is nearer to their middle, the lower one where both are as near."""
    found = tuple(places)
    middle = (min(found) + max(found)) / 2
    central = middle * 2 == extent
    if middle * 2 <= extent:
        return Along(low, found, central, taped)
    return Along(high, tuple(extent - place for place in found), central, taped)


def _on_face(
    front: Front, purpose: Purpose, face: TemplateFace, holes: Sequence[Point], diameter: Mm,
    size: tuple[Mm, Mm],
) -> HoleGroup:  # fmt: skip
    """Holes from the lower left corner of a face that is so wide and high."""
    across = _from_near((hole.x for hole in holes), size[0], "left", "right")
    up = _from_near((hole.y for hole in holes), size[1], "bottom", "top")
    return HoleGroup(front.label, purpose, face, diameter, across, up)


def _on_box(front: Front, fitting: Fitting) -> Iterator[HoleGroup]:
    size = fitting.jig_length, fitting.box_height
    for hole in fitting.holes:
        at = Point(hole.box_x, hole.box_y)
        yield _on_face(front, "mounting", "box", [at], hole.diameter, size)


def _on_back(front: Front, fitting: Fitting) -> Iterator[HoleGroup]:
    if fitting.pilot is None:
        return
    for hole in fitting.holes:
        at = Point(front.width - hole.front_x, hole.front_y)
        size = front.width, front.height
        yield _on_face(front, "pilot", "back", [at], fitting.pilot.diameter, size)


def _handles(front: Front, kitchen: Kitchen) -> Iterator[HoleGroup]:
    if has_own_hole(front, kitchen):
        return
    size, diameter = (front.width, front.height), kitchen.practice.knob_hole
    for handle in front.handles:
        yield _on_face(front, "handle", "front", handle.holes, diameter, size)


def _recesses(front: Front, fitting: Fitting) -> Iterator[HoleGroup]:
    """In the box's front, for the heads of screws that hold the knob to the front alone."""
    if fitting.knob_screw is None or fitting.knob_screw.recess is None:
        return
    size, wide = (fitting.jig_length, fitting.box_height), fitting.knob_screw.recess.width
    for handle in front.handles:
        on_box = [
            Point(hole.x - fitting.side_offset, hole.y - fitting.jig_thickness)
            for hole in handle.holes
        ]
        yield _on_face(front, "recess", "box", on_box, wide, size)


def _cups(front: Front) -> Iterator[HoleGroup]:
    hinge = hinge_to_bore(front)
    if hinge is None:
        return
    upright, size = hinges_upright(front), (front.width, front.height)
    for centre in front.hinge_centres:
        cup = cup_centre(front, centre, hinge.cup_from_edge)
        x = [front.width - cup.x]
        across = _from_near(x, size[0], "left", "right", taped=not upright)
        up = _from_near([cup.y], size[1], "bottom", "top", taped=upright)
        yield HoleGroup(front.label, "cup", "back", hinge.cup_diameter, across, up)


def _plates(front: Front, kitchen: Kitchen) -> Iterator[HoleGroup]:
    """The two screws of each plate; on a face frame their maker's sheet says."""
    framed = CABINET_BUILDS[kitchen.cabinet(front.cabinet).build].framed
    if front.hinge is None or front.hinged is None or framed:
        return
    half, row = PLATE_PITCH / 2, plate_row(front)
    (low, high), extent = _ends(front), _between(front)
    for place in plate_centres(front):
        screws = place - half, place + half
        if extent is None:
            along = Along(low, screws, taped=True)
        else:
            along = _from_near(screws, extent, low, high, taped=True)
        inwards = Along(front.hinged, (row, row))
        if hinges_upright(front):
            yield HoleGroup(front.label, "plate", "cabinet-side", None, inwards, along)
        else:
            yield HoleGroup(front.label, "plate", "cabinet-level", None, along, inwards)


def _ends(front: Front) -> tuple[Side, Side]:
    """Which sides the places of its hinges run between."""
    return ("bottom", "top") if hinges_upright(front) else ("left", "right")


def _between(front: Front) -> Mm | None:
    """How far apart the opening's edges are there; None where a front of its own faces this."""
    laps = [front.edges[side].overlay for side in _ends(front)]
    size = front.height if hinges_upright(front) else front.width
    known = [lap for lap in laps if lap is not None]
    return size - sum(known, NOTHING) if len(known) == len(laps) else None

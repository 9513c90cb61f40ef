"""Fixing a front to its box: side offset, jig or shims, holes, screws, slide.

      front
+----------------+          side offset  = side clearance + overlay
|   +--------+   |                         (- gap where the front is inset)
|   |  box   |   |          jig          = rise + overlay at the bottom
|   +--------+   |  ^ jig                  (- gap where the front is inset)
+----------------+  v
"""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.edges import Rect, heights_of, widths_of
from fronts.rules.findings import Speaks
from fronts.rules.holes import Round, Site, mounting_holes, pin_distance_under
from fronts.rules.kitchen import Box, Kitchen, Point
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice
from fronts.rules.results import (
    Finding,
    Fitting,
    Front,
    Hole,
    KnobScrew,
    Ledges,
    Recess,
    Screw,
    Shims,
    Slot,
    Tape,
)
from fronts.rules.screws import (
    KnobChoice,
    knob_screw,
    mounting_screw,
    play,
    thread_diameter,
)
from fronts.rules.slides import slide_length, slide_room

CORNERS = 4
MOST_MOVES = 1000
"""Places tried for a hole along a box, at most."""


@dataclass(frozen=True, slots=True)
class _Fixing:
    """A front, its box, and what both stand in."""

    front: Front
    laid: Laid
    box: Box
    kitchen: Kitchen
    speaks: Speaks
    side_clearance: Mm
    side_offset: Mm
    jig_thickness: Mm

    @property
    def practice(self) -> Practice:
        return self.kitchen.practice


def fit(
    front: Front, laid: Laid, box: Box, kitchen: Kitchen, speaks: Speaks
) -> tuple[Fitting, list[Finding]]:
    """How the front is fixed to its box, and what stands in the way."""
    fixing = _fixing(front, laid, box, kitchen, speaks)
    practice = kitchen.practice
    knob, knob_findings = _knob(fixing)
    holes, hole_findings = _holes(fixing, knob)
    screw, screw_findings = _screw(fixing)
    slot, slot_findings = _slot(fixing)
    room = slide_room(box, laid.cabinet.depth, front, practice)
    length = slide_length(kitchen.stock.slide_lengths, room)
    findings = [*_box_findings(fixing), *hole_findings, *screw_findings]
    findings += [*knob_findings, *slot_findings]
    if length is None:
        findings.append(speaks.no_slide(front.label, room))
    has_jig = fixing.jig_thickness > 0
    fitting = Fitting(
        front=front.label,
        method="jig" if has_jig else "shims",
        side_offset=fixing.side_offset,
        right_offset=front.width - fixing.side_offset - box.width,
        side_clearance=fixing.side_clearance,
        jig_thickness=fixing.jig_thickness,
        jig_length=box.width,
        box_height=box.height,
        ledges=ledges_for(front.thickness, practice) if has_jig else None,
        slot=slot if has_jig else None,
        shims=_shims(fixing),
        tape=_tape(fixing),
        holes=holes,
        screw=screw,
        knob_screw=knob,
        drill_stop=box.front_thickness + practice.drill_past,
        play=play(practice.hole_diameter, practice.screw_diameter),
        slide=box.slide,
        slide_length=length,
    )
    return fitting, findings


def ledges_for(front_thickness: Mm, practice: Practice) -> Ledges:
    """Ledges that stand proud by a front's thickness, flush with the back of the block."""
    length = practice.ledge_length
    return Ledges(
        thickness=practice.ledge_thickness,
        length=length,
        overhang=front_thickness,
        block_depth=length - front_thickness,
    )


def side_clearance(opening_width: Mm, box: Box) -> Mm:
    """From the opening's left edge to the box: measured, else half of what is over."""
    if box.side_clearance is not None:
        return box.side_clearance
    return (opening_width - box.width) / 2


def box_on_front(laid: Laid, box: Box) -> Rect:
    """The box front's outline on the front: its place is the side offset and the jig thickness."""
    x = side_clearance(laid.rect.width, box) + laid.rect.x - laid.x
    return Rect(x, box.rise + laid.rect.y - laid.y, box.width, box.height)


def _fixing(front: Front, laid: Laid, box: Box, kitchen: Kitchen, speaks: Speaks) -> _Fixing:
    outline = box_on_front(laid, box)
    return _Fixing(
        front=front,
        laid=laid,
        box=box,
        kitchen=kitchen,
        speaks=speaks,
        side_clearance=side_clearance(laid.rect.width, box),
        side_offset=outline.x,
        jig_thickness=outline.y,
    )


def _knob(fixing: _Fixing) -> tuple[KnobScrew | None, list[Finding]]:
    front, box, stock = fixing.front, fixing.box, fixing.kitchen.stock
    diameter = thread_diameter(stock.knob_thread)
    if not front.knobs or diameter is None:
        return None, []
    over_box = [place for place in _knobs_on_box(fixing) if _on(place, box)]
    box_front = box.front_thickness if over_box else None
    practice = fixing.practice
    choice = knob_screw(
        stock.knob_screw_lengths, front.thickness, box_front, diameter, stock.knob_thread_depth,
        practice,
    )  # fmt: skip
    thick_enough = box.front_thickness >= practice.recess_depth + practice.recess_wall
    if choice is None:
        stack = front.thickness + (box_front or Mm(0))
        return None, [fixing.speaks.no_knob_screw(front.label, stack, recess=thick_enough)]
    hits = [place for place in over_box if choice.through_box and _hits_pin(place, fixing)]
    findings = [
        fixing.speaks.hole_hits_pin(front.label, place.x, place.y, recess=thick_enough)
        for place in hits
    ]
    recess = Recess(practice.recess_width, practice.recess_depth) if choice.recess else None
    return KnobScrew(choice.length, choice.through_box, recess, len(front.knobs)), findings[:1]


def _knobs_on_box(fixing: _Fixing) -> list[Point]:
    return [
        Point(knob.x - fixing.side_offset, knob.y - fixing.jig_thickness)
        for knob in fixing.front.knobs
    ]


def _on(place: Point, box: Box) -> bool:
    return 0 <= place.x <= box.width and 0 <= place.y <= box.height


def _hits_pin(place: Point, fixing: _Fixing) -> bool:
    reach = knob_hole_of(fixing.laid, fixing.practice) / 2 + fixing.practice.hole_clear
    return any(pin_distance_under(pins, place, reach) for pins in fixing.box.shelf_pins)


def knob_hole_of(laid: Laid, practice: Practice) -> Mm:
    """Diameter of the knob's hole: the door's own, else the shop's."""
    hole = laid.door.knob_hole if laid.door else None
    return hole.diameter if hole else practice.knob_hole


def _holes(
    fixing: _Fixing, knob: KnobScrew | KnobChoice | None
) -> tuple[tuple[Hole, ...], list[Finding]]:
    practice, front, laid = fixing.practice, fixing.front, fixing.laid
    knob_width = knob_hole_of(laid, practice)
    if isinstance(knob, KnobScrew) and knob.recess:
        knob_width = max(knob_width, knob.recess.width)
    rounds = [Round(place.x, place.y, knob_width) for place in _knobs_on_box(fixing)]
    bore = laid.door.bore_diameter if laid.door else Mm(0)
    for old_bore in front.bores:
        x, y = old_bore.x - fixing.side_offset, old_bore.y - fixing.jig_thickness
        rounds.append(Round(x, y, bore))
    site = Site(
        fixing.box, front, fixing.side_offset, fixing.jig_thickness, tuple(rounds), practice
    )
    holes = mounting_holes(
        site, _whole_steps(practice.hole_move, fixing.box, fixing.kitchen.job.step)
    )
    missing = CORNERS - len(holes)
    return holes, [fixing.speaks.no_place(front.label, missing)] if missing else []


def _whole_steps(length: Mm, box: Box, step: Mm) -> Mm:
    """The step a hole is moved by: whole cutting steps, and no finer than the box warrants."""
    coarse = max(box.width, box.height) / MOST_MOVES
    return max(round(length / step), -(-coarse // step), 1) * step


def _screw(fixing: _Fixing) -> tuple[Screw | None, list[Finding]]:
    standard, box, front = fixing.laid.standard, fixing.box, fixing.front
    length = mounting_screw(
        fixing.kitchen.stock.screw_lengths, box.front_thickness, front.thickness, standard.skin,
        standard.bite,
    )  # fmt: skip
    if length is not None:
        return Screw(length, CORNERS), []
    least = box.front_thickness + standard.bite
    most = box.front_thickness + front.thickness - standard.skin
    return None, [fixing.speaks.no_screw(front.label, least, most)]


def _slot(fixing: _Fixing) -> tuple[Slot | None, list[Finding]]:
    box, practice, label = fixing.box, fixing.practice, fixing.front.label
    if box.slide != "bottom":
        return None, []
    if box.slide_width is None or box.slide_height is None:
        return None, [fixing.speaks.slide_not_measured(label)]
    slot = Slot(box.slide_width + practice.slot_wider, box.slide_height + practice.slot_deeper)
    if 0 < fixing.jig_thickness <= slot.depth:
        return slot, [fixing.speaks.slot_cuts_jig(label, slot.depth, fixing.jig_thickness)]
    return slot, []


def _shims(fixing: _Fixing) -> Shims | None:
    if fixing.front.plane != "inset":
        return None
    overlays, between = fixing.laid.overlays, fixing.laid.standard.gap_between

    def gap(overlay: Mm | None) -> Mm:
        return between if overlay is None else max(-overlay, Mm(0))

    return Shims(side=gap(overlays.left), right=gap(overlays.right), bottom=gap(overlays.bottom))


def _tape(fixing: _Fixing) -> Tape:
    """Foam tape holds where it first touches, so the opening must be true enough beforehand."""
    widths, heights = widths_of(fixing.laid.opening), heights_of(fixing.laid.opening)
    error = max(max(widths) - min(widths), max(heights) - min(heights)) / 2
    error += abs(fixing.front.lean or Fraction(0)) / 2
    least = fixing.laid.standard.least_gap
    say = fixing.speaks.say
    if error > least:
        why = f"the opening may throw a gap out by {say(error)}, more than {say(least)}"
        return Tape(suggested=False, why=why)
    return Tape(suggested=True, why="quick, but once the tape touches, the front stays")


def _box_findings(fixing: _Fixing) -> Iterator[Finding]:
    box, laid, label = fixing.box, fixing.laid, fixing.front.label
    rect: Rect = laid.rect
    least_width, say = min(widths_of(laid.opening)), fixing.speaks.say
    if fixing.side_clearance < 0 or fixing.side_clearance + box.width > rect.width:
        why = f"its box, {say(box.width)} wide, does not pass an opening of {say(least_width)}"
        yield fixing.speaks.box_does_not_fit(label, why)
    if box.rise + box.height > rect.height:
        why = (
            f"its box reaches {say(box.rise + box.height)} up in an opening {say(rect.height)} high"
        )
        yield fixing.speaks.box_does_not_fit(label, why)
    if box.depth is not None and box.depth > laid.cabinet.depth:
        why = f"its box is {say(box.depth)} deep, its cabinet {say(laid.cabinet.depth)}"
        yield fixing.speaks.box_does_not_fit(label, why)

"""Fixing a front to its box: the jig or the shims, holes, screws and slide, all together.

Each of them is a rule with a file of its own; here they meet, since the knob's hole decides
where the mounting holes may go, and the box's place decides all of them.
"""

from dataclasses import dataclass
from math import ceil

from fronts.rules.box_facts import Box
from fronts.rules.box_place import box_on_front, side_clearance
from fronts.rules.boxes_on_slides import Standing
from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import Fitting, Hole, KnobScrew, Screw, Slot
from fronts.rules.foam_tape import foam_tape
from fronts.rules.hole_grid import Round, Site
from fronts.rules.hole_spans import HoleSpans, hole_spans
from fronts.rules.jigs import ledges_for, needs_slot, setting_method, slot_for
from fronts.rules.kinds import is_inset
from fronts.rules.kitchen import Kitchen
from fronts.rules.knob_fixing import fix_knob, knob_hole, knobs_on_box
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.mounting_holes import mounting_holes
from fronts.rules.pilot_holes import pilot_hole
from fronts.rules.practice import Practice
from fronts.rules.rect import Rect
from fronts.rules.results import Finding, Front
from fronts.rules.screws import mounting_screw, play
from fronts.rules.shims import shims_for

MOST_MOVES = 1000
"""Places tried for a hole along a box, at most."""


@dataclass(frozen=True, slots=True)
class _Fixing:
    """A front, its box, and what both stand in; `outline` is the box front's on the front."""

    front: Front
    laid: Laid
    box: Box
    kitchen: Kitchen
    writer: FindingWriter
    outline: Rect
    spans: HoleSpans

    @property
    def practice(self) -> Practice:
        return self.kitchen.practice


def fit(
    front: Front, laid: Laid, standing: Standing, kitchen: Kitchen, writer: FindingWriter
) -> tuple[Fitting, list[Finding]]:
    """How the front is fixed to its box, and what stands in the way."""
    practice, box = kitchen.practice, standing.box
    outline, spans = box_on_front(laid, box), hole_spans(box, standing.floor, practice)
    fixing = _Fixing(front, laid, box, kitchen, writer, outline, spans)
    hole, clearance = knob_hole(laid.door, practice), side_clearance(laid.rect.width, box)
    knob, knob_findings = fix_knob(front, box, outline, hole, kitchen, writer)
    holes, hole_findings = _holes(fixing, knob, hole)
    screw, screw_findings = _screw(fixing)
    slot, slot_findings = _slot(fixing)
    findings = [*hole_findings, *screw_findings, *knob_findings, *slot_findings]
    method, inset = setting_method(outline.y, kitchen.job.unit), is_inset(front.plane)
    enters = screw.length - box.front_thickness if screw else None
    fitting = Fitting(
        front=front.label,
        method=method,
        side_offset=outline.x,
        right_offset=front.width - outline.right,
        side_clearance=clearance,
        jig_thickness=outline.y,
        jig_length=box.width,
        box_height=box.height,
        ledges=ledges_for(front.thickness, practice) if method == "jig" else None,
        slot=slot if method == "jig" else None,
        shims=shims_for(laid.overlays, laid.standard.gap_between) if inset else None,
        tape=foam_tape(laid.opening, front.lean, laid.standard.least_gap, writer),
        holes=holes,
        screw=screw,
        pilot=None if enters is None else pilot_hole(front.material, enters, practice),
        knob_screw=knob,
        drill_stop=box.front_thickness + practice.drill_past,
        play=play(practice.hole_diameter, practice.screw_diameter),
        slide=box.slide,
        slide_length=standing.length,
    )
    return fitting, findings


def _holes(
    fixing: _Fixing, knob: KnobScrew | None, knob_width: Mm
) -> tuple[tuple[Hole, ...], list[Finding]]:
    """The mounting holes, clear of the knob (its recess, where it has one) and of old bores."""
    front, outline, door = fixing.front, fixing.outline, fixing.laid.door
    if knob and knob.recess:
        knob_width = max(knob_width, knob.recess.width)
    rounds = [Round(place.x, place.y, knob_width) for place in knobs_on_box(front, outline)]
    if door:
        rounds += [
            Round(old.x - outline.x, old.y - outline.y, door.bore_diameter) for old in front.bores
        ]
    site = Site(
        fixing.box, front, outline.x, outline.y, tuple(rounds), fixing.spans, fixing.practice
    )
    step = _whole_steps(fixing.practice.hole_move, fixing.box, fixing.kitchen.job.step)
    holes = mounting_holes(site, step)
    count = fixing.spans.count
    missing = count - len(holes)
    findings = [fixing.writer.no_place(front.label, missing, count)] if missing else []
    if fixing.spans.high is None and not missing:
        findings.append(fixing.writer.two_holes(front.label, fixing.box.height))
    return holes, findings


def _whole_steps(length: Mm, box: Box, step: Mm) -> Mm:
    """The step a hole is moved by: whole cutting steps, and no finer than the box warrants."""
    coarse = max(box.width, box.height) / MOST_MOVES
    return max(round(length / step), ceil(coarse / step)) * step


def _screw(fixing: _Fixing) -> tuple[Screw | None, list[Finding]]:
    standard, box, front = fixing.laid.standard, fixing.box, fixing.front
    length = mounting_screw(
        fixing.kitchen.stock.screw_lengths, box.front_thickness, front.thickness, standard.skin,
        standard.bite,
    )  # fmt: skip
    if length is not None:
        return Screw(length, fixing.spans.count), []
    least = box.front_thickness + standard.bite
    most = box.front_thickness + front.thickness - standard.skin
    return None, [fixing.writer.no_screw(front.label, least, most)]


def _slot(fixing: _Fixing) -> tuple[Slot | None, list[Finding]]:
    slot, label, jig = slot_for(fixing.box, fixing.practice), fixing.front.label, fixing.outline.y
    if slot is None:
        missing = [fixing.writer.slide_not_measured(label)] if needs_slot(fixing.box) else []
        return None, missing
    has_jig = setting_method(jig, fixing.kitchen.job.unit) == "jig"
    cuts_through = has_jig and jig <= slot.depth
    return slot, [fixing.writer.slot_cuts_jig(label, slot.depth, jig)] if cuts_through else []

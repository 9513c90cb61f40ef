"""How a knob is fixed on a front that stands on a box: through both, or in a recess.

Where the knob lies over the box front its screw goes through that too. A hole there that meets
a shelf-pin hole, or a stack that no stocked screw fits, is told with its way out: a recess for
the screw's head, so that it goes through the front alone.
"""

from fronts.rules.box_facts import Box
from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import KnobScrew, Recess
from fronts.rules.handles import thinnest
from fronts.rules.kitchen import DoorOnHand, Kitchen, Point
from fronts.rules.lengths import Mm
from fronts.rules.mounting_holes import is_near_pin
from fronts.rules.practice import Practice
from fronts.rules.rect import Rect
from fronts.rules.results import Finding, Front
from fronts.rules.screws import knob_screw, thread_diameter


def fix_knob(
    front: Front, box: Box, outline: Rect, hole: Mm, kitchen: Kitchen, writer: FindingWriter
) -> tuple[KnobScrew | None, list[Finding]]:
    """The knob's screw, None where there is no knob or none fits; and what is wrong with it.

    `outline` is the box front's on the front, `hole` the diameter of the knob's hole.
    """
    stock, practice = kitchen.stock, kitchen.practice
    diameter = thread_diameter(front.handles[0].thread) if front.handles else None
    if diameter is None:
        return None, []
    over_box = [place for place in knobs_on_box(front, outline) if _on(place, box)]
    box_front = box.front_thickness if over_box else None
    through = thinnest(front.handles)
    choice = knob_screw(
        stock.knob_screw_lengths, front.face, through, box_front, diameter,
        stock.knob_thread_depth, practice,
    )  # fmt: skip
    recess_possible = box.front_thickness >= practice.recess_depth + practice.recess_wall
    if choice is None:
        stack = front.face.stack(through, box_front)
        return None, [writer.no_knob_screw(front.label, stack, recess=recess_possible)]
    reach = hole / 2 + practice.hole_clear
    hits = [place for place in over_box if choice.through_box and _hits_pin(place, box, reach)]
    findings = [
        writer.hole_hits_pin(front.label, place.x, place.y, recess=recess_possible)
        for place in hits[:1]
    ]
    recess = Recess(practice.recess_width, practice.recess_depth) if choice.recess else None
    return KnobScrew(choice.length, choice.through_box, recess, len(front.knobs)), findings


def knobs_on_box(front: Front, outline: Rect) -> list[Point]:
    """The front's knobs in the box front's places."""
    return [Point(knob.x - outline.x, knob.y - outline.y) for knob in front.knobs]


def knob_hole(door: DoorOnHand | None, practice: Practice) -> Mm:
    """Diameter of the knob's hole: the door's own, else the shop's."""
    own = door.knob_hole if door else None
    return own.diameter if own else practice.knob_hole


def has_own_hole(front: Front, kitchen: Kitchen) -> bool:
    """Whether the door that the front is made from brings its knob's hole."""
    door = next((each for each in kitchen.doors_on_hand if each.label == front.door_on_hand), None)
    return bool(front.knobs) and door is not None and door.knob_hole is not None


def _on(place: Point, box: Box) -> bool:
    return 0 <= place.x <= box.width and 0 <= place.y <= box.height


def _hits_pin(place: Point, box: Box, reach: Mm) -> bool:
    return any(is_near_pin(pins, place, reach) for pins in box.shelf_pins)

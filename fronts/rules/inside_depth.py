"""How deep a cabinet is behind its fronts, for boxes and for slides.

Inside depth = cabinet depth - back, less the front's thickness where the front lies inset; a
slide leaves a clearance behind it.
"""

from fronts.rules.kinds import Unit, is_inset
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE, Practice
from fronts.rules.unit_figures import UNIT_FIGURES


def inside_depth(laid: Laid, front_thickness: Mm, unit: Unit) -> Mm:
    """From the back to where a box's front may stand."""
    own = laid.standard.back
    back = UNIT_FIGURES[unit].back if own is None else own
    taken = front_thickness if is_inset(laid.plane) else Mm(0)
    return laid.cabinet.depth - back - taken


def slide_room(laid: Laid, front_thickness: Mm, practice: Practice, unit: Unit) -> Mm:
    """The longest that a slide may be."""
    return inside_depth(laid, front_thickness, unit) - rear_clearance(practice, unit)


def rear_clearance(practice: Practice, unit: Unit) -> Mm:
    """Behind a slide: the shop's own figure, else what is usual in the job's unit."""
    own = practice.rear_clearance
    return own if own != PRACTICE.rear_clearance else UNIT_FIGURES[unit].rear_clearance

"""The slide of a box that exists: the first of the shop's list that is as long, and carries it.

As long: for under slides exactly as long as the box, else the longest that is no longer and
leaves its clearance behind. Where several are, one on which the box runs comes first.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import chain

from fronts.rules.box_facts import Box
from fronts.rules.box_load import BoxLoad, box_load
from fronts.rules.box_parts import BoxShape, box_pieces, box_weight
from fronts.rules.box_runs import runs_on
from fronts.rules.box_stock import box_stock
from fronts.rules.inside_depth import slide_room
from fronts.rules.items import SlideItem
from fronts.rules.kinds import FRONT_KINDS, SLIDES, Unit
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm, greatest_within
from fronts.rules.opening_sizes import widths_of
from fronts.rules.slide_needs import needs_of
from fronts.rules.unit_figures import UNIT_FIGURES
from fronts.rules.usual_slides import USUAL_KIND, slides_of


@dataclass(frozen=True, slots=True)
class BoxSlide:
    """What a found box is hung on: `slide` None where none is right.

    `longest` is how long it may be; the box's bottom panel ends at `floor` above its lower edge.
    """

    slide: SlideItem | None
    length: Mm | None
    load: BoxLoad
    longest: Mm
    floor: Mm


def slide_for(
    laid: Laid, box: Box, front_thickness: Mm, front_kg: Fraction, kitchen: Kitchen
) -> BoxSlide:
    """The slide that a found box runs on, and what that must carry."""
    unit = kitchen.job.unit
    depth = laid.cabinet.depth if box.depth is None else box.depth
    room = slide_room(laid, front_thickness, kitchen.practice, unit)
    longest = room if box.depth is None else min(room, box.depth)
    stock = box_stock(kitchen.boxes_made_of, unit, side=box.front_thickness)
    low = FRONT_KINDS[laid.opening.closing.front].low_sides
    pieces = box_pieces(BoxShape(box.width, box.height, depth, box.shelves, low, None), stock)
    own_kg = box_weight(pieces, stock) + front_kg
    load = box_load(box.width, depth, box.shelves, box.load_kg, own_kg, kitchen.practice)
    carrying = [
        (slide, length)
        for slide in slides_of(kitchen, box.slide)
        if slide.load_kg >= load.needed_kg
        and (slide.most_side is None or box.front_thickness <= slide.most_side)
        and (length := _length(slide, box, longest)) is not None
    ]
    opening = min(widths_of(laid.opening))
    running = (one for one in carrying if runs_on(box, opening, needs_of(one[0], unit)))
    slide, length = next(chain(running, carrying), (None, None))
    return BoxSlide(slide, length, load, longest, _recess(box, slide, unit) + stock.bottom)


def _length(slide: SlideItem, box: Box, longest: Mm) -> Mm | None:
    """The length of this slide that goes with the box; None: none does."""
    if box.depth is not None and box.slide is not None and SLIDES[box.slide].notched:
        return box.depth if box.depth <= longest and box.depth in slide.lengths else None
    return greatest_within(slide.lengths, longest)


def _recess(box: Box, slide: SlideItem | None, unit: Unit) -> Mm:
    if slide is not None:
        return needs_of(slide, unit).recess
    return UNIT_FIGURES[unit].slides[box.slide or USUAL_KIND].recess

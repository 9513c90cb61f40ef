"""A drawer box that is to be made: its size, and the slide that it is made for.

The slides of the kind asked for are tried in the shop's order; the first is taken that leaves
room for a box and carries it. Length = the longest of the item's that leaves its clearance
behind; width as the slide asks; height = the highest of the shop's that goes into the room,
or all of the room in steps.
"""

from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.box_facts import Box, BoxToMake
from fronts.rules.box_load import box_load
from fronts.rules.box_parts import BoxPiece, BoxShape, box_pieces, box_weight
from fronts.rules.box_room import BoxRoom, box_room
from fronts.rules.box_stock import BoxStock, box_stock
from fronts.rules.inside_depth import slide_room
from fronts.rules.items import SlideItem
from fronts.rules.kinds import FRONT_KINDS, SlideKind
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.lengths import NOTHING, Mm, floor_to, greatest_within
from fronts.rules.slide_needs import SlideNeeds, needs_of
from fronts.rules.unit_figures import UNIT_FIGURES
from fronts.rules.usual_slides import first_kind, slides_of


@dataclass(frozen=True, slots=True)
class MadeBox:
    """A box to be made, the slide that it runs on, and its pieces."""

    box: Box
    slide: SlideItem
    length: Mm
    load_kg: Fraction
    pieces: tuple[BoxPiece, ...]
    material: str
    floor: Mm


@dataclass(frozen=True, slots=True)
class NoBox:
    """Why there is none: no `room`, or no slide so short and of such a class.

    `needed_kg` None: none was short enough to be asked for its class.
    """

    kind: SlideKind
    room: BoxRoom | None
    longest: Mm
    needed_kg: Fraction | None


@dataclass(frozen=True, slots=True)
class _Asked:
    """What every slide is tried with; `heights` are the shop's for such a box."""

    to_make: BoxToMake
    room: BoxRoom
    longest: Mm
    stock: BoxStock
    heights: tuple[Mm, ...]
    low: bool
    front_kg: Fraction
    kitchen: Kitchen


def size_box(
    laid: Laid, to_make: BoxToMake, front_thickness: Mm, front_kg: Fraction, kitchen: Kitchen
) -> MadeBox | NoBox:
    """The box of a front, or why it can't be made."""
    unit, made_of = kitchen.job.unit, kitchen.boxes_made_of
    kind = to_make.slide or first_kind(kitchen)
    low = FRONT_KINDS[laid.opening.closing.front].low_sides
    asked = _Asked(
        to_make=to_make,
        room=box_room(laid),
        longest=slide_room(laid, front_thickness, kitchen.practice, unit),
        stock=box_stock(made_of, unit),
        heights=() if low else made_of.heights,
        low=low,
        front_kg=front_kg,
        kitchen=kitchen,
    )
    room, needed = None, None
    for slide in slides_of(kitchen, kind):
        tried = _on_slide(slide, asked)
        if isinstance(tried, MadeBox):
            return tried
        if tried is not None:
            room = room or tried.room
            needed = tried.needed_kg or needed
    return NoBox(kind, room, asked.longest, needed)


def _on_slide(slide: SlideItem, asked: _Asked) -> MadeBox | NoBox | None:
    """The box on this slide; else what it fails for; None where that is the slide itself."""
    kitchen, stock = asked.kitchen, asked.stock
    needs = needs_of(slide, kitchen.job.unit)
    too_thick = needs.most_side is not None and stock.side > needs.most_side
    length = greatest_within(slide.lengths, asked.longest)
    if length is None or too_thick:
        return None
    sized = _outside(needs, asked)
    if sized is None:
        return NoBox(slide.kind, asked.room, asked.longest, None)
    width, height = sized
    recess = needs.recess if needs.notched else None
    shape = BoxShape(width, height, length, asked.to_make.shelves, asked.low, recess)
    pieces = box_pieces(shape, stock)
    if any(piece.length <= 0 or piece.width <= 0 for piece in pieces):
        return NoBox(slide.kind, asked.room, asked.longest, None)
    load = box_load(
        width, length, asked.to_make.shelves, asked.to_make.load_kg,
        box_weight(pieces, stock) + asked.front_kg, kitchen.practice,
    )  # fmt: skip
    if slide.load_kg < load.needed_kg:
        return NoBox(slide.kind, None, asked.longest, load.needed_kg)
    box = Box(
        width=width,
        height=height,
        front_thickness=stock.side,
        rise=asked.room.low + needs.below,
        depth=length,
        slide=slide.kind,
        slide_width=slide.width,
        slide_height=slide.height,
        shelves=asked.to_make.shelves,
        load_kg=asked.to_make.load_kg,
    )
    floor = needs.recess + stock.bottom
    return MadeBox(box, slide, length, load.load_kg, pieces, stock.material, floor)


def _outside(needs: SlideNeeds, asked: _Asked) -> tuple[Mm, Mm] | None:
    """Width and height; None where that would be no box."""
    job, least = asked.kitchen.job, UNIT_FIGURES[asked.kitchen.job.unit].least_box
    width = needs.made_width(asked.room.width, asked.stock.side, job.step)
    space = asked.room.high - needs.above - (asked.room.low + needs.below)
    if asked.heights:
        height = greatest_within(asked.heights, space) or NOTHING
    else:
        height = floor_to(space, job.step)
    if height < least or width - 2 * asked.stock.side < least:
        return None
    return width, height

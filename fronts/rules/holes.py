"""Where the mounting holes go: one in each corner of the box front, in solid wood.

A hole starts at its default place in from the box's side and end. It is moved, as little as
may be and in steps, until it is in solid wood of the box and of the front (inside a stile or
rail of a five-piece front), and clear of everything else that is drilled or hung there.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from fronts.rules.kitchen import Box, Point, ShelfPins
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice
from fronts.rules.results import Front, Hole


@dataclass(frozen=True, slots=True)
class Round:
    """A round thing to stay clear of, in the box front's places."""

    x: Mm
    y: Mm
    radius: Mm


@dataclass(frozen=True, slots=True)
class Bar:
    """A rectangular thing to stay clear of, in the box front's places."""

    left: Mm
    bottom: Mm
    right: Mm
    top: Mm


@dataclass(frozen=True, slots=True)
class Site:
    """The box front with the front behind it: what a hole must be in, and clear of."""

    box: Box
    front: Front
    side_offset: Mm
    jig_thickness: Mm
    rounds: tuple[Round, ...]
    practice: Practice

    def solid(self, place: Point) -> bool:
        """Whether a hole's centre is in solid wood of the box front and of the front."""
        edge = self.practice.hole_to_edge
        if not _inside(place.x, self.box.width, edge) or not _inside(
            place.y, self.box.height, edge
        ):
            return False
        x, y = place.x + self.side_offset, place.y + self.jig_thickness
        front = self.front
        if not _inside(x, front.width, edge) or not _inside(y, front.height, edge):
            return False
        if front.build == "slab":
            return True
        in_stile = _in_member(x, front.width, front.stile, edge)
        return in_stile or _in_member(y, front.height, front.rail, edge)

    def clear(self, place: Point) -> bool:
        """Whether a hole there leaves enough wood to everything else."""
        need = self.practice.hole_diameter / 2 + self.practice.hole_clear
        for each in self.rounds:
            reach = need + each.radius
            dx, dy = place.x - each.x, place.y - each.y
            if abs(dx) < reach and abs(dy) < reach and dx * dx + dy * dy < reach * reach:
                return False
        if any(pin_distance_under(pins, place, need) for pins in self.box.shelf_pins):
            return False
        return not any(_near_bar(bar, place, need) for bar in slide_bars(self.box))


def mounting_holes(site: Site, step: Mm) -> tuple[Hole, ...]:
    """The holes, from the lower left one clockwise; fewer than four where a corner has no place."""
    found = []
    for right, top in ((False, False), (False, True), (True, True), (True, False)):
        place = _place_in_corner(site, right=right, top=top, step=step)
        if place is not None:
            found.append(place)
    return tuple(found)


def pin_distance_under(pins: ShelfPins, place: Point, reach: Mm) -> bool:
    """Whether some shelf pin's edge is nearer to `place` than `reach`."""
    reach += pins.diameter / 2
    dx = place.x - pins.x
    if abs(dx) >= reach:
        return False
    index = min(max(round((place.y - pins.y) / pins.pitch), 0), pins.count - 1)
    dy = place.y - pins.y - index * pins.pitch
    return dx * dx + dy * dy < reach * reach


def slide_bars(box: Box) -> tuple[Bar, ...]:
    """Where the slides lie, seen from the front: below a box, or along its sides."""
    if box.slide_width is None or box.slide_height is None or box.slide is None:
        return ()
    wide, tall = box.slide_width, box.slide_height
    if box.slide == "bottom":
        left = (box.width - wide) / 2
        return (Bar(left, -tall, left + wide, Mm(0)),)
    if box.slide == "under":
        return (Bar(Mm(0), -tall, wide, Mm(0)), Bar(box.width - wide, -tall, box.width, Mm(0)))
    low = (box.height - tall) / 2
    return (
        Bar(-wide, low, Mm(0), low + tall),
        Bar(box.width, low, box.width + wide, low + tall),
    )


def _place_in_corner(site: Site, *, right: bool, top: bool, step: Mm) -> Hole | None:
    practice, box = site.practice, site.box
    apart = (practice.hole_diameter + practice.hole_clear) / 2
    limits = (box.width / 2 - apart, box.height / 2 - apart)
    wished = tuple(min(practice.hole_inset, limit) for limit in limits)
    for inward, up in _moves(wished, limits, practice.hole_to_edge, step):
        place = Point(box.width - inward if right else inward, box.height - up if top else up)
        if site.solid(place) and site.clear(place):
            moved = (inward, up) != (practice.hole_inset, practice.hole_inset)
            return Hole(
                box_x=place.x,
                box_y=place.y,
                front_x=place.x + site.side_offset,
                front_y=place.y + site.jig_thickness,
                diameter=practice.hole_diameter,
                moved=moved,
            )
    return None


def _moves(
    wished: Sequence[Mm], limits: Sequence[Mm], least: Mm, step: Mm
) -> Iterator[tuple[Mm, Mm]]:
    """Places in a corner, the wished one first and then by how far they are from it."""
    if wished[0] < least or wished[1] < least:
        return
    yield wished[0], wished[1]
    spans = []
    for start, limit in zip(wished, limits, strict=True):
        back, ahead = int((start - least) // step), int((limit - start) // step)
        spans.append(range(-back, ahead + 1))
    moves = sorted(
        ((i * i + j * j, abs(j), i, j) for i in spans[0] for j in spans[1] if i or j),
    )
    for _, _, i, j in moves:
        yield wished[0] + i * step, wished[1] + j * step


def _inside(place: Mm, size: Mm, edge: Mm) -> bool:
    return edge <= place <= size - edge


def _in_member(place: Mm, size: Mm, member: Mm, edge: Mm) -> bool:
    return edge <= place <= member - edge or size - member + edge <= place <= size - edge


def _near_bar(bar: Bar, place: Point, reach: Mm) -> bool:
    dx = max(bar.left - place.x, place.x - bar.right, Mm(0))
    dy = max(bar.bottom - place.y, place.y - bar.top, Mm(0))
    return dx * dx + dy * dy < reach * reach

"""Where the mounting holes go: one in each corner of the box front, in solid wood.

A hole starts at its default place in from the box's side and end. It is moved, as little as
may be and in steps, until it is in solid wood of the box and of the front (inside a stile or
rail of a five-piece front), and clear of everything else that is drilled or hung there.
"""

from fractions import Fraction

from fronts.rules.hole_grid import HoleGrid, Site
from fronts.rules.kitchen import Point, ShelfPins
from fronts.rules.lengths import Mm
from fronts.rules.results import Hole


def mounting_holes(site: Site, step: Mm) -> tuple[Hole, ...]:
    """The holes, from the lower left one clockwise; fewer than four where a corner has no place."""
    grid = HoleGrid(site, step)
    holes = []
    for right, top in ((False, False), (False, True), (True, True), (True, False)):
        inset = grid.place_in_corner(right=right, top=top)
        if inset is not None:
            holes.append(_hole(site, grid, inset, right=right, top=top))
    return tuple(holes)


def is_near_pin(pins: ShelfPins, place: Point, reach: Mm) -> bool:
    """Whether some shelf pin's edge is nearer to `place` than `reach`."""
    reach += pins.diameter / 2
    index = min(max(round((place.y - pins.y) / pins.pitch), 0), pins.count - 1)
    dx, dy = place.x - pins.x, place.y - pins.y - index * pins.pitch
    return dx * dx + dy * dy < reach * reach


def _hole(site: Site, grid: HoleGrid, inset: tuple[int, int], *, right: bool, top: bool) -> Hole:
    inward, up = (Fraction(part, grid.scale) for part in inset)
    x = site.box.width - inward if right else inward
    y = site.box.height - up if top else up
    wished = site.practice.hole_inset
    return Hole(
        box_x=x,
        box_y=y,
        front_x=x + site.side_offset,
        front_y=y + site.jig_thickness,
        diameter=site.practice.hole_diameter,
        moved=(inward, up) != (wished, wished),
    )

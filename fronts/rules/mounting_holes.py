"""Where the mounting holes go: one in each corner of the box front, or of a low one at each side.

A hole starts at its default place in from the box's side and end. It is moved, as little as
may be and in steps, until it is in solid wood of the box and of the front (inside a stile or
rail of a five-piece front), and clear of everything else that is drilled or hung there.
"""

from fractions import Fraction

from fronts.rules.box_facts import ShelfPins
from fronts.rules.fitting_results import Hole
from fronts.rules.hole_grid import HoleGrid, Site
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm


def mounting_holes(site: Site, step: Mm) -> tuple[Hole, ...]:
    """The holes, from the lower left one clockwise; fewer where one has no place."""
    grid = HoleGrid(site, step)
    corners = ((False, False), (False, True), (True, True), (True, False))
    holes = []
    for right, top in corners:
        if top and site.spans.high is None:
            continue
        place = grid.place_in_corner(right=right, top=top)
        if place is not None:
            holes.append(_hole(site, grid, place, right=right, top=top))
    return tuple(holes)


def is_near_pin(pins: ShelfPins, place: Point, reach: Mm) -> bool:
    """Whether some shelf pin's edge is nearer to `place` than `reach`."""
    reach += pins.diameter / 2
    index = min(max(round((place.y - pins.y) / pins.pitch), 0), pins.count - 1)
    dx, dy = place.x - pins.x, place.y - pins.y - index * pins.pitch
    return dx * dx + dy * dy < reach * reach


def _hole(site: Site, grid: HoleGrid, place: tuple[int, int], *, right: bool, top: bool) -> Hole:
    inward, up = (Fraction(part, grid.scale) for part in place)
    x = site.box.width - inward if right else inward
    y = site.box.height - up if top else up
    inset = site.practice.hole_inset
    wished = inset, (site.spans.low.wished if site.spans.high is None else inset)
    return Hole(
        box_x=x,
        box_y=y,
        front_x=x + site.side_offset,
        front_y=y + site.jig_thickness,
        diameter=site.practice.hole_diameter,
        moved=(inward, up) != wished,
    )

"""One front seen from its back, left and right changed over, with its box, holes and hinges.

This is how the front lies on the bench when it is bored. Below and at the left, places
are measured from the front's edges; above and at the right, from the box's corner.
"""

from collections.abc import Callable, Sequence
from fractions import Fraction
from functools import partial
from itertools import pairwise

from fronts.drawings.dimension import Axis, Chain, Piece, Towards, dimension_chain
from fronts.drawings.drawing import PAPER, Drawing, Ink, text_area
from fronts.drawings.front_bores import bored
from fronts.drawings.front_view import CROSS, NOTE, Bores, View, cross, free
from fronts.drawings.geometry import Area
from fronts.drawings.scale import Scale, fitted, largest_of
from fronts.drawings.svg import Px
from fronts.figures.boxes import mirrored
from fronts.rules.fitting_results import Fitting
from fronts.rules.hinge_drilling import hinges_upright
from fronts.rules.kinds import FRONT_BUILDS
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front

_FIGURE: Px = 13_50
_SMALL_FIGURE: Px = 11_20
_ROW: Px = 13_00
_SMALL = Fraction(3, 5)
"""Where the front would come out this much smaller than the room, it is lettered smaller and the
places from the box's corner are left out; if that is not enough, all of a box's: they stand in
the table of holes too."""

_ASIDE: tuple[tuple[Px, Px], ...] = tuple(
    (across, along)
    for far in (9_00, 12_00, 16_00)
    for across, along in ((far, 0), (far, far), (far, -far), (0, far), (-far, far), (-far, 0))
)
"""Places for a hole's number, towards the box's middle first."""


def front_from_back(
    front: Front,
    fitting: Fitting | None,
    bores: Bores,
    *,
    unit: str,
    ink: Ink = PAPER,
    room: tuple[Px, Px] = (340_00, 380_00),
) -> str:
    """The front's back as an `<svg>` no larger than `room`."""
    low, high = _span(front, fitting)

    def drawn(size: int, *, front_places: bool = True, box_places: bool = True) -> Drawing:
        drawing = Drawing(ink)
        figure = _FIGURE if box_places else _SMALL_FIGURE
        view = View(drawing, Scale(size), front, fitting, bores, unit, figure)
        _draw(view, front_places=front_places, box_places=box_places)
        return drawing

    first = fitted(front.width, high - low, room=room, most=1_200)
    ways: list[Callable[[int], Drawing]] = [drawn, partial(drawn, box_places=False)]
    if fitting is not None:
        ways.append(partial(drawn, front_places=False, box_places=False))
    thing = front.width, high - low
    drawing = largest_of(ways, first, room, thing, least=first * _SMALL)
    return drawing.svg(f"{front.label} seen from the back", "back")


def _span(front: Front, fitting: Fitting | None) -> tuple[Mm, Mm]:
    """The lowest and the highest of front and box, from the front's bottom edge."""
    if fitting is None:
        return Mm(0), front.height
    top = fitting.jig_thickness + fitting.box_height
    return min(Mm(0), fitting.jig_thickness), max(front.height, top)


def _draw(view: View, *, front_places: bool, box_places: bool) -> None:
    front, fitting = view.front, view.fitting
    _outline(view)
    if fitting is not None:
        _box(view, fitting)
    bored(view)
    _size(view)
    if front_places:
        _measured_from_front(view, *_bored_at(front, fitting))
    if fitting is not None and box_places:
        _measured_from_box(view, fitting)


def _bored_at(front: Front, fitting: Fitting | None) -> tuple[Sequence[Mm], Sequence[Mm]]:
    """How far across and up what is bored for hanging lies on the front."""
    if fitting is not None:
        return [each.front_x for each in fitting.holes], [each.front_y for each in fitting.holes]
    upright = hinges_upright(front)
    return ([], front.hinge_centres) if upright else (front.hinge_centres, [])


def _size(view: View) -> None:
    """The front's size, in its middle or above or below that, where there is room."""
    front, scale = view.front, view.scale
    inside = scale.area(Mm(0), Mm(0), front.width, front.height).grown(-3_00)
    x, y = inside.middle
    wide, high = show(front.width, view.unit), show(front.height, view.unit)
    for lines in ((f"{wide} × {high}",), (f"{wide} ×", high)):
        for centre in (y, y - inside.height // 4, y + inside.height // 4):
            tops = [centre + (place * 2 - len(lines) + 1) * _ROW * 2 // 3
                    for place in range(len(lines))]  # fmt: skip
            areas = [text_area(x, at, text, view.figure, bold=True)
                     for at, text in zip(tops, lines, strict=True)]  # fmt: skip
            if all(free(view.drawing, each, inside) for each in areas):
                for at, text in zip(tops, lines, strict=True):
                    view.drawing.text(x, at, text, view.figure, bold=True, kind="size")
                return


def _outline(view: View) -> None:
    front, scale, drawing = view.front, view.scale, view.drawing
    drawing.rect("front", scale.area(Mm(0), Mm(0), front.width, front.height))
    drawing.framed(scale.area(Mm(0), Mm(0), front.width, front.height))
    if not FRONT_BUILDS[front.build].framed:
        return
    frame, low, high = front.frame, scale.y(Mm(0)), scale.y(front.height)
    left, right = scale.x(frame.right), scale.x(mirrored(front, frame.left))
    for x in (left, right):
        drawing.line("cabinet", x, low, x, high)
    top, bottom = scale.y(front.height - frame.top), scale.y(frame.bottom)
    for y in (bottom, top):
        drawing.line("cabinet", left, y, right, y)
    drawing.frames += [Area(left, high, left, low), Area(right, high, right, low)]
    drawing.framed(Area(left, top, right, bottom))


def _box(view: View, fitting: Fitting) -> None:
    drawing, scale, front = view.drawing, view.scale, view.front
    left = mirrored(front, fitting.side_offset + fitting.jig_length)
    area = scale.area(left, fitting.jig_thickness, fitting.jig_length, fitting.box_height)
    drawing.rect("box", area)
    drawing.framed(area)
    for number, hole in enumerate(fitting.holes, 1):
        x, y = scale.x(mirrored(front, hole.front_x)), scale.y(hole.front_y)
        drawing.circle("front", x, y, view.ring(hole.diameter))
        cross(drawing, x, y, min(view.ring(hole.diameter) + CROSS, view.reach))
        _number(drawing, area, x, y, str(number))


def _number(drawing: Drawing, box: Area, x: Px, y: Px, number: str) -> None:
    """A hole's number, beside the hole on the side that is nearer the box's middle.

    Every hole bears one: where no place is free off all lines, one that no other text takes.
    """
    middle = box.middle
    right, down = (1 if x < middle[0] else -1), (1 if y < middle[1] else -1)
    places = [(x + right * across, y + down * along) for across, along in _ASIDE]
    areas = [text_area(*place, number, NOTE) for place in places]
    unwritten = [place for place, area in zip(places, areas, strict=True)
                 if drawing.free(area)]  # fmt: skip
    clear = [place for place, area in zip(places, areas, strict=True)
             if free(drawing, area, box)]  # fmt: skip
    drawing.text(*(clear or unwritten or places)[0], number, NOTE, kind="hole")


def _measured_from_front(view: View, xs: Sequence[Mm], ys: Sequence[Mm]) -> None:
    front, scale = view.front, view.scale
    across = [Mm(0), *(mirrored(front, each) for each in xs), front.width]
    upward = [Mm(0), *ys, front.height]
    base = max(scale.y(Mm(0)), view.drawing.bounds().bottom)
    left = min(scale.x(Mm(0)), view.drawing.bounds().left)
    _chain(view, "x", 1, base + _ROW, base, across)
    _chain(view, "y", -1, left - _ROW, left, upward)


def _measured_from_box(view: View, fitting: Fitting) -> None:
    """Holes from the box's corner, and on either side how far the front stands past the box."""
    front, scale = view.front, view.scale
    left = mirrored(front, fitting.side_offset + fitting.jig_length)
    low, high = fitting.jig_thickness, fitting.jig_thickness + fitting.box_height
    xs = [mirrored(front, each.front_x) for each in fitting.holes]
    ys = [each.front_y for each in fitting.holes]
    top = min(scale.y(front.height), scale.y(high))
    right = max(scale.x(front.width), scale.x(left + fitting.jig_length))
    across = [Mm(0), left, *xs, left + fitting.jig_length, front.width]
    _chain(view, "x", -1, top - _ROW, top, across)
    _chain(view, "y", 1, right + _ROW, right, [Mm(0), low, *ys, high])


def _chain(view: View, axis: Axis, towards: Towards, at: Px, base: Px, stops: Sequence[Mm]) -> None:
    place = view.scale.x if axis == "x" else view.scale.y
    pieces: list[Piece] = []
    for low, high in pairwise(sorted(set(stops))):
        start, end = sorted((place(low), place(high)))
        pieces.append(Piece(start, end, show(high - low, view.unit)))
    dimension_chain(view.drawing, Chain(axis, at, towards, base, view.figure), pieces)

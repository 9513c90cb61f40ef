"""One front seen from its back, left and right changed over, with its box, holes and hinges.

This is how the front lies on the bench when it is bored. Below and at the left, places
are measured from the front's edges; above and at the right, from the box's corner.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from itertools import combinations, pairwise

from fronts.drawings.dimension import Axis, Chain, Piece, Towards, dimension_chain
from fronts.drawings.drawing import PAPER, Anchor, Drawing, Ink, text_area
from fronts.drawings.geometry import Area
from fronts.drawings.scale import Scale, fitted, largest
from fronts.drawings.svg import Px
from fronts.figures.boxes import mirrored
from fronts.figures.knobs import handle_word
from fronts.rules.fitting_results import Fitting
from fronts.rules.hinge_drilling import cup_centre, hinges_upright
from fronts.rules.kinds import FRONT_BUILDS
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front

_FIGURE: Px = 13_50
_SMALL_FIGURE: Px = 11_20
_ROW: Px = 13_00
_LEAST_HOLE: Px = 2_50
_CROSS: Px = 4_00
_SMALL = Fraction(3, 5)
"""Where the front would come out this much smaller than the room, it is lettered smaller and the
places from the box's corner are left out; if that is not enough, all of a box's: they stand in
the table of holes too."""

_FARTHEST: Px = 30_00
_LEAST_REACH: Px = 1_50
_NOTE: Px = 12_00
_ASIDE: tuple[tuple[Px, Px], ...] = tuple(
    (across, along)
    for far in (9_00, 12_00, 16_00)
    for across, along in ((far, 0), (far, far), (far, -far), (0, far), (-far, far), (-far, 0))
)
"""Places for a hole's number, towards the box's middle first."""


@dataclass(frozen=True, slots=True)
class Bores:
    """Sizes of what is bored into a front's back."""

    knob: Mm
    cup: Mm


@dataclass(frozen=True, slots=True)
class _View:
    drawing: Drawing
    scale: Scale
    front: Front
    fitting: Fitting | None
    bores: Bores
    unit: str
    figure: Px

    def seen(self, place: Point) -> tuple[Px, Px]:
        """Where a place on the front's face is drawn."""
        return self.scale.x(mirrored(self.front, place.x)), self.scale.y(place.y)

    def ring(self, diameter: Mm) -> Px:
        """The radius at which a bore is drawn: large enough to see, and clear of the next."""
        drawn = max(_LEAST_HOLE, self.scale.length(diameter) // 2)
        return drawn if diameter >= self.bores.cup else min(drawn, self.reach * 2 // 3)

    @property
    def reach(self) -> Px:
        """How far a bore's cross may go, so that it does not touch the next one's."""
        holes = () if self.fitting is None else self.fitting.holes
        places = [(self.scale.x(each.front_x), self.scale.y(each.front_y)) for each in holes]
        places += [(self.scale.x(each.x), self.scale.y(each.y)) for each in self.front.knobs]
        apart = [max(abs(one[0] - other[0]), abs(one[1] - other[1]))
                 for one, other in combinations(places, 2)]  # fmt: skip
        return max(min([_FARTHEST, *(each * 9 // 20 for each in apart)]), _LEAST_REACH)


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
        view = _View(drawing, Scale(size), front, fitting, bores, unit, figure)
        _draw(view, front_places=front_places, box_places=box_places)
        return drawing

    first = fitted(front.width, high - low, room=room, most=1_200)
    size, drawing = largest(drawn, first, room)
    if size < first * _SMALL:
        size, drawing = largest(partial(drawn, box_places=False), first, room)
    if size < first * _SMALL and fitting is not None:
        bare = partial(drawn, front_places=False, box_places=False)
        _, drawing = largest(bare, first, room)
    return drawing.svg(f"{front.label} seen from the back", "back")


def _span(front: Front, fitting: Fitting | None) -> tuple[Mm, Mm]:
    """The lowest and the highest of front and box, from the front's bottom edge."""
    if fitting is None:
        return Mm(0), front.height
    top = fitting.jig_thickness + fitting.box_height
    return min(Mm(0), fitting.jig_thickness), max(front.height, top)


def _draw(view: _View, *, front_places: bool, box_places: bool) -> None:
    front, fitting = view.front, view.fitting
    _outline(view)
    if fitting is not None:
        _box(view, fitting)
    _bored(view)
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


def _size(view: _View) -> None:
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
            if all(_free(view.drawing, each, inside) for each in areas):
                for at, text in zip(tops, lines, strict=True):
                    view.drawing.text(x, at, text, view.figure, bold=True, kind="size")
                return


def _outline(view: _View) -> None:
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


@dataclass(frozen=True, slots=True)
class _Bore:
    """What is bored at a place, by its name; what is `old` is plugged."""

    place: Point
    diameter: Mm
    name: str
    old: bool = False


def _bored(view: _View) -> None:
    """Handles' holes, old bores and hinge cups; each named where its name is free to stand."""
    bores = list(_bores(view))
    for bore in bores:
        _ring(view, bore)
    for bore in bores:
        _name(view, bore)


def _bores(view: _View) -> Iterator[_Bore]:
    front = view.front
    for handle in front.handles:
        for hole in handle.holes:
            yield _Bore(hole, view.bores.knob, handle_word([handle]))
    for place in front.plugged:
        yield _Bore(place, view.bores.cup, "old bore", old=True)
    if front.hinge is None:
        return
    for centre in front.hinge_centres:
        place = cup_centre(front, centre, front.hinge.cup_from_edge)
        yield _Bore(place, front.hinge.cup_diameter, "cup")


def _ring(view: _View, bore: _Bore) -> None:
    x, y = view.seen(bore.place)
    radius = view.ring(bore.diameter)
    view.drawing.circle("hidden" if bore.old else "cabinet", x, y, radius)
    _cross(view.drawing, x, y, max(radius, min(radius + _CROSS, view.reach)))


def _name(view: _View, bore: _Bore) -> None:
    drawing, front = view.drawing, view.front
    x, y = view.seen(bore.place)
    radius = view.ring(bore.diameter)
    inside = view.scale.area(Mm(0), Mm(0), front.width, front.height).grown(-3_00)
    anchor: Anchor
    inwards = -1 if x > inside.middle[0] else 1
    beside = x + inwards * (radius + _CROSS + 3_00)
    for at, down, anchor in (
        (x, radius + _NOTE, "middle"),
        (x, -radius - _NOTE, "middle"),
        (beside, 0, "end" if inwards < 0 else "start"),
    ):
        if _free(drawing, text_area(at, y + down, bore.name, _NOTE, anchor), inside):
            drawing.text(at, y + down, bore.name, _NOTE, anchor, kind="note")
            return


def _free(drawing: Drawing, area: Area, inside: Area) -> bool:
    return drawing.free(area, inside) and drawing.uncrossed(area)


def _cross(drawing: Drawing, x: Px, y: Px, reach: Px) -> None:
    drawing.line("dimension", x - reach, y, x + reach, y)
    drawing.line("dimension", x, y - reach, x, y + reach)
    drawing.taken.append(Area(x, y, x, y).grown(reach))


def _box(view: _View, fitting: Fitting) -> None:
    drawing, scale, front = view.drawing, view.scale, view.front
    left = mirrored(front, fitting.side_offset + fitting.jig_length)
    area = scale.area(left, fitting.jig_thickness, fitting.jig_length, fitting.box_height)
    drawing.rect("box", area)
    drawing.framed(area)
    for number, hole in enumerate(fitting.holes, 1):
        x, y = scale.x(mirrored(front, hole.front_x)), scale.y(hole.front_y)
        drawing.circle("front", x, y, view.ring(hole.diameter))
        _cross(drawing, x, y, min(view.ring(hole.diameter) + _CROSS, view.reach))
        _number(drawing, area, x, y, str(number))


def _number(drawing: Drawing, box: Area, x: Px, y: Px, number: str) -> None:
    """A hole's number, beside the hole on the side that is nearer the box's middle.

    Every hole bears one: where no place is free off all lines, one that no other text takes.
    """
    middle = box.middle
    right, down = (1 if x < middle[0] else -1), (1 if y < middle[1] else -1)
    places = [(x + right * across, y + down * along) for across, along in _ASIDE]
    areas = [text_area(*place, number, _NOTE) for place in places]
    free = [place for place, area in zip(places, areas, strict=True) if drawing.free(area)]
    clear = [place for place, area in zip(places, areas, strict=True)
             if _free(drawing, area, box)]  # fmt: skip
    drawing.text(*(clear or free or places)[0], number, _NOTE, kind="hole")


def _measured_from_front(view: _View, xs: Sequence[Mm], ys: Sequence[Mm]) -> None:
    front, scale = view.front, view.scale
    across = [Mm(0), *(mirrored(front, each) for each in xs), front.width]
    upward = [Mm(0), *ys, front.height]
    base = max(scale.y(Mm(0)), view.drawing.bounds().bottom)
    left = min(scale.x(Mm(0)), view.drawing.bounds().left)
    _chain(view, "x", 1, base + _ROW, base, across)
    _chain(view, "y", -1, left - _ROW, left, upward)


def _measured_from_box(view: _View, fitting: Fitting) -> None:
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


def _chain(
    view: _View, axis: Axis, towards: Towards, at: Px, base: Px, stops: Sequence[Mm]
) -> None:
    place = view.scale.x if axis == "x" else view.scale.y
    pieces: list[Piece] = []
    for low, high in pairwise(sorted(set(stops))):
        start, end = sorted((place(low), place(high)))
        pieces.append(Piece(start, end, show(high - low, view.unit)))
    dimension_chain(view.drawing, Chain(axis, at, towards, base, view.figure), pieces)

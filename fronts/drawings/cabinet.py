"""One cabinet's elevation, large: its members, openings and fronts, with overlays and gaps."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from itertools import pairwise

from fronts.drawings.dimension import Axis, Chain, Piece, dimension_chain, small_gap
from fronts.drawings.drawing import PAPER, Drawing, Ink
from fronts.drawings.front_marks import Letters, draw_front, draw_hand, front_area, name_front
from fronts.drawings.gaps import draw_gaps, gaps_between
from fronts.drawings.geometry import Area
from fronts.drawings.scale import Scale, fitted, largest_of
from fronts.drawings.svg import Px
from fronts.drawings.true_outline import draw_true_outline
from fronts.figures.opening_ends import ends_by_front
from fronts.rules.kitchen import Cabinet, Kitchen, Opening
from fronts.rules.labels import opening_label
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front, Schedule
from fronts.rules.runs import stood
from fronts.rules.stopped_fronts import stopped_fronts
from fronts.rules.wall_results import OpeningEnds

_LETTERS = Letters(name=16_00, figure=13_50)
_SMALL_LETTERS = Letters(name=14_00, figure=11_20)
"""Where there is little room; the smallest of a drawing's texts still is 7 pt on paper."""

_ROW: Px = 13_00
SMALL = Fraction(2, 5)
"""Where the cabinet would come out this much smaller than the room, it is lettered smaller, and
the fronts' widths are left out: they stand in the fronts' names too, and in the table of fronts."""

_PLACES = (50, 35, 65, 25, 75, 15, 85)


@dataclass(frozen=True, slots=True)
class _View:
    drawing: Drawing
    scale: Scale
    cabinet: Cabinet
    fronts: Sequence[Front]
    unit: str
    farthest: Mm
    letters: Letters
    ends: Mapping[str, OpeningEnds]


def cabinet_elevation(
    schedule: Schedule,
    kitchen: Kitchen,
    cabinet_label: str,
    *,
    unit: str,
    ink: Ink = PAPER,
    room: tuple[Px, Px] = (360_00, 380_00),
    small: Fraction = SMALL,
) -> str:
    """The cabinet as an `<svg>` no larger than `room`, chains of dimensions and all.

    Where it comes out smaller than `small` of the room without them, there are fewer of them.
    """
    cabinet, fronts = stood(kitchen).cabinet(cabinet_label), schedule.fronts_of(cabinet_label)
    stopped, ends = stopped_fronts(schedule), ends_by_front(schedule, fronts)

    def drawn(size: int, *, small: bool = False) -> Drawing:
        scale = Scale(size, cabinet.left, cabinet.y)
        letters = _SMALL_LETTERS if small else _LETTERS
        view = _View(
            Drawing(ink), scale, cabinet, fronts, unit, kitchen.practice.filler, letters, ends
        )
        _draw(view, stopped, widths=not small)
        return view.drawing

    first = fitted(cabinet.width, cabinet.height, room=room, most=1_200)
    thing = cabinet.width, cabinet.height
    ways = (drawn, partial(drawn, small=True))
    drawing = largest_of(ways, first, room, thing, least=first * small)
    return drawing.svg(f"Elevation of cabinet {cabinet_label}", "cabinet")


def _draw(view: _View, stopped: frozenset[str], *, widths: bool) -> None:
    _body(view, stopped)
    _laps(view)
    gaps = gaps_between(view.fronts, view.farthest)
    draw_gaps(view.drawing, view.scale, gaps, unit=view.unit, size=view.letters.figure)
    for front in view.fronts:
        draw_hand(view.drawing, view.scale, front)
    _chains(view, widths=widths)


def _body(view: _View, stopped: frozenset[str]) -> None:
    drawing, scale, cabinet = view.drawing, view.scale, view.cabinet
    drawing.rect("cabinet", scale.area(cabinet.left, cabinet.y, cabinet.width, cabinet.height))
    for hole in cabinet.openings:
        if opening_label(cabinet.label, hole.label) not in view.ends:
            drawing.rect("opening", _opening(view, hole))
        drawing.framed(_opening(view, hole))
    for front in view.fronts:
        draw_front(drawing, scale, front, stopped=front.label in stopped)
    for front in view.fronts:
        name_front(
            drawing,
            front_area(scale, front),
            front,
            unit=view.unit,
            letters=view.letters,
            stopped=front.label in stopped,
        )


def _opening(view: _View, hole: Opening) -> Area:
    cabinet = view.cabinet
    return view.scale.area(cabinet.left + hole.x, cabinet.y + hole.y, hole.width, hole.height)


def _laps(view: _View) -> None:
    """How far each front laps past its opening, or stands inside it, at its sides."""
    holes = {each.label: each for each in view.cabinet.openings}
    for front in view.fronts:
        hole, area = _opening(view, holes[front.opening]), front_area(view.scale, front)
        if front.label in view.ends:
            draw_true_outline(
                view.drawing, view.scale, area, front, view.ends[front.label],
                unit=view.unit, size=view.letters.figure,
            )  # fmt: skip
            continue
        for axis, side, edge, inner in (
            ("x", "left", area.left, hole.left),
            ("x", "right", hole.right, area.right),
            ("y", "top", area.top, hole.top),
            ("y", "bottom", hole.bottom, area.bottom),
        ):
            overlay = front.edges[side].overlay  # type: ignore[index]
            if overlay:
                _lap(view, axis, side, (edge, inner), overlay, area)  # type: ignore[arg-type]


def _lap(view: _View, axis: Axis, side: str, ends: tuple[Px, Px], overlay: Mm, area: Area) -> None:
    low, high = (area.top, area.bottom) if axis == "x" else (area.left, area.right)
    after = side in ("left", "top")
    small_gap(
        view.drawing,
        axis=axis,
        start=min(ends),
        end=max(ends),
        tries=[low + (high - low) * each // 100 for each in _PLACES],
        text=show(abs(overlay), view.unit),
        size=view.letters.figure,
        rooms=(None, area) if after else (area, None),
    )


def _chains(view: _View, *, widths: bool) -> None:
    """Members and openings below and at the left; fronts and reveals above and at the right."""
    cabinet, scale, drawing = view.cabinet, view.scale, view.drawing
    right, top = cabinet.left + cabinet.width, cabinet.y + cabinet.height
    across = [each for hole in cabinet.openings for each in (hole.x, hole.x + hole.width)]
    upward = [each for hole in cabinet.openings for each in (hole.y, hole.y + hole.height)]
    below, left = scale.y(cabinet.y), scale.x(cabinet.left)
    xs = [cabinet.left, *(cabinet.left + each for each in across), right]
    ys = [cabinet.y, *(cabinet.y + each for each in upward), top]
    _chain(view, Chain("x", below + _ROW, 1, below, view.letters.figure), xs)
    _chain(view, Chain("y", left - _ROW, -1, left, view.letters.figure), ys)
    above, beside = drawing.bounds().top, scale.x(right)
    if widths:
        _chain(
            view, Chain("x", above - _ROW, -1, above, view.letters.figure), _fronts_at(view, "x")
        )
    _chain(view, Chain("y", beside + _ROW, 1, beside, view.letters.figure), _fronts_at(view, "y"))


def _fronts_at(view: _View, axis: Axis) -> list[Mm]:
    """The edges of the fronts along the top, or along the right, and the cabinet's own."""
    cabinet = view.cabinet
    if axis == "x":
        row = [each for each in view.fronts if _outermost(each, view.fronts, "x")]
        edges = [at for each in row for at in (each.x, each.right)]
        return [cabinet.left, *edges, cabinet.left + cabinet.width] if row else []
    row = [each for each in view.fronts if _outermost(each, view.fronts, "y")]
    edges = [at for each in row for at in (each.y, each.top)]
    return [cabinet.y, *edges, cabinet.y + cabinet.height] if row else []


def _outermost(front: Front, fronts: Sequence[Front], axis: Axis) -> bool:
    """Whether no other front stands over it (axis x), or to the right of it (axis y)."""
    if axis == "x":
        return not any(
            each.y >= front.top and each.x < front.right and front.x < each.right for each in fronts
        )
    return not any(
        each.x >= front.right and each.y < front.top and front.y < each.top for each in fronts
    )


def _chain(view: _View, chain: Chain, stops: Sequence[Mm]) -> None:
    place = view.scale.x if chain.axis == "x" else view.scale.y
    pieces: list[Piece] = []
    for low, high in pairwise(sorted(set(stops))):
        start, end = sorted((place(low), place(high)))
        pieces.append(Piece(start, end, show(high - low, view.unit)))
    dimension_chain(view.drawing, chain, pieces)

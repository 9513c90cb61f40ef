"""A wall's elevation to scale: cabinets, openings, fronts, gaps, findings, and its dimensions."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from types import MappingProxyType

from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import SCREEN, Drawing, Ink
from fronts.drawings.front_marks import (
    SCREEN_LETTERS,
    Letters,
    draw_front,
    draw_hand,
    draw_state,
    front_area,
    name_front,
)
from fronts.drawings.gaps import draw_gaps, gaps_between
from fronts.drawings.lettering import shortened, text_width
from fronts.drawings.scale import Scale, fitted
from fronts.drawings.snag_sign import beside_name, draw_snag_sign, snag_sign_at
from fronts.drawings.svg import Px, safe_id
from fronts.drawings.wall_things import draw_thing, things_on_wall
from fronts.rules.front_states import FrontState
from fronts.rules.kinds import CABINET_KINDS, name_of
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front, Schedule
from fronts.rules.runs import Placed, is_solid, runs_of, stood
from fronts.rules.snags import NO_SNAGS, OpenSnags
from fronts.rules.stopped_fronts import stopped_fronts
from fronts.rules.thing_kinds import Run

_MARGIN: Px = 12_00
_ROW: Px = 14_00
_LEADING: Px = 5_00
_INSIDE: Px = 4_00
"""So far inside a front the sign of its snags stands."""
_UNIT = {"in": "inches", "mm": "millimetres"}
_MOST_LEVELS = 8
"""More heights than this in one chain are no help; then only the whole height is given."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """The room for an elevation, the scales it may take, and its lettering.

    `least` and `most` are thousandths of a pixel to the millimetre. On one that `is_narrow`
    nothing stands beside the wall: sizes that find no room in it stand below.
    """

    room: tuple[Px, Px] = (1150_00, 420_00)
    least: int = 170
    most: int = 460
    letters: Letters = SCREEN_LETTERS
    is_narrow: bool = False


NONE_OPEN: Mapping[str, OpenSnags] = MappingProxyType({})
PAGE = Sheet()
"""For the job's page: grows sideways rather than becoming too small to read."""
NO_STATES: Mapping[str, FrontState] = {}
SIDE_BY_SIDE = Sheet(room=(510_00, 420_00), least=130)
"""For two drawings of a wall beside each other on a page."""


def wall_elevation(
    schedule: Schedule,
    kitchen: Kitchen,
    wall: str,
    *,
    unit: str,
    links: Callable[[str], str] | None = None,
    ink: Ink = SCREEN,
    sheet: Sheet = PAGE,
    ids: str = "front",
    snags: Mapping[str, OpenSnags] = NONE_OPEN,
    states: Mapping[str, FrontState] = NO_STATES,
) -> str:
    """The wall as an `<svg>`; `links` gives the address that a front's label leads to.

    `ids` is what the ids of fronts begin with: a page that draws a wall twice has two of it.
    `snags` are those that are open, by the labels of fronts and cabinets.
    `states` says how fronts stand, by their labels, where that is to be drawn.
    """
    kitchen = stood(kitchen)
    cabinets = [each for each in kitchen.cabinets if each.wall == wall]
    drawing = Drawing(ink)
    title = f"Elevation of wall {wall}, sizes in {_UNIT[unit]}"
    if not cabinets:
        drawing.text(0, 0, "No cabinets on this wall yet", 13_00, "start")
        return drawing.svg(title, "elevation")
    fronts = [each for each in schedule.fronts if each.wall == wall]
    runs = runs_of(kitchen)[wall]
    spans = {run: _spans(standing) for run, standing in runs.items()}
    scale = _scale(cabinets, fronts, spans, sheet)
    _cabinets(drawing, scale, cabinets)
    for standing in runs.values():
        for thing, place in things_on_wall(standing):
            draw_thing(drawing, scale, thing, place, sheet.letters)
    _floor(drawing, scale, spans)
    stopped = stopped_fronts(schedule)
    unsized = _fronts(
        drawing, scale, fronts, stopped, unit, links, sheet.letters, ids, states, snags
    )
    gaps = gaps_between(fronts, kitchen.practice.filler)
    draw_gaps(drawing, scale, gaps, unit=unit, size=sheet.letters.figure)
    for front in fronts:
        draw_hand(drawing, scale, front)
    _names(drawing, scale, cabinets, sheet.letters.figure, snags)
    _dimensions(drawing, scale, cabinets, spans, unit, sheet.letters.figure)
    say_sizes = _sizes_below if sheet.is_narrow else _sizes_beside
    say_sizes(drawing, unsized, unit, sheet.letters.figure)
    return drawing.svg(title, "elevation", linked=links is not None)


_Spans = Mapping[Run, Sequence[tuple[Mm, Mm]]]
"""By run, from where to where something stands along the wall."""


def _spans(standing: Sequence[Placed]) -> list[tuple[Mm, Mm]]:
    """What stands there, from the left; a gap is where nothing is."""
    return sorted((one.x, one.right) for one in standing if is_solid(one.what))


def _ends(spans: _Spans) -> tuple[Mm, Mm]:
    """How far to the left and to the right anything stands."""
    every = [span for run in spans.values() for span in run]
    return min(left for left, _ in every), max(right for _, right in every)


def _scale(
    cabinets: Sequence[Cabinet], fronts: Sequence[Front], spans: _Spans, sheet: Sheet
) -> Scale:
    first, last = _ends(spans)
    left = min([first, *(each.x for each in fronts)])
    right = max([last, *(each.right for each in fronts)])
    top = max([*(each.y + each.height for each in cabinets), *(each.top for each in fronts)])
    size = fitted(right - left, top, room=sheet.room, most=sheet.most, least=sheet.least)
    return Scale(size, left=left)


def _cabinets(drawing: Drawing, scale: Scale, cabinets: Sequence[Cabinet]) -> None:
    for cabinet in cabinets:
        drawing.rect("cabinet", scale.area(cabinet.left, cabinet.y, cabinet.width, cabinet.height))
        for hole in cabinet.openings:
            x, y = cabinet.left + hole.x, cabinet.y + hole.y
            drawing.rect("opening", scale.area(x, y, hole.width, hole.height))


def _floor(drawing: Drawing, scale: Scale, spans: _Spans) -> None:
    first, last = _ends(spans)
    left, right = scale.x(first) - _MARGIN, scale.x(last) + _MARGIN
    drawing.line("floor", left, scale.y(Mm(0)), right, scale.y(Mm(0)))


def _fronts(
    drawing: Drawing,
    scale: Scale,
    fronts: Sequence[Front],
    stopped: frozenset[str],
    unit: str,
    links: Callable[[str], str] | None,
    letters: Letters,
    ids: str,
    states: Mapping[str, FrontState],
    snags: Mapping[str, OpenSnags],
) -> list[Front]:
    """Every front with its name; those that have no room for their size."""
    unsized: list[Front] = []
    for front in fronts:
        stop = front.label in stopped
        state, open_here = states.get(front.label), snags.get(front.label, NO_SNAGS)
        said = _said(front, unit, open_here, stop=stop) + (f", {state.says}" if state else "")
        kind = f"front front-{front.kind}" + (" front-stop" if stop else "")
        drawing.opened("g", {"id": safe_id(ids, front.label), "class": kind})
        if links is not None:
            drawing.opened("a", {"href": links(front.label), "aria-label": said})
        draw_front(drawing, scale, front, stopped=stop, target=links is not None)
        area = front_area(scale, front)
        if state is not None:
            draw_state(drawing, area, state)
        if open_here.count:
            draw_snag_sign(drawing, area.grown(-_INSIDE), open_here)
        if not name_front(drawing, area, front, unit=unit, letters=letters, stopped=stop):
            unsized.append(front)
        if links is not None:
            drawing.closed("a")
        drawing.closed("g")
    return unsized


def _sizes_beside(drawing: Drawing, fronts: Sequence[Front], unit: str, size: Px) -> None:
    """The sizes of fronts that have no room for them, in a column beside the wall."""
    bounds = drawing.bounds()
    x, y = bounds.right + 2 * _ROW, bounds.top + _ROW
    for row, front in enumerate(fronts):
        text = _size_of(front, unit)
        drawing.text(x, y + row * (size + _LEADING), text, size, "start", kind="size")


def _sizes_below(drawing: Drawing, fronts: Sequence[Front], unit: str, size: Px) -> None:
    """The same below the wall, in as many columns as it is wide."""
    if not fronts:
        return
    bounds = drawing.bounds()
    texts = [_size_of(front, unit) for front in fronts]
    column = max(text_width(text, size) for text in texts) + 2 * _LEADING
    columns = max(1, bounds.width // column)
    for place, text in enumerate(texts):
        row, at = divmod(place, columns)
        x, y = bounds.left + at * column, bounds.bottom + _ROW + row * (size + _LEADING)
        drawing.text(x, y, text, size, "start", kind="size")


def _size_of(front: Front, unit: str) -> str:
    return f"{front.label}: {show(front.width, unit)} × {show(front.height, unit)}"


def _said(front: Front, unit: str, snags: OpenSnags, *, stop: bool) -> str:
    """What a front's link is called: what stands on it, in that order, and what is drawn."""
    at = "at the " if front.hinged in ("top", "bottom") else ""
    hand = f", hinged {at}{front.hinged}" if front.hinged else ""
    size = f"{show(front.width, unit)} × {show(front.height, unit)}"
    wrong = f", {snags.words}" if snags.count else ""
    return f"{front.label} {size} {name_of(front.kind)}{hand}{wrong}" + (
        " — stop, do not cut" if stop else ""
    )


def _dimensions(
    drawing: Drawing, scale: Scale, cabinets: Sequence[Cabinet], spans: _Spans, unit: str, size: Px
) -> None:
    bounds = drawing.bounds()
    below = bounds.bottom + _ROW
    if spans["floor"]:
        chain = Chain("x", below, 1, scale.y(Mm(0)), size)
        below = dimension_chain(drawing, chain, _widths(scale, spans["floor"], unit)) + _ROW // 2
    left, right = _ends(spans)
    overall = Piece(scale.x(left), scale.x(right), show(right - left, unit), bold=True)
    if sum(map(len, spans.values())) > 1:
        dimension_chain(drawing, Chain("x", below, 1, scale.y(Mm(0)), size), [overall])
    if spans["upper"]:
        chain = Chain("x", bounds.top - _ROW, -1, bounds.top, size)
        dimension_chain(drawing, chain, _widths(scale, spans["upper"], unit))
    chain = Chain("y", bounds.left - _ROW // 2, -1, bounds.left + _MARGIN, size)
    dimension_chain(drawing, chain, _heights(scale, cabinets, unit))


def _names(
    drawing: Drawing,
    scale: Scale,
    cabinets: Sequence[Cabinet],
    size: Px,
    snags: Mapping[str, OpenSnags],
) -> None:
    """Each cabinet's label: under the floor where it stands, over it where it hangs."""
    for each in cabinets:
        area = scale.area(each.left, each.y, each.width, each.height)
        y = area.top - size if CABINET_KINDS[each.kind].hangs else scale.y(Mm(0)) + size
        name = shortened(each.label, size, area.width - 4_00, bold=True)
        drawing.text(area.middle[0], y, name, size, bold=True, kind="cabinet")
        if each.label in snags:
            at = beside_name(area.middle[0], y, name, size)
            snag_sign_at(drawing, *at, snags[each.label])


def _widths(scale: Scale, spans: Sequence[tuple[Mm, Mm]], unit: str) -> list[Piece]:
    """The width of each thing that stands there, and the spaces between them."""
    pieces: list[Piece] = []
    reached: Mm | None = None
    for left, right in spans:
        if reached is not None and left > reached:
            pieces.append(Piece(scale.x(reached), scale.x(left), show(left - reached, unit)))
        pieces.append(Piece(scale.x(left), scale.x(right), show(right - left, unit)))
        reached = right if reached is None else max(reached, right)
    return pieces


def _heights(scale: Scale, cabinets: Sequence[Cabinet], unit: str) -> list[Piece]:
    """The heights that the eye follows: floor, and the bottoms and tops of the cabinets."""
    tops = (each.y + each.height for each in cabinets)
    levels = sorted({Mm(0), *(each.y for each in cabinets), *tops})
    if len(levels) > _MOST_LEVELS:
        levels = [levels[0], levels[-1]]
    return [
        Piece(scale.y(high), scale.y(low), show(high - low, unit)) for low, high in pairwise(levels)
    ]

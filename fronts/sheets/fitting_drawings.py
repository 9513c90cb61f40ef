"""How a fitting sheet's drawings and figures are laid out: cells in rows, to keep to a page."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias

from django.utils.safestring import SafeString

from fronts.drawings.cabinet import cabinet_elevation
from fronts.drawings.front_back import Bores, front_from_back
from fronts.drawings.jig import jig_drawing, jig_height
from fronts.drawings.svg import Px
from fronts.figures.boxes import box_figures
from fronts.figures.knobs import Line
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.results import Fitting, Front, Jig, Schedule
from fronts.sheets.page_height import HEADING, PAGE

_WIDTHS: dict[int, tuple[Px, Px]] = {
    1: (520_00, 520_00),
    2: (334_00, 334_00),
    3: (262_00, 206_00),
}
"""Width for the cabinet, and for each front's back, where so many drawings stand in a row."""

_UPRIGHT: Px = 190_00
_UNDER: Px = 380_00
"""Widths beside a column of figures: of the cabinet and the back, and of the jig below both."""

_BESIDE: tuple[Px, Px, Px] = (334_00, 130_00, 260_00)
"""Each back in a column of them beside the cabinet: its width, its least and greatest height."""

_MOST_BESIDE = 4
_MOST_JIGS = 2
"""Of more jigs than this, those that differ in thickness alone are drawn once."""
_LEAST_ABOVE_JIGS: Px = 125_00
_SPARE: Px = 22_00
"""How far the estimate of a page's height may be trusted where nothing stands below."""

_JIG: tuple[Px, Px] = (300_00, 140_00)
_FIGURES: Px = 270_00
_LINE_HIGH: Px = 24_00
_LINES_MORE = 2
"""Lines of a column of figures that take two."""
_LEAST: Px = 115_00
_MOST: Px = 520_00
"""Heights of a drawing: the least that can be read, and the most that helps."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """A drawing with its heading, and about how high both are, where that is asked."""

    heading: str
    svg: SafeString
    height: Px = 0


@dataclass(frozen=True, slots=True)
class Cell:
    """A part of a block: drawings, a front's figures; what there is of them.

    `across` and `down` say over how many columns and rows of its block it goes.
    """

    drawings: tuple[Drawn, ...] = ()
    label: str = ""
    lines: tuple[Line, ...] = ()
    across: str = "1"
    down: str = "1"


Block: TypeAlias = list[list[Cell]]
"""Rows of cells that stay together on a page."""


@dataclass(frozen=True, slots=True)
class Layout:
    """What is to be laid out: one cabinet with its fronts and their fittings.

    `height` is what its first page has left for all else, `below` what comes under the
    drawings and the figures beside them.
    """

    schedule: Schedule
    kitchen: Kitchen
    cabinet: Cabinet
    fronts: Sequence[Front]
    fittings: Mapping[str, Fitting]
    height: Px
    below: Px

    @property
    def unit(self) -> str:
        return self.schedule.job.unit

    @property
    def bores(self) -> Bores:
        practice = self.kitchen.practice
        return Bores(practice.knob_hole, practice.cup_diameter, practice.cup_from_edge)


def lay_out(layout: Layout) -> list[Block]:
    """The cabinet and its fronts' backs; for one front on a box also its figures and its jig."""
    boxed = [each for each in layout.fronts if each.label in layout.fittings]
    drawn = [each for each in layout.fronts if each.hinge_centres or each.label in layout.fittings]
    if len(boxed) == len(drawn) == 1:
        return [_alone(layout, boxed[0])]
    jigs = _jigs(layout, boxed, _JIG)
    if len(boxed) == 1:
        row = [_figures(layout, boxed[0]), *([Cell(tuple(jigs))] if jigs else [])]
        return [*_in_rows(layout, drawn, _FIGURES), [row]]
    if 1 < len(boxed) == len(drawn) <= _MOST_BESIDE:
        return _stack(layout, drawn, jigs)
    rows = [[Cell((each,)) for each in pair] for pair in _pairs(jigs)]
    besides = sum(max(each.height for each in pair) for pair in _pairs(jigs))
    return [*_in_rows(layout, drawn, besides), *([row] for row in rows)]


def _pairs(jigs: Sequence[Drawn]) -> list[Sequence[Drawn]]:
    return [jigs[start : start + 2] for start in range(0, len(jigs), 2)]


def _stack(layout: Layout, drawn: Sequence[Front], jigs: Sequence[Drawn]) -> list[Block]:
    """Fronts on boxes one over another: their backs in a column, the jigs under the cabinet."""
    width, least, most = _BESIDE
    high = max(least, min(most, (layout.height - HEADING) // len(drawn) - HEADING))
    backs = Cell(tuple(_back(layout, each, (width, high)) for each in drawn))
    left = layout.height + _SPARE - 2 * HEADING
    under: list[Drawn] = []
    for each in jigs:
        if left - each.height < _LEAST_ABOVE_JIGS:
            break
        under.append(each)
        left -= each.height
    cabinet = _elevation(layout, (width, min(_MOST, left)))
    rows = [[Cell((each,)) for each in pair] for pair in _pairs(jigs[len(under) :])]
    return [[[Cell((cabinet, *under)), backs]], *([row] for row in rows)]


def _alone(layout: Layout, front: Front) -> Block:
    """One front on its box: cabinet and back, the jig below them, all figures at the right."""
    jigs = tuple(_jigs(layout, [front], (_UNDER, _JIG[1])))
    left = layout.height - HEADING - sum(each.height for each in jigs)
    figures = _figures(layout, front)
    beside = _figures_height(figures) - sum(each.height for each in jigs) - HEADING
    room = (_UPRIGHT, max(_height_within(left - layout.below, left), beside))
    cabinet, back = _elevation(layout, room), _back(layout, front, room)
    if not jigs:
        return [[Cell((cabinet,)), Cell((back,)), figures]]
    first = [Cell((cabinet,)), Cell((back,)), replace(figures, down="2")]
    return [first, [Cell(jigs, across="2")]]


def _height_within(left: Px, alone: Px) -> Px:
    """A drawing's height: what is left for it; where it needs two pages, its share of one alone."""
    return min(_MOST, left if left >= _LEAST else max(alone, _LEAST))


def _figures(layout: Layout, front: Front) -> Cell:
    lines = tuple(box_figures(front, layout.fittings[front.label], layout.kitchen))
    return Cell((), front.label, lines)


def _figures_height(figures: Cell) -> Px:
    """About how high a front's column of figures comes out."""
    return HEADING + _LINE_HIGH * (len(figures.lines) + _LINES_MORE)


def _in_rows(layout: Layout, drawn: Sequence[Front], besides: Px) -> list[Block]:
    """The cabinet and the backs, two or three in a row; `besides` is what else they share with."""
    count = 1 + len(drawn)
    columns = count if count <= 3 else 2 if count == 4 else 3
    rows = -(-count // columns)
    left = layout.height - layout.below - besides
    alone = layout.height if besides + layout.below < PAGE else layout.height - besides
    high = _height_within(left // rows - HEADING, alone // rows - HEADING)
    widths = _WIDTHS[columns]
    cells = [Cell((_elevation(layout, (widths[0], high)),))]
    cells += [Cell((_back(layout, each, (widths[1], high)),)) for each in drawn]
    return [[cells[start : start + columns]] for start in range(0, count, columns)]


def _elevation(layout: Layout, room: tuple[Px, Px]) -> Drawn:
    svg = cabinet_elevation(
        layout.schedule, layout.kitchen, layout.cabinet.label, unit=layout.unit, room=room
    )
    return Drawn(f"{layout.cabinet.label} from the front", SafeString(svg))


def _back(layout: Layout, front: Front, room: tuple[Px, Px]) -> Drawn:
    fitting = layout.fittings.get(front.label)
    svg = front_from_back(front, fitting, layout.bores, unit=layout.unit, room=room)
    return Drawn(f"{front.label} from the back", SafeString(svg))


def _jigs(layout: Layout, boxed: Sequence[Front], room: tuple[Px, Px]) -> list[Drawn]:
    """Each jig that these fronts need, once."""
    needed = {each.label: each for each in boxed if layout.fittings[each.label].method == "jig"}
    drawings = []
    jigs = [each for each in layout.schedule.jigs if not needed.keys().isdisjoint(each.fronts)]
    for jig in _not_alike(jigs) if len(jigs) > _MOST_JIGS else jigs:
        here = [each for label, each in needed.items() if label in jig.fronts]
        thickest = max(each.thickness for each in here)
        svg = jig_drawing(jig, thickest, unit=layout.unit, room=room)
        others = [label for each in jigs if each is not jig and _alike(each) == _alike(jig)
                  for label in each.fronts if label in needed]  # fmt: skip
        heading = f"Jig for {', '.join(each.label for each in here)}"
        if others and len(jigs) > _MOST_JIGS:
            heading += f"; alike but for its thickness: {', '.join(others)}"
        drawings.append(Drawn(heading, SafeString(svg), HEADING + jig_height(jig, room)))
    return drawings


def _not_alike(jigs: Sequence[Jig]) -> list[Jig]:
    """The first of all jigs that are alike."""
    return list({_alike(each): each for each in reversed(jigs)}.values())[::-1]


def _alike(jig: Jig) -> tuple[object, ...]:
    return jig.length, jig.ledges, jig.slot

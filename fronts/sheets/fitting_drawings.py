"""How a fitting sheet's drawings and figures are laid out: cells in rows, to keep to a page."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias

from django.utils.safestring import SafeString

from fronts.drawings.cabinet import cabinet_elevation
from fronts.drawings.front_back import Bores, front_from_back
from fronts.drawings.jig import jig_drawing, jig_height
from fronts.drawings.svg import Px
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.results import Fitting, Front, Schedule
from fronts.sheets.box_figures import HolePlace, Line, box_figures, hole_places
from fronts.sheets.page_room import HEADING

_WIDTHS: dict[int, tuple[Px, Px]] = {
    1: (520_00, 520_00),
    2: (334_00, 334_00),
    3: (262_00, 206_00),
}
"""Width for the cabinet, and for each front's back, where so many drawings stand in a row."""

_UPRIGHT: Px = 196_00
_UNDER: Px = 392_00
"""Widths beside a column of figures: of the cabinet and the back, and of the jig below both."""

_BESIDE: tuple[Px, Px, Px] = (334_00, 130_00, 162_00)
"""Each back in a column of them beside the cabinet: its width, its least and greatest height."""

_MOST_BESIDE = 4
_LEAST_ABOVE_JIGS: Px = 125_00
_SPARE: Px = 22_00
"""How far the estimate of a page's height may be trusted where nothing stands below."""

_JIG: tuple[Px, Px] = (330_00, 140_00)
_FIGURES: Px = 275_00
_LEAST: Px = 165_00
_MOST: Px = 360_00
"""Heights of a drawing: the least that can be read, and the most that helps."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """A drawing with its heading, and about how high both are, where that is asked."""

    heading: str
    svg: SafeString
    height: Px = 0


@dataclass(frozen=True, slots=True)
class Cell:
    """A part of a block: drawings, a front's figures, its hole places; what there is of them.

    `across` and `down` say over how many columns and rows of its block it goes.
    """

    drawings: tuple[Drawn, ...] = ()
    label: str = ""
    lines: tuple[Line, ...] = ()
    holes: tuple[HolePlace, ...] = ()
    across: str = "1"
    down: str = "1"


Block: TypeAlias = list[list[Cell]]
"""Rows of cells that stay together on a page."""


@dataclass(frozen=True, slots=True)
class BoxLine:
    """One figure of several fronts; one alone where it is the same for all."""

    name: str
    figures: tuple[Line | None, ...]


@dataclass(frozen=True, slots=True)
class Boxes:
    """Several fronts on boxes side by side: their figures by name, and their holes."""

    labels: tuple[str, ...]
    count: str
    lines: tuple[BoxLine, ...]
    holes: tuple[tuple[str, tuple[HolePlace, ...]], ...]


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
        figures = _figures(layout, boxed[0])
        beside = Cell(tuple(jigs), figures.label, holes=figures.holes)
        row = [Cell((), figures.label, figures.lines), beside]
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
    left = layout.height + _SPARE - 2 * HEADING - sum(each.height for each in jigs)
    if left >= _LEAST_ABOVE_JIGS:
        cabinet = _elevation(layout, (width, min(_MOST, left)))
        return [[[Cell((cabinet, *jigs)), backs]]]
    first = [Cell((_elevation(layout, (width, _MOST)),)), backs]
    rows = [[Cell((each,)) for each in pair] for pair in _pairs(jigs)]
    return [[first], *([row] for row in rows)]


def _alone(layout: Layout, front: Front) -> Block:
    """One front on its box: cabinet and back, the jig below them, all figures at the right."""
    jigs = tuple(_jigs(layout, [front], (_UNDER, _JIG[1])))
    left = layout.height - HEADING - sum(each.height for each in jigs)
    room = (_UPRIGHT, _height_within(left - layout.below, left))
    cabinet, back = _elevation(layout, room), _back(layout, front, room)
    figures = _figures(layout, front)
    if not jigs:
        return [[Cell((cabinet,)), Cell((back,)), figures]]
    first = [Cell((cabinet,)), Cell((back,)), replace(figures, down="2")]
    return [first, [Cell(jigs, across="2")]]


def _height_within(left: Px, alone: Px) -> Px:
    """A drawing's height: what is left for it; where it needs two pages, its share of one alone."""
    return min(_MOST, left if left >= _LEAST else max(alone, _LEAST))


def _figures(layout: Layout, front: Front) -> Cell:
    lines = tuple(box_figures(layout.fittings[front.label], layout.kitchen))
    return Cell((), front.label, lines, _holes(layout, front))


def _in_rows(layout: Layout, drawn: Sequence[Front], besides: Px) -> list[Block]:
    """The cabinet and the backs, two or three in a row; `besides` is what else they share with."""
    count = 1 + len(drawn)
    columns = count if count <= 3 else 2 if count == 4 else 3
    rows = -(-count // columns)
    left = layout.height - layout.below - besides
    high = _height_within(left // rows - HEADING, layout.height // rows - HEADING)
    widths = _WIDTHS[columns]
    cells = [Cell((_elevation(layout, (widths[0], high)),))]
    cells += [Cell((_back(layout, each, (widths[1], high)),)) for each in drawn]
    return [[cells[start : start + columns]] for start in range(0, count, columns)]


def boxes_of(layout: Layout) -> Boxes | None:
    """The figures of the fronts on boxes side by side, where there are several."""
    boxed = [each for each in layout.fronts if each.label in layout.fittings]
    if len(boxed) < 2:
        return None
    figures = [
        {line.name: line for line in box_figures(layout.fittings[each.label], layout.kitchen)}
        for each in boxed
    ]
    names = dict.fromkeys(name for each in figures for name in each)
    return Boxes(
        tuple(each.label for each in boxed),
        str(len(boxed)),
        tuple(_box_line(name, tuple(each.get(name) for each in figures)) for name in names),
        tuple((each.label, _holes(layout, each)) for each in boxed),
    )


def _box_line(name: str, figures: tuple[Line | None, ...]) -> BoxLine:
    return BoxLine(name, figures[:1] if len(set(figures)) == 1 else figures)


def _holes(layout: Layout, front: Front) -> tuple[HolePlace, ...]:
    return tuple(hole_places(front, layout.fittings[front.label], layout.unit))


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
    for jig in layout.schedule.jigs:
        here = [each for label, each in needed.items() if label in jig.fronts]
        if here:
            thickest = max(each.thickness for each in here)
            svg = jig_drawing(jig, thickest, unit=layout.unit, room=room)
            heading = f"Jig for {', '.join(each.label for each in here)}"
            drawings.append(Drawn(heading, SafeString(svg), HEADING + jig_height(jig, room)))
    return drawings

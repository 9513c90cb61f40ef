"""How a fitting sheet's drawings and figures are laid out: cells in rows, to keep to a page."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias

from django.utils.safestring import SafeString

from fronts.drawings.cabinet import cabinet_elevation
from fronts.drawings.front_back import Bores, front_from_back
from fronts.drawings.jig import jig_drawing
from fronts.drawings.svg import Px
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.results import Fitting, Front, Schedule
from fronts.sheets.box_figures import HolePlace, Line, box_figures, hole_places

_ROOMS: dict[int, tuple[Px, Px]] = {
    1: (520_00, 290_00),
    2: (334_00, 300_00),
    3: (224_00, 300_00),
}
"""Room for a drawing where so many stand in a row: in all, the width of an A4 page."""

_UPRIGHT: tuple[Px, Px] = (220_00, 285_00)
_UNDER: tuple[Px, Px] = (440_00, 190_00)
"""Room beside a column of figures: for the cabinet and the back, and for the jig below both."""

_BESIDE: tuple[Px, Px] = (334_00, 150_00)
"""Room for each back in a column of them beside the cabinet."""

_MOST_BESIDE = 4
_JIG: tuple[Px, Px] = (330_00, 190_00)


@dataclass(frozen=True, slots=True)
class Drawn:
    """A drawing with its heading."""

    heading: str
    svg: SafeString


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
class Boxes:
    """Several fronts on boxes side by side: their figures by name, and their holes."""

    labels: tuple[str, ...]
    lines: tuple[tuple[str, tuple[Line | None, ...]], ...]
    holes: tuple[tuple[str, tuple[HolePlace, ...]], ...]


@dataclass(frozen=True, slots=True)
class Layout:
    """What is to be laid out: one cabinet with its fronts and their fittings."""

    schedule: Schedule
    kitchen: Kitchen
    cabinet: Cabinet
    fronts: Sequence[Front]
    fittings: Mapping[str, Fitting]

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
    jigs = [Cell((each,)) for each in _jigs(layout, boxed, _JIG)]
    if len(boxed) == 1:
        figures = _figures(layout, boxed[0])
        beside = Cell(jigs[0].drawings if jigs else (), figures.label, holes=figures.holes)
        return [*_in_rows(layout, drawn), [[Cell((), figures.label, figures.lines), beside]]]
    jig_rows = [[jigs[start : start + 2]] for start in range(0, len(jigs), 2)]
    if 1 < len(boxed) == len(drawn) <= _MOST_BESIDE:
        high = (_BESIDE[0], _BESIDE[1] * len(drawn))
        backs = tuple(_back(layout, each, _BESIDE) for each in drawn)
        return [[[Cell((_elevation(layout, high),)), Cell(backs)]], *jig_rows]
    return [*_in_rows(layout, drawn), *jig_rows]


def _alone(layout: Layout, front: Front) -> Block:
    """One front on its box: cabinet and back, the jig below them, all figures at the right."""
    cabinet, back = _elevation(layout, _UPRIGHT), _back(layout, front, _UPRIGHT)
    jigs = tuple(_jigs(layout, [front], _UNDER))
    figures = _figures(layout, front)
    if not jigs:
        return [[Cell((cabinet,)), Cell((back,)), figures]]
    first = [Cell((cabinet,)), Cell((back,)), replace(figures, down="2")]
    return [first, [Cell(jigs, across="2")]]


def _figures(layout: Layout, front: Front) -> Cell:
    lines = tuple(box_figures(layout.fittings[front.label], layout.kitchen))
    return Cell((), front.label, lines, _holes(layout, front))


def _in_rows(layout: Layout, drawn: Sequence[Front]) -> list[Block]:
    """The cabinet and the backs, two or three in a row."""
    count = 1 + len(drawn)
    columns = count if count <= 3 else 2 if count == 4 else 3
    cells = [Cell((_elevation(layout, _ROOMS[columns]),))]
    cells += [Cell((_back(layout, each, _ROOMS[columns]),)) for each in drawn]
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
        tuple((name, tuple(each.get(name) for each in figures)) for name in names),
        tuple((each.label, _holes(layout, each)) for each in boxed),
    )


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
            drawings.append(Drawn(heading, SafeString(svg)))
    return drawings

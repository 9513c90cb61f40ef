"""The figures of several fronts side by side: a row for each name, one figure where all agree."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from fronts.figures.boxes import HolePlace, box_figures, hole_places
from fronts.figures.hinges import hinge_figures
from fronts.figures.knobs import Line
from fronts.rules.kinds import FRONT_KINDS
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Fitting, Front

CORNERS = ("lower left", "upper left", "upper right", "lower right")
"""The corners of a box in the order of its holes, seen from the front."""


_WORTH_SHARING = 25
"""Letters of words that are not said again under every front."""


@dataclass(frozen=True, slots=True)
class Row:
    """One figure of several fronts; one alone where it is the same for all.

    `shared` are the words that all figures have beside them, where the figures differ.
    """

    name: str
    figures: tuple[Line | None, ...]
    shared: str = ""


@dataclass(frozen=True, slots=True)
class ComparisonTable:
    """Several fronts and their figures by name."""

    labels: tuple[str, ...]
    count: str
    lines: tuple[Row, ...]


@dataclass(frozen=True, slots=True)
class HoleRow:
    """A front's holes by the corner of its box; None where a corner has none."""

    label: str
    holes: tuple[HolePlace | None, ...]


@dataclass(frozen=True, slots=True)
class Boxes:
    """Fronts on boxes: their figures where there are several, and their holes."""

    figures: ComparisonTable | None
    holes: tuple[HoleRow, ...]
    corners: tuple[str, ...] = CORNERS


def boxes_of(
    fronts: Sequence[Front], fittings: Mapping[str, Fitting], kitchen: Kitchen
) -> Boxes | None:
    """What is said of the fronts on boxes, where there are any."""
    boxed = [each for each in fronts if each.label in fittings]
    if not boxed:
        return None
    figures = [box_figures(each, fittings[each.label], kitchen) for each in boxed]
    holes = tuple(_holes(each, fittings[each.label], kitchen) for each in boxed)
    labels = [each.label for each in boxed]
    return Boxes(_beside(labels, figures) if len(boxed) > 1 else None, holes)


def doors_of(fronts: Sequence[Front], kitchen: Kitchen) -> ComparisonTable | None:
    """The figures of the hinged doors, and of other doors that have a knob."""
    doors = [each for each in fronts if each.hinge_centres or FRONT_KINDS[each.kind].swings]
    figures = [hinge_figures(each, kitchen) for each in doors]
    return _beside([each.label for each in doors], figures) if any(figures) else None


def _beside(labels: Sequence[str], figures: Sequence[Sequence[Line]]) -> ComparisonTable:
    named = [{line.name: line for line in each} for each in figures]
    names = dict.fromkeys(name for each in named for name in each)
    rows = (_row(name, tuple(each.get(name) for each in named)) for name in names)
    return ComparisonTable(tuple(labels), str(len(labels)), tuple(rows))


def _row(name: str, figures: tuple[Line | None, ...]) -> Row:
    if len(set(figures)) == 1:
        return Row(name, figures[:1])
    words = {each.more for each in figures if each is not None}
    shared = words.pop() if len(words) == 1 else ""
    if len(shared) < _WORTH_SHARING:
        return Row(name, figures)
    bare = tuple(None if each is None else replace(each, more="") for each in figures)
    return Row(name, bare, shared)


def _holes(front: Front, fitting: Fitting, kitchen: Kitchen) -> HoleRow:
    places = {each.corner: each for each in hole_places(front, fitting, kitchen.job.unit)}
    return HoleRow(front.label, tuple(places.get(corner) for corner in CORNERS))

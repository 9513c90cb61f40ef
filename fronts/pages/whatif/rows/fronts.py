"""Front by front: how each is, and how it would be."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from fronts.figures.differences import fact_words
from fronts.figures.fronts import made_from, what
from fronts.figures.laps import gaps_words, laps_words
from fronts.figures.sizes import size
from fronts.rules.differences import FrontDiffers, differences
from fronts.rules.lengths import Mm
from fronts.rules.results import Front, Schedule

NOTHING = "–"
SIZE = "Size"
SHOWN = frozenset({
    "kind", "width", "height", "thickness", "x", "y", "plane", "hinged", "build", "material",
    "door_on_hand", "trim", "hinge_words",
})  # fmt: skip
"""Facts that the columns tell; all others that differ are told beside them."""


@dataclass(frozen=True, slots=True)
class Cell:
    """What a column says of a front now, and what it would say."""

    head: str
    was: str
    now: str

    @property
    def differs(self) -> bool:
        """Whether it would be otherwise."""
        return self.was != self.now


@dataclass(frozen=True, slots=True)
class FrontChange:
    """A front that would be otherwise; `also` tells what no column does."""

    label: str
    what: str
    cells: tuple[Cell, ...]
    also: tuple[str, ...]


def front_changes(was: Schedule, now: Schedule, farthest: Mm) -> list[FrontChange]:
    """The fronts that would differ; a gap wider than `farthest` is none."""
    before = {front.label: front for front in was.fronts}
    after = {front.label: front for front in now.fronts}
    differ = {one.label: one for one in differences(was, now).fronts}
    changes = list(_changes(before, after, differ, farthest, was.job.unit))
    told = {SIZE, *(cell.head for one in changes for cell in one.cells if cell.differs)}
    return [_with_columns(one, told) for one in changes]


def _with_columns(front: FrontChange, told: set[str]) -> FrontChange:
    """A column in which no front differs is left out, but for the size."""
    return replace(front, cells=tuple(cell for cell in front.cells if cell.head in told))


def _changes(
    before: Mapping[str, Front],
    after: Mapping[str, Front],
    differ: Mapping[str, FrontDiffers],
    farthest: Mm,
    unit: str,
) -> Iterator[FrontChange]:
    for label in dict.fromkeys([*before, *after]):
        pair = [_said(front, farthest, unit) for front in (before.get(label), after.get(label))]
        cells = tuple(Cell(head, was, pair[1][head]) for head, was in pair[0].items())
        also = _also(differ[label], unit) if label in differ else ()
        if also or any(cell.differs for cell in cells):
            front = after.get(label) or before[label]
            yield FrontChange(label, what(front), cells, also)


def _said(front: Front | None, farthest: Mm, unit: str) -> dict[str, str]:
    """What the columns say of a front, or of none."""
    if front is None:
        return dict.fromkeys((SIZE, "Thick", "Laps", "Gaps", "Hinge", "Made from"), NOTHING)
    return {
        SIZE: size(unit, front.width, front.height),
        "Thick": size(unit, front.thickness),
        "Laps": laps_words(front, unit),
        "Gaps": gaps_words(front, unit, farthest) or NOTHING,
        "Hinge": front.hinge_words or NOTHING,
        "Made from": made_from(front, unit),
    }


def _also(front: FrontDiffers, unit: str) -> tuple[str, ...]:
    """What no column tells; that a knob moves with its front's edges goes without saying."""
    resized = not {"width", "height"}.isdisjoint(fact.name for fact in front.facts)
    told = SHOWN | {"knobs"} if resized else SHOWN
    return tuple(fact_words(fact, unit) for fact in front.facts if fact.name not in told)

"""A cabinet's fronts as its sheet lists them: what each is, and room for its gaps."""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.figures.fronts import FrontLine, front_line
from fronts.figures.sizes import on_one_line, signed
from fronts.figures.weights import needs_two_people, weight
from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.planned_gap import PlannedGap, planned_gap
from fronts.rules.results import Front


@dataclass(frozen=True, slots=True)
class FrontRow:
    """A front with its weight; `planned` gaps are left, right, top, bottom."""

    line: FrontLine
    weight: str
    two_people: bool
    planned: tuple[str, ...]


def front_row(front: Front, kitchen: Kitchen) -> FrontRow:
    """The front in the job's unit."""
    unit = kitchen.job.unit
    planned = (planned_gap(front, side, kitchen) for side in SIDES)
    return FrontRow(
        line=front_line(front, unit),
        weight=weight(front, unit),
        two_people=needs_two_people(front),
        planned=tuple(_planned(each, unit) for each in planned),
    )


def laps_of(fronts: Sequence[Front], unit: str) -> list[tuple[str, str]]:
    """How far fronts lap past their opening's left, right, top and bottom; same ones together."""
    whose: dict[str, list[str]] = {}
    for front in fronts:
        laps = " ".join(_lap(front.edges[side].overlay, unit) for side in SIDES)
        whose.setdefault(laps, []).append(front.label)
    return [(", ".join(labels), laps) for laps, labels in whose.items()]


def _lap(overlay: Mm | None, unit: str) -> str:
    return on_one_line("—" if overlay is None else signed(overlay, unit))


def _planned(planned: PlannedGap | None, unit: str) -> str:
    if planned is None:
        return ""
    return f"{'plan' if planned.to == 'gap' else 'to edge'} {show(planned.width, unit)}"

"""The fronts of a job as they are cut: each with its size, what it was cut to, and what to do."""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.figures.after_cut import cut_todo
from fronts.figures.sizes import size
from fronts.models import FrontCut
from fronts.rules.fits import hung_as
from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Front, Schedule
from fronts.rules.stopped_fronts import stopped_fronts


@dataclass(frozen=True, slots=True)
class FrontToCut:
    """A front: its size now; the size that it was cut to, "" where it was not; what to do.

    `is_as_found`: it exists already, and nothing is sawn off it.
    """

    label: str
    value: str
    size: str
    made_of: str
    cut: FrontCut | None
    cut_to: str
    todo: str
    stopped: bool
    is_as_found: bool


@dataclass(frozen=True, slots=True)
class CabinetToCut:
    """A cabinet's fronts."""

    label: str
    fronts: tuple[FrontToCut, ...]


def to_cut(
    kitchen: Kitchen, schedule: Schedule, cuts: Mapping[str, FrontCut]
) -> list[CabinetToCut]:
    """Every cabinet that has fronts, in the kitchen's order."""
    stopped = stopped_fronts(schedule)
    found = []
    for cabinet in kitchen.cabinets:
        fronts = schedule.fronts_of(cabinet.label)
        rows = [_row(front, kitchen, cuts.get(front.label), stopped) for front in fronts]
        if rows:
            found.append(CabinetToCut(cabinet.label, tuple(rows)))
    return found


def _row(
    front: Front, kitchen: Kitchen, cut: FrontCut | None, stopped: frozenset[str]
) -> FrontToCut:
    unit = kitchen.job.unit
    made = f"door {front.door_on_hand}" if front.door_on_hand else front.material or front.build
    return FrontToCut(
        label=front.label,
        value=f"{front.label} {hung_as(front)}",
        size=size(unit, front.width, front.height),
        made_of=made,
        cut=cut,
        cut_to="" if cut is None else size(unit, cut.width, cut.height),
        todo=cut_todo(cut, front, kitchen),
        stopped=front.label in stopped,
        is_as_found=not front.is_new and not any(front.trim[side] for side in SIDES),
    )

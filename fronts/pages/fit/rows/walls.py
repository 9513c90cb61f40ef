"""A kitchen as the installer goes through it: cabinets by wall, and what is fitted of each."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from fronts.figures.findings import findings_of, places_at
from fronts.figures.fronts import what
from fronts.figures.sizes import size
from fronts.models import FitRecord
from fronts.rules.fits import DONE, hangs_still
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.results import Front, Schedule


@dataclass(frozen=True, slots=True)
class CabinetRow:
    """One cabinet of the list; `number` is None where the cabinet has gone meanwhile."""

    label: str
    number: int | None
    about: str
    holds: str
    fronts: int
    fitted: int
    stops: int

    @property
    def state(self) -> str:
        """How far it is, in words."""
        if not self.fronts:
            return "nothing to fit"
        if self.fitted == self.fronts:
            return "fitted"
        return f"{self.fitted} of {self.fronts} fitted" if self.fitted else "not fitted"

    @property
    def is_fitted(self) -> bool:
        """Whether each of its fronts has been fitted."""
        return 0 < self.fronts == self.fitted


@dataclass(frozen=True, slots=True)
class Wall:
    """The cabinets of one wall, in the kitchen's order."""

    name: str
    cabinets: tuple[CabinetRow, ...]


def walls_of(
    kitchen: Kitchen,
    schedule: Schedule,
    numbers: Mapping[str, int],
    records: Mapping[str, FitRecord],
) -> list[Wall]:
    """The walls in the order in which the kitchen names them; `numbers` by cabinet label."""
    rows = {each.label: _row(each, schedule, numbers, records) for each in kitchen.cabinets}
    return [
        Wall(name, tuple(rows[each.label] for each in kitchen.cabinets if each.wall == name))
        for name in kitchen.wall_names
    ]


def _row(
    cabinet: Cabinet,
    schedule: Schedule,
    numbers: Mapping[str, int],
    records: Mapping[str, FitRecord],
) -> CabinetRow:
    fronts = schedule.fronts_of(cabinet.label)
    sizes = size(schedule.job.unit, cabinet.width, cabinet.height, cabinet.depth)
    return CabinetRow(
        label=cabinet.label,
        number=numbers.get(cabinet.label),
        about=f"{cabinet.kind} cabinet, {sizes}",
        holds="; ".join(_holds(fronts)),
        fronts=len(fronts),
        fitted=sum(_is_fitted(each, records) for each in fronts),
        stops=len(findings_of(schedule, places_at(cabinet, fronts)).stops),
    )


def _is_fitted(front: Front, records: Mapping[str, FitRecord]) -> bool:
    """Whether the front has been fitted to the end, and is still the front that was."""
    record = records.get(front.label)
    return record is not None and record.state == DONE and hangs_still(record.hung, front)


def _holds(fronts: Sequence[Front]) -> Iterator[str]:
    """`a door, hinged left`; the cabinet's own name is not said again."""
    for front in fronts:
        yield f"{front.label.removeprefix(f'{front.cabinet}.')} {what(front)}"

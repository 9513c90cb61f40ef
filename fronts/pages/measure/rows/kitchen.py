"""A kitchen's rows as a page shows them: every length already in the job's words."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.figures.sizes import size
from fronts.models import Cabinet
from fronts.pages.measure.rows.openings import OpeningRow, opening_row
from fronts.rules.kinds import CABINET_BUILDS, CABINET_KINDS, words_of
from fronts.rules.lengths import show
from fronts.rules.standards import EMPTY
from fronts.snapshot.grouping import grouped
from fronts.snapshot.standards import standard_of

_KIND: Mapping[str, str] = words_of(CABINET_KINDS)
_BUILD: Mapping[str, str] = words_of(CABINET_BUILDS)


@dataclass(frozen=True, slots=True)
class CabinetRow:
    """A cabinet with its openings."""

    id: int
    label: str
    wall: str
    what: str
    size: str
    place: str
    notes: tuple[str, ...]
    openings: tuple[OpeningRow, ...]

    @property
    def key(self) -> str:
        return f"cabinet-{self.id}"

    @property
    def new_key(self) -> str:
        """Where its next opening is entered."""
        return f"opening-new-{self.id}"


@dataclass(frozen=True, slots=True)
class WallRows:
    """The cabinets of one wall that follow each other in the job's order."""

    wall: str
    cabinets: tuple[CabinetRow, ...]

    @property
    def id(self) -> str:
        return wall_id(self.wall)


def wall_id(wall: str) -> str:
    """An id for a wall's part of the page that any selector can name."""
    return f"on-wall-{wall.encode().hex()}"


def wall_rows(cabinets: Sequence[Cabinet], unit: str) -> list[WallRows]:
    """The cabinets wall by wall, in the order in which the walls were begun."""
    return [
        WallRows(wall, tuple(cabinet_row(each, unit) for each in group))
        for wall, group in grouped(cabinets, "wall").items()
    ]


def cabinet_row(cabinet: Cabinet, unit: str) -> CabinetRow:
    """A cabinet whose openings and boxes are at hand."""
    place = "beside the one before"
    if cabinet.x is not None:
        place = f"{show(cabinet.x, unit)} from the left"
    if cabinet.y:
        place += f", {show(cabinet.y, unit)} up"
    return CabinetRow(
        id=cabinet.pk,
        label=cabinet.label,
        wall=cabinet.wall,
        what=f"{_KIND[cabinet.kind]}, {_BUILD[cabinet.build].lower()}",
        size=size(unit, cabinet.width, cabinet.height, cabinet.depth),
        place=place,
        notes=("own standard",) if standard_of(cabinet) != EMPTY else (),
        openings=tuple(opening_row(each, unit) for each in cabinet.openings.all()),
    )

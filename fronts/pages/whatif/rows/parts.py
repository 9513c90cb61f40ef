"""What would be cut otherwise: material by material, pieces and the sheets that they take."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

from fronts.figures.parts import material_name
from fronts.pages.whatif.rows.fronts import NOTHING, Cell
from fronts.rules.cutting_groups import CuttingGroup, cutting_groups
from fronts.rules.lengths import Mm
from fronts.rules.results import Schedule
from fronts.services.cutting_requests import fewest_usual


@dataclass(frozen=True, slots=True)
class PartsChange:
    """A material of which pieces differ: how many, and how much stock they take at least."""

    material: str
    pieces: Cell
    stock: Cell
    resized: int


def parts_changes(was: Schedule, now: Schedule) -> list[PartsChange]:
    """The materials of which any piece is otherwise."""
    return list(_changes(was, now))


def _changes(was: Schedule, now: Schedule) -> Iterator[PartsChange]:
    unit = was.job.unit
    before = {group.key: group for group in cutting_groups(was.parts)}
    after = {group.key: group for group in cutting_groups(now.parts)}
    for key in dict.fromkeys([*before, *after]):
        one, other = before.get(key), after.get(key)
        same, sizes = _sizes(one), _sizes(other)
        group = other or one
        if group is not None and same != sizes:
            yield PartsChange(
                material=material_name(group.material, unit, group.thickness, group.width),
                pieces=Cell("Pieces", str(same.total()), str(sizes.total())),
                stock=Cell("At least", _stock(one, unit), _stock(other, unit)),
                resized=(sizes - same).total(),
            )


def _sizes(group: CuttingGroup | None) -> Counter[tuple[Mm, Mm]]:
    """How many pieces of each size."""
    counted: Counter[tuple[Mm, Mm]] = Counter()
    for part in group.parts if group else ():
        counted[part.length, part.width] += part.count
    return counted


def _stock(group: CuttingGroup | None, unit: str) -> str:
    """`3 sheets`; nothing where a part is larger than the usual stock."""
    if group is None:
        return NOTHING
    fewest = fewest_usual(group, unit)
    kind = "stick" if group.sticks else "sheet"
    return NOTHING if fewest is None else f"{fewest} {kind}{'' if fewest == 1 else 's'}"

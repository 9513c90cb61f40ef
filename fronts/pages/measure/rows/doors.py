"""The doors on hand as rows of cells."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.facts.rows import columns_of
from fronts.models import DoorOnHand
from fronts.pages.measure.rows.cells import NOTHING_TYPED, Cell, Typed, seen_in
from fronts.rules.lengths import Mm, write
from fronts.snapshot.things import bare


@dataclass(frozen=True, slots=True)
class DoorCells:
    """A door: its cells, and what else is known of it."""

    key: str
    number: int
    label: str
    cells: tuple[Cell, ...]
    notes: tuple[str, ...]

    @property
    def seen(self) -> str:
        """What its cells show, for a browser without scripts."""
        return seen_in(self.cells)


def door_rows(
    doors: Sequence[DoorOnHand],
    columns: Mapping[str, str],
    unit: str,
    notes: Mapping[int, tuple[str, ...]],
    typed: Typed = NOTHING_TYPED,
) -> list[DoorCells]:
    """A row a door, a cell for each of these columns; `notes` by the doors' keys."""
    return [
        DoorCells(
            f"door-{door.pk}",
            door.pk,
            door.label,
            tuple(_cell(door, name, says, unit, typed) for name, says in columns.items()),
            notes[door.pk],
        )
        for door in doors
    ]


def _cell(door: DoorOnHand, name: str, says: str, unit: str, typed: Typed) -> Cell:
    key, value = f"door-{door.pk}-{name}", columns_of(bare(door))[name]
    held = write(value, unit) if isinstance(value, Mm) else str(value or "")
    return Cell(
        key=key,
        head=says,
        says=f"{says} of {door.label}",
        value=typed.values.get(key, held),
        held=held,
        pale="as the shop's" if name == "material" else "",
        fault=typed.faults.get(key, ""),
        is_name=name == "label",
    )

"""The cells of a wall's table: what each shows, or what was typed into it and what it wants."""

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

from fronts.rules.lengths import Mm, show, write

COLUMNS = ("label", "width", "height", "depth", "x", "y")
"""The facts that have a column of their own, in this order."""
SAYS: Mapping[str, str] = {
    "label": "Label", "width": "Width", "height": "Height", "depth": "Depth",
    "x": "From the left", "y": "Up",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Cell:
    """One cell; `pale` is what holds where it is empty, `key` the name that it is sent by."""

    key: str
    head: str
    says: str
    value: str
    pale: str = ""
    fault: str = ""
    is_name: bool = False
    held: str = ""
    """What the cell shows where nothing is typed in it."""


@dataclass(frozen=True, slots=True)
class Typed:
    """What was typed into cells and refused, and what is wrong with each, by their keys."""

    values: Mapping[str, str] = field(default_factory=dict)
    faults: Mapping[str, str] = field(default_factory=dict)


NOTHING_TYPED = Typed()


def cells_of(
    row: Any, key: str, unit: str, *, pale: Mapping[str, Mm], typed: Typed = NOTHING_TYPED
) -> tuple[Cell | None, ...]:
    """A row's cells, one a column; None where the row has no such fact."""
    return tuple(
        _cell(row, f"{key}-{name}", name, unit, pale.get(name), typed)
        if hasattr(row, name) else None
        for name in COLUMNS
    )  # fmt: skip


def seen_in(cells: Iterable[Cell | None]) -> str:
    """What cells show, as a browser without scripts sends it along."""
    return json.dumps({cell.key: cell.held for cell in cells if cell}, ensure_ascii=False)


def face_cell(key: str, label: str, words: str, typed: Typed) -> Cell:
    """What closes a cabinet, in words."""
    return Cell(
        key=key,
        head="Closed by",
        says=f"What closes {label}",
        value=typed.values.get(key, words),
        held=words,
        pale="" if words else "its openings are below",
        fault=typed.faults.get(key, ""),
    )


def _cell(row: Any, key: str, name: str, unit: str, pale: Mm | None, typed: Typed) -> Cell:
    held = getattr(row, name)
    shown = held if isinstance(held, str) else "" if held is None else write(held, unit)
    return Cell(
        key=key,
        head=SAYS[name],
        says=f"{SAYS[name]} of {row}" if name != "label" else f"Label of {row}",
        value=typed.values.get(key, shown),
        held=shown,
        pale="" if pale is None else show(pale, unit),
        fault=typed.faults.get(key, ""),
        is_name=name == "label",
    )

"""Rows for what a kitchen states, not yet saved: the way back from the snapshot."""

from collections.abc import Mapping, Sequence
from typing import Any, TypeVar

from django.db.models import Model

from fronts import models
from fronts.facts.rows import columns_of
from fronts.models.kept import Kept
from fronts.rules.fact_kinds import DoorName
from fronts.rules.facts import facts_of
from fronts.rules.kitchen import CHOOSE
from shopjobs.services.recording import deleted, made

Row = TypeVar("Row", bound=Kept)
Doors = Mapping[str, models.DoorOnHand]
NO_DOORS: Doors = {}


def row_for(
    table: type[Row], owner: Any, thing: Any, position: int | None = None, doors: Doors = NO_DOORS
) -> Row:
    """A row of a thing of its owner's, without what is in it.

    KeyError where a door that it names is none of `doors`.
    """
    place = {} if position is None else {"position": position}
    return table(**{table.owner: owner}, **place, **stated_columns(thing, doors))


def stated_columns(thing: Any, doors: Doors) -> dict[str, Any]:
    """What a thing states, by its columns: the door that it names too, found among `doors`."""
    columns = columns_of(thing)
    for fact in facts_of(type(thing)):
        if isinstance(fact.declared, DoorName):
            named = getattr(thing, fact.name)
            chosen = named == CHOOSE
            columns["choose"] = chosen
            columns["door"] = None if named is None or chosen else doors[named]
    return columns


def called(row: Model) -> str:
    """What a row is called within a sentence: `door on hand D1`, `box 1 of B1.a`."""
    name = str(row)
    if hasattr(row, "label"):
        return f"{row._meta.verbose_name} {name}"
    return name[:1].lower() + name[1:]


def rows_replaced(table: type[Kept], before: Sequence[Kept], rows: Sequence[Kept]) -> None:
    """Put rows in the place of those before, unless they say the same."""
    if [_said(row) for row in before] != [_said(row) for row in rows]:
        deleted(before)
        made(table, rows)


def _said(row: Kept) -> list[object]:
    columns = type(row)._meta.concrete_fields
    return [getattr(row, column.attname) for column in columns if not column.primary_key]

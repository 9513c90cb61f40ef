"""A whole kitchen's rows, checked one by one and saved all at once, a table at a time."""

from collections.abc import Iterable, Sequence
from typing import Any, NamedTuple

from django.core.exceptions import ValidationError
from django.db.models import Model

from fronts import models
from fronts.facts.rows import by_column
from fronts.models.kept import Kept, order_of, table_of
from fronts.rules.fact_kinds import Rows
from fronts.rules.facts import Fact, rows_of
from fronts.rules.kitchen import Kitchen
from fronts.rules.validity import faults_of, tidied_thing
from fronts.services.rows import NO_DOORS, Doors, called, row_for
from fronts.services.saving import checked_at
from shopjobs.models import Job
from shopjobs.services.recording import deleted, made


class Placed(NamedTuple):
    """A thing, whose it is, and its place there."""

    owner: Model
    thing: Any
    position: int


def kitchen_save(kitchen: Kitchen, job: Job) -> None:
    """Save everything of a kitchen that has a table of its own; doors come before their fronts."""
    doors: dict[str, models.DoorOnHand] = {}
    for fact, _ in rows_of(Kitchen):
        things = getattr(kitchen, fact.name)
        rows = things_save(fact, placed_in(job, things), doors)
        doors |= {row.label: row for row in rows if isinstance(row, models.DoorOnHand)}


def kitchen_empty(job: Job) -> None:
    """Delete everything of the job's kitchen that has a table of its own, fronts before doors."""
    for fact, _ in reversed(rows_of(Kitchen)):
        table = table_of(fact.kind)
        deleted(table._default_manager.filter(**{table.owner: job}))


def placed_in(owner: Model, things: Iterable[Any]) -> list[Placed]:
    """The things in their order, in one owner."""
    return [Placed(owner, thing, position) for position, thing in enumerate(things)]


def things_save(fact: Fact, placed: Sequence[Placed], doors: Doors = NO_DOORS) -> list[Kept]:
    """Save new things of one kind with all that is in them; `fact` declares them."""
    table, numbered = table_of(fact.kind), "position" in order_of(table_of(fact.kind))
    rows: list[Kept] = []
    for owner, thing, position in placed:
        rows.append(_checked_row(table, owner, thing, position if numbered else None, doors))
    _refuse_same_labels(rows, fact)
    made(table, rows)
    tidy = [tidied_thing(thing) for _, thing, _ in placed]
    for inner, declared in rows_of(fact.kind):
        inside = [
            within
            for row, thing in zip(rows, tidy, strict=True)
            for within in placed_in(row, held(thing, inner, declared))
        ]
        if inside:
            things_save(inner, inside, doors)
    return rows


def held(thing: Any, fact: Fact, declared: Rows) -> tuple[Any, ...]:
    """What a thing holds of one kind: as many as there are, or the one that there may be."""
    value = getattr(thing, fact.name)
    if declared.most > 1:
        return tuple(value)
    return () if value is None else (value,)


def _checked_row(
    table: type[Kept], owner: Model, thing: Any, position: int | None, doors: Doors
) -> Kept:
    try:
        row = row_for(table, owner, thing, position, doors)
    except KeyError as error:
        wrong = f"{called(owner)}: no door on hand is called {error.args[0]}"
        raise ValidationError(wrong) from error
    checked_at(row, called(row), by_column(table.facts, faults_of(thing)))
    return row


def _refuse_same_labels(rows: Sequence[Kept], fact: Fact) -> None:
    if not hasattr(table_of(fact.kind), "label"):
        return
    seen: set[str] = set()
    for row in rows:
        name = str(row)
        if name in seen:
            raise ValidationError(f"two {fact.declared.says} are called {name}")
        seen.add(name)

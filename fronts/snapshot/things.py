"""The things of a kitchen with all that is in them, read from their tables by the declaration."""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from functools import cache
from operator import attrgetter
from typing import Any, TypeVar

from django.db.models import Model, QuerySet, prefetch_related_objects

from fronts.facts.rows import from_row, from_values
from fronts.models.kept import Kept, order_of, table_of
from fronts.rules.fact_kinds import DoorName
from fronts.rules.facts import facts_of, rows_of
from fronts.rules.kitchen import CHOOSE

T = TypeVar("T")
_DOOR = "door"
"""The column of what names a door on hand."""


def things_of(kind: type[T], owner: Model) -> tuple[T, ...]:
    """Everything of a kind that is the owner's, with all that is in it: a query a table."""
    return tuple(_by_owner(kind, table_of(kind).owner, owner)[owner.pk])


def whole(row: Kept) -> Any:
    """The thing of one row, with all that is in it: a query a table."""
    return _thing(row, {fact.name: things_of(fact.kind, row) for fact, _ in rows_of(row.facts)})


def bare(row: Kept) -> Any:
    """The thing of one row, without what is in it."""
    return _thing(row, {})


def rows_at_hand(row: Kept) -> Any:
    """The thing of one row with what is in it, as deep as rows were fetched with it."""
    held = getattr(row, "_prefetched_objects_cache", {})
    inside = {
        fact.name: [rows_at_hand(each) for each in _fetched(row, fact.name, fact.kind)]
        for fact, _ in rows_of(row.facts)
        if fact.name in held
    }
    return _thing(row, inside)


def at_hand(row: Kept) -> Any:
    """The thing of one row with all that is in it, which is fetched only where it wasn't yet."""
    prefetch_related_objects([row], *_paths(row.facts))
    return _at_hand(row)


def _by_owner(kind: type, way: str, whose: Model) -> defaultdict[int, list[Any]]:
    """The things of a kind by the key of what each is in; `way` leads from them to `whose`."""
    table = table_of(kind)
    inside = {
        fact.name: _by_owner(fact.kind, f"{table_of(fact.kind).owner}__{way}", whose)
        for fact, _ in rows_of(kind)
    }
    names = _door_names(kind)
    key, things = f"{table.owner}_id", defaultdict[int, list[Any]](list)
    for row in _rows(kind).filter(**{way: whose}):
        own = {name: by_owner[row["id"]] for name, by_owner in inside.items()}
        door = {name: _door(row["choose"], row[f"{_DOOR}__label"]) for name in names}
        things[row[key]].append(from_values(kind, row, **door, **_beside(kind, own)))
    return things


@cache
def _rows(kind: type) -> QuerySet[Any, dict[str, Any]]:
    """All columns of a kind's table; to name forty anew takes as long as to ask for them."""
    table = table_of(kind)
    columns = [column.attname for column in table._meta.fields]
    door_label = [f"{_DOOR}__label"] if _door_names(kind) else []
    rows = table._default_manager.order_by(*order_of(table))
    named: QuerySet[Any, dict[str, Any]] = rows.values(*columns, *door_label)
    return named


def _thing(row: Any, inside: Mapping[str, Sequence[Any]]) -> Any:
    label = row.door and row.door.label if _door_names(row.facts) else None
    door = {name: _door(row.choose, label) for name in _door_names(row.facts)}
    return from_row(row.facts, row, **door, **_beside(row.facts, inside))


def _beside(kind: type, inside: Mapping[str, Sequence[Any]]) -> dict[str, Any]:
    """What a thing holds of other things: all of them, or the one that there may be."""
    beside: dict[str, Any] = {}
    for fact, declared in rows_of(kind):
        held = inside.get(fact.name, ())
        beside[fact.name] = tuple(held) if declared.most > 1 else next(iter(held), None)
    return beside


@cache
def _door_names(kind: type) -> tuple[str, ...]:
    return tuple(fact.name for fact in facts_of(kind) if isinstance(fact.declared, DoorName))


def _door(choose: bool, label: str | None) -> str | None:  # noqa: FBT001 - a column of the row
    return CHOOSE if choose else label


def _at_hand(row: Kept) -> Any:
    return _thing(row, {
        fact.name: [_at_hand(each) for each in _fetched(row, fact.name, fact.kind)]
        for fact, _ in rows_of(row.facts)
    })  # fmt: skip


def _fetched(row: Kept, name: str, kind: type) -> list[Kept]:
    """The rows in a row that were fetched with it, in their order."""
    related = getattr(row, name, None)
    if isinstance(related, Kept):
        return [related]
    rows: list[Kept] = [] if related is None else list(related.all())
    return sorted(rows, key=attrgetter(*order_of(table_of(kind))))


def _paths(kind: type, before: str = "") -> Iterator[str]:
    """What is fetched with a row of this kind: everything in it, and the doors that it names."""
    if _door_names(kind):
        yield f"{before}door"
    for fact, _ in rows_of(kind):
        yield f"{before}{fact.name}"
        yield from _paths(fact.kind, f"{before}{fact.name}__")

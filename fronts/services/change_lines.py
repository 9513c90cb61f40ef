"""What somebody changed of a kitchen, as one line: `B5.a: width 27 → 26 7/8`."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from django.apps import apps
from django.db.models import Field, ForeignKey

from fronts.facts.column_words import column_words, in_words
from fronts.models import BoxesMadeOf, DoorOnHand, JobStandard, ShopStandard, Stock
from fronts.models.kept import Kept
from fronts.rules.box_facts import BoxesMadeOf as BoxFacts
from fronts.rules.fact_kinds import Declared
from fronts.rules.job_facts import Stock as StockFacts
from fronts.rules.standard_keys import Standard
from shopjobs.row_changes import RowChange
from shopjobs.row_values import python_value

_KINDS: Mapping[type, type] = {
    BoxesMadeOf: BoxFacts,
    JobStandard: Standard,
    ShopStandard: Standard,
    Stock: StockFacts,
}
"""Tables that keep declared facts without being things of a kitchen."""
_BESIDE = {"choose": "whichever door on hand fits", "door": "door on hand"}
"""Columns that say together what one fact declares."""


def line_of(changes: Sequence[RowChange], unit: str) -> str:
    """Every fact that changed, thing by thing; "" where a thing was made or deleted."""
    if any(change.before is None or change.after is None for change in changes):
        return ""
    doors = doors_in(changes)
    lines = [_line(change, unit, doors) for change in changes]
    return "; ".join(line for line in lines if line)


def doors_in(changes: Sequence[RowChange]) -> dict[int, str]:
    """What the doors are called that came or went with the rows that name them, by their keys."""
    table = DoorOnHand._meta.label_lower
    return {change.key: change.name for change in changes if change.table == table}


def facts_that_changed(
    change: RowChange, unit: str, doors: Mapping[int, str]
) -> Iterator[tuple[str, str, str]]:
    """What each fact of a row is called, and what it was and is, in words.

    `doors` says what doors are called that may be there no more.
    """
    table = apps.get_model(change.table)
    kind = table.facts if issubclass(table, Kept) else _KINDS.get(table)
    words = {} if kind is None else column_words(kind)
    before, after = change.before or {}, change.after or {}
    for column in columns_that_changed(change):
        called, declared = words.get(column.name) or (_called(column), None)
        was, now = (_value(column, side, declared, unit, doors) for side in (before, after))
        yield called, was, now


def columns_that_changed(change: RowChange) -> "list[Field[Any, Any]]":
    """The columns of a row of which something is said before or after."""
    said = {**(change.before or {}), **(change.after or {})}
    columns = apps.get_model(change.table)._meta.concrete_fields
    return [column for column in columns if column.attname in said and _is_fact(column)]


def _is_fact(column: "Field[Any, Any]") -> bool:
    """Whose a thing is, and its place in a list, are told by where it stands."""
    return column.name != "position" and (
        not isinstance(column, ForeignKey) or column.related_model is DoorOnHand
    )


def _called(column: "Field[Any, Any]") -> str:
    return _BESIDE.get(column.name, str(column.verbose_name))


def _value(
    column: "Field[Any, Any]",
    side: Mapping[str, Any],
    declared: Declared | None,
    unit: str,
    doors: Mapping[int, str],
) -> str:
    value = side.get(column.attname)
    if value is None:
        return "nothing"
    if isinstance(column, ForeignKey):
        label = (
            doors.get(value)
            or DoorOnHand.objects.filter(pk=value).values_list("label", flat=True).first()
        )
        return label or "a door that is gone"
    return in_words(python_value(column, value), declared, unit)


def _line(change: RowChange, unit: str, doors: Mapping[int, str]) -> str:
    facts = [
        f"{called} {was} → {now}" for called, was, now in facts_that_changed(change, unit, doors)
    ]
    return f"{change.name}: {', '.join(facts)}" if facts and change.name else ""

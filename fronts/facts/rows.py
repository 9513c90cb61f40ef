"""Declared facts between a row of a table and the frozen thing: every one, by its column.

What has a table of its own (`Rows`) and which door a front names are not in the row; they
are given beside it.
"""

from collections.abc import Callable, Mapping
from functools import cache, partial
from typing import Any, TypeVar

from django.db.models import Model

from fronts.rules.fact_kinds import (
    DoorName,
    EachSide,
    Group,
    ItemCode,
    Lengths,
    Rows,
    Text,
    Thread,
    Word,
)
from fronts.rules.facts import Fact, facts_of, single_facts
from fronts.rules.kinds import SIDES
from fronts.rules.standard_keys import Sides

T = TypeVar("T")


def from_row(kind: type[T], row: Model, **beside: Any) -> T:
    """The thing that the row states; `beside` is what the row does not hold."""
    return kind(**_read(kind, partial(getattr, row), "", beside))


def from_values(kind: type[T], values: Mapping[str, Any], **beside: Any) -> T:
    """The thing that values by the names of columns state."""
    return kind(**_read(kind, values.__getitem__, "", beside))


def columns_of(thing: Any) -> dict[str, Any]:
    """What a thing states, by the names of its columns; every one of them."""
    return _written(type(thing), thing, "")


@cache
def column_names(kind: type) -> Mapping[str, str]:
    """The column of each single fact of a kind, by the fact's dotted path."""
    return {path: name for name, path, _ in single_facts(kind)}


def by_column(kind: type, faults: Mapping[str, str], within: str = "") -> dict[str, str]:
    """Faults at dotted paths, by the columns of these facts; what has none keeps its path.

    A group's fault stands at its first column. `within` begins the paths, where the faults are
    those of a group: `measured.`.
    """
    return {_column_at(kind, f"{within}{path}", path): fault for path, fault in faults.items()}


def _column_at(kind: type, path: str, otherwise: str) -> str:
    columns = column_names(kind)
    inside = (column for name, column in columns.items() if name.startswith(f"{path}."))
    return columns.get(path) or next(inside, otherwise)


def _read(
    kind: type, value_of: Callable[[str], Any], prefix: str, beside: Mapping[str, Any]
) -> dict[str, Any]:
    stated: dict[str, Any] = {}
    for fact in facts_of(kind):
        if fact.name in beside:
            stated[fact.name] = beside[fact.name]
            continue
        match fact.declared:
            case Rows() | DoorName():
                continue
            case Group(prefix=own):
                stated[fact.name] = _group(fact, value_of, f"{prefix}{own}")
            case EachSide(prefix=own):
                sides = [value_of(f"{prefix}{own}{side}") for side in SIDES]
                missing = any(said in (None, "") for said in sides)
                stated[fact.name] = None if missing else Sides(*sides)
            case _:
                stated[fact.name] = _plain(fact, value_of(f"{prefix}{fact.name}"))
    return stated


def _group(fact: Fact, value_of: Callable[[str], Any], prefix: str) -> Any:
    """A group is there once all of it is there that must be."""
    stated = _read(fact.type, value_of, prefix, {})
    needed = (one.name for one in facts_of(fact.type) if not one.optional and not one.has_default)
    if any(stated[name] in (None, "") for name in needed):
        return None
    group = fact.type(**stated)
    return fact.default if group == fact.default else group


def _plain(fact: Fact, value: Any) -> Any:
    match fact.declared:
        case Word() | Text() | Thread() | ItemCode() if value == "":
            return None if fact.optional else ""
        case Lengths():
            return tuple(value)
    if value is None and not fact.optional and fact.has_default:
        return fact.default
    return value


def _written(kind: type, thing: Any, prefix: str) -> dict[str, Any]:
    columns: dict[str, Any] = {}
    for fact in facts_of(kind):
        value = None if thing is None else getattr(thing, fact.name)
        match fact.declared:
            case Rows() | DoorName():
                continue
            case Group(prefix=own):
                columns |= _written(fact.type, value, f"{prefix}{own}")
            case EachSide(prefix=own, side=one):
                nothing = "" if isinstance(one, ItemCode) else None
                for side in SIDES:
                    columns[f"{prefix}{own}{side}"] = nothing if value is None else value[side]
            case Word() | Text() | Thread() | ItemCode():
                columns[f"{prefix}{fact.name}"] = value or ""
            case _:
                columns[f"{prefix}{fact.name}"] = value
    return columns

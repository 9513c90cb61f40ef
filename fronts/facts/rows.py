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
_Values = Callable[[str], Any]
"""What a column of this name holds."""
_Reader = Callable[[Fact, _Values, str], Any]

NOTHING_SAID: tuple[Any, ...] = (None, "")
"""What a column holds that says nothing."""


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


def _read(kind: type, value_of: _Values, prefix: str, beside: Mapping[str, Any]) -> dict[str, Any]:
    return {**beside} | {
        fact.name: read(fact, value_of, prefix)
        for fact, read in _ways_to_read(kind)
        if fact.name not in beside
    }


@cache
def _ways_to_read(kind: type) -> tuple[tuple[Fact, _Reader], ...]:
    """The facts of a kind that stand in its row, and how each is read; chosen once."""
    return tuple(
        (fact, _way_to_read(fact))
        for fact in facts_of(kind)
        if not isinstance(fact.declared, Rows | DoorName)
    )


def _way_to_read(fact: Fact) -> _Reader:
    match fact.declared:
        case Group(prefix=own):
            return partial(_group, own)
        case EachSide(prefix=own):
            return partial(_sides, own)
        case Word() | Text() | Thread() | ItemCode():
            return _words
        case Lengths():
            return _lengths
    return _maybe if fact.optional or not fact.has_default else _default


def _words(fact: Fact, value_of: _Values, prefix: str) -> Any:
    value = value_of(prefix + fact.name)
    if value == "":
        return None if fact.optional else ""
    return _default(fact, value_of, prefix)


def _lengths(fact: Fact, value_of: _Values, prefix: str) -> Any:
    return tuple(value_of(prefix + fact.name))


def _maybe(fact: Fact, value_of: _Values, prefix: str) -> Any:
    return value_of(prefix + fact.name)


def _default(fact: Fact, value_of: _Values, prefix: str) -> Any:
    """What is said; where nothing is, what then holds."""
    value = value_of(prefix + fact.name)
    unsaid = value is None and not fact.optional and fact.has_default
    return fact.default if unsaid else value


def _sides(own: str, _: Fact, value_of: _Values, prefix: str) -> Any:
    sides = [value_of(f"{prefix}{own}{side}") for side in SIDES]
    return None if any(said in NOTHING_SAID for said in sides) else Sides(*sides)


def _group(own: str, fact: Fact, value_of: _Values, prefix: str) -> Any:
    """A group is there once all of it is there that must be."""
    prefix += own
    if all(value_of(prefix + name) in NOTHING_SAID for name in _columns_in(fact.type)):
        return _unsaid(fact)
    return _stated(fact, value_of, prefix)


@cache
def _columns_in(kind: type) -> tuple[str, ...]:
    return tuple(column_names(kind).values())


@cache
def _unsaid(fact: Fact) -> Any:
    """What a group is of which no column says anything."""
    return _stated(fact, lambda _: None, "")


def _stated(fact: Fact, value_of: _Values, prefix: str) -> Any:
    stated = _read(fact.type, value_of, prefix, {})
    needed = (one.name for one in facts_of(fact.type) if not one.optional and not one.has_default)
    if any(stated[name] in NOTHING_SAID for name in needed):
        return None
    group = fact.type(**stated)
    return fact.default if group == fact.default else group


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

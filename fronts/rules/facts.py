"""How a fact of a kitchen is declared: once, with its words and its limits.

A fact is a field of a frozen dataclass whose type is annotated with what it is like:
`rise: Annotated[Mm, Length("bottom above the opening's bottom", zero=True)]`. What carries
facts (columns, forms, files, history) reads the declaration with `facts_of`; a field that
is not declared is refused there, so that nothing can be carried by half.
"""

from collections.abc import Iterator, Mapping
from dataclasses import MISSING, dataclass, fields, replace
from functools import cache
from types import UnionType
from typing import Annotated, Any, TypeVar, Union, get_args, get_origin, get_type_hints

from fronts.rules.fact_kinds import Declared, EachSide, Group, Length, Rows
from fronts.rules.kinds import SIDES
from fronts.rules.lengths import Mm

_NOTHING = object()


@dataclass(frozen=True, slots=True)
class Fact:
    """One declared fact of a thing: its name, what it is like, and whether it may be left out."""

    name: str
    declared: Declared
    type: Any
    optional: bool
    default: Any

    @property
    def kind(self) -> Any:
        """The kind of thing of which a fact with a table of its own has rows."""
        several = get_args(self.type)
        return several[0] if several else self.type

    @property
    def has_default(self) -> bool:
        """Whether something holds where nobody says."""
        return self.default is not _NOTHING


def facts_of(kind: type) -> tuple[Fact, ...]:
    """Every fact of a kind of thing, in order; TypeError where a field is not declared."""
    return _facts(kind)


@cache
def _facts(kind: Any) -> tuple[Fact, ...]:
    hints = get_type_hints(kind, include_extras=True)
    return tuple(_fact(kind, one.name, hints[one.name], _default(one)) for one in fields(kind))


@cache
def rows_of(kind: type) -> tuple[tuple[Fact, Rows], ...]:
    """The facts of a kind that have a table of their own, and how they are declared."""
    facts = facts_of(kind)
    return tuple((fact, fact.declared) for fact in facts if isinstance(fact.declared, Rows))


def single_fact(kind: type, path: str) -> Fact:
    """The fact at a dotted path: `single_fact(Opening, "measured.width_top")`."""
    return _along(kind, path)[-1]


def may_be_missing(kind: type, path: str) -> bool:
    """Whether nothing may stand at the path: the fact, or the group that it is in, is optional."""
    return any(fact.optional for fact in _along(kind, path))


def _along(kind: type, path: str) -> list[Fact]:
    facts: list[Fact] = []
    for name in path.split("."):
        if facts and isinstance(facts[-1].declared, EachSide):
            facts.append(_side_of(facts[-1].declared, name))
            continue
        fact = next((each for each in facts_of(kind) if each.name == name), None)
        if fact is None:
            raise TypeError(f"{kind.__name__} has no fact {name}")
        facts.append(fact)
        kind = fact.type
    return facts


def _side_of(declared: EachSide, side: str) -> Fact:
    kind = Mm if isinstance(declared.side, Length) else str
    return Fact(side, replace(declared.side, says=side), kind, optional=False, default=_NOTHING)


def single_facts(kind: type, prefix: str = "", path: str = "") -> Iterator[tuple[str, str, Fact]]:
    """Every single fact of a kind, those of its groups too: column name, dotted path, fact."""
    for fact in facts_of(kind):
        where = f"{path}{fact.name}"
        match fact.declared:
            case Group(prefix=own):
                yield from single_facts(fact.type, f"{prefix}{own}", f"{where}.")
            case EachSide(prefix=own):
                for side in SIDES:
                    yield (
                        f"{prefix}{own}{side}", f"{where}.{side}",
                        _side_of(fact.declared, side),
                    )  # fmt: skip
            case Rows():
                continue
            case _:
                yield f"{prefix}{fact.name}", where, fact


def _fact(kind: type, name: str, hint: Any, default: Any) -> Fact:
    if get_origin(hint) is not Annotated:
        raise TypeError(f"{kind.__name__}.{name} is not declared; annotate it with what it is")
    held, *declared = get_args(hint)
    if isinstance(held, TypeVar):  # a key of the standard: each level may leave it out
        return Fact(name, declared[0], Mm, optional=True, default=default)
    optional = get_origin(held) in (Union, UnionType) and type(None) in get_args(held)
    if optional:
        held = next(each for each in get_args(held) if each is not type(None))
    return Fact(name, declared[0], held, optional, default)


def _default(field: Any) -> Any:
    if field.default is not MISSING:
        return field.default
    return field.default_factory() if field.default_factory is not MISSING else _NOTHING


def incomplete(
    kind: type, values: Mapping[str, Any], prefix: str = ""
) -> Iterator[tuple[str, str]]:
    """The columns that are missing of a group of which some are given, and what to do about it."""
    for fact in facts_of(kind):
        match fact.declared:
            case EachSide(says=says, prefix=own):
                needed = [f"{prefix}{own}{side}" for side in SIDES]
                yield from _missing(needed, needed, values, says)
            case Group(says=says, prefix=own) if fact.optional:
                inside = list(single_facts(fact.type, f"{prefix}{own}"))
                names = [name for name, _, _ in inside]
                needed = [name for name, _, single in inside if not single.has_default]
                yield from _missing(names, needed, values, says)
            case Group(prefix=own):
                yield from incomplete(fact.type, values, f"{prefix}{own}")


def _missing(
    names: list[str], needed: list[str], values: Mapping[str, Any], says: str
) -> Iterator[tuple[str, str]]:
    if any(values.get(name) not in (None, "") for name in names):
        for name in needed:
            if values.get(name) in (None, ""):
                yield name, f"give every part of the {says}, or none of it"

"""The columns in which declared facts are kept: their limits and defaults are the declaration's.

Each function takes the kind of thing and the path of the fact, such as
`size(Opening, "width")` or `maybe_size(Opening, "measured.width_top")`.
"""

from typing import Any

from django.core.validators import MaxValueValidator, MinValueValidator
from django.db import models

from fronts.facts.lengths import MmField, MmListField, NumberColumn
from fronts.facts.words import LabelField, WordsField
from fronts.rules.fact_kinds import (
    Count,
    ItemCode,
    Label,
    Length,
    Lengths,
    Number,
    Text,
    Thread,
    Word,
    YesNo,
)
from fronts.rules.facts import Fact, may_be_missing, single_fact, single_facts
from fronts.rules.lengths import Mm
from fronts.rules.limits import LONGEST_THREAD, LONGEST_WORD

MOST_IN_SMALL = 32_767
"""What PostgreSQL's `smallint` holds at most."""


def of_all(kind: type) -> "dict[str, models.Field[Any, Any]]":
    """A column for every single fact of a kind of thing, by its name."""
    return {name: _column(kind, path, fact) for name, path, fact in single_facts(kind)}


def size(kind: type, path: str) -> "MmField[Mm | int, Mm]":
    """A length that is always there."""
    fact = single_fact(kind, path)
    _must(not may_be_missing(kind, path), kind, path, "is never missing")
    return MmField(**_length(fact), **_default(fact))


def maybe_size(kind: type, path: str) -> "MmField[Mm | int | None, Mm | None]":
    """A length that may be left out."""
    _must(may_be_missing(kind, path), kind, path, "may be missing")
    return MmField(null=True, blank=True, **_length(single_fact(kind, path)))


def sizes(kind: type, path: str) -> "MmListField[Any, tuple[Mm, ...]]":
    """Several lengths in their order."""
    match single_fact(kind, path).declared:
        case Lengths(zero=zero):
            return MmListField(zero=zero)
    raise TypeError(f"{kind.__name__}.{path} is not several lengths")


def number(kind: type, path: str) -> "NumberColumn[Any, Any]":
    """An exact number; without one where it may be missing."""
    fact = single_fact(kind, path)
    match fact.declared:
        case Number(least=least):
            return NumberColumn(
                signed=least < 0, zero=least <= 0, **_missing(kind, path), **_default(fact)
            )
    raise TypeError(f"{kind.__name__}.{path} is no number")


def flag(kind: type, path: str) -> "models.BooleanField[bool, bool]":
    """Something that is so or is not."""
    fact = single_fact(kind, path)
    _must(isinstance(fact.declared, YesNo), kind, path, "is so or is not")
    return models.BooleanField(**_default(fact))


def word(kind: type, path: str) -> "models.CharField[str, str]":
    """One word out of a few; "" where it may be left out."""
    fact = single_fact(kind, path)
    match fact.declared:
        case Word(words=words):
            return models.CharField(
                max_length=LONGEST_WORD,
                blank=may_be_missing(kind, path),
                choices=[(each, each) for each in words],
                **_default(fact),
            )
    raise TypeError(f"{kind.__name__}.{path} is no word out of a few")


def count(kind: type, path: str) -> "models.IntegerField[int, int]":
    """A whole number within its limits."""
    fact = single_fact(kind, path)
    match fact.declared:
        case Count(least=least, most=most):
            whole = (
                models.PositiveSmallIntegerField
                if most <= MOST_IN_SMALL
                else models.PositiveIntegerField
            )
            return whole(
                validators=[MinValueValidator(least), MaxValueValidator(most)],
                **_missing(kind, path),
                **_default(fact),
            )
    raise TypeError(f"{kind.__name__}.{path} is no count")


def words(kind: type, path: str) -> "WordsField[str, str]":
    """A short text of people's own, a label where it is one."""
    fact = single_fact(kind, path)
    match fact.declared:
        case Label(most=most):
            return LabelField(max_length=most, **_default(fact))
        case Text(most=most) | ItemCode(most=most):
            return WordsField(max_length=most, blank=True)
        case Thread():
            return WordsField(max_length=LONGEST_THREAD, blank=fact.optional, **_default(fact))
    raise TypeError(f"{kind.__name__}.{path} is no text")


def _missing(kind: type, path: str) -> dict[str, Any]:
    return {"null": True, "blank": True} if may_be_missing(kind, path) else {}


def _column(kind: type, path: str, fact: Fact) -> "models.Field[Any, Any]":
    match fact.declared:
        case Length() if may_be_missing(kind, path):
            return maybe_size(kind, path)
        case Length():
            return size(kind, path)
        case Lengths():
            return sizes(kind, path)
        case Number():
            return number(kind, path)
        case YesNo():
            return flag(kind, path)
        case Word():
            return word(kind, path)
        case Count():
            return count(kind, path)
        case _:
            return words(kind, path)


def _length(fact: Fact) -> dict[str, Any]:
    if not isinstance(fact.declared, Length):
        raise TypeError(f"{fact.name} is no length")
    return {"zero": fact.declared.zero, "signed": fact.declared.signed}


def _default(fact: Fact) -> dict[str, Any]:
    return {"default": fact.default} if fact.has_default and fact.default is not None else {}


def _must(holds: bool, kind: type, path: str, what: str) -> None:  # noqa: FBT001
    if not holds:
        raise TypeError(f"not so: {kind.__name__}.{path} {what}")

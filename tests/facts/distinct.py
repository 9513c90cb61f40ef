"""Things with a value of their own in every single fact, found by introspection.

A fact that is declared today is covered today: nothing here names one, but where the facts
of one thing must fit each other.
"""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from fractions import Fraction
from itertools import count
from typing import Any, TypeVar

from fronts.rules.fact_kinds import (
    Count,
    Day,
    DoorName,
    EachSide,
    Group,
    ItemCode,
    Label,
    Length,
    Lengths,
    Number,
    Rows,
    Text,
    Thread,
    Word,
    YesNo,
)
from fronts.rules.facts import Fact, facts_of
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Sides, Standard

T = TypeVar("T")
DOOR = "D1"
_SINGLE: tuple[type, ...] = (
    Count, Day, DoorName, ItemCode, Label, Length, Lengths, Number, Text, Thread, Word, YesNo,
)  # fmt: skip


class Distinct:
    """Makes things whose every fact has a value that no other has and that is no default."""

    def __init__(self) -> None:
        self._numbers = count(1)

    def thing(self, kind: type[T], **said: Any) -> T:
        """A thing of this kind; `said` are facts that must fit something else."""
        own = {fact.name: self._value(fact) for fact in facts_of(kind) if fact.name not in said}
        return kind(**own, **said)

    def standard(self, lap: str) -> Standard:
        """A level that says everything; overlay or reveal, since it says one of them only."""
        whole = self.thing(Standard)
        return replace(whole, **{"overlay": None, "reveal": None, lap: getattr(whole, lap)})

    def _value(self, fact: Fact) -> Any:
        match fact.declared:
            case EachSide(side=ItemCode()):
                return Sides(*(f"{fact.name} {next(self._numbers)}" for _ in range(4)))
            case EachSide():
                return Sides(*(self._length() for _ in range(4)))
            case Group() if fact.type is Standard:
                return self.standard("overlay")
            case Group() | Rows(most=1):
                return self.thing(fact.type)
            case Rows():
                return (self.thing(fact.kind), self.thing(fact.kind))
            case Lengths():
                return (self._length(), self._length())
            case _:
                return self._single(fact)

    def _single(self, fact: Fact) -> Any:
        match fact.declared:
            case Word(words=words):
                usual = fact.default if fact.has_default else next(iter(words))
                return next(word for word in reversed(words) if word != usual)
            case Count(least=least, most=most):
                return least + 1 + next(self._numbers) % (most - least)
            case Length():
                return self._length()
            case Number(least=least):
                return least + Fraction(next(self._numbers), 8)
            case YesNo():
                return not fact.default
            case Thread():
                return "M4"
            case DoorName():
                return DOOR
            case Day():
                return date(2027, 1, next(self._numbers) % 28 + 1)
            case _:
                return f"{fact.name} {next(self._numbers)}"

    def _length(self) -> Mm:
        """On the mark of a rule, and unlike any before it."""
        return Fraction(254, 10) / 32 * (16 + next(self._numbers))


def paths(thing: Any, before: str = "") -> Iterator[str]:
    """The path of every single fact within a thing, its rows' facts too."""
    for fact in facts_of(type(thing)):
        value, path = getattr(thing, fact.name), f"{before}{fact.name}"
        if isinstance(fact.declared, _SINGLE):
            yield path
        elif isinstance(value, tuple):
            for index, one in enumerate(value):
                yield from paths(one, f"{path}.{index}.")
        elif isinstance(value, Sides):
            yield from (f"{path}.{side}" for side in ("left", "right", "top", "bottom"))
        elif value is not None:
            yield from paths(value, f"{path}.")


def at(thing: Any, path: str) -> Any:
    """What stands at a path."""
    for name in path.split("."):
        thing = thing[int(name)] if isinstance(thing, tuple) else getattr(thing, name)
    return thing


def changed(thing: Any, path: str, value: Any) -> Any:
    """The thing with another value at the path."""
    name, _, rest = path.partition(".")
    if isinstance(thing, tuple):
        index = int(name)
        new = changed(thing[index], rest, value) if rest else value
        return (*thing[:index], new, *thing[index + 1 :])
    new = changed(getattr(thing, name), rest, value) if rest else value
    return replace(thing, **{name: new})

"""What differs between two states of one thing, fact by fact, in the words of the declaration."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import zip_longest
from typing import Any

from fronts.rules.fact_kinds import EachSide, Group, Rows
from fronts.rules.facts import Fact, facts_of
from fronts.rules.kinds import SIDES


@dataclass(frozen=True, slots=True)
class Change:
    """One fact that is not as it was: what people call it, and its values then and now."""

    says: str
    was: Any
    now: Any


def changes(was: Any, now: Any) -> Iterator[Change]:
    """Every fact that differs between two things of one kind."""
    for fact in facts_of(type(was)):
        yield from _of_fact(fact, getattr(was, fact.name), getattr(now, fact.name))


def _of_fact(fact: Fact, was: Any, now: Any) -> Iterator[Change]:
    if was == now:
        return
    says = fact.declared.says
    if was is None or now is None:
        yield Change(says, was, now)
        return
    match fact.declared:
        case EachSide():
            for side in SIDES:
                if was[side] != now[side]:
                    yield Change(f"{says} {side}", was[side], now[side])
        case Group() | Rows(most=1):
            yield from (_within(says, change) for change in changes(was, now))
        case Rows(one=one):
            yield from _of_rows(one, was, now)
        case _:
            yield Change(says, was, now)


def _of_rows(says: str, was: tuple[Any, ...], now: tuple[Any, ...]) -> Iterator[Change]:
    for number, (one, other) in enumerate(zip_longest(was, now), start=1):
        if one is None or other is None:
            yield Change(f"{says} {number}", one, other)
        else:
            for change in changes(one, other):
                yield _within(f"{says} {number}", change)


def _within(says: str, change: Change) -> Change:
    return Change(f"{says}, {change.says}", change.was, change.now)

"""What people call the columns of a kind of thing, and how they read what stands in them."""

from collections.abc import Iterator, Mapping
from fractions import Fraction
from functools import cache
from typing import Any

from fronts.rules.fact_kinds import Declared, EachSide, Group, Number, Rows, Word
from fronts.rules.facts import facts_of
from fronts.rules.kinds import SIDES
from fronts.rules.lengths import exact, show
from fronts.rules.standard_keys import Standard


@cache
def column_words(kind: Any) -> Mapping[str, tuple[str, Declared]]:
    """What each single fact of a kind is called, and its declaration, by its column."""
    return dict(_words(kind, "", ""))


def _words(kind: type, prefix: str, within: str) -> Iterator[tuple[str, tuple[str, Declared]]]:
    for fact in facts_of(kind):
        says = f"{within}{fact.declared.says}"
        match fact.declared:
            case Group(prefix=own):
                # What a level says of the standard is said by its own words alone.
                inside = "" if fact.type is Standard else f"{says}, "
                yield from _words(fact.type, f"{prefix}{own}", inside)
            case EachSide(prefix=own, side=side):
                for each in SIDES:
                    yield f"{prefix}{own}{each}", (f"{says} {each}", side)
            case Rows():
                continue
            case declared:
                yield f"{prefix}{fact.name}", (says, declared)


def in_words(value: Any, declared: Declared | None, unit: str) -> str:
    """A value as a person reads it in a job of this unit."""
    if value is None or value in ("", ()):
        return "nothing"
    match value:
        case bool():
            return "yes" if value else "no"
        case Fraction() if isinstance(declared, Number):
            return f"{exact(value)} {declared.unit}"
        case Fraction():
            return show(value, unit)
        case tuple():
            return ", ".join(in_words(each, None, unit) for each in value)
    if isinstance(declared, Word):
        return declared.words.get(value, str(value))
    return str(value)

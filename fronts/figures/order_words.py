"""What has changed of a line of the order, in words."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from fronts.rules.finding_words import FindingWords
from fronts.rules.kinds import Unit
from fronts.rules.lengths import Mm, show
from fronts.rules.order_changes import (
    AmountChange,
    FactChange,
    LineChange,
    SparesChange,
    UnitChange,
)
from fronts.rules.order_facts import FRONT_FACTS, FactKind

_MOST_NAMED = 6


def change_words(changes: Iterable[LineChange], unit: Unit, counted: str = "") -> list[str]:
    """`order 2 more for B5.a.1`, `another hinge for B1.a: 1/2 → 3/8 overlay`.

    `unit` is the job's; `counted` is what the line is counted in, "" where pieces.
    """
    return [words for change in changes for words in _words(change, unit, counted)]


def _words(change: LineChange, unit: Unit, counted: str) -> Iterator[str]:
    match change:
        case AmountChange():
            yield _amount(change, counted)
        case SparesChange(was, now):
            yield f"spares {was} → {now}"
        case UnitChange(was, now):
            yield f"counted in {now or 'pieces'}, no more in {was or 'pieces'}"
        case FactChange(fact, was, now, fronts):
            kind = FRONT_FACTS[fact]
            figures = f"{_figure(kind, was, unit)} → {_figure(kind, now, unit)} {kind.says}"
            yield f"another {kind.of} for {_named(fronts)}: {figures.strip()}"


def _amount(change: AmountChange, counted: str) -> str:
    by = change.now - change.was
    if not change.was:
        return f"order {_so_much(change.now, counted)} for {_named(change.more)}"
    if not change.now:
        return f"{_so_much(change.was, counted)} over: no longer needed"
    if by > 0:
        more = f"order {_so_much(by, counted)} more for {_named(change.more)}"
        return f"{more}, fewer for {_named(change.fewer)}" if change.fewer else more
    if by < 0:
        over = f"{_so_much(-by, counted)} over: fewer for {_named(change.fewer)}"
        return f"{over}, more for {_named(change.more)}" if change.more else over
    if change.more and change.fewer:
        return f"as many, for {_named(change.more)} in place of {_named(change.fewer)}"
    return f"as many, otherwise for {_named(change.more or change.fewer)}"


def _so_much(amount: int, counted: str) -> str:
    return f"{amount} {counted}".strip()


def _named(labels: Sequence[str]) -> str:
    """The fronts by their labels; of many the first, and how many more."""
    if len(labels) <= _MOST_NAMED:
        return ", ".join(labels)
    return f"{', '.join(labels[:_MOST_NAMED])} and {len(labels) - _MOST_NAMED} more"


def _figure(kind: FactKind, text: str, unit: Unit) -> str:
    if not text:
        return "none"
    match kind.figure:
        case "length":
            return show(Mm(text), unit)
        case "metric":
            return show(Mm(text), "mm")
        case "weight":
            return FindingWords(unit).say_weight(Fraction(text))
    return text

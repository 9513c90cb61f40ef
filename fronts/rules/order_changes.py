"""What differs between a line of the order as it was checked or approved, and as it is now."""

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.order_facts import FRONT_FACTS, LineFacts


@dataclass(frozen=True, slots=True)
class AmountChange:
    """Another number is needed; the fronts that take more by now, and those that take fewer."""

    was: int
    now: int
    more: tuple[str, ...]
    fewer: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SparesChange:
    """Other spares are ordered beside as many."""

    was: int
    now: int


@dataclass(frozen=True, slots=True)
class UnitChange:
    """It is counted in something else: in metres instead of feet."""

    was: str
    now: str


@dataclass(frozen=True, slots=True)
class FactChange:
    """What the item was picked by is another at these fronts; "" where nothing is known of it."""

    fact: str
    was: str
    now: str
    fronts: tuple[str, ...]


LineChange = AmountChange | SparesChange | UnitChange | FactChange


def line_changes(then: LineFacts, now: LineFacts) -> tuple[LineChange, ...]:
    """Everything that differs, how many first."""
    if then == now:
        return ()  # As most lines are, of which there are many fronts to go through.
    return (*_amounts(then, now), *_facts(then, now))


def _amounts(then: LineFacts, now: LineFacts) -> Iterator[LineChange]:
    labels = dict.fromkeys([*now.fronts, *then.fronts])
    by = {label: now.share(label) - then.share(label) for label in labels}
    more = tuple(label for label, more in by.items() if more > Fraction(0))
    fewer = tuple(label for label, more in by.items() if more < Fraction(0))
    if then.unit != now.unit and then.need and now.need:
        yield UnitChange(then.unit, now.unit)
    if then.need != now.need or more or fewer:
        yield AmountChange(then.need, now.need, more, fewer)
    if then.spares != now.spares:
        yield SparesChange(then.spares, now.spares)


def _facts(then: LineFacts, now: LineFacts) -> Iterator[FactChange]:
    for fact in FRONT_FACTS:
        fronts: dict[tuple[str, str], list[str]] = defaultdict(list)
        for label, held in now.fronts.items():
            if label in then.fronts:
                was, is_now = then.fronts[label].get(fact, ""), held.get(fact, "")
                if was != is_now:
                    fronts[was, is_now].append(label)
        for (was, is_now), labels in fronts.items():
            yield FactChange(fact, was, is_now, tuple(labels))

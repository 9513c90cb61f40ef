"""What a sheet shows as named figures, and which of them are otherwise by now."""

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import TypeAlias

Key: TypeAlias = tuple[str, str]


@dataclass(frozen=True, slots=True)
class ShownFigure:
    """A figure in the words of its sheet: what it is `of`, its name, and what it says.

    Several may have one name: steps of one order of work, findings about one cabinet.
    """

    of: str
    name: str
    says: str

    @property
    def key(self) -> Key:
        """By which it is found again."""
        return self.of, self.name


@dataclass(frozen=True, slots=True)
class FigureChanged:
    """A figure that says otherwise; "" was where it came, "" now where it went."""

    of: str
    name: str
    was: str
    now: str


def changed_figures(
    was: Iterable[ShownFigure], now: Iterable[ShownFigure]
) -> tuple[FigureChanged, ...]:
    """From one sheet to another, in the order in which they name their figures.

    Of several with one name those that stayed are left out, and the others told in pairs.
    """
    before, after = _by_key(was), _by_key(now)
    return tuple(
        FigureChanged(*key, one, other)
        for key in _in_order(before, after)
        for one, other in _changed(before.get(key, []), after.get(key, []))
    )


def under_label(figures: Iterable[ShownFigure], was: str, now: str) -> tuple[ShownFigure, ...]:
    """A cabinet's figures by what it, its openings and its fronts are called now."""
    return tuple(
        replace(each, of=now + each.of.removeprefix(was))
        if each.of == was or each.of.startswith(f"{was}.")
        else each
        for each in figures
    )


def _by_key(figures: Iterable[ShownFigure]) -> Mapping[Key, list[str]]:
    found: dict[Key, list[str]] = defaultdict(list)
    for each in figures:
        found[each.key].append(each.says)
    return dict(found)


def _in_order(before: Mapping[Key, object], after: Mapping[Key, object]) -> list[Key]:
    """The later sheet's order; what went stands where it stood, after what was before it."""
    order = list(after)
    last = -1
    for key in before:
        if key in after:
            last = max(last, order.index(key))
        else:
            last += 1
            order.insert(last, key)
    return order


def _changed(was: list[str], now: list[str]) -> Iterator[tuple[str, str]]:
    went, came = _beyond(was, now), _beyond(now, was)
    for index in range(max(len(went), len(came))):
        yield (
            went[index] if index < len(went) else "",
            came[index] if index < len(came) else "",
        )


def _beyond(several: list[str], others: list[str]) -> list[str]:
    """What the others don't say, or not as often."""
    left = Counter(several) - Counter(others)
    found = []
    for says in reversed(several):
        if left[says]:
            left[says] -= 1
            found.append(says)
    return found[::-1]

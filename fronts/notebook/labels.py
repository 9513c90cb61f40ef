"""Labels in a notebook: those of cabinets as they are written, those of things counted on.

Two that differ by case alone are one: nobody could tell them apart on site.
"""

from collections.abc import Iterable

from fronts.notebook.faults import NotUnderstood
from fronts.notebook.words import quoted
from fronts.rules.thing_kinds import THING_KINDS, ThingKind


class Labels:
    """The labels of a whole notebook: a thing's count passes over those that cabinets have."""

    def __init__(self, cabinets: Iterable[tuple[int, str]]) -> None:
        self._lines: dict[str, tuple[int, str]] = {}
        for line, label in cabinets:
            self._lines.setdefault(label.casefold(), (line, label))
        self._counts = dict.fromkeys(THING_KINDS, 0)

    def check(self, line: int, label: str) -> None:
        """NotUnderstood where a cabinet of an earlier line has this label."""
        first, taken = self._lines[label.casefold()]
        if first != line:
            raise NotUnderstood(
                quoted(label), f"a label of its own: line {first} has {quoted(taken)}"
            )

    def counted_on(self, kind: ThingKind) -> str:
        """The next label of a thing of this kind."""
        while True:
            self._counts[kind] += 1
            label = f"{THING_KINDS[kind].letter}{self._counts[kind]}"
            if label.casefold() not in self._lines:
                return label

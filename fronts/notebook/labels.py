"""Labels in a notebook: those of cabinets as they are written, those of things counted on.

Two that differ by case alone are one: nobody could tell them apart on site.
"""

from collections.abc import Iterable

from fronts.notebook.faults import NotUnderstood
from fronts.notebook.words import quoted
from fronts.rules.thing_kinds import THING_KINDS, ThingKind

_BEFORE = 0
"""Instead of a line: there before the first one."""


class Labels:
    """The labels of a whole notebook: a thing's count passes over those that cabinets have.

    `taken` are those of a kitchen that the notebook adds to.
    """

    def __init__(self, taken: Iterable[str] = ()) -> None:
        self._lines: dict[str, tuple[int, str]] = {
            label.casefold(): (_BEFORE, label) for label in taken
        }
        self._counts = dict.fromkeys(THING_KINDS, 0)

    def write(self, cabinets: Iterable[tuple[int, str]]) -> None:
        """Know the cabinets' labels of all lines before the first one is gone through."""
        for line, label in cabinets:
            self._lines.setdefault(label.casefold(), (line, label))

    def check(self, line: int, label: str) -> None:
        """NotUnderstood where a cabinet of an earlier line has this label."""
        first, taken = self._lines[label.casefold()]
        if first != line:
            where = "the kitchen" if first == _BEFORE else f"line {first}"
            raise NotUnderstood(quoted(label), f"a label of its own: {where} has {quoted(taken)}")

    def counted_on(self, kind: ThingKind) -> str:
        """The next label of a thing of this kind."""
        while True:
            self._counts[kind] += 1
            label = f"{THING_KINDS[kind].letter}{self._counts[kind]}"
            if label.casefold() not in self._lines:
                return label

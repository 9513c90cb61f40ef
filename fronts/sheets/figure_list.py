"""The figures of one front or several as a list: a name, its figure, and whose it is if not all's.

A list stands in columns, each read to its end before the next.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from fronts.figures.knobs import Line

HALF, BESIDE_JIG, NARROW, SIDE_BY_SIDE = 50, 40, 36, 58
"""Letters of a figure that fit beside its name: in half a page, beside a jig, in what is left,
and in half a page where the shorter list beside it leaves room for a line too many."""
_KEY_LETTER = 13
"""A large figure's letter takes 13 tenths of another's."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure, and the labels of the fronts that it is for; "" where it is for all."""

    labels: str
    line: Line

    @property
    def letters(self) -> int:
        """About how many letters' room it takes."""
        wide = len(self.line.figure)
        figure = wide * _KEY_LETTER // 10 if self.line.key else wide
        return len(self.labels) + figure + len(self.line.more) + 3


@dataclass(frozen=True, slots=True)
class Row:
    """Everything of one name: one large figure, or one for some of the fronts and one for others.

    `shared` are the words that all of several figures have beside them, said once.
    """

    name: str
    figures: tuple[Figure, ...]
    shared: str = ""

    def lines(self, across: int) -> int:
        """About how many lines it takes in a column of so many letters."""
        letters = [each.letters for each in self.figures]
        return sum(-(-each // across) for each in [*letters, len(self.shared)])


@dataclass(frozen=True, slots=True)
class FigureList:
    """A heading, and rows in one column or in two, each of so many letters."""

    heading: str
    columns: tuple[tuple[Row, ...], ...]
    letters: int


def figure_list(
    heading: str, labels: Sequence[str], figures: Sequence[Sequence[Line]], *, letters: int = 0
) -> FigureList:
    """The figures of the fronts with these labels, in the order in which they are needed.

    In one column of so many `letters`; where nobody says, in two over the page.
    """
    named = [{line.name: line for line in each} for each in figures]
    names = dict.fromkeys(name for each in named for name in each)
    rows = [_row(name, labels, [each.get(name) for each in named]) for name in names]
    columns = [tuple(rows)] if letters else _columns(rows)
    return FigureList(heading, tuple(columns), letters or HALF)


def _row(name: str, labels: Sequence[str], lines: Sequence[Line | None]) -> Row:
    whose: dict[Line, list[str]] = {}
    for label, line in zip(labels, lines, strict=True):
        if line is not None:
            whose.setdefault(line, []).append(label)
    if len(whose) == 1 and None not in lines:
        return Row(name, tuple(Figure("", line) for line in whose))
    words = {line.more for line in whose}
    shared = words.pop() if len(words) == 1 else ""
    return Row(
        name,
        tuple(
            Figure(", ".join(here), replace(line, more="" if shared else line.more, key=False))
            for line, here in whose.items()
        ),
        shared,
    )


def _columns(rows: Sequence[Row]) -> list[tuple[Row, ...]]:
    """Two columns, the first as little longer than the second as may be."""
    first, whole = 0, sum(row.lines(HALF) for row in rows)
    for index, row in enumerate(rows):
        if 2 * first >= whole:
            return [tuple(rows[:index]), tuple(rows[index:])]
        first += row.lines(HALF)
    return [tuple(rows)]

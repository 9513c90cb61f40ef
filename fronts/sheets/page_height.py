"""What a cabinet's sheet takes of its pages in words, so that the drawings get the rest.

Heights are estimates in pixels on Letter, the shorter paper, widths on A4, the narrower: an
estimate that is too small costs a page, one that is too large costs some of a drawing's size.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from fronts.drawings.svg import Px
from fronts.figures.findings import Findings
from fronts.figures.front_rows import FrontRow
from fronts.figures.work_steps import Work
from fronts.sheets.figure_list import FigureList
from fronts.sheets.hole_tables import HoleTable

PAGE: Px = 944_00
WIDTH: Px = 698_00
HEADING: Px = 19_00
_TITLE: Px = 28_00
_HEAD_OF_FRONTS: Px = 23_00
_FRONT: Px = 36_00
_LINE: Px = 14_60
_STOP: Px = 98_00
_FIGURE: Px = 18_50
_HOLES: Px = 15_50
_STEP: Px = 17_00
_SMALL: Px = 14_50
_CAUTIONS: Px = 9_00
_LETTERS_ACROSS = 116
_LETTERS_OF_TITLE = 96
"""Beside the code at the page's right; a letter of the label takes two."""
_LETTERS_OF_LAPS = 130
_LETTERS_OF_STOP = 90
_LETTERS_OF_MADE_FROM = 36
_LETTERS_OF_STEP = 60


def lines_of(texts: Iterable[str], across: int = _LETTERS_ACROSS) -> int:
    """Lines that the texts take, each beginning its own."""
    return sum(-(-max(len(each), 1) // across) for each in texts)


@dataclass(frozen=True, slots=True)
class Above:
    """What stands over a cabinet's drawings."""

    title: tuple[str, str]
    fronts: Sequence[FrontRow]
    laps: Sequence[tuple[str, str]]
    measured: Sequence[tuple[str, str]]
    ends: Sequence[tuple[str, str]]
    findings: Findings

    @property
    def height(self) -> Px:
        stops, others = self.findings.stops, self.findings.others
        label, about = self.title
        height = _TITLE + _LINE * (lines_of([label * 2 + about], _LETTERS_OF_TITLE) - 1)
        if self.fronts:
            height += _HEAD_OF_FRONTS + sum(_front(each) for each in self.fronts)
            height += _LINE * lines_of([_said(self.laps, " " * 50)], _LETTERS_OF_LAPS)
        height += _LINE * lines_of([_said(self.measured, " " * 15)]) if self.measured else 0
        for each in self.ends:
            height += _LINE * lines_of([_said([each], " " * 40)])
        if stops:
            height += _STOP + _LINE * lines_of((each.message for each in stops), _LETTERS_OF_STOP)
        if others:
            height += _LINE + _LINE * lines_of(each.message for each in others)
        return height


def _front(row: FrontRow) -> Px:
    more = lines_of([row.line.made_from], _LETTERS_OF_MADE_FROM) - 1
    return _FRONT + _LINE * (more + (1 if row.two_people else 0))


def _said(words: Iterable[tuple[str, str]], heading: str) -> str:
    return heading + "; ".join(" ".join(each) for each in words)


@dataclass(frozen=True, slots=True)
class Below:
    """What stands under a cabinet's drawings."""

    boxes: FigureList | None
    holes: HoleTable | None
    doors: FigureList | None
    works: Sequence[Work]
    cautions: Sequence[str]
    one_box: bool
    jig_aside: bool = False

    def height(self, jig: Px, *, wide: bool) -> Px:
        """All of it; `jig` stands beside the figures of one box, over the doors' where `wide`.

        With `jig_aside` that stands beside the drawings, and both lists have half the page.
        """
        height = sum(_work(each) for each in self.works) + _holes(self.holes)
        height += _CAUTIONS + _SMALL * lines_of([" ".join(self.cautions)])
        if not self.one_box:
            return height + _list(self.boxes) + _list(self.doors)
        doors = _list(self.doors)
        if self.jig_aside:
            return height + max(_list(self.boxes), doors)
        return height + max(_list(self.boxes), jig + doors if wide else max(jig, doors))


def _list(figures: FigureList | None) -> Px:
    if figures is None:
        return 0
    return HEADING + max(
        sum(_FIGURE + _LINE * (row.lines(figures.letters) - 1) for row in column)
        for column in figures.columns
    )


def _holes(holes: HoleTable | None) -> Px:
    return 0 if holes is None else _HOLES * (1 + holes.line_count)


def _work(work: Work) -> Px:
    heights = [_STEP + _LINE * (lines_of([each], _LETTERS_OF_STEP) - 1) for each in work.steps]
    height = HEADING + _in_two_columns(heights)
    return height + (_LINE * lines_of([work.other]) if work.other else 0)


def _in_two_columns(heights: Sequence[Px]) -> Px:
    """The longer column, where the first ends so that it is as short as may be."""
    ways = (max(sum(heights[:at]), sum(heights[at:])) for at in range(len(heights) + 1))
    return min(ways)

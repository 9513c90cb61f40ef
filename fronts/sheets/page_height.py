"""What is left for the drawings on a cabinet's page, so that an ordinary cabinet needs but one.

Heights are estimates in pixels, on the shorter paper; an estimate that is too small costs a
page, one that is too large costs some of the drawing's size.
"""

from collections.abc import Iterable, Sequence

from fronts.drawings.svg import Px
from fronts.figures.work_steps import Work
from fronts.rules.results import Finding
from fronts.sheets.comparison_table import ComparisonTable, Row

PAGE: Px = 872_00
HEADING: Px = 25_00
_LINE: Px = 17_50
_ROW: Px = 26_00
_TITLE: Px = 42_00
_LINE_OF_HOLES: Px = 20_00
_STEP: Px = 20_50
_STOP: Px = 75_00
_MEASURED: Px = 30_00
_SMALL: Px = 16_00
_SMALL_ACROSS = 112
_LETTERS_ACROSS = 103
_LETTERS_IN_CELL = 22
_LETTERS_OF_LAPS = 14
_LETTERS_OF_NAME = 14


def lines_of(texts: Iterable[str], across: int = _LETTERS_ACROSS) -> int:
    """Lines that the texts take, each beginning its own."""
    return sum(-(-max(len(each), 1) // across) for each in texts)


def rows_height(rows: Sequence[tuple[str, str]]) -> Px:
    """The table of fronts, each with what it is made from and its laps in one text."""
    height = 2 * _ROW
    for made_from, laps in rows:
        lines = lines_of([made_from], _LETTERS_IN_CELL)
        height += _ROW + _LINE * (max(lines, 2 if len(laps) > _LETTERS_OF_LAPS else 1) - 1)
    return height


def findings_height(stops: Sequence[Finding], others: Sequence[Finding]) -> Px:
    """The framed stops, and the rest listed."""
    height = _STOP + _LINE * lines_of(each.message for each in stops) if stops else 0
    if others:
        height += _LINE + _LINE * lines_of(each.message for each in others)
    return height


def below_height(
    holes: int,
    doors: ComparisonTable | None,
    works: Sequence[Work],
    cautions: Sequence[str],
    measured: int,
) -> Px:
    """All that comes under the drawings: holes, doors, steps, cautions, what was measured."""
    height = 0 if doors is None else _ROW + sum(_beside(each) for each in doors.lines)
    height += _ROW + 2 * _LINE_OF_HOLES * holes if holes else 0
    for work in works:
        height += HEADING + _STEP * -(-len(work.steps) // 2)
        height += _LINE * lines_of([work.other]) if work.other else 0
    height += HEADING + 12_00 + _SMALL * lines_of([" ".join(cautions)], _SMALL_ACROSS)
    return height + (_ROW + _MEASURED * measured if measured else 0)


def _beside(row: Row) -> Px:
    """One row of figures side by side, as high as the longest of them."""
    across = (_LETTERS_ACROSS - _LETTERS_OF_NAME) // len(row.figures)
    high = _LINE if row.shared else 0
    texts = [f"{each.figure} {each.more}" for each in row.figures if each is not None]
    lines = max((lines_of([each], across) for each in texts), default=1)
    return high + _ROW + _LINE * (lines - 1)


def left_over(*heights: Px) -> Px:
    """What the page has left once the title and these are on it."""
    return PAGE - _TITLE - sum(heights)

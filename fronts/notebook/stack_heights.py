"""The heights of a stack's fronts, from the top: `5, , 7 1/2, 9`; a blank one shares the rest.

There is one comma fewer than drawers. A comma more may stand before the first height or behind
the last, as between any two things of a line: where a height stands beside it, so that it is no
blank place miscounted, and where that leaves one reading alone.
"""

from itertools import product

from fronts.notebook.faults import NotUnderstood
from fronts.notebook.words import Words, quoted
from fronts.rules.lengths import Mm

Heights = tuple[Mm | None, ...]


def stack_heights(words: Words, count: int) -> Heights:
    """Take the heights of so many drawers; where none is said, all share."""
    start = words.at
    said = [words.size(here=True)]
    while words.comma():
        said.append(words.size(here=True))
    if not any(said) and (len(said) == 1 or (len(said) == 2 and not words.ended)):
        return (None,) * count  # Nothing, or the comma before what follows.
    readings = _readings(said, count, followed=not words.ended)
    if len(readings) == 1 and readings[0] is not None:
        return readings[0]
    raise NotUnderstood(
        quoted(words.text[start : words.at].strip()),
        f"{count} heights with {count - 1} commas between them, blank where one is shared",
    )


def _readings(said: list[Mm | None], count: int, *, followed: bool) -> list[Heights | None]:
    """Each way to take so many heights from what stands between the commas; None: a doubtful one.

    A way leaves out a comma before them, behind them, or both.
    """
    if len(said) == count:
        return [tuple(said)]
    before = (1,) if said[0] is None else ()
    behind = (1,) if followed and said[-1] is None else ()
    readings: list[Heights | None] = []
    for first, last in product((0, *before), (0, *behind)):
        heights = tuple(said[first : len(said) - last])
        if len(heights) == count:
            doubtful = (first and heights[0] is None) or (last and heights[-1] is None)
            readings.append(None if doubtful else heights)
    return readings

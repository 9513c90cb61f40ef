"""Quick plans for sheets: one sheet after the other, each part into the corner of a free rectangle.

The guillotine heuristics surveyed in Jylänki 2010, "A thousand ways to pack the bin": which part
comes next, and which way its rectangle is split, are rules that are tried in many orders. Every
split is a cut right across, so that what comes out can always be sawn edge to edge. No guarantee:
they feed the pool, and give the plan that is never fallen behind.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from fronts.cutting import work_counter
from fronts.cutting.budget import Budget
from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import BoardKind, IntegerProblem, Orientation
from fronts.cutting.patterns import Pattern, area_of, pattern_of
from fronts.cutting.sheets.candidates import Candidates, FreeRectangle, Pick, wanted

Split = Literal["rip", "cross", "short", "long", "big", "even"]


@dataclass(frozen=True, slots=True)
class FillRule:
    """How a sheet is filled: which part comes next, and which way its rectangle is split."""

    pick: Pick
    split: Split


Filler = Callable[[int, Sequence[int]], list[Spot]]
"""Places on one board of this kind, of what is left."""


def fill(board: BoardKind, choice: Candidates, left: Sequence[int], rule: FillRule) -> list[Spot]:
    """Places on one sheet, at most `left[item]` of each item."""
    return fill_rooms([FreeRectangle(0, 0, board.length, board.width)], choice, list(left), rule)


def fill_rooms(
    free: list[FreeRectangle], choice: Candidates, left: list[int], rule: FillRule
) -> list[Spot]:
    """Places in free rectangles; takes what it places from `left`."""
    spots: list[Spot] = []
    rows = wanted(choice, left, rule.pick)
    while free:
        room = free.pop()
        row = rows.take(room)
        if row is None:
            continue
        item, way = row[2], row[3]
        spots.append(Spot(item, room.x, room.y, way))
        left[item] -= 1
        if left[item] == 0 and not rows.drop(item):
            break
        free.extend(_split(room, way, rule.split))
    work_counter.spend(work_counter.of_filling(len(spots), len(choice.rows)))
    return spots


def sheet_by_sheet(
    problem: IntegerProblem,
    filler: Filler,
    left: list[int],
    open_boards: list[int | None],
    budget: Budget | None = None,
) -> list[tuple[Pattern, int]]:
    """Fill sheets until nothing is left or no board is; equal sheets are counted at once.

    Takes what it places from `left` and `open_boards`; stops early where the budget is over.
    """
    sheets: list[tuple[Pattern, int]] = []
    while any(left) and not (budget is not None and budget.over):
        best = _best(problem, filler, left, open_boards)
        if best is None:
            break
        limit = open_boards[best.board]
        often = min(left[item] // n for item, n in best.yields)
        often = often if limit is None else min(often, limit)
        for item, n in best.yields:
            left[item] -= n * often
        if limit is not None:
            open_boards[best.board] = limit - often
        sheets.append((best, often))
    return sheets


def corner_filler(problem: IntegerProblem, order: Sequence[int], rule: FillRule) -> Filler:
    """Fills sheets in this order and manner."""
    choices = [Candidates(problem, b, order) for b in range(len(problem.boards))]
    return lambda board, left: fill(problem.boards[board], choices[board], left, rule)


def _best(
    problem: IntegerProblem, filler: Filler, left: Sequence[int], open_boards: Sequence[int | None]
) -> Pattern | None:
    """The sheet that gives most area for its cost; of equals, the smallest."""
    best, most = None, (Fraction(-1), 0)
    for index, board in enumerate(problem.boards):
        if open_boards[index] == 0:
            continue
        spots = filler(index, left)
        if not spots:
            continue
        used = area_of(spots)
        worth = Fraction(used, board.cost) if board.cost else Fraction(used * 10**9)
        if (worth, -board.length * board.width) > most:
            best, most = pattern_of(index, spots), (worth, -board.length * board.width)
    return best


def _split(room: FreeRectangle, way: Orientation, split: Split) -> list[FreeRectangle]:
    """The two rectangles beside and above; the one to fill next comes last."""
    x, y, length, width = room
    spare, above = length - way.length, width - way.width
    if split == "rip":
        rip = True
    elif split == "cross":
        rip = False
    elif split == "short":
        rip = spare <= above
    elif split == "long":
        rip = spare > above
    else:
        rip = spare * way.width <= above * way.length
        rip = rip if split == "big" else not rip
    rooms = []
    if rip:
        if above:
            rooms.append(FreeRectangle(x, y + way.width, length, above))
        if spare:
            rooms.append(FreeRectangle(x + way.length, y, spare, way.width))
    else:
        if spare:
            rooms.append(FreeRectangle(x + way.length, y, spare, width))
        if above:
            rooms.append(FreeRectangle(x, y + way.width, way.length, above))
    return rooms

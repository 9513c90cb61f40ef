"""Quick plans for sheets: one sheet after the other, each part into the corner of a free rectangle.

Every step splits the rectangle that it fills by a cut right across, so that what comes out can
always be sawn edge to edge.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from fronts.cutting import work_counter as effort
from fronts.cutting.budget import Budget
from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import Board, Lattice, Lie
from fronts.cutting.patterns import Column, column
from fronts.cutting.sheets.candidates import Choice, Free, Pick, wanted

Split = Literal["rip", "cross", "short", "long", "big", "even"]


@dataclass(frozen=True, slots=True)
class Manner:
    """How a sheet is filled: which part comes next, and which way its rectangle is split."""

    pick: Pick
    split: Split


Filler = Callable[[int, Sequence[int]], list[Spot]]
"""Places on one board of this kind, of what is left."""


def fill(board: Board, choice: Choice, left: Sequence[int], manner: Manner) -> list[Spot]:
    """Places on one sheet, at most `left[item]` of each item."""
    return fill_rooms([Free(0, 0, board.length, board.width)], choice, list(left), manner)


def fill_rooms(free: list[Free], choice: Choice, left: list[int], manner: Manner) -> list[Spot]:
    """Places in free rectangles; takes what it places from `left`."""
    spots: list[Spot] = []
    rows = wanted(choice, left, manner.pick)
    while free:
        room = free.pop()
        row = rows.take(room)
        if row is None:
            continue
        item, lie = row[2], row[3]
        spots.append(Spot(item, room.x, room.y, lie))
        left[item] -= 1
        if left[item] == 0 and not rows.drop(item):
            break
        free.extend(_split(room, lie, manner.split))
    effort.spend(effort.of_filling(len(spots), len(choice.rows)))
    return spots


def sheet_by_sheet(
    lattice: Lattice,
    filler: Filler,
    left: list[int],
    open_boards: list[int | None],
    budget: Budget | None = None,
) -> list[tuple[Column, int]]:
    """Fill sheets until nothing is left or no board is; equal sheets are counted at once.

    Takes what it places from `left` and `open_boards`; stops early where the budget is over.
    """
    found: list[tuple[Column, int]] = []
    while any(left) and not (budget is not None and budget.over):
        best = _best(lattice, filler, left, open_boards)
        if best is None:
            break
        limit = open_boards[best.board]
        often = min(left[item] // n for item, n in best.yields)
        often = often if limit is None else min(often, limit)
        for item, n in best.yields:
            left[item] -= n * often
        if limit is not None:
            open_boards[best.board] = limit - often
        found.append((best, often))
    return found


def corner_filler(lattice: Lattice, order: Sequence[int], manner: Manner) -> Filler:
    """Fills sheets in this order and manner."""
    choices = [Choice(lattice, b, order) for b in range(len(lattice.boards))]
    return lambda board, left: fill(lattice.boards[board], choices[board], left, manner)


def _best(
    lattice: Lattice, filler: Filler, left: Sequence[int], open_boards: Sequence[int | None]
) -> Column | None:
    """The sheet that gives most area for its cost; of equals, the smallest."""
    best, most = None, (Fraction(-1), 0)
    for index, board in enumerate(lattice.boards):
        if open_boards[index] == 0:
            continue
        spots = filler(index, left)
        if not spots:
            continue
        used = sum(spot.lie.length * spot.lie.width for spot in spots)
        worth = Fraction(used, board.cost) if board.cost else Fraction(used * 10**9)
        if (worth, -board.length * board.width) > most:
            best, most = column(index, spots), (worth, -board.length * board.width)
    return best


def _split(room: Free, lie: Lie, split: Split) -> list[Free]:
    """The two rectangles beside and above; the one to fill next comes last."""
    x, y, length, width = room
    spare, above = length - lie.length, width - lie.width
    if split == "rip":
        rip = True
    elif split == "cross":
        rip = False
    elif split == "short":
        rip = spare <= above
    elif split == "long":
        rip = spare > above
    else:
        rip = spare * lie.width <= above * lie.length
        rip = rip if split == "big" else not rip
    found = []
    if rip:
        if above:
            found.append(Free(x, y + lie.width, length, above))
        if spare:
            found.append(Free(x + lie.length, y, spare, lie.width))
    else:
        if spare:
            found.append(Free(x + lie.length, y, spare, width))
        if above:
            found.append(Free(x, y + lie.width, lie.length, above))
    return found

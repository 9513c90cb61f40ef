"""Quick plans for sheets: one sheet after the other, each part into the corner of a free rectangle.

Every step splits the rectangle that it fills by a cut right across, so that what comes out can
always be sawn edge to edge.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, NamedTuple

from fronts.cutting.columns import Column, column
from fronts.cutting.lattice import Lattice, Lie
from fronts.cutting.tree import Spot

Split = Literal["rip", "cross", "short", "long", "big", "even"]
Pick = Literal["first", "snug", "strip"]


class Free(NamedTuple):
    """A rectangle that is still free."""

    x: int
    y: int
    length: int
    width: int


@dataclass(frozen=True, slots=True)
class Manner:
    """How a sheet is filled: which part comes next, and which way its rectangle is split."""

    pick: Pick
    split: Split


Order = Sequence[tuple[int, tuple[Lie, ...]]]
"""Items in the order in which they are tried, each with the ways that it may lie."""


def fill(length: int, width: int, order: Order, left: list[int], manner: Manner) -> list[Spot]:
    """Places on one sheet; takes what it places from `left`."""
    spots: list[Spot] = []
    free = [Free(0, 0, length, width)]
    choose = _PICKS[manner.pick]
    live = [entry for entry in order if left[entry[0]] > 0]
    while free and live:
        room = free.pop()
        found = choose(room, live, left)
        if found is None:
            continue
        item, lie = found
        spots.append(Spot(item, room.x, room.y, lie))
        left[item] -= 1
        if left[item] == 0:
            live = [entry for entry in live if entry[0] != item]
        free.extend(_split(room, lie, manner.split))
    return spots


def sheet_by_sheet(
    lattice: Lattice,
    order: Sequence[int],
    manner: Manner,
    left: list[int],
    open_boards: list[int | None],
) -> list[tuple[Column, int]]:
    """Fill sheets until nothing is left or no board is; equal sheets are counted at once."""
    orders = [
        [(i, lattice.items[i].lies[b]) for i in order if lattice.items[i].lies[b]]
        for b in range(len(lattice.boards))
    ]
    found: list[tuple[Column, int]] = []
    while any(left):
        best = _best(lattice, orders, manner, left, open_boards)
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


def _best(
    lattice: Lattice,
    orders: Sequence[Order],
    manner: Manner,
    left: list[int],
    open_boards: Sequence[int | None],
) -> Column | None:
    """The sheet that gives most area for its cost; of equals, the smallest."""
    best, most = None, (Fraction(-1), 0)
    for index, board in enumerate(lattice.boards):
        if open_boards[index] == 0:
            continue
        spots = fill(board.length, board.width, orders[index], list(left), manner)
        if not spots:
            continue
        used = sum(spot.lie.length * spot.lie.width for spot in spots)
        worth = Fraction(used, board.cost) if board.cost else Fraction(used * 10**9)
        if (worth, -board.length * board.width) > most:
            best, most = column(index, spots), (worth, -board.length * board.width)
    return best


def _first(room: Free, live: Order, left: list[int]) -> tuple[int, Lie] | None:
    length, width = room.length, room.width
    for item, lies in live:
        for lie in lies:
            if lie[0] <= length and lie[1] <= width:
                return item, lie
    return None


def _snug(room: Free, live: Order, left: list[int]) -> tuple[int, Lie] | None:
    """What leaves the narrowest strip beside it."""
    length, width = room.length, room.width
    best, least = None, length + width
    for item, lies in live:
        for lie in lies:
            spare, above = length - lie[0], width - lie[1]
            if spare >= 0 and above >= 0 and (spare if spare < above else above) < least:
                best, least = (item, lie), min(spare, above)
                if least == 0:
                    return best
    return best


def _strip(room: Free, live: Order, left: list[int]) -> tuple[int, Lie] | None:
    """What uses up the width of the rectangle best, then its length."""
    length, width = room.length, room.width
    best, least = None, (width + 1, length)
    for item, lies in live:
        for lie in lies:
            spare, above = length - lie[0], width - lie[1]
            if spare >= 0 and above >= 0 and (above, spare) < least:
                best, least = (item, lie), (above, spare)
    return best


_PICKS: dict[Pick, Callable[[Free, Order, list[int]], tuple[int, Lie] | None]] = {
    "first": _first,
    "snug": _snug,
    "strip": _strip,
}


def _split(room: Free, lie: Lie, split: Split) -> list[Free]:
    """The two rectangles beside and above; the one to fill next comes last."""
    spare, above = room.length - lie.length, room.width - lie.width
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
    if rip:
        beside = Free(room.x + lie.length, room.y, spare, lie.width)
        over = Free(room.x, room.y + lie.width, room.length, above)
    else:
        beside = Free(room.x + lie.length, room.y, spare, room.width)
        over = Free(room.x, room.y + lie.width, lie.length, above)
    found = [over, beside] if rip else [beside, over]
    return [free for free in found if free.length > 0 and free.width > 0]

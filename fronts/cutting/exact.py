"""Whether a few items can be cut from one board edge to edge: settled by trying every way.

Every such layout is a tree of two groups side by side or one above the other. For each group only
the boxes that no other box of it fits into are kept.
"""

from collections.abc import Sequence
from typing import NamedTuple, TypeAlias

from fronts.cutting.lattice import Board, Lie
from fronts.cutting.tree import Spot

MOST_ITEMS = 7


class _Box(NamedTuple):
    """A bounding box, and the two boxes it is made of (or the way that one item lies)."""

    length: int
    width: int
    first: "_Box | None"
    second: "_Box | None"
    beside: bool
    item: int
    lie: Lie | None


Boxes: TypeAlias = list[_Box]


def packed(board: Board, items: Sequence[tuple[int, tuple[Lie, ...]]]) -> list[Spot] | None:
    """Places for all of these (item, ways to lie), or None: then there is no way."""
    memo: dict[int, Boxes] = {}
    whole = _boxes((1 << len(items)) - 1, board, items, memo)
    if not whole:
        return None
    spots: list[Spot] = []
    _lay(whole[0], 0, 0, items, spots)
    return spots


def _boxes(
    group: int, board: Board, items: Sequence[tuple[int, tuple[Lie, ...]]], memo: dict[int, Boxes]
) -> Boxes:
    if group in memo:
        return memo[group]
    lowest = group & -group
    found: Boxes = []
    if group == lowest:
        index = lowest.bit_length() - 1
        for lie in items[index][1]:
            if lie.length <= board.length and lie.width <= board.width:
                found.append(
                    _Box(lie.length, lie.width, None, None, beside=False, item=index, lie=lie)
                )
    else:
        rest = group ^ lowest
        part = rest
        while part:
            part = (part - 1) & rest
            one = _boxes(lowest | part, board, items, memo)
            other = _boxes(rest ^ part, board, items, memo) if one else []
            found.extend(_joined(one, other, board))
    memo[group] = _smallest(found)
    return memo[group]


def _joined(one: Boxes, other: Boxes, board: Board) -> Boxes:
    found = []
    for a in one:
        for b in other:
            if a.length + b.length <= board.length:
                width = a.width if a.width > b.width else b.width
                found.append(_Box(a.length + b.length, width, a, b, beside=True, item=-1, lie=None))
            if a.width + b.width <= board.width:
                length = a.length if a.length > b.length else b.length
                found.append(_Box(length, a.width + b.width, a, b, beside=False, item=-1, lie=None))
    return found


def _smallest(boxes: Boxes) -> Boxes:
    kept: Boxes = []
    for box in sorted(boxes, key=lambda b: (b.length, b.width)):
        if not kept or box.width < kept[-1].width:
            kept.append(box)
    return kept


def _lay(
    box: _Box, x: int, y: int, items: Sequence[tuple[int, tuple[Lie, ...]]], spots: list[Spot]
) -> None:
    if box.first is None or box.second is None:
        if box.lie is not None:
            spots.append(Spot(items[box.item][0], x, y, box.lie))
        return
    _lay(box.first, x, y, items, spots)
    if box.beside:
        _lay(box.second, x + box.first.length, y, items, spots)
    else:
        _lay(box.second, x, y + box.first.width, items, spots)

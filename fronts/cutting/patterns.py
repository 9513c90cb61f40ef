"""A column: one way of cutting one board, by how many of each item it yields."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import Board, Lattice, Lie


@dataclass(frozen=True, slots=True)
class Column:
    """`spots` say where the items lie; on a stick they stand one after the other."""

    board: int
    yields: tuple[tuple[int, int], ...]
    spots: tuple[Spot, ...]


@dataclass(frozen=True, slots=True)
class Packing:
    """Columns with how often each is cut; `short` is what no board was left for."""

    chosen: tuple[tuple[Column, int], ...]
    short: tuple[tuple[int, int], ...] = ()


def column(board: int, spots: Iterable[Spot]) -> Column:
    """The column that these places make."""
    placed = tuple(spots)
    counted = Counter(spot.item for spot in placed)
    return Column(board, tuple(sorted(counted.items())), placed)


def stick_column(board: int, counts: Iterable[tuple[int, int]], lattice: Lattice) -> Column:
    """The column of a stick with these counts, the longest first."""
    lies = [(lattice.items[item].lies[board][0], item, n) for item, n in counts]
    spots: list[Spot] = []
    x = 0
    for lie, item, n in sorted(lies, reverse=True):
        for _ in range(n):
            spots.append(Spot(item, x, 0, lie))
            x += lie.length
    return column(board, spots)


def cost(packing: Packing, boards: Sequence[Board]) -> int:
    """What the boards of a packing cost (their number, where none has a price)."""
    return sum(boards[c.board].cost * n for c, n in packing.chosen)


def missing(packing: Packing, lattice: Lattice) -> int:
    """The lattice area that found no board."""
    return sum(lattice.items[item].area * n for item, n in packing.short)


def rank(packing: Packing, lattice: Lattice) -> tuple[int, int, int]:
    """What makes one packing better than another: least missing, then cost, then stock area."""
    boards = lattice.boards
    area = sum(boards[c.board].length * boards[c.board].width * n for c, n in packing.chosen)
    return missing(packing, lattice), cost(packing, boards), area


def packing(picked: Iterable[tuple[Column, int]], lattice: Lattice) -> Packing:
    """Exactly the parts asked for: surplus is left out, what is not covered is short."""
    left = [item.demand for item in lattice.items]
    found: list[tuple[Column, int]] = []
    for whole, times in picked:
        while times > 0:
            trimmed = _within(whole, left)
            if not trimmed.spots:
                break
            often = min(times, *(left[i] // n for i, n in trimmed.yields))
            for item, n in trimmed.yields:
                left[item] -= n * often
            found.append((trimmed, often))
            times -= often
    short = tuple((i, n) for i, n in enumerate(left) if n > 0)
    return Packing(tuple(found), short)


def _within(whole: Column, left: Sequence[int]) -> Column:
    if all(n <= left[item] for item, n in whole.yields):
        return whole
    room = {item: left[item] for item, _ in whole.yields}
    spots: list[Spot] = []
    for spot in whole.spots:
        if room[spot.item] > 0:
            room[spot.item] -= 1
            spots.append(spot)
    return column(whole.board, spots)


__all__ = [
    "Column", "Lie", "Packing", "column", "cost", "missing", "packing", "rank", "stick_column",
]  # fmt: skip

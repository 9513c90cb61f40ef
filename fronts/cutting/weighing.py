"""Bounds for sheets that hold for every way of packing: area, and stretched area.

A dual feasible function maps sizes of at most one line so that what fits on the line together
still does when mapped. Mapped areas then bound like areas do; the product over the two directions
may stretch each its own way (Fekete and Schepers 2004, "A general framework for bounds for
higher-dimensional orthogonal packing problems"). A part that may turn counts the lighter way.
"""

from collections.abc import Iterator, Sequence

import numpy as np
from numpy.typing import NDArray

from fronts.cutting import proof
from fronts.cutting.lattice import Board, Item, Lattice, Lie

MOST_STEPS = 40


def area_bound(lattice: Lattice, boards: Sequence[Board]) -> proof.Bound:
    """Parts' area over boards' area."""
    total = sum(item.area * item.demand for item in lattice.items)
    return proof.weigh(total, [b.length * b.width for b in boards], boards)


def stretched_bound(lattice: Lattice, boards: Sequence[Board], enough: int) -> proof.Bound:
    """The best bound over pairs of stretches, each made for the largest board."""
    longest, widest = max(b.length for b in boards), max(b.width for b in boards)
    lengths = sorted({lie.length for item in lattice.items for lie in _all(item)})
    widths = sorted({lie.width for item in lattice.items for lie in _all(item)})
    found = proof.NOTHING
    across = list(_stretches(widest, widths))
    for along, whole_along in _stretches(longest, lengths):
        for up, whole_up in across:
            weight = sum(i.demand * _lightest(i, along, up) for i in lattice.items)
            bound = proof.weigh(weight, [whole_along * whole_up] * len(boards), boards)
            found = proof.best([found, bound])
            if found.cost >= enough:
                return found
    return found


def _all(item: Item) -> set[Lie]:
    return {lie for lies in item.loose for lie in lies}


def _lightest(item: Item, along: dict[int, int], up: dict[int, int]) -> int:
    return min(along[lie.length] * up[lie.width] for lies in item.loose for lie in lies)


def _stretches(line: int, sizes: Sequence[int]) -> Iterator[tuple[dict[int, int], int]]:
    """Stretched sizes, and what a whole line carries of them."""
    yield {size: size for size in sizes}, line
    marks = sorted({min(size, line - size) for size in sizes} | {line // 2, line // 3})
    for mark in _some([m for m in marks if 0 < m <= line // 2]):
        yield _small_dropped(line, sizes, mark)
    for parts in range(2, 8):
        yield _rounded(line, sizes, parts)


def _some(marks: Sequence[int]) -> Sequence[int]:
    if len(marks) <= MOST_STEPS:
        return marks
    return [marks[i * len(marks) // MOST_STEPS] for i in range(MOST_STEPS)]


def _small_dropped(line: int, sizes: Sequence[int], mark: int) -> tuple[dict[int, int], int]:
    """Sizes over line - mark fill the line; those under the mark weigh nothing."""
    return {s: line if s > line - mark else 0 if s < mark else s for s in sizes}, line


def _rounded(line: int, sizes: Sequence[int], parts: int) -> tuple[dict[int, int], int]:
    """How often `parts + 1` of a size pass the whole line (the functions u of k, scaled)."""
    found = {}
    for size in sizes:
        times = (parts + 1) * size
        found[size] = size * parts if times % line == 0 else times // line * line
    return found, line * parts


def quick_bound(lattice: Lattice, enough: int | None = None) -> proof.Bound:
    """The best bound that takes no search: `enough` is where to stop looking."""
    area = area_bound(lattice, lattice.boards)
    if lattice.sticks or (enough is not None and area.cost >= enough):
        return area
    stop = enough if enough is not None else 1 << 62
    return proof.best([area, stretched_bound(lattice, lattice.boards, stop)])


def stretched_rows(lattice: Lattice) -> NDArray[np.float64]:
    """Every pair of stretches as a row: its share of the largest board that each item takes."""
    longest = max(b.length for b in lattice.boards)
    widest = max(b.width for b in lattice.boards)
    ways = [sorted({lie[:2] for lies in item.loose for lie in lies}) for item in lattice.items]
    lengths = sorted({length for lies in ways for length, _ in lies})
    widths = sorted({width for lies in ways for _, width in lies})
    row_of = {size: k for k, size in enumerate(lengths)}
    col_of = {size: k for k, size in enumerate(widths)}
    along = np.array([[w[s] / top for s in lengths] for w, top in _stretches(longest, lengths)])
    up = np.array([[w[s] / top for s in widths] for w, top in _stretches(widest, widths)])
    lightest: NDArray[np.float64] | None = None
    for turn in range(2):
        picked = [lies[min(turn, len(lies) - 1)] for lies in ways]
        a, b = along[:, [row_of[p[0]] for p in picked]], up[:, [col_of[p[1]] for p in picked]]
        product = (a[:, None, :] * b[None, :, :]).reshape(-1, len(ways))
        lightest = product if lightest is None else np.minimum(lightest, product)
    rows = np.zeros((0, len(ways))) if lightest is None else lightest
    return np.unique(rows.round(12), axis=0)

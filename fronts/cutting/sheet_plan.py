"""The fewest sheets: many quick plans feed a pool of layouts, an integer program picks from it."""

from collections.abc import Iterator
from itertools import product
from random import Random

from fronts.cutting import columns as col
from fronts.cutting.budget import Budget
from fronts.cutting.columns import Packing
from fronts.cutting.found import Found, done
from fronts.cutting.lattice import Lattice
from fronts.cutting.pool import Pool
from fronts.cutting.sheet_filling import Manner, Pick, Split, sheet_by_sheet
from fronts.cutting.weighing import quick_bound

PASSES = 4_000
_SEED = 1
_PICKS: tuple[Pick, ...] = ("first", "snug", "strip")
_SPLITS: tuple[Split, ...] = ("rip", "cross", "short", "long", "big", "even")


def plan_sheets(lattice: Lattice, budget: Budget) -> Found:
    """The best packing of sheets within the budget, never worse than the first quick one."""
    passes = _passes(lattice)
    pool = Pool(lattice)
    best = _pass(lattice, pool, *next(passes))
    bound = quick_bound(lattice, col.cost(best, lattice.boards))
    share = budget.share(0.5)
    for order, manner in passes:
        if share.over or done(best, bound, lattice):
            break
        found = _pass(lattice, pool, order, manner)
        best = min(best, found, key=lambda p: col.rank(p, lattice))
    if not done(best, bound, lattice):
        best = pool.cover(best, bound.cost, budget.left, 20_000)
    return Found(best, bound)


def _pass(lattice: Lattice, pool: Pool, order: list[int], manner: Manner) -> Packing:
    left = [item.demand for item in lattice.items]
    open_boards = [board.limit for board in lattice.boards]
    found = sheet_by_sheet(lattice, order, manner, left, open_boards)
    pool.add(column for column, _ in found)
    return col.packing(found, lattice)


def _passes(lattice: Lattice) -> Iterator[tuple[list[int], Manner]]:
    """Orders and manners, the plain ones first, then shaken ones: always the same sequence."""
    items = lattice.items
    sizes = [max(lie for lies in item.lies for lie in lies) for item in items]
    keys = (
        [s.length * s.width for s in sizes],
        [max(s.length, s.width) for s in sizes],
        [s.length for s in sizes],
        [s.width for s in sizes],
        [min(s.length, s.width) for s in sizes],
        [s.length + s.width for s in sizes],
    )
    manners = [Manner(pick, split) for pick, split in product(_PICKS, _SPLITS)]
    for key in keys:
        order = sorted(range(len(items)), key=lambda i: -key[i])
        for manner in manners:
            yield order, manner
    random = Random(_SEED)
    for _ in range(PASSES):
        key = keys[random.randrange(len(keys))]
        spread = random.choice((0.1, 0.3, 0.6))
        shaken = [k * (1 + random.uniform(-spread, spread)) for k in key]
        order = sorted(range(len(items)), key=lambda i: -shaken[i])
        yield order, manners[random.randrange(len(manners))]

"""The fewest sheets: quick plans feed a pool of layouts, the solver's prices ask for better ones."""

from collections.abc import Iterator
from itertools import product
from random import Random

from fronts.cutting import columns as col
from fronts.cutting.budget import Budget
from fronts.cutting.columns import Column, Packing
from fronts.cutting.diving import Dive
from fronts.cutting.found import Found, done
from fronts.cutting.generation import Generation
from fronts.cutting.lattice import Lattice
from fronts.cutting.placing import Choice, Pick
from fronts.cutting.pool import Pool
from fronts.cutting.proof import Bound
from fronts.cutting.sheet_filling import Filler, Manner, Split, corner_filler, sheet_by_sheet
from fronts.cutting.sheet_pricing import SheetPricer
from fronts.cutting.weighing import quick_bound

PASSES = 4_000
_SEED = 1
_PICKS: tuple[Pick, ...] = ("first", "snug", "strip")
_SPLITS: tuple[Split, ...] = ("rip", "cross", "short", "long", "big", "even")


def plan_sheets(lattice: Lattice, budget: Budget) -> Found:
    """The best packing of sheets within the budget, never worse than the first quick one."""
    search = Search(lattice, budget)
    search.passes(budget.share(0.25))
    search.strips(budget.share(0.2))
    if not search.done:
        search.generate(budget.share(0.5))
    if not search.done:
        search.best = search.pool.cover(search.best, search.bound.cost, budget.left, 20_000)
    return Found(search.best, search.bound)


class Search:
    """The best packing so far, the bound, and the pool that they come from."""

    def __init__(self, lattice: Lattice, budget: Budget) -> None:
        self.lattice, self.budget = lattice, budget
        self.pool = Pool(lattice)
        self.pricer = SheetPricer(lattice)
        self._passes = _passes(lattice)
        first = self._filled(corner_filler(lattice, *next(self._passes)), None)
        self.best = first
        self.bound: Bound = quick_bound(lattice, col.cost(first, lattice.boards))

    @property
    def done(self) -> bool:
        """Whether the best is proved the least."""
        return done(self.best, self.bound, self.lattice)

    def passes(self, budget: Budget) -> None:
        """Corner after corner, in many orders and manners."""
        for order, manner in self._passes:
            if budget.over or self.done:
                return
            self._keep(self._filled(corner_filler(self.lattice, order, manner), budget))

    def strips(self, budget: Budget) -> None:
        """Strip after strip, with weights that favour what was hard to place."""
        areas = [item.area for item in self.lattice.items]
        random = Random(_SEED)
        largest = max(areas)
        for turn in range(PASSES):
            if budget.over or self.done:
                return
            power = (0.0, 0.1, 0.2, 0.05)[turn % 4]
            shake = 0.0 if turn < 8 else 0.15
            weights = [
                int(a * (1 + power * a / largest * 2) * (1 + random.uniform(0, shake)) * 16) + 1
                for a in areas
            ]
            self._keep(self._filled(self._strip_filler(weights, turn // 4 % 2), budget))

    def generate(self, budget: Budget) -> None:
        """Let the solver's prices ask for better sheets, then dive for whole ones."""
        lattice = self.lattice
        generation = Generation(lattice, self.pricer, [b.cost for b in lattice.boards])
        generation.add(self.pool.columns.values())
        generation.solve(budget.share(0.5), 200)
        self.pool.add(generation.columns)

        def finish(left: list[int], open_boards: list[int | None]) -> list[tuple[Column, int]]:
            order = sorted(range(len(left)), key=lambda i: -lattice.items[i].area)
            filler = corner_filler(lattice, order, Manner("first", "big"))
            return sheet_by_sheet(lattice, filler, left, open_boards)

        for skip in ((), (1,), (0, 1), (2,)):
            if budget.over or self.done:
                break
            dive = Dive(generation, finish, self.bound.cost, budget, skip, rounds=4)
            self.best = dive.run(self.best)
        self.pool.add(generation.columns)

    def _strip_filler(self, weights: list[int], across: int) -> Filler:
        order = sorted(range(len(weights)), key=lambda i: -weights[i])
        choices = [Choice(self.lattice, b, order) for b in range(len(self.lattice.boards))]
        return lambda board, left: self.pricer.strips[board][across].fill(
            weights, left, choices[board]
        )

    def _filled(self, filler: Filler, budget: Budget | None) -> Packing:
        left = [item.demand for item in self.lattice.items]
        open_boards = [board.limit for board in self.lattice.boards]
        found = sheet_by_sheet(self.lattice, filler, left, open_boards, budget)
        self.pool.add(column for column, _ in found)
        return col.packing(found, self.lattice)

    def _keep(self, found: Packing) -> None:
        self.best = min(self.best, found, key=lambda p: col.rank(p, self.lattice))


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

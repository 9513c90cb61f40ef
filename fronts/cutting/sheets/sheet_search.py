"""The fewest sheets: quick plans feed a pool of patterns, the duals ask for better ones.

Few parts are settled exactly at once. Otherwise bounds come first, the cheap ones before the dear;
then column generation, diving and the restricted master heuristic take turns until the best plan
is proved the least or the work is done.
"""

from collections.abc import Iterator
from functools import cached_property
from itertools import count, cycle, product
from random import Random

from fronts.cutting import patterns
from fronts.cutting.bounds.conservative_scales import ScalePair, scale_pair
from fronts.cutting.bounds.dual_feasible import quick_bound
from fronts.cutting.bounds.guillotine_knapsack import GuillotineKnapsack
from fronts.cutting.bounds.lower_bound import LowerBound, strongest
from fronts.cutting.budget import Budget
from fronts.cutting.column_generation import ColumnGeneration
from fronts.cutting.diving_heuristic import SKIPS, DivingHeuristic
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.pattern_pool import PatternPool
from fronts.cutting.patterns import Packing, Pattern
from fronts.cutting.search_result import SearchResult, proved_least
from fronts.cutting.sheets.candidates import Candidates, Pick
from fronts.cutting.sheets.capped_duals import CappedDuals
from fronts.cutting.sheets.constructive_heuristic import (
    Filler,
    FillRule,
    Split,
    corner_filler,
    sheet_by_sheet,
)
from fronts.cutting.sheets.exact_search import settled
from fronts.cutting.sheets.pattern_pricing import PatternPricer
from fronts.cutting.sheets.strip_packing import shares
from fronts.solver import IntegerLimits

EASE, SURE = 1.1, 0.7
"""How a descent goes (see `DivingHeuristic`); measured on made kitchens within 2 s."""
DIVES, DIVE_ROUNDS = 3, 6
"""Descents before anything else is tried again, and rounds of pricing at each step of one."""
WIDENED = 4
"""How often the whole choice may try more sheets in a row."""
PASSES = 4_000
ROUNDS = 40
NODES = 20_000
FEW, REPEATS = 40, 1.5
"""Sheets that may repeat a part for ever bound well where parts are few, or do repeat."""
_SEED = 1
_PICKS: tuple[Pick, ...] = ("first", "snug", "strip")
_SPLITS: tuple[Split, ...] = ("rip", "cross", "short", "long", "big", "even")


def plan_sheets(problem: IntegerProblem, budget: Budget) -> SearchResult:
    """The best packing of sheets within the budget, never worse than the first quick one."""
    search = SheetSearch(problem)
    search.passes(budget.share(0.03))
    search.strips(budget.share(0.03))
    search.settle(budget.share(0.6))
    search.bound_by_scales(budget.share(0.3))
    search.bound_by_cuts(budget.share(0.3))
    search.generate(budget.share(0.2))
    search.bound_by_heavy_patterns(budget.share(0.3))
    for _ in range(ROUNDS):
        search.dive(budget.share(0.7))
        search.choose(budget.share(0.5))
        search.bound_by_heavy_patterns(budget.share(0.3))
        search.bound_by_scales(budget.share(0.3))
        search.passes(budget.share(0.05))
        search.strips(budget.share(0.05))
        search.generate(budget.share(0.2))
        if search.proved or budget.over:
            break
    search.choose(budget)
    return SearchResult(search.best, search.bound)


class SheetSearch:
    """The best packing so far, the bound, and the pool that they come from."""

    def __init__(self, problem: IntegerProblem) -> None:
        self.problem = problem
        self._random, self._turns = Random(_SEED), count()  # noqa: S311 (same each time)
        self.pool = PatternPool(problem)
        self.pricer = PatternPricer(problem)
        self.generation: ColumnGeneration | None = None
        self.weights: list[int] = []
        self.scales: ScalePair | None = None
        self._sides = iter((False, True))
        items = problem.items
        self._repeats = len(items) <= FEW or sum(i.demand for i in items) > REPEATS * len(items)
        self._skips = cycle(SKIPS)
        self._until: Budget | None = None
        self._passes = _passes(problem)
        first = self._filled(corner_filler(problem, *next(self._passes)), None)
        self.best = first
        self.bound: LowerBound = quick_bound(problem, patterns.cost(first, problem.boards))

    @property
    def proved(self) -> bool:
        """Whether the best is proved the least."""
        return proved_least(self.best, self.bound, self.problem)

    def passes(self, budget: Budget) -> None:
        """Corner after corner, in many orders and manners."""
        for order, rule in self._passes:
            if budget.over or self.proved:
                return
            self._keep(self._filled(corner_filler(self.problem, order, rule), budget))

    def strips(self, budget: Budget) -> None:
        """Strip after strip, with weights that favour what was hard to place."""
        areas = shares(self.problem)
        largest = max(areas)
        for turn in self._turns:
            if budget.over or self.proved or turn >= PASSES:
                return
            power = (0.0, 0.1, 0.2, 0.05)[turn % 4]
            shake = 0.0 if turn < 8 else 0.15
            weights = [
                int(a * (1 + power * a / largest * 2) * (1 + self._random.uniform(0, shake)) * 16)
                + 1
                for a in areas
            ]
            self._keep(self._filled(self._strip_filler(weights, turn // 4 % 2), budget))

    def settle(self, budget: Budget) -> None:
        """Few parts: look at every way of cutting them."""
        if not (self.proved or budget.over):
            result = settled(self.problem, SearchResult(self.best, self.bound), budget)
            self.best, self.bound = result.packing, result.bound

    def generate(self, budget: Budget) -> None:
        """Let the solver's prices ask for better sheets."""
        if self.proved or budget.over:
            return
        if self.generation is None:
            self.generation = ColumnGeneration(self.problem, self.pricer)
        self.generation.add(self.pool.columns.values())
        self.pricer.hurried = False
        relaxed = self.generation.solve(budget, 200)
        self.pool.add(self.generation.columns)
        if relaxed is not None:
            self.weights = relaxed.weights

    def bound_by_scales(self, budget: Budget) -> None:
        """Two scales made for these parts; each call begins from another side."""
        for across_first in self._sides:
            if self.proved or budget.over:
                return
            boards = self.problem.boards
            pair = scale_pair(self.problem, boards, budget, across_first=across_first)
            bound = pair.bound(boards)
            if self.scales is None or bound.cost > self.bound.cost:
                self.scales = pair
            self.bound = strongest([self.bound, bound])
            if CappedDuals.serves(self.problem, pair):
                return  # exact pricing goes on from here first

    def bound_by_heavy_patterns(self, budget: Budget) -> None:
        """The linear program over all patterns, where that may prove the best plan the least."""
        if self.proved or self.scales is None or not CappedDuals.serves(self.problem, self.scales):
            return
        duals = CappedDuals(self.problem, self.scales, self.pool.columns.values(), budget)
        self.bound = strongest([self.bound, duals.bound(self.bound.cost + 1)])

    def bound_by_cuts(self, budget: Budget) -> None:
        """The linear program over every sheet that cuts can make, where parts repeat enough."""
        if self.proved or budget.over or not self._repeats:
            return
        pricer = GuillotineKnapsack(self.problem)
        if not pricer.usable:
            return
        generation = ColumnGeneration(self.problem, pricer)
        generation.add(self.pool.columns.values())
        relaxed = generation.solve(
            budget, 400, enough=patterns.cost(self.best, self.problem.boards), hasty=True
        )
        self.pool.add(pricer.packed)
        if relaxed is not None:
            self.bound = strongest([self.bound, relaxed.bound])

    def choose(self, budget: Budget) -> None:
        """The best whole choice from the pool."""
        for _ in range(WIDENED):
            if self.proved or budget.over:
                break
            limits = IntegerLimits(budget.seconds, NODES)
            self.best = self.pool.cover(self.best, self.bound.cost, limits, self.weights)
            if not self.pool.widen():
                break

    def dive(self, budget: Budget) -> None:
        """From the fractions of the linear program down to whole sheets."""
        if self.generation is None:
            return
        self.generation.add(self.pool.columns.values())
        self._until = budget
        self.pricer.hurried = True
        for _ in range(DIVES):
            if budget.over or self.proved:
                break
            skip = next(self._skips)
            dive = DivingHeuristic(
                self.generation,
                self._finish,
                self.bound.cost,
                budget,
                skip,
                DIVE_ROUNDS,
                EASE,
                SURE,
            )
            self.best = dive.run(self.best)
        self.pool.add(self.generation.columns)

    def _finish(self, left: list[int], open_boards: list[int | None]) -> list[tuple[Pattern, int]]:
        """What is left, in the quickest ways; the best of them."""
        areas, fillers = self._finishers
        tries: list[tuple[int, int, int, list[tuple[Pattern, int]]]] = []
        for filler in fillers:
            rest, boards = list(left), list(open_boards)
            sheets = sheet_by_sheet(self.problem, filler, rest, boards, self._until)
            lacking = sum(n * area for n, area in zip(rest, areas, strict=True))
            cost = sum(self.problem.boards[c.board].cost * n for c, n in sheets)
            tries.append((lacking, cost, len(tries), sheets))
        return min(tries)[3]

    @cached_property
    def _finishers(self) -> tuple[list[int], list[Filler]]:
        """The parts' shares of area, and the quickest ways to lay them, the largest first."""
        areas = shares(self.problem)
        order = sorted(range(len(areas)), key=lambda i: -areas[i])
        fillers = [corner_filler(self.problem, order, FillRule("first", "big"))]
        if self.pricer.small:
            fillers += [self._strip_filler(areas, across) for across in (0, 1)]
        return areas, fillers

    def _strip_filler(self, weights: list[int], across: int) -> Filler:
        order = sorted(range(len(weights)), key=lambda i: -weights[i])
        choices = [Candidates(self.problem, b, order) for b in range(len(self.problem.boards))]
        return lambda board, left: self.pricer.strips[board][across].fill(
            weights, left, choices[board]
        )

    def _filled(self, filler: Filler, budget: Budget | None) -> Packing:
        left = [item.demand for item in self.problem.items]
        open_boards = [board.limit for board in self.problem.boards]
        sheets = sheet_by_sheet(self.problem, filler, left, open_boards, budget)
        self.pool.add(column for column, _ in sheets)
        return patterns.packing(sheets, self.problem)

    def _keep(self, packing: Packing) -> None:
        self.best = min(self.best, packing, key=lambda p: patterns.rank(p, self.problem))


def _passes(problem: IntegerProblem) -> Iterator[tuple[list[int], FillRule]]:
    """Orders and manners, the plain ones first, then shaken ones: always the same sequence."""
    items = problem.items
    sizes = [max(way for ways in item.orientations for way in ways) for item in items]
    keys = (
        [s.length * s.width for s in sizes],
        [max(s.length, s.width) for s in sizes],
        [s.length for s in sizes],
        [s.width for s in sizes],
        [min(s.length, s.width) for s in sizes],
        [s.length + s.width for s in sizes],
    )
    rules = [FillRule(pick, split) for pick, split in product(_PICKS, _SPLITS)]
    for key in keys:
        order = sorted(range(len(items)), key=lambda i: -key[i])
        for rule in rules:
            yield order, rule
    random = Random(_SEED)  # noqa: S311 (same each time)
    for _ in range(PASSES):
        key = keys[random.randrange(len(keys))]
        spread = random.choice((0.1, 0.3, 0.6))
        shaken = [k * (1 + random.uniform(-spread, spread)) for k in key]
        order = sorted(range(len(items)), key=lambda i: -shaken[i])
        yield order, rules[random.randrange(len(rules))]

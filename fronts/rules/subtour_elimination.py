"""The shortest open path through many points, by integer programs with ever more cuts.

One unknown for every pair of points, how often the path goes between them: each point has one or
two pairs, there is one pair less than points, and points that a ring goes round are cut off from
being one once they turn up (Dantzig, Fulkerson and Johnson, 1954, "Solution of a large-scale
traveling-salesman problem"). What HiGHS answers costs at most what any order costs: an answer
without a ring is the cheapest order, any other a bound. Its numbers are floats, so that costs are
counted again in whole numbers, and an answer only counts where HiGHS says that none is cheaper.
After `MOST_ROUNDS` the best order found by then stays, with the bound.
"""

from collections.abc import Iterator, Sequence
from itertools import combinations

from fronts.rules.shortest_path import Costs, Path, path_cost
from fronts.rules.tied import together
from fronts.solver import Entry, IntegerLimits, solve_integer

MOST_ROUNDS = 40
LIMITS = IntegerLimits(seconds=20)
"""Of one integer program: its nodes end it before the clock."""
STARTS = 8
"""Points from which a quick order is begun."""


def path_by_cuts(costs: Costs) -> Path:
    """The cheapest order; of at least two points."""
    best, bound = _quick_order(costs), 0
    pairs = list(combinations(range(len(costs)), 2))
    rings: list[frozenset[int]] = []
    for _ in range(MOST_ROUNDS):
        chosen = _cheapest_pairs(costs, pairs, rings)
        if chosen is None:
            break
        bound = max(bound, sum(costs[one][two] for one, two in chosen))
        found = list(_rings(chosen, len(costs)))
        if not found:
            best = _order_of(chosen, len(costs))
        if path_cost(best, costs) <= bound:
            break
        rings += found
    if best[0] > best[-1]:
        best = best[::-1]
    return Path(tuple(best), path_cost(best, costs), bound)


def _cheapest_pairs(
    costs: Costs, pairs: Sequence[tuple[int, int]], rings: Sequence[frozenset[int]]
) -> list[tuple[int, int]] | None:
    """The cheapest pairs that keep to all that is known, one as often as it is gone.

    None where HiGHS does not say that nothing is cheaper.
    """
    count = len(costs)
    rows: list[tuple[float, float]] = [(1, 2)] * count
    rows.append((count - 1, count - 1))
    rows += [(0, len(ring) - 1) for ring in rings]
    columns: list[list[Entry]] = [
        [(one, 1.0), (two, 1.0), (count, 1.0)]
        + [(count + 1 + at, 1.0) for at, ring in enumerate(rings) if one in ring and two in ring]
        for one, two in pairs
    ]
    answer = solve_integer([costs[one][two] for one, two in pairs], columns, rows, LIMITS)
    if answer.amounts is None or not answer.is_proven:
        return None
    often = zip(pairs, answer.amounts, strict=True)
    return [pair for pair, amount in often for _ in range(round(amount))]


def _rings(chosen: Sequence[tuple[int, int]], count: int) -> Iterator[frozenset[int]]:
    """Points that hang together by as many pairs as there are of them, or more."""
    for part in map(frozenset, together(range(count), chosen)):
        if sum(one in part for one, _ in chosen) >= len(part):
            yield part


def _order_of(chosen: Sequence[tuple[int, int]], count: int) -> list[int]:
    """The points along the one path that the pairs make."""
    beside: dict[int, list[int]] = {at: [] for at in range(count)}
    for one, two in chosen:
        beside[one].append(two)
        beside[two].append(one)
    order = [min(at for at in beside if len(beside[at]) == 1)]
    while len(order) < count:
        order.append(next(at for at in beside[order[-1]] if at not in order[-2:]))
    return order


def _quick_order(costs: Costs) -> list[int]:
    """To the nearest point again and again, then mended; the best of a few beginnings."""
    starts = range(0, len(costs), max(1, len(costs) // STARTS))
    orders = [_mended(_to_the_nearest(start, costs), costs) for start in starts]
    return min(orders, key=lambda order: (path_cost(order, costs), order))


def _to_the_nearest(start: int, costs: Costs) -> list[int]:
    order, left = [start], set(range(len(costs))) - {start}
    while left:
        nearest = min(left, key=lambda to: (costs[order[-1]][to], to))
        order.append(nearest)
        left.remove(nearest)
    return order


def _mended(order: list[int], costs: Costs) -> list[int]:
    """A stretch turned round wherever that is cheaper, until nowhere it is (2-opt)."""
    better = True
    while better:
        better = False
        for first, last in combinations(range(len(order)), 2):
            if _saved(order, first, last, costs) > 0:
                order = order[:first] + order[first : last + 1][::-1] + order[last + 1 :]
                better = True
    return order


def _saved(order: Sequence[int], first: int, last: int, costs: Costs) -> int:
    """By how much it is cheaper to go through a stretch the other way: its ends alone differ."""
    start, end, saved = order[first], order[last], 0
    if first > 0:
        before = order[first - 1]
        saved += costs[before][start] - costs[before][end]
    if last + 1 < len(order):
        after = order[last + 1]
        saved += costs[end][after] - costs[start][after]
    return saved

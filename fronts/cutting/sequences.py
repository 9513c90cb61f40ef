"""What runs on from sheet to sheet: no sheet of a sequence holds what belongs between others'.

The search packs blocks wherever they fit. Where a sheet then holds the first and the last block
of a sequence, and another what lies between, blocks as large as each other change places; where
that does not help, the last one gets a sheet of its own. So the plan may cut more sheets than the
bound, which is that of the blocks without their order, and says how many.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import combinations, pairwise
from typing import TypeAlias

from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.model import Layout, Request
from fronts.cutting.patterns import Packing, Pattern, pattern_of

Held: TypeAlias = Mapping[str, tuple[int, int]]
"""The sequences on a sheet, each from which number to which."""


@dataclass(frozen=True, slots=True)
class SheetOrder:
    """Sheets in order, by index; `culprit` holds too much of sequence `name` for any order."""

    order: tuple[int, ...]
    culprit: int | None = None
    name: str = ""


def in_sequence(layouts: Iterable[Layout]) -> tuple[Layout, ...]:
    """The layouts, those with sequences first, so that each sequence runs from sheet to sheet."""
    kept = tuple(layouts)
    first = [layout for layout in kept if _held(layout)]
    found = sheet_order([_held(layout) for layout in first])
    rest = [index for index in range(len(first)) if index not in found.order]
    ordered = [first[index] for index in (*found.order, *rest)]
    return (*ordered, *(layout for layout in kept if not _held(layout)))


def kept_in_sequence(packing: Packing, problem: IntegerProblem, request: Request) -> Packing:
    """The packing so that its sheets have an order in which every sequence runs on."""
    spans = dict(_spans(problem, request))
    chosen = list(packing.chosen)
    while spans:
        found = sheet_order([_held_by(pattern, spans) for pattern, _ in chosen])
        if found.culprit is None or not (
            _swapped(chosen, spans) or _pulled(chosen, found, spans, problem)
        ):
            break
    return replace(packing, chosen=tuple(chosen)) if spans else packing


def sheet_order(held: Sequence[Held]) -> SheetOrder:
    """The sheets so that every sequence runs on, each begun one ended where that can be."""
    before: dict[int, set[int]] = {index: set() for index in range(len(held))}
    for name in dict.fromkeys(name for one in held for name in one):
        holders = sorted((one[name], index) for index, one in enumerate(held) if name in one)
        for (span, sheet), (following, after) in pairwise(holders):
            if span[1] > following[0]:
                return SheetOrder((), sheet, name)
            before[after].add(sheet)
    order: list[int] = []
    while before:
        ready = [index for index, earlier in before.items() if not earlier & before.keys()]
        if not ready:
            culprit = max(before, key=lambda index: len(held[index]))
            return SheetOrder(tuple(order), culprit, max(held[culprit]))
        begun = held[order[-1]].keys() if order else set()
        order.append(min(ready, key=lambda index: (not begun & held[index].keys(), index)))
        del before[order[-1]]
    return SheetOrder(tuple(order))


def _held(layout: Layout) -> Held:
    numbers: dict[str, list[int]] = {}
    for placed in layout.placed:
        if placed.sequence is not None:
            numbers.setdefault(placed.sequence, []).append(placed.order)
    return {name: (min(orders), max(orders)) for name, orders in numbers.items()}


_Spans: TypeAlias = Mapping[int, tuple[str, int, int]]


def _spans(problem: IntegerProblem, request: Request) -> Iterator[tuple[int, tuple[str, int, int]]]:
    """The items that are blocks of a sequence, with its name and their numbers."""
    for index, item in enumerate(problem.items):
        parts = [request.parts[part] for part in item.units[0].parts]
        if parts[0].sequence is not None:
            orders = [part.order for part in parts]
            yield index, (parts[0].sequence, min(orders), max(orders))


def _held_by(pattern: Pattern, spans: _Spans) -> Held:
    held: dict[str, tuple[int, int]] = {}
    for item, _ in pattern.yields:
        if item in spans:
            name, low, high = spans[item]
            least, most = held.get(name, (low, high))
            held[name] = min(least, low), max(most, high)
    return held


def _swapped(chosen: list[tuple[Pattern, int]], spans: _Spans) -> bool:
    """Let two blocks of one size and sequence change places where less is out of order then."""
    places = [
        (sheet, spot) for sheet, (pattern, _) in enumerate(chosen)
        for spot in pattern.spots if spot.item in spans
    ]  # fmt: skip
    now = _tangled(chosen, spans)
    for (one, spot), (other, its) in combinations(places, 2):
        same = spot.orientation[:2] == its.orientation[:2]
        if one == other or not same or spans[spot.item][0] != spans[its.item][0]:
            continue
        tried = list(chosen)
        tried[one] = _with(chosen[one][0], spot, spot._replace(item=its.item)), 1
        tried[other] = _with(chosen[other][0], its, its._replace(item=spot.item)), 1
        if _tangled(tried, spans) < now:
            chosen[:] = tried
            return True
    return False


def _pulled(
    chosen: list[tuple[Pattern, int]], found: SheetOrder, spans: _Spans, problem: IntegerProblem
) -> bool:
    """Give the last block of a sequence that is in the way a sheet of its own."""
    if found.culprit is None:
        return False
    pattern = chosen[found.culprit][0]
    own = [spot for spot in pattern.spots if spans.get(spot.item, ("",))[0] == found.name]
    spot = max(own, key=lambda spot: spans[spot.item][1])
    ways = problem.items[spot.item].orientations
    free = [b for b, board in enumerate(problem.boards) if board.limit is None and ways[b]]
    if not free:
        return False
    board = min(free, key=lambda b: problem.boards[b].cost)
    chosen[found.culprit] = _with(pattern, spot), 1
    chosen.append((pattern_of(board, [Spot(spot.item, 0, 0, ways[board][0])]), 1))
    return True


def _tangled(chosen: Sequence[tuple[Pattern, int]], spans: _Spans) -> int:
    """How many pairs of sheets hold numbers of a sequence that lie between each other's."""
    held = [_held_by(pattern, spans) for pattern, _ in chosen]
    return sum(
        max(one[name][0], other[name][0]) < min(one[name][1], other[name][1])
        for one, other in combinations(held, 2)
        for name in one.keys() & other.keys()
    )


def _with(pattern: Pattern, spot: Spot, *instead: Spot) -> Pattern:
    """The pattern with another spot, or none, in place of one of its own."""
    return pattern_of(pattern.board, [*(s for s in pattern.spots if s != spot), *instead])

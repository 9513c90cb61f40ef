"""Cutting patterns: a way of cutting one board, by how many of each item it yields.

A pattern is a column of the linear programs, and carries the places that show that it can be cut.
"""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from fronts.cutting.guillotine_tree import Spot
from fronts.cutting.integer_problem import BoardKind, IntegerProblem


@dataclass(frozen=True, slots=True)
class Pattern:
    """`spots` say where the items lie; on a stick they stand one after the other."""

    board: int
    yields: tuple[tuple[int, int], ...]
    spots: tuple[Spot, ...]


@dataclass(frozen=True, slots=True)
class Packing:
    """Columns with how often each is cut; `short` is what no board was left for."""

    chosen: tuple[tuple[Pattern, int], ...]
    short: tuple[tuple[int, int], ...] = ()


def pattern_of(board: int, spots: Iterable[Spot]) -> Pattern:
    """The column that these places make."""
    placed = tuple(spots)
    counted = Counter(spot.item for spot in placed)
    return Pattern(board, tuple(sorted(counted.items())), placed)


def area_of(spots: Iterable[Spot]) -> int:
    """The area that lies there, in whole units."""
    return sum(spot.orientation.length * spot.orientation.width for spot in spots)


def stick_pattern(
    board: int, counts: Iterable[tuple[int, int]], problem: IntegerProblem
) -> Pattern:
    """The column of a stick with these counts, the longest first."""
    ways = [(problem.items[item].orientations[board][0], item, n) for item, n in counts]
    spots: list[Spot] = []
    x = 0
    for way, item, n in sorted(ways, reverse=True):
        for _ in range(n):
            spots.append(Spot(item, x, 0, way))
            x += way.length
    return pattern_of(board, spots)


def cost(packing: Packing, boards: Sequence[BoardKind]) -> int:
    """What the boards of a packing cost (their number, where none has a price)."""
    return sum(boards[c.board].cost * n for c, n in packing.chosen)


def missing(packing: Packing, problem: IntegerProblem) -> int:
    """The area, in whole units, that found no board."""
    return sum(problem.items[item].area * n for item, n in packing.short)


def rank(packing: Packing, problem: IntegerProblem) -> tuple[int, int, int]:
    """What makes one packing better than another: least missing, then cost, then stock area."""
    boards = problem.boards
    area = sum(boards[c.board].length * boards[c.board].width * n for c, n in packing.chosen)
    return missing(packing, problem), cost(packing, boards), area


def packing(picked: Iterable[tuple[Pattern, int]], problem: IntegerProblem) -> Packing:
    """Exactly the parts asked for: surplus is left out, what is not covered is short."""
    left = [item.demand for item in problem.items]
    chosen: list[tuple[Pattern, int]] = []
    for whole, times in picked:
        while times > 0:
            trimmed = _within(whole, left)
            if not trimmed.spots:
                break
            often = min(times, *(left[i] // n for i, n in trimmed.yields))
            for item, n in trimmed.yields:
                left[item] -= n * often
            chosen.append((trimmed, often))
            times -= often
    short = tuple((i, n) for i, n in enumerate(left) if n > 0)
    return Packing(tuple(chosen), short)


def _within(whole: Pattern, left: Sequence[int]) -> Pattern:
    if all(n <= left[item] for item, n in whole.yields):
        return whole
    room = {item: left[item] for item, _ in whole.yields}
    spots: list[Spot] = []
    for spot in whole.spots:
        if room[spot.item] > 0:
            room[spot.item] -= 1
            spots.append(spot)
    return pattern_of(whole.board, spots)

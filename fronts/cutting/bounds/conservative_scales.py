"""Bounds for sheets from two scales made for the parts at hand: one along the board, one across.

A conservative scale gives every size a weight such that parts that fit on one line together weigh
at most a full line (Fekete and Schepers 2004, "A general framework for bounds for
higher-dimensional orthogonal packing problems"). The product of a scale along and a scale across
is then a weight of which no board holds more than its lines do, however it is packed. The best
scale along depends on that across, and the other way round: so each is improved in turn.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from fronts.cutting.bounds.lower_bound import LowerBound, farley_bound
from fronts.cutting.bounds.scaled_side import FULL, Floats, ScaledSide
from fronts.cutting.budget import Budget
from fronts.cutting.integer_problem import BoardKind, IntegerProblem

TURNS = 8
"""How often a pair of scales is improved, at most."""
_GAIN = 1e-4


@dataclass(frozen=True, slots=True)
class ScalePair:
    """A scale along the boards and one across: whole weights of every way that an item may lie."""

    along: ScaledSide
    across: ScaledSide
    lengths: list[int]
    widths: list[int]

    def weights(self) -> list[int]:
        """What each item weighs at least, whichever way it lies."""
        least: dict[int, int] = {}
        for item, one, other in zip(self.along.items, self.lengths, self.widths, strict=True):
            least[item] = min(least.get(item, one * other), one * other)
        return [least[item] for item in range(len(self.along.demand))]

    def bound(self, boards: Sequence[BoardKind]) -> LowerBound:
        """What the two scales prove, in whole numbers."""
        total = sum(w * n for w, n in zip(self.weights(), self.along.demand, strict=True))
        return farley_bound(total, self.carried(), boards)

    def carried(self) -> list[int]:
        """What each board carries at most, in whole weight."""
        lines = self.along.carried(self.lengths), self.across.carried(self.widths)
        return [one * other for one, other in zip(*lines, strict=True)]


def scale_pair(
    problem: IntegerProblem, boards: Sequence[BoardKind], budget: Budget, *, across_first: bool
) -> ScalePair:
    """A pair of scales, improved from the plain sizes along the boards, or from those across."""
    ways = [(index, *size) for index, item in enumerate(problem.items) for size in item.bound_sizes]
    demand = [item.demand for item in problem.items]
    items = [item for item, _, _ in ways]
    along = ScaledSide(items, [length for _, length, _ in ways], demand, [b.length for b in boards])
    across = ScaledSide(items, [width for _, _, width in ways], demand, [b.width for b in boards])
    if across_first:
        widths, lengths = _improved(across, along, budget)
    else:
        lengths, widths = _improved(along, across, budget)
    return ScalePair(along, across, _whole(lengths), _whole(widths))


def _improved(first: ScaledSide, second: ScaledSide, budget: Budget) -> tuple[Floats, Floats]:
    """The two scales, each in turn the best for the other, from the plain sizes of `first` on."""
    one = other = np.array(first.sizes) / first.longest
    most = 0.0
    for turn in range(TURNS):
        if turn % 2 == 0:
            value, other = second.best(one, budget)
        else:
            value, one = first.best(other, budget)
        if value < most + _GAIN:
            break
        most = value
    return one, other


def _whole(scale: Floats) -> list[int]:
    return [int(weight) for weight in scale * FULL]

"""Lower bounds that hold, from weights: whole numbers and exact ratios only.

Give every item a weight. If no board of kind b can hold more than `most[b]` in weight, then a plan
of n_b boards carries at most the sum of most[b] * n_b, which must reach the weight of all parts
(Farley 1990, "A note on bounding a class of linear programming problems"; with limited stock it is
linear programming duality).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from fronts.cutting.integer_problem import BoardKind


@dataclass(frozen=True, slots=True)
class LowerBound:
    """A proven least cost; `impossible` proves that the stock cannot hold the parts at all."""

    cost: int
    impossible: bool = False


NOTHING = LowerBound(0)


def farley_bound(total: int, most: Sequence[int], boards: Sequence[BoardKind]) -> LowerBound:
    """The bound on cost that weights prove: `total` of all parts, at most `most[b]` a board."""
    held = [_held(b, m, total) for b, m in zip(boards, most, strict=True)]
    if None not in held and sum(h for h in held if h is not None) < total:
        return LowerBound(0, impossible=True)
    return LowerBound(ceil(_cheapest(total, most, boards)))


def strongest(bounds: Sequence[LowerBound]) -> LowerBound:
    """The strongest of several bounds on the same thing."""
    return LowerBound(max((b.cost for b in bounds), default=0), any(b.impossible for b in bounds))


def _held(board: BoardKind, most: int, total: int) -> int | None:
    """The weight that all boards of a kind hold together; None where there is no end of them."""
    if board.limit is not None:
        return board.limit * most
    return None if most > 0 else 0


def _cheapest(total: int, most: Sequence[int], boards: Sequence[BoardKind]) -> Fraction:
    """Fill the best value first, in fractions of boards: no plan is cheaper."""
    left, spent = Fraction(total), Fraction(0)
    usable = [(b, m) for b, m in zip(boards, most, strict=True) if m > 0]
    for board, weight in sorted(usable, key=lambda pair: Fraction(pair[0].cost, pair[1])):
        if left <= 0:
            break
        needed = left / weight
        often = needed if board.limit is None else min(needed, Fraction(board.limit))
        spent += often * board.cost
        left -= often * weight
    return spent

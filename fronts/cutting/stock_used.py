"""What stock a plan uses up, and which share of it each part is charged with."""

from collections import defaultdict
from dataclasses import dataclass
from fractions import Fraction

from fronts.cutting.model import Placement, Plan, StockSize
from fronts.rules.lengths import Mm


@dataclass(frozen=True, slots=True)
class StockUsed:
    """So many sheets or sticks of one size; `shares` of them by the labels of parts, `count` in
    all: what falls off is shared out by area, or length (common practice, no source)."""

    length: Mm
    width: Mm | None
    count: int
    shares: dict[str, Fraction]


def stock_bought(plan: Plan) -> list[StockUsed]:
    """The stock that is bought for a plan; of what is limited, the shop has it already."""
    counts: dict[tuple[Mm, Mm | None], int] = defaultdict(int)
    shares: dict[tuple[Mm, Mm | None], dict[str, Fraction]] = defaultdict(dict)
    for layout in plan.layouts:
        if layout.stock.count is not None:
            continue
        size = layout.stock.length, layout.stock.width
        counts[size] += layout.count
        whole = sum((_area(each) for each in layout.placed), Fraction(0))
        for each in layout.placed:
            so_far = shares[size].get(each.part, Fraction(0))
            shares[size][each.part] = so_far + layout.count * _area(each) / whole
    return [
        StockUsed(length, width, count, shares[length, width])
        for (length, width), count in counts.items()
    ]


def _area(thing: Placement | StockSize) -> Fraction:
    return thing.length * (1 if thing.width is None else thing.width)

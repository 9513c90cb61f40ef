"""The same problem in whole numbers, without a saw.

Every part and every board grows by one kerf: then parts that touch are just one kerf apart, and
the kerf is out of the problem. A common denominator makes all lengths whole; the greatest common
divisor of parts and boards makes them small.
"""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from math import gcd, lcm
from typing import NamedTuple

from fronts.cutting.cut_units import CutUnit, may_lie, units
from fronts.cutting.model import Request, StockSize
from fronts.rules.lengths import Mm


class Orientation(NamedTuple):
    """A way for a part to lie on a board: its size along the board's length, and across."""

    length: int
    width: int
    turned: bool


@dataclass(frozen=True, slots=True)
class BoardKind:
    """A stock size between its trims, plus one kerf; a stick is one wide. `own`: an offcut."""

    length: int
    width: int
    limit: int | None
    cost: int
    own: bool = False


@dataclass(frozen=True, slots=True)
class Item:
    """Units of one size: `orientations[b]` are the ways that a plan may lay it on board b.

    `bound_orientations[b]` are those that a bound must allow for, the plan's among them.
    """

    demand: int
    orientations: tuple[tuple[Orientation, ...], ...]
    bound_orientations: tuple[tuple[Orientation, ...], ...]
    units: tuple[CutUnit, ...]

    @property
    def area(self) -> int:
        """Its area, the same whichever way it lies."""
        way = next(way for ways in self.bound_orientations for way in ways)
        return way.length * way.width

    @property
    def bound_sizes(self) -> list[tuple[int, int]]:
        """The sizes, along and across, that a bound must allow for, each once."""
        return sorted({way[:2] for ways in self.bound_orientations for way in ways})

    @property
    def length(self) -> int:
        """Its length on a stick, the same on whichever it fits."""
        return next(ways[0] for ways in self.orientations if ways).length


@dataclass(frozen=True, slots=True)
class IntegerProblem:
    """`step` is the whole unit in mm; costs are in `coin` of the stock's money."""

    boards: tuple[BoardKind, ...]
    items: tuple[Item, ...]
    step: Fraction
    coin: Fraction
    sticks: bool


def integer_problem(request: Request) -> IntegerProblem:
    """The request in whole numbers; every unit must fit some stock (`misfits` is empty)."""
    cut_units = units(request.parts, request.kerf)
    kerf = request.kerf
    usable = [_usable(stock, request.trim_of(stock), kerf) for stock in request.stock]
    sizes = [(u.length + kerf, u.width + kerf) for u in cut_units]
    step = _step([n for pair in (*usable, *sizes) for n in pair[: 1 if request.sticks else 2]])
    coin, costs = _costs(request.stock)
    boards = tuple(
        BoardKind(
            int(length / step), int(width / step) if width else 1, stock.count, cost, stock.own
        )
        for stock, (length, width), cost in zip(request.stock, usable, costs, strict=True)
    )
    groups: dict[object, list[CutUnit]] = defaultdict(list)
    kept: dict[
        object, tuple[tuple[tuple[Orientation, ...], ...], tuple[tuple[Orientation, ...], ...]]
    ] = {}
    for unit, (length, width) in zip(cut_units, sizes, strict=True):
        whole = int(length / step), 1 if request.sticks else int(width / step)
        ways = _orientations(unit, whole, boards, request)
        key = (*ways, unit.parts if unit.is_block else None)
        groups[key].append(unit)
        kept[key] = ways
    items = tuple(
        Item(sum(u.count for u in group), *kept[key], tuple(group)) for key, group in groups.items()
    )
    return IntegerProblem(boards, items, step, coin, request.sticks)


def _usable(stock: StockSize, trim: Mm, kerf: Mm) -> tuple[Mm, Mm | None]:
    grown = kerf - 2 * trim
    return stock.length + grown, None if stock.width is None else stock.width + grown


def _step(sizes: Iterable[Fraction | None]) -> Fraction:
    wanted = [size for size in sizes if size is not None]
    scale = lcm(*(size.denominator for size in wanted))
    return Fraction(gcd(*(int(size * scale) for size in wanted)), scale)


def _costs(stock: tuple[StockSize, ...]) -> tuple[Fraction, list[int]]:
    """What each size costs: a piece, its price, or nothing where the shop has it."""
    if all(s.price is None for s in stock):
        return Fraction(1), [int(not s.own) for s in stock]
    prices = [Fraction(0) if s.own else s.price or Fraction(0) for s in stock]
    scale = lcm(*(price.denominator for price in prices))
    whole = [int(price * scale) for price in prices]
    shared = gcd(*whole) or 1
    return Fraction(shared, scale), [price // shared for price in whole]


def _orientations(
    unit: CutUnit, size: tuple[int, int], boards: tuple[BoardKind, ...], request: Request
) -> tuple[tuple[tuple[Orientation, ...], ...], tuple[tuple[Orientation, ...], ...]]:
    """The ways that a unit may lie on each board: kept to the grain, and as loosely as any may."""
    straight, turned = Orientation(*size, turned=False), Orientation(size[1], size[0], turned=True)
    if request.sticks:
        both = tuple((straight,) if straight.length <= b.length else () for b in boards)
        return both, both
    loose = []
    for board, stock in zip(boards, request.stock, strict=True):
        ways = [
            way
            for way in (straight, turned)
            if may_lie(unit, stock, turned=way.turned)
            and way.length <= board.length
            and way.width <= board.width
        ]
        loose.append(tuple(ways[:1] if size[0] == size[1] else ways))
    strict = [
        tuple(w for w in ways if stock.grain or unit.grain is None or w.turned == _resting(unit))
        for ways, stock in zip(loose, request.stock, strict=True)
    ]
    return tuple(strict if any(strict) else loose), tuple(loose)


def _resting(unit: CutUnit) -> bool:
    """On stock without grain, a part with grain lies as if the grain ran along the length."""
    return unit.grain == "width" and unit.length != unit.width

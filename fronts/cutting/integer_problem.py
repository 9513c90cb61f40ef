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

from fronts.cutting.model import Part, Request, Stock
from fronts.cutting.model import Way as Side
from fronts.rules.lengths import Mm


class Lie(NamedTuple):
    """A way for a part to lie on a board: its size along the board's length, and across."""

    length: int
    width: int
    turned: bool


@dataclass(frozen=True, slots=True)
class Board:
    """A stock size between its trims, plus one kerf; a stick is one wide."""

    length: int
    width: int
    limit: int | None
    cost: int


@dataclass(frozen=True, slots=True)
class Unit:
    """What is cut as one: a part, or a block of parts stacked along its length or width."""

    length: Mm
    width: Mm
    count: int
    grain: Side | None
    parts: tuple[int, ...]
    stacked: Side = "length"


@dataclass(frozen=True, slots=True)
class Item:
    """Units of one size. `lies[b]` are the ways that a plan may lay it on board b.

    `loose[b]` are those that a bound must allow for; it holds every one of `lies[b]`.
    """

    demand: int
    lies: tuple[tuple[Lie, ...], ...]
    loose: tuple[tuple[Lie, ...], ...]
    units: tuple[Unit, ...]

    @property
    def area(self) -> int:
        """Lattice area, the same whichever way it lies."""
        lie = next(lie for lies in self.loose for lie in lies)
        return lie.length * lie.width


@dataclass(frozen=True, slots=True)
class Lattice:
    """`step` is one lattice unit in mm; costs are in `coin` of the stock's money."""

    boards: tuple[Board, ...]
    items: tuple[Item, ...]
    step: Fraction
    coin: Fraction
    sticks: bool


def lattice(request: Request) -> Lattice:
    """The request in whole numbers; every unit must fit some stock (`misfits` is empty)."""
    found = units(request.parts, request.kerf)
    kerf, trim = request.kerf, request.trim
    usable = [(s.length - 2 * trim + kerf, _across(s, trim, kerf)) for s in request.stock]
    sizes = [(u.length + kerf, u.width + kerf) for u in found]
    step = _step([n for pair in (*usable, *sizes) for n in pair[: 1 if request.sticks else 2]])
    coin, costs = _costs(request.stock)
    boards = tuple(
        Board(int(length / step), int(width / step) if width else 1, stock.count, cost)
        for stock, (length, width), cost in zip(request.stock, usable, costs, strict=True)
    )
    groups: dict[object, list[Unit]] = defaultdict(list)
    kept: dict[object, tuple[tuple[tuple[Lie, ...], ...], tuple[tuple[Lie, ...], ...]]] = {}
    for unit, (length, width) in zip(found, sizes, strict=True):
        whole = int(length / step), 1 if request.sticks else int(width / step)
        lies = _lies(unit, whole, boards, request)
        key = (*lies, unit.parts if len(unit.parts) > 1 else None)
        groups[key].append(unit)
        kept[key] = lies
    items = tuple(
        Item(sum(u.count for u in group), *kept[key], tuple(group)) for key, group in groups.items()
    )
    return Lattice(boards, items, step, coin, request.sticks)


def units(parts: tuple[Part, ...], kerf: Mm) -> tuple[Unit, ...]:
    """The parts, with those of one block joined into one."""
    blocks: dict[str, list[int]] = {}
    found: list[Unit] = []
    for index, part in enumerate(parts):
        if part.block is not None:
            blocks.setdefault(part.block, []).append(index)
            continue
        width = Fraction(0) if part.width is None else part.width
        found.append(Unit(part.length, width, part.count, part.grain, (index,)))
    for members in blocks.values():
        found.append(_joined(parts, sorted(members, key=lambda i: parts[i].order), kerf))
    return tuple(found)


def misfits(request: Request) -> tuple[Unit, ...]:
    """The units that fit no stock, whichever way they may lie."""
    return tuple(
        unit
        for unit in units(request.parts, request.kerf)
        if not any(_fits(unit, stock, request, turned=t) for stock in request.stock for t in (0, 1))
    )


def _joined(parts: tuple[Part, ...], members: list[int], kerf: Mm) -> Unit:
    first = parts[members[0]]
    along: Side = first.grain or "length"
    lengths = [parts[i].length for i in members]
    widths = [parts[i].width or Fraction(0) for i in members]
    saw = kerf * (len(members) - 1)
    if along == "length":
        size = sum(lengths, saw), max(widths)
    else:
        size = max(lengths), sum(widths, saw)
    return Unit(*size, first.count, first.grain, tuple(members), along)


def _across(stock: Stock, trim: Mm, kerf: Mm) -> Mm | None:
    return None if stock.width is None else stock.width - 2 * trim + kerf


def _step(sizes: Iterable[Fraction | None]) -> Fraction:
    wanted = [size for size in sizes if size is not None]
    scale = lcm(*(size.denominator for size in wanted))
    return Fraction(gcd(*(int(size * scale) for size in wanted)), scale)


def _costs(stock: tuple[Stock, ...]) -> tuple[Fraction, list[int]]:
    if all(s.price is None for s in stock):
        return Fraction(1), [1] * len(stock)
    prices = [s.price or Fraction(0) for s in stock]
    scale = lcm(*(price.denominator for price in prices))
    whole = [int(price * scale) for price in prices]
    shared = gcd(*whole) or 1
    return Fraction(shared, scale), [price // shared for price in whole]


def _lies(
    unit: Unit, size: tuple[int, int], boards: tuple[Board, ...], request: Request
) -> tuple[tuple[tuple[Lie, ...], ...], tuple[tuple[Lie, ...], ...]]:
    """The ways that a unit may lie on each board: kept to the grain, and as loosely as any may."""
    straight, turned = Lie(*size, turned=False), Lie(size[1], size[0], turned=True)
    if request.sticks:
        both = tuple((straight,) if straight.length <= b.length else () for b in boards)
        return both, both
    loose = []
    for board, stock in zip(boards, request.stock, strict=True):
        ways = [
            lie
            for lie in (straight, turned)
            if _allowed(unit, stock, turned=lie.turned)
            and lie.length <= board.length
            and lie.width <= board.width
        ]
        loose.append(tuple(ways[:1] if size[0] == size[1] else ways))
    strict = [
        tuple(w for w in ways if stock.grain or unit.grain is None or w.turned == _resting(unit))
        for ways, stock in zip(loose, request.stock, strict=True)
    ]
    return tuple(strict if any(strict) else loose), tuple(loose)


def _resting(unit: Unit) -> bool:
    """On stock without grain, a part with grain lies as if the grain ran along the length."""
    return unit.grain == "width" and unit.length != unit.width


def _allowed(unit: Unit, stock: Stock, *, turned: bool) -> bool:
    """Grain follows grain; a part without, or stock without, may lie either way."""
    if unit.grain is None or stock.grain is None:
        return True
    return turned == (unit.grain != stock.grain)


def _fits(unit: Unit, stock: Stock, request: Request, *, turned: int) -> bool:
    along = stock.length - 2 * request.trim
    if stock.width is None:
        return not turned and unit.length <= along
    across = stock.width - 2 * request.trim
    length, width = (unit.width, unit.length) if turned else (unit.length, unit.width)
    return _allowed(unit, stock, turned=bool(turned)) and length <= along and width <= across

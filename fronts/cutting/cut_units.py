"""What is cut as one: single parts, and blocks of parts that are cut up afterwards."""

from dataclasses import dataclass
from fractions import Fraction

from fronts.cutting.model import Request, Side, StockSize, WantedPart
from fronts.rules.lengths import Mm


@dataclass(frozen=True, slots=True)
class CutUnit:
    """What is cut as one: a part, or a block of parts stacked along its length or width."""

    length: Mm
    width: Mm
    count: int
    grain: Side | None
    parts: tuple[int, ...]
    stacked: Side = "length"


def units(parts: tuple[WantedPart, ...], kerf: Mm) -> tuple[CutUnit, ...]:
    """The parts, with those of one block joined into one."""
    blocks: dict[str, list[int]] = {}
    joined: list[CutUnit] = []
    for index, part in enumerate(parts):
        if part.block is not None:
            blocks.setdefault(part.block, []).append(index)
            continue
        width = Fraction(0) if part.width is None else part.width
        joined.append(CutUnit(part.length, width, part.count, part.grain, (index,)))
    for members in blocks.values():
        joined.append(_joined(parts, sorted(members, key=lambda i: parts[i].order), kerf))
    return tuple(joined)


def misfits(request: Request) -> tuple[CutUnit, ...]:
    """The units that fit no stock, whichever way they may lie."""
    return tuple(
        unit
        for unit in units(request.parts, request.kerf)
        if not any(_fits(unit, stock, request, turned=t) for stock in request.stock for t in (0, 1))
    )


def may_lie(unit: CutUnit, stock: StockSize, *, turned: bool) -> bool:
    """Grain follows grain; a part without, or stock without, may lie either way."""
    if unit.grain is None or stock.grain is None:
        return True
    return turned == (unit.grain != stock.grain)


def _joined(parts: tuple[WantedPart, ...], members: list[int], kerf: Mm) -> CutUnit:
    first = parts[members[0]]
    along: Side = first.grain or "length"
    lengths = [parts[i].length for i in members]
    widths = [parts[i].width or Fraction(0) for i in members]
    saw = kerf * (len(members) - 1)
    if along == "length":
        size = sum(lengths, saw), max(widths)
    else:
        size = max(lengths), sum(widths, saw)
    return CutUnit(*size, first.count, first.grain, tuple(members), along)


def _fits(unit: CutUnit, stock: StockSize, request: Request, *, turned: int) -> bool:
    along = stock.length - 2 * request.trim
    if stock.width is None:
        return not turned and unit.length <= along
    across = stock.width - 2 * request.trim
    length, width = (unit.width, unit.length) if turned else (unit.length, unit.width)
    return may_lie(unit, stock, turned=bool(turned)) and length <= along and width <= across

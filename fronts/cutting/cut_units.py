"""What is cut as one: single parts, and blocks of parts that are cut up afterwards."""

from dataclasses import dataclass
from typing import NamedTuple

from fronts.cutting.model import Request, Side, StockSize, WantedPart
from fronts.rules.lengths import NOTHING, Mm

NOWHERE = (NOTHING, NOTHING)


class Member(NamedTuple):
    """A part of a unit, by its index, and where its lower left corner lies in the unit."""

    part: int
    x: Mm
    y: Mm


@dataclass(frozen=True, slots=True)
class CutUnit:
    """What is cut as one: a part, or a block of parts laid out beside one another."""

    length: Mm
    width: Mm
    count: int
    grain: Side | None
    members: tuple[Member, ...]
    is_block: bool = False
    sequence: str | None = None

    @property
    def parts(self) -> tuple[int, ...]:
        """Its parts, by their indices."""
        return tuple(member.part for member in self.members)


def units(parts: tuple[WantedPart, ...], kerf: Mm) -> tuple[CutUnit, ...]:
    """The parts, with those of one block joined into one."""
    blocks: dict[str, list[int]] = {}
    joined: list[CutUnit] = []
    for index, part in enumerate(parts):
        if part.block is not None:
            blocks.setdefault(part.block, []).append(index)
            continue
        width = NOTHING if part.width is None else part.width
        alone = (Member(index, NOTHING, NOTHING),)
        unit = CutUnit(part.length, width, part.count, part.grain, alone, sequence=part.sequence)
        joined.append(unit)
    for members in blocks.values():
        in_order = sorted(members, key=lambda i: parts[i].order)
        laid_out = parts[members[0]].place is not None
        joined.append(_laid_out(parts, in_order) if laid_out else _stacked(parts, in_order, kerf))
    return tuple(joined)


def misfits(request: Request) -> tuple[CutUnit, ...]:
    """The units that fit no stock, whichever way they may lie."""
    return tuple(
        unit
        for unit in units(request.parts, request.kerf)
        if not any(_fits(unit, stock, request, turned=t) for stock in request.stock for t in (0, 1))
    )


def may_lie(unit: CutUnit, stock: StockSize, *, turned: bool) -> bool:
    """Grain follows grain; a part without, or stock without, may lie either way.

    What runs on from sheet to sheet never comes out of an offcut: its grain is another's.
    """
    if stock.own and unit.sequence is not None:
        return False
    if unit.grain is None or stock.grain is None:
        return True
    return turned == (unit.grain != stock.grain)


def _stacked(parts: tuple[WantedPart, ...], indices: list[int], kerf: Mm) -> CutUnit:
    """One behind the other along the grain."""
    first = parts[indices[0]]
    along: Side = first.grain or "length"
    place, across = NOTHING, NOTHING
    members = []
    for index in indices:
        length, width = parts[index].length, parts[index].width or NOTHING
        lengthwise = along == "length"
        members.append(Member(index, *((place, NOTHING) if lengthwise else (NOTHING, place))))
        place += (length if lengthwise else width) + kerf
        across = max(across, width if lengthwise else length)
    size = (place - kerf, across) if along == "length" else (across, place - kerf)
    return CutUnit(
        *size, first.count, first.grain, tuple(members),
        is_block=len(members) > 1, sequence=first.sequence,
    )  # fmt: skip


def _laid_out(parts: tuple[WantedPart, ...], indices: list[int]) -> CutUnit:
    """Each where it says that it lies in its block."""
    first = parts[indices[0]]
    members = tuple(Member(index, *(parts[index].place or NOWHERE)) for index in indices)
    length = max(member.x + parts[member.part].length for member in members)
    width = max(member.y + (parts[member.part].width or NOTHING) for member in members)
    return CutUnit(
        length, width, first.count, first.grain, members, is_block=True, sequence=first.sequence
    )


def _fits(unit: CutUnit, stock: StockSize, request: Request, *, turned: int) -> bool:
    trim = request.trim_of(stock)
    along = stock.length - 2 * trim
    if stock.width is None:
        return not turned and unit.length <= along
    across = stock.width - 2 * trim
    length, width = (unit.width, unit.length) if turned else (unit.length, unit.width)
    return may_lie(unit, stock, turned=bool(turned)) and length <= along and width <= across

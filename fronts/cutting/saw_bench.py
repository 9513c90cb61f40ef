"""One board at the saw: cuts right across a piece, what is placed, what is kept."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Literal

from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.model import (
    HOLD_CROSS,
    HOLD_RIP,
    Cut,
    Offcut,
    Placement,
    Request,
    Side,
    StockSize,
)
from fronts.rules.lengths import Mm

Kind = Literal["trim", "rip", "cross", "block"]


@dataclass(frozen=True, slots=True)
class SawnPiece:
    """A real rectangle on the stock, with the name that the cuts give it."""

    name: str
    x: Mm
    y: Mm
    right: Mm
    top: Mm


@dataclass(slots=True)
class Bench:
    """The saw bench while one board is cut: what has been cut so far."""

    request: Request
    stock: StockSize
    problem: IntegerProblem
    cuts: list[Cut] = field(default_factory=list)
    placed: list[Placement] = field(default_factory=list)
    offcuts: list[Offcut] = field(default_factory=list)
    names: Iterator[int] = field(default_factory=lambda: iter(range(1, 10**9)))


def to_size(bench: Bench, piece: SawnPiece, length: Mm, width: Mm) -> SawnPiece:
    if bench.stock.width is not None and piece.y + width < piece.top:
        piece, rest = cut(bench, piece, "length", piece.y + width, "rip")
        keep(bench, rest)
    if piece.x + length < piece.right:
        piece, rest = cut(bench, piece, "width", piece.x + length, "cross")
        keep(bench, rest)
    return piece


def place(bench: Bench, piece: SawnPiece, index: int, turned: bool) -> None:  # noqa: FBT001
    part = bench.request.parts[index]
    width = None if bench.stock.width is None else piece.top - piece.y
    bench.placed.append(
        Placement(
            part.label, piece.x, piece.y, piece.right - piece.x, width, turned,
            part.grain, part.block, part.order if part.block else 0, part.sequence,
        )
    )  # fmt: skip


def keep(bench: Bench, piece: SawnPiece) -> None:
    """Note what is left over, unless the saw took all of it."""
    length, width = piece.right - piece.x, piece.top - piece.y
    if length <= 0 or (bench.stock.width is not None and width <= 0):
        return
    sticks, safe = bench.stock.width is None, bench.request.safe_width
    usable = length >= safe and (sticks or width >= safe)
    bench.offcuts.append(Offcut(piece.x, piece.y, length, None if sticks else width, usable))


def cut(
    bench: Bench, piece: SawnPiece, along: Side, at: Mm, kind: Kind, *, keep_low: bool = True
) -> tuple[SawnPiece, SawnPiece]:
    """Saw `piece` right across; what lies below `at` is kept against the fence."""
    kerf = bench.request.kerf
    low, high = f"{next(bench.names)}", f"{next(bench.names)}"
    if along == "length":
        first = SawnPiece(low, piece.x, piece.y, piece.right, at)
        second = SawnPiece(high, piece.x, at + kerf, piece.right, piece.top)
        start, end = piece.x, piece.right
        fence = at - piece.y if keep_low else piece.top - at - kerf
        rest = second.top - second.y if keep_low else at - piece.y
    else:
        first = SawnPiece(low, piece.x, piece.y, at, piece.top)
        second = SawnPiece(high, at + kerf, piece.y, piece.right, piece.top)
        start, end = piece.y, piece.top
        fence = at - piece.x if keep_low else piece.right - at - kerf
        rest = second.right - second.x if keep_low else at - piece.x
    kept, fallen = (first, second) if keep_low else (second, first)
    hold = _hold(bench, fence, end - start)
    number = len(bench.cuts) + 1
    falls = fallen.name if rest > 0 else None
    bench.cuts.append(
        Cut(number, kind, along, at, start, end, piece.name, fence, kept.name, falls, hold)
    )
    return first, second


def _hold(bench: Bench, fence: Mm, run: Mm) -> str | None:
    """How to hold what is kept, where a hand would come too near; `run` is the cut's length."""
    safe = bench.request.safe_width
    if bench.stock.width is None:
        return HOLD_CROSS if fence < safe else None
    if fence >= safe and run >= safe:
        return None
    return HOLD_RIP if run >= fence and run >= safe else HOLD_CROSS

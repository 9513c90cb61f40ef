"""The order of cuts: trims first, then the large pieces, each cut named and made safe."""

from collections import deque
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Literal

from fronts.cutting.cut_units import CutUnit
from fronts.cutting.guillotine_tree import CutNode
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.model import (
    HOLD_CROSS,
    HOLD_RIP,
    Cut,
    Layout,
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
class _Bench:
    """The saw bench while one board is cut: what has been cut so far."""

    request: Request
    stock: StockSize
    problem: IntegerProblem
    cuts: list[Cut] = field(default_factory=list)
    placed: list[Placement] = field(default_factory=list)
    offcuts: list[Offcut] = field(default_factory=list)
    names: Iterator[int] = field(default_factory=lambda: iter(range(1, 10**9)))


def layout(
    request: Request, problem: IntegerProblem, board: int, tree: CutNode, units: Iterator[CutUnit]
) -> Layout:
    """One board cut as `tree` says; `units` yields, leaf by leaf in order, whose place it is."""
    stock = request.stock[board]
    bench = _Bench(request, stock, problem)
    width = Mm(0) if stock.width is None else stock.width
    sheet = _trimmed(bench, SawnPiece("sheet", Mm(0), Mm(0), stock.length, width))
    queue = deque([(tree, sheet)])
    while queue:
        node, piece = queue.popleft()
        if node.spot is not None:
            _part(bench, node.spot.orientation.turned, piece, next(units))
        elif not node.children:
            _keep(bench, piece)
        else:
            queue.extend(_divide(bench, node, piece))
    return Layout(stock, 1, tuple(bench.placed), tuple(bench.cuts), tuple(bench.offcuts))


def leaves(tree: CutNode) -> list[CutNode]:
    """The leaves that hold items, in the order in which `layout` comes to them."""
    holding, queue = [], deque([tree])
    while queue:
        node = queue.popleft()
        if node.spot is not None:
            holding.append(node)
        queue.extend(node.children)
    return holding


def _trimmed(bench: _Bench, sheet: SawnPiece) -> SawnPiece:
    """The factory edges come off first: both long edges, then both ends."""
    trim, kerf = bench.request.trim, bench.request.kerf
    if trim == 0:
        return sheet
    low = trim - kerf
    if bench.stock.width is not None:
        sheet = _cut(bench, sheet, "length", sheet.y + low, "trim", keep_low=False)[1]
        sheet = _cut(bench, sheet, "length", sheet.top - trim, "trim")[0]
    sheet = _cut(bench, sheet, "width", sheet.x + low, "trim", keep_low=False)[1]
    return _cut(bench, sheet, "width", sheet.right - trim, "trim")[0]


def _divide(bench: _Bench, node: CutNode, piece: SawnPiece) -> list[tuple[CutNode, SawnPiece]]:
    """Cut a piece into its children, one after the other, each against the fence."""
    along: Side = "length" if node.across else "width"
    pieces = []
    for child in node.children:
        edge = _edge(bench, child, along)
        if edge < (piece.top if node.across else piece.right):
            low, piece = _cut(bench, piece, along, edge, "rip" if node.across else "cross")
            pieces.append((child, low))
        else:
            pieces.append((child, piece))
    return pieces


def _edge(bench: _Bench, child: CutNode, along: Side) -> Mm:
    """The far edge of what stays of a child once the saw has passed."""
    end = child.y + child.width if along == "length" else child.x + child.length
    return bench.request.trim + end * bench.problem.step - bench.request.kerf


def _part(bench: _Bench, turned: bool, piece: SawnPiece, unit: CutUnit) -> None:  # noqa: FBT001
    """Cut a piece to a part's size, if it is not yet; a block is then cut up in its order."""
    length, width = (unit.width, unit.length) if turned else (unit.length, unit.width)
    piece = _to_size(bench, piece, length, width)
    if len(unit.parts) == 1:
        _place(bench, piece, unit.parts[0], turned)
        return
    side: Side = "width" if (unit.stacked == "length") != turned else "length"
    for member in unit.parts:
        part = bench.request.parts[member]
        across = Mm(0) if part.width is None else part.width
        size = (across, part.length) if turned else (part.length, across)
        edge = piece.x + size[0] if side == "width" else piece.y + size[1]
        member_piece = piece
        if edge < (piece.right if side == "width" else piece.top):
            member_piece, piece = _cut(bench, piece, side, edge, "block")
        _place(bench, _to_size(bench, member_piece, *size), member, turned)


def _to_size(bench: _Bench, piece: SawnPiece, length: Mm, width: Mm) -> SawnPiece:
    if bench.stock.width is not None and piece.y + width < piece.top:
        piece, rest = _cut(bench, piece, "length", piece.y + width, "rip")
        _keep(bench, rest)
    if piece.x + length < piece.right:
        piece, rest = _cut(bench, piece, "width", piece.x + length, "cross")
        _keep(bench, rest)
    return piece


def _place(bench: _Bench, piece: SawnPiece, index: int, turned: bool) -> None:  # noqa: FBT001
    part = bench.request.parts[index]
    width = None if bench.stock.width is None else piece.top - piece.y
    bench.placed.append(
        Placement(
            part.label, piece.x, piece.y, piece.right - piece.x, width, turned,
            part.grain, part.block,
        )
    )  # fmt: skip


def _keep(bench: _Bench, piece: SawnPiece) -> None:
    """Note what is left over, unless the saw took all of it."""
    length, width = piece.right - piece.x, piece.top - piece.y
    if length <= 0 or (bench.stock.width is not None and width <= 0):
        return
    sticks, safe = bench.stock.width is None, bench.request.safe_width
    usable = length >= safe and (sticks or width >= safe)
    bench.offcuts.append(Offcut(piece.x, piece.y, length, None if sticks else width, usable))


def _cut(
    bench: _Bench, piece: SawnPiece, along: Side, at: Mm, kind: Kind, *, keep_low: bool = True
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


def _hold(bench: _Bench, fence: Mm, run: Mm) -> str | None:
    """How to hold what is kept, where a hand would come too near; `run` is the cut's length."""
    safe = bench.request.safe_width
    if bench.stock.width is None:
        return HOLD_CROSS if fence < safe else None
    if fence >= safe and run >= safe:
        return None
    return HOLD_RIP if run >= fence and run >= safe else HOLD_CROSS

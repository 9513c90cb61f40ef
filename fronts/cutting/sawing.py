"""The order of cuts: trims first, then the large pieces, each cut named and made safe."""

from collections import deque
from collections.abc import Iterator

from fronts.cutting.block_sawing import cut_up, laid_places
from fronts.cutting.cut_units import CutUnit
from fronts.cutting.guillotine_tree import CutNode
from fronts.cutting.integer_problem import IntegerProblem
from fronts.cutting.model import Layout, Request, Side
from fronts.cutting.saw_bench import Bench, SawnPiece, cut, keep, to_size
from fronts.rules.lengths import Mm


def layout(
    request: Request, problem: IntegerProblem, board: int, tree: CutNode, units: Iterator[CutUnit]
) -> Layout:
    """One board cut as `tree` says; `units` yields, leaf by leaf in order, whose place it is."""
    stock = request.stock[board]
    bench = Bench(request, stock, problem)
    width = Mm(0) if stock.width is None else stock.width
    sheet = _trimmed(bench, SawnPiece("sheet", Mm(0), Mm(0), stock.length, width))
    queue = deque([(tree, sheet)])
    while queue:
        node, piece = queue.popleft()
        if node.spot is not None:
            _part(bench, node.spot.orientation.turned, piece, next(units))
        elif not node.children:
            keep(bench, piece)
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


def _trimmed(bench: Bench, sheet: SawnPiece) -> SawnPiece:
    """The factory edges come off first: both long edges, then both ends."""
    trim, kerf = bench.request.trim_of(bench.stock), bench.request.kerf
    if trim == 0:
        return sheet
    low = trim - kerf
    if bench.stock.width is not None:
        sheet = cut(bench, sheet, "length", sheet.y + low, "trim", keep_low=False)[1]
        sheet = cut(bench, sheet, "length", sheet.top - trim, "trim")[0]
    sheet = cut(bench, sheet, "width", sheet.x + low, "trim", keep_low=False)[1]
    return cut(bench, sheet, "width", sheet.right - trim, "trim")[0]


def _divide(bench: Bench, node: CutNode, piece: SawnPiece) -> list[tuple[CutNode, SawnPiece]]:
    """Cut a piece into its children, one after the other, each against the fence."""
    along: Side = "length" if node.across else "width"
    pieces = []
    for child in node.children:
        edge = _edge(bench, child, along)
        if edge < (piece.top if node.across else piece.right):
            low, piece = cut(bench, piece, along, edge, "rip" if node.across else "cross")
            pieces.append((child, low))
        else:
            pieces.append((child, piece))
    return pieces


def _edge(bench: Bench, child: CutNode, along: Side) -> Mm:
    """The far edge of what stays of a child once the saw has passed."""
    end = child.y + child.width if along == "length" else child.x + child.length
    return bench.request.trim_of(bench.stock) + end * bench.problem.step - bench.request.kerf


def _part(bench: Bench, turned: bool, piece: SawnPiece, unit: CutUnit) -> None:  # noqa: FBT001
    """Cut a piece to a part's size, if it is not yet; a block is then cut up."""
    length, width = (unit.width, unit.length) if turned else (unit.length, unit.width)
    piece = to_size(bench, piece, length, width)
    cut_up(bench, piece, laid_places(bench.request, unit, piece, turned=turned), turned=turned)

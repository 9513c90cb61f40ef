"""What no row of a parts file shows alone: what its stock and parts say together."""

from fractions import Fraction

from fronts.cutting.cut_units import CutUnit, misfits
from fronts.cutting.model import Request, WantedPart
from fronts.jobfile.faults import Faults
from fronts.rules.lengths import Mm, exact

FINEST = 10**9
"""The largest denominator of a length in mm: finer ones together have no unit of any use."""


def check(request: Request, faults: Faults) -> None:
    """Raise `Refused` for all that is wrong; what fits no stock is told once the rest is right."""
    for said in (_widths, _fine, _trims, _prices, _blocks):
        said(request, faults)
    faults.refuse_if_any()
    for unit in misfits(request):
        _misfit(request, unit, faults)
    faults.refuse_if_any()


def _widths(request: Request, faults: Faults) -> None:
    """Sheets have widths, sticks have none."""
    flat = request.stock[0].width is not None
    wanted = "a width, as the first stock has one" if flat else "no width, for sticks"
    widths = [(f"stock[{i}].width", stock.width) for i, stock in enumerate(request.stock)]
    widths += [(f"parts[{i}].width", part.width) for i, part in enumerate(request.parts)]
    for path, width in widths:
        if (width is not None) != flat:
            faults.add(path, "none" if width is None else _shown(width), wanted)


def _fine(request: Request, faults: Faults) -> None:
    sizes = [("kerf", request.kerf), ("trim", request.trim)]
    for index, stock in enumerate(request.stock):
        sizes += [(f"stock[{index}]", size) for size in (stock.length, stock.width or Mm(0))]
    for index, part in enumerate(request.parts):
        sizes += [(f"parts[{index}]", size) for size in (part.length, part.width or Mm(0))]
    for path, size in sizes:
        if size.denominator > FINEST:
            faults.add(path, _shown(size), "a length no finer than 8 decimals of a mm")


def _trims(request: Request, faults: Faults) -> None:
    for index, stock in enumerate(request.stock):
        for side, size in (("length", stock.length), ("width", stock.width)):
            if size is not None and size <= 2 * request.trim:
                wanted = f"more than twice the trim of {exact(request.trim)} mm"
                faults.add(f"stock[{index}].{side}", _shown(size), wanted)


def _prices(request: Request, faults: Faults) -> None:
    """A counted piece without a price is paid for already; one to be bought must have one."""
    if all(stock.price is None for stock in request.stock):
        return
    for index, stock in enumerate(request.stock):
        if stock.price is None and stock.count is None:
            faults.add(f"stock[{index}].price", "none", "a price, as other stock has one")


def _blocks(request: Request, faults: Faults) -> None:
    """Parts of one block are cut as one: as many, and the grain the same way."""
    heads: dict[str, WantedPart] = {}
    for index, part in enumerate(request.parts):
        if part.block is None:
            continue
        head = heads.setdefault(part.block, part)
        rest = f"as in the rest of block {part.block}"
        if part.count != head.count:
            faults.add(f"parts[{index}].count", f"{part.count}", f"{head.count}, {rest}")
        if part.grain != head.grain:
            grain = part.grain or "none"
            faults.add(f"parts[{index}].grain", grain, f"{head.grain or 'none'}, {rest}")


def _misfit(request: Request, unit: CutUnit, faults: Faults) -> None:
    """Name a part, or a whole block, that is larger than every stock."""
    index = unit.parts[0]
    part = request.parts[index]
    size = exact(unit.length) + (f" x {exact(unit.width)}" if part.width is not None else "")
    name = part.label if len(unit.parts) == 1 else f"block {part.block}"
    largest = "no larger than some stock inside its trim, the way its grain lets it lie"
    faults.add(f"parts[{index}]", f"{name}, {size} mm", largest)


def _shown(size: Fraction) -> str:
    """A length on one short line."""
    text = exact(size)
    return f"{text if len(text) <= 60 else text[:59] + '…'} mm"

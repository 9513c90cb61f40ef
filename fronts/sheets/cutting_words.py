"""A cutting plan in words and drawings, for the page and for the sheet alike."""

from collections.abc import Iterator
from dataclasses import dataclass

from django.utils.safestring import SafeString

from fronts.cutting.model import Layout, Plan, Stock
from fronts.drawings.cut_layout import layout_drawing
from fronts.drawings.drawing import PAPER, SCREEN, Ink
from fronts.drawings.svg import Px
from fronts.rules.lengths import INCH, Mm, show
from fronts.selectors.plans import money
from fronts.sheets.cutting_steps import Step, steps_of, stops_of


@dataclass(frozen=True, slots=True)
class LayoutShown:
    """One way of cutting, drawn once, with how many are cut so.

    A sheet has `steps`, a stick its `stops` in one line; `trims` says which cuts only trim.
    """

    title: str
    trims: str
    drawing: SafeString
    steps: tuple[Step, ...]
    stops: str
    offcuts: str


@dataclass(frozen=True, slots=True)
class MaterialShown:
    """The plan of one material: how much it takes, what is proved of that, and each layout."""

    name: str
    takes: str
    proof: str
    share: str
    cost: str
    short: str
    layouts: tuple[LayoutShown, ...]


@dataclass(frozen=True, slots=True)
class Board:
    """Where layouts are drawn: with which ink, and in how much room."""

    ink: Ink
    room: tuple[Px, Px]


SCREEN_BOARD = Board(SCREEN, (920_00, 470_00))
PAPER_BOARD = Board(PAPER, (640_00, 400_00))
"""As wide as an A4 page, without what the dimensions take."""


def material_shown(name: str, plan: Plan, unit: str, board: Board) -> MaterialShown:
    """The plan of one material in the job's unit."""
    used = dict.fromkeys((each.stock for each in plan.layouts), 0)
    for each in plan.layouts:
        used[each.stock] += each.count
    return MaterialShown(
        name=name,
        takes="; ".join(f"{count} of {stock_size(each, unit)}" for each, count in used.items()),
        proof=proof_of(plan),
        share=f"{float(plan.yielded * 100):.0f} %",
        cost="" if plan.cost is None else money(plan.cost),
        short=", ".join(f"{label} ×{count}" for label, count in plan.unplaced),
        layouts=tuple(_layouts(plan, unit, board)),
    )


def proof_of(plan: Plan) -> str:
    """What is proved of the plan, in a person's words."""
    if plan.unplaced:
        if plan.cannot_all_fit:
            return "proved: this stock does not hold all the parts"
        return "not all the parts found a place in this stock"
    if plan.proved:
        return "proved least"
    if plan.cost is not None and plan.cost_bound is not None:
        return f"at most {money(plan.cost - plan.cost_bound)} more than the least possible"
    more = plan.sheets_used - plan.lower_bound
    return f"at most {more} more than the least possible" if more else "proved the least number"


def stock_size(stock: Stock, unit: str) -> str:
    """`96 × 48 in`, or for a stick `96 in`."""
    sizes = [stock.length] if stock.width is None else [stock.length, stock.width]
    return f"{' × '.join(show(each, unit) for each in sizes)} {unit}"


def run(length: Mm, unit: str) -> str:
    """A long length as it is bought: feet or metres, rounded up to a tenth."""
    size, name = (INCH * 12, "ft") if unit == "in" else (Mm(1000), "m")
    tenths = -(-length * 10 // size)
    return f"{tenths // 10}.{tenths % 10} {name}"


def _layouts(plan: Plan, unit: str, board: Board) -> Iterator[LayoutShown]:
    for number, layout in enumerate(plan.layouts, 1):
        stick, kerf = layout.stock.width is None, plan.request.kerf
        what = "Stick" if stick else "Sheet"
        times = f": cut {layout.count} like this" if layout.count > 1 else ""
        yield LayoutShown(
            title=f"{what} {number}, {stock_size(layout.stock, unit)}{times}",
            trims=_trims(layout),
            drawing=SafeString(layout_drawing(layout, unit=unit, ink=board.ink, room=board.room)),
            steps=() if stick else tuple(steps_of(layout, kerf, unit)),
            stops=stops_of(layout, kerf, unit) if stick else "",
            offcuts="; ".join(_offcuts(layout, unit)),
        )


def _trims(layout: Layout) -> str:
    """`Cuts 1 to 4 are the trims`: their numbers stand nowhere in the drawing."""
    numbers = [cut.number for cut in layout.cuts if cut.kind == "trim"]
    if not numbers:
        return ""
    if len(numbers) == 1:
        return f"Cut {numbers[0]} is the trim."
    together = numbers[-1] - numbers[0] + 1 == len(numbers) > 2
    listed = f"{', '.join(map(str, numbers[:-1]))} and {numbers[-1]}"
    said = f"{numbers[0]} to {numbers[-1]}" if together else listed
    return f"Cuts {said} are the trims."


def _offcuts(layout: Layout, unit: str) -> list[str]:
    """The sizes of what goes back to stock, the largest first."""
    usable = [each for each in layout.offcuts if each.usable]
    usable.sort(key=lambda each: -each.length * (each.width or 1))
    return [
        " × ".join(show(size, unit) for size in (each.length, each.width) if size is not None)
        for each in usable
    ]

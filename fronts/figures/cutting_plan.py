"""A cutting plan in words, with its drawings as the page or the sheet makes them."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TypeAlias

from django.utils.safestring import SafeString

from fronts.cutting.model import Layout, Plan, StockSize
from fronts.figures.cutting_steps import Step, steps_of, stops_of
from fronts.figures.grain_on_sheets import grain_lines
from fronts.figures.sizes import size
from fronts.selectors.plans import money

Draw: TypeAlias = Callable[[Layout], SafeString]
"""How a layout is drawn, for where it is seen."""


@dataclass(frozen=True, slots=True)
class LayoutShown:
    """One way of cutting, drawn once, with how many are cut so.

    A sheet has `steps`, a stick its `stops` in one line; `trims` says which cuts only trim,
    `grain` what of grain sets is on it.
    """

    title: str
    trims: str
    drawing: SafeString
    steps: tuple[Step, ...]
    stops: str
    offcuts: str
    grain: tuple[str, ...] = ()


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


def materials_shown(
    plans: Iterable[tuple[str, Plan]], unit: str, draw: Draw
) -> tuple[MaterialShown, ...]:
    """Each material's plan by its name, in the job's unit; `draw` is the page's or the sheet's."""
    return tuple(material_shown(name, plan, unit, draw) for name, plan in plans)


def whole_cost(plans: Sequence[tuple[str, Plan]]) -> str:
    """What all of it costs, "" where a material has no price."""
    costs = [plan.cost for _, plan in plans if plan.cost is not None]
    return money(sum(costs, Fraction(0))) if costs and len(costs) == len(plans) else ""


def material_shown(name: str, plan: Plan, unit: str, draw: Draw) -> MaterialShown:
    """The plan of one material."""
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
        layouts=tuple(_layouts(plan, unit, draw)),
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
    more = plan.sheets_taken - plan.lower_bound
    return f"at most {more} more than the least possible" if more else "proved the least number"


def stock_size(stock: StockSize, unit: str) -> str:
    """`96 × 48 in`, or for a stick `96 in`."""
    sizes = [stock.length] if stock.width is None else [stock.length, stock.width]
    return f"{size(unit, *sizes)} {unit}"


def _layouts(plan: Plan, unit: str, draw: Draw) -> Iterator[LayoutShown]:
    grain = grain_lines(plan, unit)
    for number, layout in enumerate(plan.layouts, 1):
        stick, kerf = layout.stock.width is None, plan.request.kerf
        what = "Stick" if stick else "Sheet"
        times = f": cut {layout.count} like this" if layout.count > 1 else ""
        yield LayoutShown(
            title=f"{what} {number}, {stock_size(layout.stock, unit)}{times}",
            trims=_trims(layout),
            drawing=draw(layout),
            steps=() if stick else tuple(steps_of(layout, kerf, unit)),
            stops=stops_of(layout, kerf, unit) if stick else "",
            offcuts="; ".join(_offcuts(layout, unit)),
            grain=grain[number - 1],
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
        size(unit, *(side for side in (each.length, each.width) if side is not None))
        for each in usable
    ]

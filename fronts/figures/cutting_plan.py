"""A cutting plan in words, with its drawings as the page or the sheet makes them."""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TypeAlias

from django.utils.safestring import SafeString

from fronts.cutting.model import Layout, Plan, StockSize
from fronts.cutting.offcuts_left import largest_first, place_of
from fronts.figures.cutting_steps import Step, steps_of, stops_of
from fronts.figures.grain_on_sheets import grain_lines
from fronts.figures.sizes import size
from fronts.selectors.plans import money

Numbers: TypeAlias = Mapping[str, str]
NO_NUMBERS: Numbers = {}
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
    plans: Iterable[tuple[str, Plan]], unit: str, draw: Draw, numbers: Numbers = NO_NUMBERS
) -> tuple[MaterialShown, ...]:
    """Each material's plan by its name, in the job's unit; `draw` is the page's or the sheet's.

    `numbers` are those of offcuts that are kept, by their places in the plan.
    """
    return tuple(
        material_shown(name, plan, unit, draw, _within(numbers, index))
        for index, (name, plan) in enumerate(plans)
    )


def _within(numbers: Numbers, material: int) -> Numbers:
    """Those of one material, by their places in its plan."""
    head = f"{material}/"
    return {
        place.removeprefix(head): label
        for place, label in numbers.items()
        if place.startswith(head)
    }


def whole_cost(plans: Sequence[tuple[str, Plan]]) -> str:
    """What all of it costs, "" where a material has no price."""
    costs = [plan.cost for _, plan in plans if plan.cost is not None]
    return money(sum(costs, Fraction(0))) if costs and len(costs) == len(plans) else ""


def material_shown(
    name: str, plan: Plan, unit: str, draw: Draw, numbers: Numbers = NO_NUMBERS
) -> MaterialShown:
    """The plan of one material."""
    used = dict.fromkeys((each.stock for each in plan.layouts), 0)
    for each in plan.layouts:
        used[each.stock] += each.count
    return MaterialShown(
        name=name,
        takes="; ".join(_taken(each, count, unit) for each, count in used.items()),
        proof=proof_of(plan),
        share=f"{float(plan.yielded * 100):.0f} %",
        cost="" if plan.cost is None else money(plan.cost),
        short=", ".join(f"{label} ×{count}" for label, count in plan.unplaced),
        layouts=tuple(_layouts(plan, unit, draw, numbers)),
    )


def _taken(stock: StockSize, count: int, unit: str) -> str:
    """`2 of 96 × 48 in`, `offcut R12, 24 × 16 in`."""
    size_of = stock_size(stock, unit)
    return f"offcut {stock.label}, {size_of}" if stock.own else f"{count} of {size_of}"


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


def _layouts(plan: Plan, unit: str, draw: Draw, numbers: Numbers) -> Iterator[LayoutShown]:
    grain = grain_lines(plan, unit)
    for number, layout in enumerate(plan.layouts, 1):
        stick, kerf = layout.stock.width is None, plan.request.kerf
        times = f": cut {layout.count} like this" if layout.count > 1 else ""
        named = sheet_name(layout, number)
        yield LayoutShown(
            title=f"{named[0].upper()}{named[1:]}, {stock_size(layout.stock, unit)}{times}",
            trims=_trims(layout),
            drawing=draw(layout),
            steps=() if stick else tuple(steps_of(layout, kerf, unit)),
            stops=stops_of(layout, kerf, unit) if stick else "",
            offcuts="; ".join(_offcuts(layout, unit, number - 1, numbers)),
            grain=grain[number - 1],
        )


def sheet_name(layout: Layout, number: int) -> str:
    """What one sheet or stick of a plan is called: `sheet 2`, `offcut R12`."""
    if layout.stock.own:
        return f"offcut {layout.stock.label}"
    return f"{'stick' if layout.stock.width is None else 'sheet'} {number}"


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


def _offcuts(layout: Layout, unit: str, number: int, numbers: Numbers) -> list[str]:
    """The sizes of what goes back to stock, the largest first, with what to write on each."""
    said = []
    for index, each in largest_first(layout):
        if each.usable:
            sides = (side for side in (each.length, each.width) if side is not None)
            places = (place_of(number, copy, index) for copy in range(layout.count))
            labels = ", ".join(numbers[place] for place in places if place in numbers)
            said.append(size(unit, *sides) + (f", write {labels} on it" if labels else ""))
    return said

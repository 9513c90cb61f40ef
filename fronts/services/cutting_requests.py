"""What a plan is asked to cut: the shop's saw, the usual stock, the parts as a saw sees them."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from functools import partial

from fronts.cutting.bounds.dual_feasible import quick_bound
from fronts.cutting.cut_units import misfits
from fronts.cutting.integer_problem import integer_problem
from fronts.cutting.model import Request, Side, StockSize, WantedPart
from fronts.rules.cutting_groups import CuttingGroup
from fronts.rules.grain_blocks import blocks_of
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.materials import has_grain
from fronts.rules.results import Part
from fronts.rules.usual_stock import USUAL_SAW, USUAL_SHEET, USUAL_STICK, Saw

ROWS = 3
"""So many sizes of stock for each material: what is bought, and offcuts to use up."""
STICKS, SHEETS = "sticks", "sheets"


def default_saw(unit: str, kept: Mapping[str, Request]) -> Saw:
    """As the last plan had it, else the usual."""
    usual = USUAL_SAW[unit]
    sheets = next((each for each in kept.values() if not each.sticks), None)
    sticks = next((each for each in kept.values() if each.sticks), None)
    any_one = sheets or sticks
    return Saw(
        kerf=any_one.kerf if any_one else usual.kerf,
        trim=sheets.trim if sheets else usual.trim,
        ends=sticks.trim if sticks else usual.ends,
        safe=any_one.safe_width if any_one else usual.safe,
    )


def default_stock(group: CuttingGroup, unit: str) -> tuple[StockSize, ...]:
    """A sheet of the usual size, or a stick of the usual length."""
    if group.sticks:
        return (StockSize("stick", USUAL_STICK[unit]),)
    length, width = USUAL_SHEET[unit]
    return (
        StockSize("sheet", length, width, grain="length" if has_grain(group.material) else None),
    )


def usual_request(group: CuttingGroup, unit: str) -> Request:
    """A material's parts from the usual stock with the usual saw, where nobody said otherwise."""
    saw, stock = default_saw(unit, {}), default_stock(group, unit)
    return request_for(group, saw, stock, sticks=group.sticks, upright=False)


def fewest_usual(group: CuttingGroup, unit: str) -> int | None:
    """How many usual sheets or sticks a material takes at least; None where a part fits none.

    A bound that takes no search: a plan may need more, never fewer.
    """
    request = usual_request(group, unit)
    return None if misfits(request) else quick_bound(integer_problem(request)).cost


def request_for(
    group: CuttingGroup, saw: Saw, stock: Sequence[StockSize], *, sticks: bool, upright: bool
) -> Request:
    """A material's parts from this stock."""
    grained = any(size.grain for size in stock) and not sticks
    running = [part for part in group.parts if part.grain and grained]
    rest = replace(group, parts=tuple(part for part in group.parts if part not in running))
    return Request(
        kerf=saw.kerf,
        trim=saw.ends if sticks else saw.trim,
        stock=tuple(stock),
        safe_width=saw.safe,
        parts=(
            *sets_to_cut(running, saw, stock),
            *parts_to_cut(rest, sticks=sticks, grained=grained, upright=upright),
        ),
    )


def sets_to_cut(
    parts: Sequence[Part], saw: Saw, stock: Sequence[StockSize]
) -> Iterator[WantedPart]:
    """Fronts whose grain runs on, each set in as few blocks as the stock lets it be, in order."""
    names = dict.fromkeys(part.grain.name for part in parts if part.grain)
    fits = partial(_fits, saw.trim, _to_be_had(stock))
    for name in names:
        own = [part for part in parts if part.grain and part.grain.name == name]
        for number, block in enumerate(blocks_of(own, saw.kerf, fits), 1):
            for part, grain, placed in block.parts:
                yield WantedPart(
                    label=part.label, length=part.length, width=part.width, grain="length",
                    block=f"grain set {name}, {number}", order=grain.number,
                    place=(placed.x, placed.y), sequence=name,
                )  # fmt: skip


def _to_be_had(stock: Sequence[StockSize]) -> Sequence[StockSize]:
    """What can be bought as often as needed: an offcut holds one block, not any; else all."""
    return [size for size in stock if size.count is None] or stock


def _fits(trim: Mm, stock: Sequence[StockSize], along: Mm, across: Mm) -> bool:
    """Whether so much, along its grain and across, comes out of one of these sizes."""
    unit = Request(NOTHING, trim, tuple(stock), (WantedPart("", along, across, grain="length"),))
    return not misfits(unit)


def parts_to_cut(
    group: CuttingGroup, *, sticks: bool, grained: bool, upright: bool
) -> tuple[WantedPart, ...]:
    """The group's parts; `upright` stacks turn their grain upright and become blocks.

    Where no stock has a grain, parts may turn.
    """
    if sticks:
        return tuple(WantedPart(each.label, each.length, count=each.count) for each in group.parts)
    grain: Side | None = "length" if grained else None
    return tuple(
        _in_block(each, grain)
        if upright and each.stack
        else WantedPart(each.label, each.length, each.width, each.count, grain)
        for each in group.parts
    )


def _in_block(part: Part, grain: Side | None) -> WantedPart:
    """A drawer front turned upright, in its stack's block; the grain order runs from the top.

    Its label ends in its place in the stack, counted from the top.
    """
    order = int(part.label.rpartition(".")[2])
    return WantedPart(part.label, part.width, part.length, part.count, grain, part.stack, order)

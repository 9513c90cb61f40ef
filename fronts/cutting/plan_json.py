"""The plan as plain data, as the command prints it; lengths are exact decimal text in mm."""

from fractions import Fraction
from typing import Any

from fronts.cutting.model import Cut, Layout, Offcut, Placement, Plan
from fronts.rules.lengths import exact


def plan_as_json(plan: Plan) -> dict[str, Any]:
    """The plan as the command prints it: every sheet on its own, and the layouts with counts."""
    layouts = [_layout(layout) for layout in plan.layouts]
    sheets = [
        {**shown, "layout": index}
        for index, (shown, layout) in enumerate(zip(layouts, plan.layouts, strict=True))
        for _ in range(layout.count)
    ]
    return {
        "sheets": sheets,
        "unplaced": [{"part": label, "count": count} for label, count in plan.unplaced],
        "sheets_used": plan.sheets_used,
        "lower_bound": plan.lower_bound,
        "proved": plan.proved,
        "yield": _share(plan.yielded),
        "cost": None if plan.cost is None else exact(plan.cost),
        "cost_bound": None if plan.cost_bound is None else exact(plan.cost_bound),
        "cannot_all_fit": plan.cannot_all_fit,
        "layouts": [{"layout": i, "count": one.count} for i, one in enumerate(plan.layouts)],
        "seconds": round(plan.seconds, 3),
    }


def _layout(layout: Layout) -> dict[str, Any]:
    return {
        "stock": layout.stock.label,
        "placed": [_placed(placed) for placed in layout.placed],
        "cuts": [_cut(cut) for cut in layout.cuts],
        "offcuts": [_offcut(offcut) for offcut in layout.offcuts],
    }


def _placed(placed: Placement) -> dict[str, Any]:
    shown: dict[str, Any] = {"part": placed.part, "x": exact(placed.x)}
    if placed.width is None:
        return shown | {"length": exact(placed.length)}
    shown |= {"y": exact(placed.y), "length": exact(placed.length), "width": exact(placed.width)}
    shown["turned"] = placed.turned
    return shown if placed.block is None else shown | {"block": placed.block}


def _cut(cut: Cut) -> dict[str, Any]:
    return {
        "along": cut.along,
        "at": exact(cut.at),
        "from": exact(cut.start),
        "to": exact(cut.end),
        "number": cut.number,
        "kind": cut.kind,
        "piece": cut.piece,
        "fence": exact(cut.fence),
        "keeps": cut.keeps,
        "falls": cut.falls,
        "hold": cut.hold,
    }


def _offcut(offcut: Offcut) -> dict[str, Any]:
    shown: dict[str, Any] = {"x": exact(offcut.x), "length": exact(offcut.length)}
    if offcut.width is not None:
        shown |= {"y": exact(offcut.y), "width": exact(offcut.width)}
    return shown | {"usable": offcut.usable}


def _share(share: Fraction) -> str:
    return exact(Fraction(round(share * 10_000), 10_000))

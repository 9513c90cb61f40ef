"""Requests and plans as JSON, for all that stores or prints them.

Stored, they hold every field of the model under its own name, exact lengths and prices as text; the
model's own types say how to read them back. What a file leaves out takes its default, and what the
model no longer knows is passed over, so that older plans stay readable.

Printed, places and cuts are measured from the lower left corner of the full, untrimmed sheet.
`cuts` can be replayed from the full sheet: each divides one piece right across from `from` to `to`
(the piece's own ends) into what lies below `at` and what lies from `at` + kerf on. The trims come
first, so that everything after them can as well be replayed from a sheet already trimmed on all
sides: those have `kind` "trim" and lie wholly within the trim. Where the trim is narrower than
the saw, the first cut's kerf starts outside the sheet and its `at` is negative. On a stick, `along`
is "width" and `from` and `to` are 0. `lower_bound` counts pieces of stock.
"""

from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from fractions import Fraction
from types import UnionType
from typing import Any, TypeVar, get_args, get_origin, get_type_hints

from fronts.cutting.model import Cut, Layout, Offcut, Placement, Plan, Request
from fronts.rules.lengths import exact

T = TypeVar("T")


def request_to_store(request: Request) -> dict[str, Any]:
    """A request as it is stored."""
    return _written_fields(request)


def plan_to_store(plan: Plan) -> dict[str, Any]:
    """A plan as it is stored; its request is stored beside it, not in it."""
    stored = _written_fields(plan)
    del stored["request"]
    return stored


def stored_request(stored: Mapping[str, Any]) -> Request:
    """The request that was stored."""
    return _read_fields(Request, stored)


def stored_plan(stored: Mapping[str, Any], request: Request) -> Plan:
    """The plan that was stored."""
    return _read_fields(Plan, {**stored, "request": request})


def plan_to_print(plan: Plan) -> dict[str, Any]:
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
        "yield": exact(Fraction(round(plan.yielded * 10_000), 10_000)),
        "cost": _written(plan.cost),
        "cost_bound": _written(plan.cost_bound),
        "cannot_all_fit": plan.cannot_all_fit,
        "layouts": [{"layout": i, "count": layout.count} for i, layout in enumerate(plan.layouts)],
        "seconds": round(plan.seconds, 3),
    }


def _layout(layout: Layout) -> dict[str, Any]:
    return {
        "stock": layout.stock.label,
        "placed": [_place(placement) for placement in layout.placed],
        "cuts": [_cut(cut) for cut in layout.cuts],
        "offcuts": [_place(offcut) for offcut in layout.offcuts],
    }


def _place(rectangle: Placement | Offcut) -> dict[str, Any]:
    """A rectangle on a sheet, or a length on a stick; grain stands with the part, not its place."""
    written = _written_fields(rectangle)
    unsaid = {"grain"} | ({"y", "width", "turned"} if rectangle.width is None else set())
    unsaid |= {"block", "order"} if written.get("block") is None else set()
    unsaid |= {"sequence"} if written.get("sequence") is None else set()
    return {key: value for key, value in written.items() if key not in unsaid}


def _cut(cut: Cut) -> dict[str, Any]:
    written = _written_fields(cut)
    return written | {"from": written.pop("start"), "to": written.pop("end")}


def _written_fields(thing: Any) -> dict[str, Any]:
    return {field.name: _written(getattr(thing, field.name)) for field in fields(thing)}


def _written(value: Any) -> Any:
    if isinstance(value, Fraction):
        return exact(value)
    if is_dataclass(value):
        return _written_fields(value)
    return [_written(one) for one in value] if isinstance(value, tuple) else value


def _read_fields(kind: type[T], stored: Mapping[str, Any]) -> T:
    types = get_type_hints(kind)
    return kind(**{name: _read(types[name], stored[name]) for name in types if name in stored})


def _read(wanted: Any, value: Any) -> Any:
    if get_origin(wanted) is UnionType and value is not None:
        wanted = next(one for one in get_args(wanted) if one is not type(None))
    if value is None or (isinstance(wanted, type) and isinstance(value, wanted)):
        return value
    if wanted is Fraction:
        return Fraction(value)
    if get_origin(wanted) is tuple:
        first, second = get_args(wanted)
        kinds = [first] * len(value) if second is Ellipsis else [first, second]
        return tuple(_read(kind, one) for kind, one in zip(kinds, value, strict=True))
    return (
        _read_fields(wanted, value) if isinstance(wanted, type) and is_dataclass(wanted) else value
    )

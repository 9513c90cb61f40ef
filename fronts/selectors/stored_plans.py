"""Requests and plans as they are kept: plain JSON out, the same frozen things back in.

Every length and price is kept as exact text; all of them are named in `EXACT`.
"""

from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from fractions import Fraction
from typing import Any, TypeVar

from fronts.cutting.model import (
    Cut,
    Layout,
    Offcut,
    Placement,
    Plan,
    Request,
    StockSize,
    WantedPart,
)
from fronts.rules.lengths import exact

EXACT = frozenset(
    {
        "length", "width", "x", "y", "at", "start", "end", "fence", "kerf", "trim",
        "safe_width", "price", "cost", "cost_bound",
    }
)  # fmt: skip

T = TypeVar("T")


def request_json(request: Request) -> dict[str, Any]:
    """The request as JSON."""
    found: dict[str, Any] = _packed(request)
    return found


def request_from(kept: Mapping[str, Any]) -> Request:
    """The request that was kept."""
    lists = {
        "stock": tuple(_unpacked(StockSize, each) for each in kept["stock"]),
        "parts": tuple(_unpacked(WantedPart, each) for each in kept["parts"]),
    }
    return _unpacked(Request, {**kept, **lists})


def plan_json(plan: Plan) -> dict[str, Any]:
    """The plan as JSON; its request is kept beside it, not in it."""
    found: dict[str, Any] = _packed(plan)
    del found["request"]
    return found


def plan_from(kept: Mapping[str, Any], request: Request) -> Plan:
    """The plan that was kept."""
    layouts = tuple(_layout(each) for each in kept["layouts"])
    unplaced = tuple((str(label), int(count)) for label, count in kept["unplaced"])
    return _unpacked(Plan, {**kept, "request": request, "layouts": layouts, "unplaced": unplaced})


def _layout(kept: Mapping[str, Any]) -> Layout:
    return Layout(
        stock=_unpacked(StockSize, kept["stock"]),
        count=kept["count"],
        placed=tuple(_unpacked(Placement, each) for each in kept["placed"]),
        cuts=tuple(_unpacked(Cut, each) for each in kept["cuts"]),
        offcuts=tuple(_unpacked(Offcut, each) for each in kept["offcuts"]),
    )


def _packed(value: Any) -> Any:
    if isinstance(value, Fraction):
        return exact(value)
    if is_dataclass(value):
        return {each.name: _packed(getattr(value, each.name)) for each in fields(value)}
    if isinstance(value, list | tuple):
        return [_packed(each) for each in value]
    return value


def _unpacked(kind: type[T], kept: Mapping[str, Any]) -> T:
    names = {each.name for each in fields(kind)}  # type: ignore[arg-type]
    return kind(
        **{
            name: Fraction(value) if name in EXACT and isinstance(value, str) else value
            for name, value in kept.items()
            if name in names
        }
    )

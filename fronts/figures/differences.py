"""Differences between two schedules in words: `width 13 15/16 → 13 7/8`, `2 more`."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from fronts.figures.fronts import front_line, trims_of
from fronts.rules.differences import Differences, FactDiffers, FrontDiffers, NeedDiffers
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm, show
from fronts.rules.standard_keys import Sides

_CALLED: Mapping[str, str] = {
    "x": "place from the left", "y": "place above the floor", "plane": "hung as",
    "trim": "sawn off", "hinge_words": "hinge",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class DifferenceLine:
    """A front or an item, and what is otherwise about it."""

    label: str
    words: tuple[str, ...]


def front_lines(found: Differences, unit: str) -> list[DifferenceLine]:
    """Front by front."""
    return [DifferenceLine(each.label, _front(each, unit)) for each in found.fronts]


def need_lines(found: Differences) -> list[DifferenceLine]:
    """Item by item."""
    return [DifferenceLine(each.item, (_need(each),)) for each in found.needs]


def _front(front: FrontDiffers, unit: str) -> tuple[str, ...]:
    if front.was is None and front.now is not None:
        line = front_line(front.now, unit)
        return (f"new: {line.what}, {line.size}",)
    if front.now is None and front.was is not None:
        line = front_line(front.was, unit)
        return (f"gone: {line.what}, {line.size}",)
    return tuple(fact_words(fact, unit) for fact in front.facts)


def fact_words(fact: FactDiffers, unit: str) -> str:
    """`width 13 15/16 → 13 7/8`."""
    called = _CALLED.get(fact.name, fact.name.replace("_", " "))
    return f"{called} {_value(fact.was, unit)} → {_value(fact.now, unit)}"


def _value(value: Any, unit: str) -> str:
    match value:
        case None | ():
            return "none"
        case Mm():
            return show(value, unit)
        case Sides():
            return trims_of(value, unit) or "nothing"
        case Point():
            return f"{show(value.x, unit)}, {show(value.y, unit)}"
        case tuple():
            return "; ".join(_value(each, unit) for each in value)
    return str(value)


def _need(need: NeedDiffers) -> str:
    by = abs(need.now - need.was)
    return f"{by} {'more' if need.now > need.was else 'fewer'}: {need.was} → {need.now}"

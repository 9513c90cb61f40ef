"""What is ordered, in a schedule's JSON."""

from decimal import Decimal
from fractions import Fraction

from fronts.rules.results import Need


def need_json(need: Need) -> dict[str, object]:
    """An item, how much of it, and for which fronts."""
    return {
        "item": need.kind or need.item,
        "code": need.code,
        "line": need.item,
        "need": need.need,
        "fronts": list(need.fronts),
        "unit": need.unit or None,
        "per_front": {front: _amount(count) for front, count in need.per_front.items()},
        "why": need.why,
        "spares": need.spares,
    }


def _amount(count: int | Fraction) -> int | str:
    """A count, or feet or metres to the thousandth."""
    if isinstance(count, int):
        return count
    return format(Decimal(round(count * 1000)).scaleb(-3), "f")

"""For which fronts a thing is needed, and how much of it for each, in few words."""

from collections import defaultdict
from collections.abc import Mapping
from fractions import Fraction
from math import floor

from fronts.figures.sizes import tenths

HUNDREDTHS = 100


def where_needed(per_front: Mapping[str, int | Fraction], unit: str) -> str:
    """`2 each: B1.a, B1.b; B2.a: 1`; a length in tenths, a share of a sheet in hundredths."""
    by_count: dict[int | Fraction, list[str]] = defaultdict(list)
    for front, count in per_front.items():
        by_count[count].append(front)
    return "; ".join(
        f"{_amount(count, unit)} each: {', '.join(fronts)}"
        if len(fronts) > 1
        else f"{fronts[0]}: {_amount(count, unit)}"
        for count, fronts in sorted(by_count.items(), reverse=True)
    )


def _amount(count: int | Fraction, unit: str) -> str:
    if unit and isinstance(count, Fraction):
        return tenths(count, unit)
    return str(count) if count.denominator == 1 else share(count)


def share(part: int | Fraction) -> str:
    """`0.31`, rounded half up; what is less than the least that is shown, as `under 0.01`."""
    number = floor(part * HUNDREDTHS + Fraction(1, 2))
    if not number:
        return "under 0.01"
    return f"{number // HUNDREDTHS}.{number % HUNDREDTHS:02}"

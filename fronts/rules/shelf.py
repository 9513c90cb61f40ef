"""Stock of what is bought: how amounts of it are kept, and what of a need it covers.

What is laid by for a job covers its need as what was sent for does, whichever comes first
(common practice, no source).

Fronts that a door maker made cover nothing here: each is of a size and bored for its place, which
the name that it is bought by does not say. What came and is wanted no more can be entered as a
door on hand.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from fractions import Fraction

from fronts.rules.buying import Thing, Wanted
from fronts.rules.lengths import UNITS, Mm
from fronts.rules.money import number_text

KEPT_LENGTH = Mm(1, 10_000)
"""What a length in stock is counted in: thousandths of a foot and of a metre are whole, so that
a database adds up whole numbers."""
THOUSAND = 1000


@dataclass(frozen=True, slots=True)
class FreeShare:
    """So much of what is free in stock would cover what one job still wants of a thing."""

    name: str
    job: str
    amount: Fraction
    unit: str


def kept(amount: Fraction, unit: str) -> int:
    """An amount as it is kept, rounded down; `unit` is what it counts, "" where pieces."""
    return int(amount * _of_unit(unit))


def amount_in(count: int, unit: str) -> Fraction:
    """What is kept, counted in this unit."""
    return count / _of_unit(unit)


def in_words(count: int, unit: str) -> str:
    """`30`, `12.5 ft`; of what is in no unit's thousandths the whole ones."""
    thousandths = amount_in(count, unit) * THOUSAND // 1
    return f"{number_text(Decimal(thousandths) / THOUSAND)} {unit}".strip()


def _of_unit(unit: str) -> Fraction:
    return UNITS[unit] / KEPT_LENGTH if unit else Fraction(1)


def came_for_job(amount: int, came: int, ordered: int) -> int:
    """How many of what comes are for the job that sent for them; what is over is free."""
    return min(amount, max(ordered - came, 0))


def with_stock(wanted: Sequence[Wanted], laid_by: Mapping[str, int]) -> list[Wanted]:
    """What one job wants, covered too by what was laid by for it from stock, by its names.

    Where several lines want the same, the first are covered first; the last has what is over.
    """
    left = dict(laid_by)
    lines = [_covered(each, left) for each in wanted]
    last = {line.name: place for place, line in enumerate(lines) if line.need is not None}
    for name, place in last.items():
        line = lines[place]
        lines[place] = _with(line, amount_in(left.get(name, 0), line.unit))
    return lines


def _covered(line: Wanted, left: dict[str, int]) -> Wanted:
    held = left.get(line.name, 0)
    if line.need is None or not held:
        return line
    taken = min(held, kept(line.amount, line.unit))
    left[line.name] = held - taken
    return _with(line, amount_in(taken, line.unit))


def _with(line: Wanted, amount: Fraction) -> Wanted:
    if not amount:
        return line
    return replace(line, covered=line.covered + amount, stocked=line.stocked + amount)


def shares_of_free(things: Iterable[Thing], free: Mapping[str, int]) -> Iterator[FreeShare]:
    """What the free stock would cover of what is still wanted, job by job in their order."""
    left = dict(free)
    for thing in things:
        for each in thing.wanted:
            share = min(left.get(thing.name, 0), kept(each.amount, each.unit))
            if share > 0:
                left[thing.name] -= share
                yield FreeShare(thing.name, each.job, amount_in(share, each.unit), each.unit)

"""Sums of lengths as people jot them down, read exactly: `54+24`, `36-2*1 1/2`, `(36-3)/2`.

A number goes on as long as it can, so `3-1/2` is three and a half, as everywhere; with spaces,
`3 - 1/2` is two and a half. A bare number is in the job's unit. Only a plain number may
multiply, or divide what is in parentheses.
"""

from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from fronts.rules import lengths
from fronts.rules.lengths import LONGEST_TEXT, UNITS, LengthError, Mm

_SIGNS = {"+": 1, "-": -1}
_WORKED_OUT = frozenset("+*()")
"""What stands in sums alone: a single length has strokes, and a minus."""


def read_sum(text: str, unit: str, *, signed: bool = False, zero: bool = True) -> Mm:
    """As `lengths.read`, which it is for a single length; a sum of them too."""
    return lengths.allowed(_read(text, unit), text, unit, signed=signed, zero=zero)


def sum_at(text: str, at: int, unit: str) -> tuple[Mm, int] | None:
    """The sum that begins there, as long as it can be, and where it ends; None: none does."""
    piece = text[at : at + LONGEST_TEXT + 1]
    length, end = _worked_out(piece, lengths.plain(piece), unit)
    if length is None:
        return None
    if end > LONGEST_TEXT:
        raise LengthError(f"“{piece[:23]}…” is too long to be a length; enter a shorter one")
    return length, at + end


@lru_cache(maxsize=4096)
def _read(text: str, unit: str) -> Mm:
    cleaned = lengths.checked_text(text, unit)
    length, end = _worked_out(text, cleaned, unit)
    if length is None or end < len(cleaned):
        if _WORKED_OUT.isdisjoint(cleaned):
            raise lengths.not_a_length(text, unit)
        raise LengthError(f"“{text}” can't be worked out; enter a length, or a sum such as 54+24")
    return length


def _worked_out(text: str, plain: str, unit: str) -> tuple[Mm | None, int]:
    try:
        found = _Sum(plain, text, unit).sum(0)
    except ZeroDivisionError:
        raise lengths.divides_by_zero(text, unit) from None
    return (None, 0) if found is None else (found.length(unit), found.end)


class _Value(NamedTuple):
    """What a part comes to: in mm where a unit was `said`, else a plain number."""

    number: Fraction
    said: bool
    end: int

    def length(self, unit: str) -> Mm:
        return self.number if self.said else self.number * UNITS[unit]


class _Sum:
    """Reads parts of a plain text by descent; each answers None where none begins there."""

    def __init__(self, plain: str, text: str, unit: str) -> None:
        self._plain, self._text, self._unit = plain, text, unit

    def sum(self, at: int) -> _Value | None:
        at = self._past_spaces(at)
        sign = _SIGNS.get(self._plain[at : at + 1])
        total = self._product(at if sign is None else at + 1)
        if total is None:
            return None
        total = total._replace(number=total.number * (sign or 1))
        while True:
            at = self._past_spaces(total.end)
            sign = _SIGNS.get(self._plain[at : at + 1])
            part = None if sign is None else self._product(at + 1)
            if sign is None or part is None:
                return total
            total = self._added(total, part, sign)

    def _added(self, one: _Value, other: _Value, sign: int) -> _Value:
        if one.said == other.said:
            return _Value(one.number + sign * other.number, one.said, other.end)
        both = one.length(self._unit) + sign * other.length(self._unit)
        return _Value(both, said=True, end=other.end)

    def _product(self, at: int) -> _Value | None:
        total = self._factor(at)
        while total is not None:
            at = self._past_spaces(total.end)
            factor = self._factor(at + 1) if self._plain[at : at + 1] == "*" else None
            if factor is None:
                return total
            if total.said and factor.said:
                raise LengthError(
                    f"“{self._text.strip()}” multiplies a length by a length; one of them must "
                    "be a plain number, as in 2*18"
                )
            said = total.said or factor.said
            total = _Value(total.number * factor.number, said, factor.end)
        return None

    def _factor(self, at: int) -> _Value | None:
        at = self._past_spaces(at)
        if self._plain[at : at + 1] == "(":
            return self._in_parentheses(at + 1)
        amount = lengths.amount_at(self._plain, at)
        if amount is None:
            return None
        factor = UNITS[amount.unit] if amount.unit else 1
        return _Value(amount.number * factor, amount.unit is not None, amount.end)

    def _in_parentheses(self, at: int) -> _Value | None:
        inside = self.sum(at)
        at = self._past_spaces(inside.end) if inside else at
        if inside is None or self._plain[at : at + 1] != ")":
            return None
        inside, at = inside._replace(end=at + 1), self._past_spaces(at + 1)
        if self._plain[at : at + 1] != "/":
            return inside
        by = lengths.amount_at(self._plain, self._past_spaces(at + 1))
        if by is None or by.unit:
            return inside
        return _Value(inside.number / by.number, inside.said, by.end)

    def _past_spaces(self, at: int) -> int:
        while self._plain[at : at + 1].isspace():
            at += 1
        return at

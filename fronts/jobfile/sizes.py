"""Lengths in a job file: how each may be said, and how small or large it may be."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from fronts.jobfile.json_text import spoken
from fronts.jobfile.reader import Place, Record, shown
from fronts.rules import lengths
from fronts.rules.fact_kinds import Length
from fronts.rules.lengths import LONGEST, LengthError, Mm
from fronts.rules.limits import length_fault

STAND_IN = Mm(1)
"""Read on with this where a length is at fault; the file is refused in the end."""

_EXAMPLES = {"in": "23 5/8", "mm": "600.5"}


@dataclass(frozen=True, slots=True)
class Limits:
    """How small and how large a length may be."""

    zero: bool = False
    signed: bool = False
    most: Mm = LONGEST

    def allow(self, found: Mm) -> bool:
        zero = self.zero or self.signed
        return length_fault(found, zero=zero, signed=self.signed, most=self.most) is None

    def __str__(self) -> str:
        if self.signed:
            return "a length, also below zero"
        bounds = "a length of zero or more" if self.zero else "a length above zero"
        return (
            bounds if self.most == LONGEST else f"{bounds}, at most {lengths.exact(self.most)} mm"
        )


def limits_of(declared: Length) -> Limits:
    """The limits of a declared length."""
    return Limits(declared.zero, declared.signed, declared.most)


SIZE = Limits()
OR_ZERO = Limits(zero=True)


def length(place: Place, limits: Limits = SIZE) -> Mm | None:
    """A length in the forms that people write."""
    like = f"{limits}, like {_EXAMPLES[place.page.unit]}"
    said = spoken(place.value)
    if said is None:
        place.fault(like)
        return None
    try:
        found = lengths.read(said, place.page.unit, signed=True)
    except LengthError as error:
        place.fault(like, f"{shown(place.value)}{_reason(error)}")
        return None
    if not limits.allow(found):
        place.fault(like)
        return None
    return found


def needed(record: Record, key: str, limits: Limits = SIZE) -> Mm:
    """A length that must be given."""
    return record.need(key, _within(limits), STAND_IN, str(limits))


def given(record: Record, key: str, limits: Limits = SIZE) -> Mm | None:
    """A length that may be left out."""
    return record.take(key, _within(limits))


def every_length(places: Iterable[Place], limits: Limits = SIZE) -> tuple[Mm, ...]:
    """A list of lengths, in its order."""
    found = (length(place, limits) for place in places)
    return tuple(each for each in found if each is not None)


def _within(limits: Limits) -> Callable[[Place], Mm | None]:
    return lambda place: length(place, limits)


def _reason(error: LengthError) -> str:
    """The first half of the message, which follows the quoted text: “1/0” divides by zero; …"""
    _, quoted, rest = str(error).partition("” ")
    return f" ({rest.partition(';')[0]})" if quoted else ""

"""The kinds of value in a job file: lengths, texts, choices, counts, dates, numbers."""

import re
import unicodedata
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from fractions import Fraction
from typing import TypeVar

from fronts.jobfile.place import Place, Record, shown
from fronts.rules import lengths
from fronts.rules.lengths import LengthError, Mm

T = TypeVar("T")

STAND_IN = Mm(1)
"""Read on with this where a length is at fault; the file is refused in the end."""
LONGEST_LABEL = 40

_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_NUMBER = re.compile(r"-?[0-9]{1,20}(?:\.[0-9]{1,20}|/[0-9]{1,20})?")
_EXAMPLES = {"in": "23 5/8", "mm": "600.5"}


@dataclass(frozen=True, slots=True)
class Limits:
    """How small and how large a length may be."""

    zero: bool = False
    signed: bool = False
    most: Mm | None = None

    def allow(self, found: Mm) -> bool:
        if self.signed:
            return True
        enough = found >= 0 if self.zero else found > 0
        return enough and (self.most is None or found <= self.most)

    def __str__(self) -> str:
        if self.signed:
            return "a length, also below zero"
        bounds = "a length of zero or more" if self.zero else "a length above zero"
        return bounds if self.most is None else f"{bounds}, at most {lengths.exact(self.most)} mm"


SIZE = Limits()
OR_ZERO = Limits(zero=True)
PLACE = Limits(signed=True)


def length(place: Place, limits: Limits = SIZE) -> Mm | None:
    """A length in the forms that people write."""
    like = f"{limits}, like {_EXAMPLES[place.page.unit]}"
    spoken = _spoken(place.value)
    if spoken is None:
        place.fault(like)
        return None
    try:
        found = lengths.read(spoken, place.page.unit, signed=True)
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


def given_or(record: Record, key: str, default: Mm, limits: Limits = SIZE) -> Mm:
    """A length that has a default."""
    found = given(record, key, limits)
    return default if found is None else found


def every_length(places: Iterable[Place]) -> tuple[Mm, ...]:
    """A list of lengths, in its order."""
    return tuple(each for each in map(length, places) if each is not None)


def text(most: int) -> Callable[[Place], str | None]:
    """A reader of text that may be empty; one line, no control characters."""

    def read(place: Place) -> str | None:
        wanted = f"text of at most {most} characters, on one line"
        if not isinstance(place.value, str) or len(place.value) > most:
            place.fault(wanted)
        elif any(unicodedata.category(each) in _UNPRINTED for each in place.value):
            place.fault("text without control characters")
        else:
            return place.value
        return None

    return read


def label(place: Place) -> str | None:
    """A name on a drawing: not empty, short, no space around it."""
    if not isinstance(place.value, str) or not 0 < len(place.value) <= LONGEST_LABEL:
        place.fault(f"a label of 1 to {LONGEST_LABEL} characters")
        return None
    if place.value != place.value.strip():
        place.fault("a label with no space before or after it")
        return None
    return text(LONGEST_LABEL)(place)


def one_of(choices: Mapping[str, T]) -> Callable[[Place], T | None]:
    """A reader of one word out of a few."""

    def read(place: Place) -> T | None:
        if isinstance(place.value, str) and place.value in choices:
            return choices[place.value]
        place.fault(f"one of {', '.join(choices)}")
        return None

    return read


def chosen(record: Record, key: str, choices: Mapping[str, T], stand_in: T) -> T:
    """One word out of a few that must be given."""
    return record.need(key, one_of(choices), stand_in, f"one of {', '.join(choices)}")


def whole(least: int, most: int) -> Callable[[Place], int | None]:
    """A reader of a count."""

    def read(place: Place) -> int | None:
        found = place.value
        if isinstance(found, int) and not isinstance(found, bool) and least <= found <= most:
            return found
        place.fault(f"a whole number from {least} to {most}")
        return None

    return read


def number(least: Fraction, most: Fraction) -> Callable[[Place], Fraction | None]:
    """A reader of a plain number: `30`, `0.5` or `1/3`."""

    def read(place: Place) -> Fraction | None:
        spoken = _spoken(place.value)
        if spoken is not None and _NUMBER.fullmatch(spoken):
            _, slash, bottom = spoken.partition("/")
            if not slash or int(bottom):
                found = Fraction(spoken)
                if least <= found <= most:
                    return found
        place.fault(f"a number from {lengths.exact(least)} to {lengths.exact(most)}")
        return None

    return read


def day(place: Place) -> date | None:
    """A date as ISO 8601 writes it in full."""
    if isinstance(place.value, str) and _DAY.fullmatch(place.value):
        try:
            return date.fromisoformat(place.value)
        except ValueError:
            pass
    place.fault("a date like 2027-03-12")
    return None


_UNPRINTED = {"Cc", "Cs", "Zl", "Zp"}


def _within(limits: Limits) -> Callable[[Place], Mm | None]:
    return lambda place: length(place, limits)


def _spoken(value: object) -> str | None:
    """Text as a person would write it; a JSON number says its numeral."""
    match value:
        case bool():
            return None
        case str():
            return value
        case int():
            return str(value)
        case Decimal():
            return format(value, "f")
        case _:
            return None


def _reason(error: LengthError) -> str:
    """The first half of the message, which follows the quoted text: “1/0” divides by zero; …"""
    _, quoted, rest = str(error).partition("” ")
    return f" ({rest.partition(';')[0]})" if quoted else ""

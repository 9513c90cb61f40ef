"""The kinds of value in a job file beside lengths: texts, choices, counts, dates, numbers."""

import re
from collections.abc import Callable, Mapping
from datetime import UTC, date, datetime
from fractions import Fraction
from typing import TypeVar

from fronts.jobfile.json_text import spoken
from fronts.jobfile.reader import Place, Record
from fronts.rules import lengths
from fronts.rules.limits import LONGEST_LABEL
from shopjobs.words import fits_one_line

T = TypeVar("T")

_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_MOMENT = re.compile(
    r"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(?:\.[0-9]{1,6})?"
    r"(?:Z|[+-][0-9]{2}:[0-9]{2})"
)
WHEN = "when, like 2027-03-12T10:00:00Z"
SOME_TIME = datetime(2000, 1, 1, tzinfo=UTC)
"""Read on with this where a time is at fault; the file is refused in the end."""
_NUMBER = re.compile(r"-?[0-9]{1,20}(?:\.[0-9]{1,20}|/[0-9]{1,20})?")


def text(most: int) -> Callable[[Place], str | None]:
    """A reader of text that may be empty; one line, no control characters."""

    def read(place: Place) -> str | None:
        wanted = f"text of at most {most} characters, on one line"
        if not isinstance(place.value, str) or len(place.value) > most:
            place.fault(wanted)
        elif not fits_one_line(place.value):
            place.fault("text without control characters")
        else:
            return place.value
        return None

    return read


def label(most: int = LONGEST_LABEL) -> Callable[[Place], str | None]:
    """A reader of a name on a drawing: not empty, short, no space around it."""

    def read(place: Place) -> str | None:
        if not isinstance(place.value, str) or not 0 < len(place.value) <= most:
            place.fault(f"a label of 1 to {most} characters")
            return None
        if place.value != place.value.strip():
            place.fault("a label with no space before or after it")
            return None
        return text(most)(place)

    return read


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


def number(least: Fraction, most: Fraction, unit: str = "") -> Callable[[Place], Fraction | None]:
    """A reader of a plain number: `30`, `0.5` or `1/3`; its `unit` may stand after it."""

    def read(place: Place) -> Fraction | None:
        said = spoken(place.value)
        if said is not None and unit:
            said = said.strip().removesuffix(unit).strip()
        if said is not None and _NUMBER.fullmatch(said):
            _, slash, bottom = said.partition("/")
            if not slash or int(bottom):
                found = Fraction(said)
                if least <= found <= most:
                    return found
        place.fault(f"a number from {lengths.exact(least)} to {lengths.exact(most)}")
        return None

    return read


def yes_or_no(place: Place) -> bool | None:
    """True or false, as JSON says it."""
    if isinstance(place.value, bool):
        return place.value
    place.fault("true or false")
    return None


def moment(place: Place) -> datetime | None:
    """A moment as ISO 8601 writes it in full, with how far its clock is from UTC."""
    if isinstance(place.value, str) and _MOMENT.fullmatch(place.value):
        try:
            return datetime.fromisoformat(place.value).astimezone(UTC)
        except (ValueError, OverflowError):
            pass
    place.fault("a time like 2027-03-12T10:00:00Z")
    return None


def moment_said(moment: datetime) -> str:
    """A moment as ISO 8601 writes it, in UTC."""
    return moment.astimezone(UTC).isoformat().replace("+00:00", "Z")


def day(place: Place) -> date | None:
    """A date as ISO 8601 writes it in full."""
    if isinstance(place.value, str) and _DAY.fullmatch(place.value):
        try:
            return date.fromisoformat(place.value)
        except ValueError:
            pass
    place.fault("a date like 2027-03-12")
    return None

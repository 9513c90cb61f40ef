"""Text to a tree of plain values, keeping what JSON readers usually lose.

Decimals stay exact, keys given twice are remembered, and what is no number in JSON
(`NaN`, `Infinity`) keeps its place so that a fault can name it.
"""

import json
from collections import Counter
from dataclasses import dataclass
from decimal import Decimal, InvalidOperation

from fronts.jobfile.faults import refused

LARGEST_FILE = 20 * 1024 * 1024
"""Bytes; a job file of thousands of cabinets is a few megabytes."""
LONGEST_WHOLE = 30


class Keys(dict[str, object]):
    """A JSON object that remembers which of its keys were given more than once."""

    repeated: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class NotANumber:
    """A word or a numeral that can't be used as a number."""

    word: str


def decoded(data: bytes, wanted: str = "a job file, which is text in UTF-8") -> str:
    """The text of a file's bytes; `Refused` when they are too many or not UTF-8."""
    _refuse_if_large(len(data))
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        at = f"byte {error.object[error.start]:#04x} at offset {error.start:,}"
        raise refused("file", f"{at}, which is not UTF-8", wanted) from None


def parsed(text: str) -> object:
    """The tree that the text states; `Refused` when it is not JSON."""
    _refuse_if_large(len(text))
    text = text.removeprefix("\ufeff")
    if not text.strip():
        raise refused("file", "nothing", "a job file")
    try:
        return json.loads(
            text,
            parse_float=_decimal,
            parse_int=_whole,
            parse_constant=NotANumber,
            object_pairs_hook=_keys,
        )
    except json.JSONDecodeError as error:
        at = f"line {error.lineno}, column {error.colno}"
        raise refused("file", f"“{error.msg}” at {at}", "a job file as it was written") from None
    except RecursionError:
        raise refused("file", "lists or objects nested without end", "a job file") from None


def spoken(value: object) -> str | None:
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


def _refuse_if_large(size: int) -> None:
    if size > LARGEST_FILE:
        most = LARGEST_FILE // (1024 * 1024)
        raise refused("file", f"more than {most} MB", f"at most {most} MB")


def _keys(pairs: list[tuple[str, object]]) -> Keys:
    keys = Keys(pairs)
    if len(keys) < len(pairs):
        times = Counter(key for key, _ in pairs)
        keys.repeated = tuple(key for key, count in times.items() if count > 1)
    return keys


def _whole(numeral: str) -> object:
    return int(numeral) if len(numeral) <= LONGEST_WHOLE else NotANumber(numeral)


def _decimal(numeral: str) -> object:
    """Exact; an exponent that would write out to a page of noughts is no number for us."""
    try:
        value = Decimal(numeral)
    except InvalidOperation:
        return NotANumber(numeral)
    far = abs(value.adjusted()) > LONGEST_WHOLE or len(numeral) > 2 * LONGEST_WHOLE
    return NotANumber(numeral) if far else value

"""A value of the file with its path, and the records that the file is made of."""

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from decimal import Decimal
from typing import TypeVar

from fronts.jobfile.faults import Faults
from fronts.jobfile.json_text import Keys, NotANumber
from fronts.rules.kinds import Unit

T = TypeVar("T")

_PLAIN_KEY = re.compile(r"[A-Za-z_][A-Za-z0-9_]{0,39}")
_MOST_SHOWN = 40
_MOST_UNKNOWN = 20


@dataclass(slots=True)
class Page:
    """What holds for the whole file: its version, faults so far, the unit of bare numbers."""

    faults: Faults = field(default_factory=Faults)
    unit: Unit = "mm"
    version: int = 2


@dataclass(frozen=True, slots=True)
class Place:
    """A value and where it stands."""

    page: Page
    path: str
    value: object

    def fault(self, wanted: str, found: str | None = None) -> None:
        self.page.faults.add(
            self.path or "file", shown(self.value) if found is None else found, wanted
        )

    def under(self, key: str, value: object) -> "Place":
        return Place(self.page, path_of(self.path, key), value)

    def items(self, most: int) -> "list[Place]":
        """The entries of a list; none, with a fault, when it is no list or too long a one."""
        if not isinstance(self.value, list):
            self.fault("a list")
            return []
        if len(self.value) > most:
            self.fault(f"at most {most:,} entries")
            return []
        return [
            Place(self.page, f"{self.path}[{index}]", value)
            for index, value in enumerate(self.value)
        ]


class Record:
    """One object of the file, read key by key.

    What is missing or wrong becomes a fault, and reading goes on with a stand-in; `sound`
    tells which keys can be relied on. `null` says the same as leaving an optional key out.
    """

    def __init__(self, place: Place, keys: tuple[str, ...]) -> None:
        self.place = place
        self._keys = keys
        self._unsound: set[str] = set()
        self._values: Keys | None = None
        if isinstance(place.value, Keys):
            self._values = place.value
            _check_keys(place, place.value, keys)
        else:
            place.fault("an object with keys in braces")

    def has(self, key: str) -> bool:
        """Whether a key says something; one that is not known here was refused and says nothing."""
        return key in self._keys and self._values is not None and self._values.get(key) is not None

    def at(self, key: str) -> Place:
        value = None if self._values is None else self._values.get(key)
        return self.place.under(key, value)

    def once(self, key: str, value: str, taken: set[str], wanted: str) -> None:
        """Hold a sound value against those before it, to which it is added."""
        if self.sound(key):
            if value in taken:
                self.fault(key, wanted)
            taken.add(value)

    def sound(self, *keys: str) -> bool:
        return self._values is not None and not self._unsound.intersection(keys)

    def fault(self, key: str, wanted: str, found: str | None = None) -> None:
        self._unsound.add(key)
        self.at(key).fault(wanted, found)

    def take(self, key: str, read: Callable[[Place], T | None]) -> T | None:
        """The key's value; None when it is left out, or (with a fault) not usable."""
        if not self.has(key):
            return None
        value = read(self.at(key))
        if value is None:
            self._unsound.add(key)
        return value

    def need(self, key: str, read: Callable[[Place], T | None], stand_in: T, wanted: str) -> T:
        """The key's value; a fault and a stand-in when it is left out or not usable."""
        if self._values is not None and not self.has(key):
            self.fault(key, wanted, "null" if key in self._values else "nothing")
        value = self.take(key, read)
        return stand_in if value is None else value

    def entries(self, key: str, most: int) -> list[Place]:
        """The entries of a list; none where it is left out, or is none or too long a one."""
        if not self.has(key) or not self.sound(key):
            return []
        entries = self.at(key).items(most)
        if not entries and self.at(key).value != []:
            self._unsound.add(key)
        return entries


def path_of(path: str, key: str) -> str:
    if not _PLAIN_KEY.fullmatch(key):
        return f"{path}[{_quoted(key)}]"
    return f"{path}.{key}" if path else key


def shown(value: object) -> str:
    """A value as a fault tells it: short, on one line, printable."""
    match value:
        case None:
            return "null"
        case bool():
            return "true" if value else "false"
        case int() | Decimal():
            return str(value)
        case str():
            return _quoted(value)
        case NotANumber():
            return _shortened(value.word)
        case list():
            return f"a list of {len(value):,}" if value else "an empty list"
        case _:
            return "an object"


def _quoted(text: str) -> str:
    plain = "".join(
        each if each.isprintable() else f"\\u{ord(each):04x}" for each in _shortened(text)
    )
    return f'"{plain}"'


def _shortened(text: str) -> str:
    return text if len(text) <= _MOST_SHOWN else text[: _MOST_SHOWN - 1] + "…"


def _check_keys(place: Place, values: Keys, keys: tuple[str, ...]) -> None:
    for key in values.repeated[:_MOST_UNKNOWN]:
        place.under(key, None).fault("each key once", "the key more than once")
    unknown = [key for key in values if key not in keys]
    for key in unknown[:_MOST_UNKNOWN]:
        place.under(key, None).fault(f"one of {', '.join(keys)}", "an unknown key")
    if len(unknown) > _MOST_UNKNOWN:
        place.fault("known keys only", f"{len(unknown) - _MOST_UNKNOWN:,} unknown keys more")

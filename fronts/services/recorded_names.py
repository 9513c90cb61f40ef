"""Who put a name to a record that a file brings."""

from collections.abc import Mapping
from typing import Any

Who = int | str
"""A person of the shop by the key, or the name of somebody who is not in it."""


def named(column: str, who: Who) -> dict[str, Any]:
    """The columns that say who it was: a person of the shop, or a name."""
    is_name = isinstance(who, str)
    return {f"{column}_id": None if is_name else who, f"{column}_name": who if is_name else ""}


def who_of(key: int | None, name: str, people: Mapping[str, int]) -> Who:
    """A person by the key, else whom of the shop the name means, else the name itself."""
    return people.get(name, name) if key is None else key

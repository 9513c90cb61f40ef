"""A list of what the shop buys, by the groups of its names, narrowed by words."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Generic, Protocol, TypeVar

from fronts.rules.buying_names import GROUPS, group_of


class Listed(Protocol):
    """A thing of the list."""

    @property
    def name(self) -> str:
        """What it is bought as."""

    @property
    def text(self) -> str:
        """All in which words are looked for."""


Row = TypeVar("Row", bound=Listed)


@dataclass(frozen=True, slots=True)
class ListGroup(Generic[Row]):
    """Things of one group."""

    name: str
    rows: tuple[Row, ...]


def list_groups(rows: Iterable[Row], words: str) -> list[ListGroup[Row]]:
    """The things by group in which all of `words` are found, in capitals or not."""
    wanted = words.casefold().split()
    groups: dict[str, list[Row]] = {group: [] for group in GROUPS}
    for row in rows:
        text = row.text.casefold()
        if all(word in text for word in wanted):
            groups[group_of(row.name)].append(row)
    return [ListGroup(name, tuple(several)) for name, several in groups.items() if several]

"""The door maker's list as its page shows it: lines in words, what came, and what has changed."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime

from fronts.figures.bought import BoughtWords, bought_words, what_changed
from fronts.models import FrontReceipt
from fronts.pages.shared.finding_links import Link
from fronts.selectors.receipts import Received, ReceivedLine, came_as


@dataclass(frozen=True, slots=True)
class Came:
    """What came of a line together, when, and who checked it off."""

    count: int
    by: str
    at: datetime
    note: str


@dataclass(frozen=True, slots=True)
class Row:
    """A line of the list; `changes` say which fronts came otherwise, and what differs since."""

    received: ReceivedLine
    words: BoughtWords
    fronts: tuple[Link, ...]
    came: tuple[Came, ...]
    changes: tuple[str, ...]
    key: str

    @property
    def count(self) -> int:
        return self.received.line.count

    @property
    def missing(self) -> int:
        """How many are still to come."""
        return len(self.received.missing)

    @property
    def is_short(self) -> bool:
        """Whether some came, but not all."""
        return 0 < self.received.came < self.count


@dataclass(frozen=True, slots=True)
class GoneRow:
    """A front that came and is not bought any more."""

    receipt: FrontReceipt
    words: BoughtWords
    key: str


@dataclass(frozen=True, slots=True)
class BoughtList:
    """The whole list, and how many of its fronts came."""

    rows: tuple[Row, ...]
    gone: tuple[GoneRow, ...]

    @property
    def wanted(self) -> int:
        """All fronts that are bought."""
        return sum(row.count for row in self.rows)

    @property
    def came(self) -> int:
        """Those of them that came as they are."""
        return sum(row.received.came for row in self.rows)

    @property
    def changes(self) -> tuple[str, ...]:
        """What has changed since it came, line by line."""
        return tuple(change for row in self.rows for change in row.changes)


def bought_list(received: Received, unit: str, way: Callable[[str], str]) -> BoughtList:
    """The list in the job's unit; `way` is the address that a front's label leads to."""
    rows = (_row(line, unit, way, number) for number, line in enumerate(received.lines))
    gone = (
        GoneRow(row, bought_words(came_as(row), unit), f"gone-{row.pk}") for row in received.gone
    )
    return BoughtList(tuple(rows), tuple(gone))


def _row(received: ReceivedLine, unit: str, way: Callable[[str], str], number: int) -> Row:
    now = received.line.front
    return Row(
        received=received,
        words=bought_words(now, unit),
        fronts=tuple(Link(label, way(label)) for label in received.line.labels),
        came=tuple(
            Came(len(one.labels), one.receipt.by, one.receipt.checked_at, one.receipt.note)
            for one in received.deliveries
        ),
        changes=tuple(
            f"{one.label} came otherwise: {what_changed(one.was, now, unit)}"
            for one in received.otherwise
        ),
        key=f"line-{number}",
    )

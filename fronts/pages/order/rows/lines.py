"""The hardware list as its page shows it: lines in words, and what has changed."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import cast

from fronts.figures.order_words import change_words
from fronts.figures.where_needed import where_needed
from fronts.pages.order.rows.progress import item_words
from fronts.rules.buying_names import GROUPS
from fronts.rules.kinds import Unit
from fronts.selectors.approved_items import ItemOrdered
from fronts.selectors.order_lists import items_known
from fronts.selectors.order_progress import OrderProgress
from fronts.selectors.orders import OrderLine
from shopjobs.models import Job

GONE = "No longer needed"


@dataclass(frozen=True, slots=True)
class Row:
    """A line of the list; `changes` say how it differs from what was checked, if it does.

    `ordered` says how far it is once the list is approved.
    """

    line: OrderLine
    where: str
    count: str
    changes: tuple[str, ...]
    stands: bool
    key: str
    ordered: tuple[str, ...] = ()
    item: ItemOrdered | None = None

    @property
    def change(self) -> str:
        """All that changed, on one line."""
        return "; ".join(self.changes)

    @property
    def is_again(self) -> bool:
        """Whether it was checked before it changed."""
        return bool(self.changes) and self.line.is_checked

    @property
    def is_open(self) -> bool:
        """Whether it waits to be checked."""
        return self.line.need > 0 and not self.stands


@dataclass(frozen=True, slots=True)
class Group:
    """Lines of one kind under their title."""

    title: str
    key: str
    rows: tuple[Row, ...]

    @property
    def open(self) -> list[Row]:
        """The lines that wait to be checked."""
        return [row for row in self.rows if row.is_open]

    @property
    def open_words(self) -> str:
        """How many those are: `2 lines`."""
        return _lines(self.open)


@dataclass(frozen=True, slots=True)
class HardwareList:
    """The whole list: its rows, and what changed of them."""

    rows: tuple[Row, ...]
    changes: tuple[str, ...]

    @property
    def has_spares(self) -> bool:
        """Whether spares are ordered with anything."""
        return any(row.line.spares for row in self.rows)

    @property
    def open(self) -> list[Row]:
        """The lines that wait to be checked."""
        return [row for row in self.rows if row.is_open]

    @property
    def open_words(self) -> str:
        """How many those are: `12 lines`."""
        return _lines(self.open)

    @property
    def groups(self) -> list[Group]:
        """The lines by the groups of a shop's list; last what is no longer needed."""
        by_title: dict[str, list[Row]] = {title: [] for title in (*GROUPS, GONE)}
        for row in self.rows:
            by_title[row.line.group if row.line.need else GONE].append(row)
        return [
            Group(title, f"group-{place}", tuple(rows))
            for place, (title, rows) in enumerate(each for each in by_title.items() if each[1])
        ]


def hardware_list(job: Job, lines: Sequence[OrderLine], progress: OrderProgress) -> HardwareList:
    """The job's hardware against what the office has checked, and what became of it."""
    known = items_known(job)
    gone = {line.item: line for line in lines if line.is_checked and line.need == 0}
    apart: dict[str, list[str]] = defaultdict(list)
    for line in lines:
        if line.kind in gone:
            apart[line.kind].append(line.item)
    approved = progress.approval is not None
    rows = tuple(
        _row(
            line,
            () if approved else _changes(line, known, gone, apart, cast(Unit, str(job.unit))),
            index,
            progress.items.get(line.item),
        )
        for index, line in enumerate(lines)
    )
    return HardwareList(
        rows=rows,
        changes=tuple(f"{row.line.item}: {row.change}" for row in rows if row.changes),
    )


def _told_apart(
    line: OrderLine, gone: Mapping[str, OrderLine], apart: Mapping[str, Sequence[str]]
) -> str:
    """Why a line is open again, or no longer needed: its kind was checked as one item."""
    if line.item in apart:
        return f"was {line.was}, now listed one by one: {', '.join(apart[line.item])}"
    if line.kind in gone and not line.is_checked:
        return f"open again: it was part of the {gone[line.kind].was} × {line.kind} checked before"
    return ""


def _row(line: OrderLine, changes: tuple[str, ...], index: int, item: ItemOrdered | None) -> Row:
    return Row(
        line=line,
        where=where_needed(line.per_front, line.unit),
        count=_fronts(line.fronts),
        changes=changes,
        stands=line.stands,
        key=f"line-{index}",
        ordered=tuple(item_words(item)) if item else (),
        item=item,
    )


def _changes(
    line: OrderLine,
    known: frozenset[str] | None,
    gone: Mapping[str, OrderLine],
    apart: Mapping[str, Sequence[str]],
    unit: Unit,
) -> tuple[str, ...]:
    """Everything that is otherwise than when the line was checked, or that it is new."""
    told_apart = _told_apart(line, gone, apart)
    if told_apart:
        return (told_apart,)
    if line.is_checked_by_number and line.is_changed:
        return (_by_number(line),)
    if line.is_checked:
        return tuple(change_words(line.changes, unit, line.unit))
    is_new = line.was is None and known is not None and line.item not in known
    return ("new since this list was begun",) if is_new else ()


def _by_number(line: OrderLine) -> str:
    """Of a check of which the number alone is known."""
    if line.need == 0:
        return f"was {line.was}, no longer needed"
    if line.was != line.need:
        return f"was {_so_much(line.was, line)}, now {_so_much(line.need, line)}"
    return "checked before the kitchen changed, by its number alone: look again"


def _so_much(amount: int | None, line: OrderLine) -> str:
    """So many of a line, or so much of it where it is bought by length."""
    return f"{amount} {line.unit}".strip()


def _lines(rows: Sequence[Row]) -> str:
    return f"{len(rows)} line{'' if len(rows) == 1 else 's'}"


def _fronts(fronts: Sequence[str]) -> str:
    return f"{len(fronts)} front{'' if len(fronts) == 1 else 's'}"

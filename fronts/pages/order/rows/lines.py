"""The hardware list as its page shows it: lines in words, and what has changed."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from fronts.figures.sizes import tenths
from fronts.rules.results import Schedule
from fronts.selectors.order_lists import items_known
from fronts.selectors.orders import OrderLine, order_lines
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class Row:
    """A line of the list; `change` says how it differs from what was checked, if it does."""

    line: OrderLine
    where: str
    count: str
    change: str
    stands: bool
    key: str

    @property
    def seen(self) -> str:
        """When the check was made that the page shows; "" where there is none."""
        at = self.line.checked_at
        return at.isoformat() if at else ""


@dataclass(frozen=True, slots=True)
class HardwareList:
    """The whole list: its rows, how many of them are checked and still hold, what changed."""

    rows: tuple[Row, ...]
    checked: int
    wanted: int
    changes: tuple[str, ...]

    @property
    def has_spares(self) -> bool:
        """Whether spares are ordered with anything."""
        return any(row.line.spares for row in self.rows)

    @property
    def is_through(self) -> bool:
        """Whether there is nothing left to check."""
        return self.wanted > 0 and self.checked == self.wanted and not self.changes


def hardware_list(job: Job, schedule: Schedule) -> HardwareList:
    """The job's hardware against what the office has checked."""
    known = items_known(job)
    lines = order_lines(job, schedule)
    gone = {line.item: line for line in lines if line.is_checked and line.need == 0}
    apart: dict[str, list[str]] = defaultdict(list)
    for line in lines:
        if line.kind in gone:
            apart[line.kind].append(line.item)
    rows = tuple(
        _row(line, _told_apart(line, gone, apart) or _change(line, known), index)
        for index, line in enumerate(lines)
    )
    return HardwareList(
        rows=rows,
        checked=sum(row.stands and row.line.need > 0 for row in rows),
        wanted=sum(line.need > 0 for line in lines),
        changes=tuple(f"{row.line.item}: {row.change}" for row in rows if row.change),
    )


def where_needed(line: OrderLine) -> str:
    """`2 each: B1.a, B1.b; B2.a: 1`."""
    by_count: dict[int | Fraction, list[str]] = defaultdict(list)
    for front, count in line.per_front.items():
        by_count[count].append(front)
    return "; ".join(
        f"{_amount(count, line.unit)} each: {', '.join(fronts)}"
        if len(fronts) > 1
        else f"{fronts[0]}: {_amount(count, line.unit)}"
        for count, fronts in sorted(by_count.items(), reverse=True)
    )


def _amount(count: int | Fraction, unit: str) -> str:
    """A count, or a length as it is bought."""
    return str(count) if isinstance(count, int) else tenths(count, unit)


def _told_apart(
    line: OrderLine, gone: Mapping[str, OrderLine], apart: Mapping[str, Sequence[str]]
) -> str:
    """Why a line is open again, or no longer needed: its kind was checked as one item."""
    if line.item in apart:
        return f"was {line.was}, now listed one by one: {', '.join(apart[line.item])}"
    if line.kind in gone and not line.is_checked:
        return f"open again: it was part of the {gone[line.kind].was} × {line.kind} checked before"
    return ""


def _row(line: OrderLine, change: str, index: int) -> Row:
    key = f"line-{index}"
    return Row(
        line=line,
        where=where_needed(line),
        count=_fronts(line.fronts),
        change=change,
        stands=line.is_checked and not line.is_changed,
        key=key,
    )


def _change(line: OrderLine, known: frozenset[str] | None) -> str:
    if line.is_checked and line.need == 0:
        return f"was {line.was}, no longer needed"
    if line.is_changed:
        return f"was {_so_much(line.was, line)}, now {_so_much(line.need, line)}"
    if not line.is_checked and known is not None and line.item not in known:
        return "new since this list was begun"
    return ""


def _so_much(amount: int | None, line: OrderLine) -> str:
    """So many of a line, or so much of it where it is bought by length."""
    return f"{amount} {line.unit}".strip()


def _fronts(fronts: Sequence[str]) -> str:
    return f"{len(fronts)} front{'' if len(fronts) == 1 else 's'}"

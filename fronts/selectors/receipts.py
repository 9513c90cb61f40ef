"""Bought fronts and what came of them: lines of the door maker's list as the office checks them."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.facts.rows import from_row
from fronts.models import FrontReceipt
from fronts.rules.bought_results import BoughtFront, BoughtLine
from fronts.rules.receipts import ReceiptFacts
from fronts.rules.results import Schedule
from fronts.selectors.kitchens import front_keys_of
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class Delivery:
    """Fronts of a line that were checked off together."""

    labels: tuple[str, ...]
    receipt: FrontReceipt


@dataclass(frozen=True, slots=True)
class Otherwise:
    """A front that came and has changed since: it is still to come as it is now."""

    label: str
    was: BoughtFront
    receipt: FrontReceipt


@dataclass(frozen=True, slots=True)
class ReceivedLine:
    """A line with what came of it, each front as it still is, and what came otherwise."""

    line: BoughtLine
    receipts: Mapping[str, FrontReceipt]
    otherwise: tuple[Otherwise, ...]

    @property
    def came(self) -> int:
        """How many came as the line says."""
        return len(self.receipts)

    @property
    def missing(self) -> tuple[str, ...]:
        """The fronts that are still to come."""
        return tuple(label for label in self.line.labels if label not in self.receipts)

    @property
    def deliveries(self) -> tuple[Delivery, ...]:
        """What came together, the earliest first."""
        together: dict[tuple[object, ...], list[str]] = {}
        for label, row in sorted(self.receipts.items(), key=lambda came: came[1].checked_at):
            together.setdefault((row.checked_at, row.by, row.note), []).append(label)
        return tuple(
            Delivery(tuple(labels), self.receipts[labels[0]]) for labels in together.values()
        )

    @property
    def state(self) -> str:
        """What of it somebody has seen who looks at it now: another text once that changes."""
        marks = (f"{row.pk} {row.checked_at.isoformat()}" for row in self.receipts.values())
        return "; ".join(sorted(marks))


@dataclass(frozen=True, slots=True)
class Received:
    """The whole list; `gone` are fronts that came and are not bought any more."""

    lines: tuple[ReceivedLine, ...]
    gone: tuple[FrontReceipt, ...]

    def line(self, short_name: str) -> ReceivedLine | None:
        """The line of this short name, None where the kitchen has none by now."""
        named = (one for one in self.lines if one.line.front.short_name == short_name)
        return next(named, None)


def received(job: Job, schedule: Schedule) -> Received:
    """The job's bought fronts against what was checked off."""
    rows = list(receipts_of(job))
    keys = front_keys_of(job) if rows else {}
    of_front = {row.front_id: row for row in rows if row.front_id is not None}
    by_label = {label: of_front[key] for label, key in keys.items() if key in of_front}
    lines = tuple(_line(line, by_label) for line in schedule.bought)
    bought = {by_label[label].pk for line in schedule.bought for label in line.labels
              if label in by_label}  # fmt: skip
    return Received(lines, tuple(row for row in rows if row.pk not in bought))


def receipts_of(job: Job) -> "Sequence[FrontReceipt]":
    """Every front of the job that was checked off, the earliest first."""
    rows = FrontReceipt.objects.filter(job=job).select_related("checked_by")
    return list(rows.order_by("checked_at", "pk"))


def came_as(receipt: FrontReceipt) -> BoughtFront:
    """What its maker was told of a front that came."""
    return from_row(ReceiptFacts, receipt).front


def _line(line: BoughtLine, by_label: Mapping[str, FrontReceipt]) -> ReceivedLine:
    now = line.front.short_name
    rows = {label: by_label[label] for label in line.labels if label in by_label}
    return ReceivedLine(
        line,
        {label: row for label, row in rows.items() if row.fingerprint == now},
        tuple(
            Otherwise(label, came_as(row), row)
            for label, row in rows.items()
            if row.fingerprint != now
        ),
    )

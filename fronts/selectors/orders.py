"""The hardware list as the office goes through it."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from fractions import Fraction

from fronts.models import OrderCheck
from fronts.rules.fingerprint import fingerprint
from fronts.rules.results import Need, Schedule
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class OrderLine:
    """One item: what is needed now, why, and whether somebody went through it.

    `spares` are ordered beside the need; `unit` is what both count, "" where pieces. `kind` is
    what the item was called before items of its kind were told apart.
    `was` is the need when it was checked, None where nobody did; `kitchen_changed` says that
    the schedule is no longer the one that was checked.
    """

    item: str
    need: int
    why: str
    fronts: tuple[str, ...]
    per_front: Mapping[str, int | Fraction]
    checked_by: str = ""
    checked_at: datetime | None = None
    note: str = ""
    was: int | None = None
    kitchen_changed: bool = False
    spares: int = 0
    unit: str = ""
    kind: str = ""

    @property
    def is_checked(self) -> bool:
        return self.was is not None

    @property
    def is_changed(self) -> bool:
        """Whether another number is needed than was checked."""
        return self.was is not None and self.was != self.need


def order_check_of(job: Job, item: str) -> OrderCheck | None:
    """The check of an item that holds, None where nobody made one."""
    checks = OrderCheck.objects.filter(job=job, item=item)
    return checks.select_related("checked_by").first()


def order_lines(job: Job, schedule: Schedule) -> list[OrderLine]:
    """The job's hardware in the schedule's order; behind it what was checked and fell away."""
    rows = OrderCheck.objects.filter(job=job).select_related("checked_by")
    checks = {check.item: check for check in rows.order_by("item")}
    now = fingerprint(schedule)
    lines = [_line(need, checks.pop(need.item, None), now) for need in schedule.hardware]
    gone = (Need(item, 0, (), "no longer needed", {}, 0) for item in checks)
    return [*lines, *(_line(need, checks[need.item], now) for need in gone)]


def _line(need: Need, check: OrderCheck | None, now: str) -> OrderLine:
    facts = (need.item, need.need, need.why, need.fronts, need.per_front)
    if check is None:
        return OrderLine(*facts, spares=need.spares, unit=need.unit, kind=need.kind)
    return OrderLine(
        *facts,
        checked_by=check.by,
        checked_at=check.checked_at,
        note=check.note,
        was=check.need,
        kitchen_changed=check.fingerprint != now,
        spares=need.spares,
        unit=need.unit,
        kind=need.kind,
    )

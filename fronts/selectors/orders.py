"""The hardware list as the office goes through it."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime
from fractions import Fraction

from fronts.models import OrderCheck
from fronts.rules.buying_names import group_of, name_of_need
from fronts.rules.fingerprint import fingerprint
from fronts.rules.order_changes import LineChange, line_changes
from fronts.rules.order_facts import (
    NOTHING_NEEDED,
    LineFacts,
    line_facts_from,
    order_facts,
    short_name_of,
)
from fronts.rules.results import Need, Schedule
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class OrderLine:
    """One item: what is needed now, why, and whether somebody went through it.

    `spares` are ordered beside the need; `unit` is what both count, "" where pieces. `kind` is
    what the item was called before items of its kind were told apart; `group` the group of a
    shop's list in which it stands. `facts` is all that it depends on, `against` what that was
    when it was checked, None where nobody noted it. `was` is the need then, None where nobody
    ever made a mark; `open` says that the mark is a note alone. `kitchen_changed` says that the
    schedule is no longer the one that was checked. `seen` names the mark as it is.
    """

    item: str
    need: int
    why: str
    fronts: tuple[str, ...]
    per_front: Mapping[str, int | Fraction]
    facts: LineFacts = field(default=NOTHING_NEEDED)
    group: str = ""
    spares: int = 0
    unit: str = ""
    kind: str = ""
    checked_by: str = ""
    checked_at: datetime | None = None
    note: str = ""
    was: int | None = None
    open: bool = False
    against: LineFacts | None = None
    kitchen_changed: bool = False
    seen: str = ""

    @property
    def is_checked(self) -> bool:
        return self.was is not None and not self.open

    @property
    def changes(self) -> tuple[LineChange, ...]:
        """What differs from what it was checked against, as far as that was noted."""
        if not self.is_checked or self.against is None:
            return ()
        return line_changes(self.against, self.facts)

    @property
    def is_checked_by_number(self) -> bool:
        """Whether it was checked before more than the number was noted."""
        return self.is_checked and self.against is None

    @property
    def is_changed(self) -> bool:
        """Whether anything that it depends on is otherwise than when it was checked.

        Where the number alone is known, anything in the kitchen may have changed it.
        """
        if self.is_checked_by_number:
            return self.was != self.need or self.kitchen_changed
        return bool(self.changes)

    @property
    def stands(self) -> bool:
        """Whether it is checked as it is now."""
        return self.is_checked and not self.is_changed


def order_check_of(job: Job, item: str) -> OrderCheck | None:
    """The check of an item that holds, None where nobody made one."""
    checks = OrderCheck.objects.filter(job=job, item=item)
    return checks.select_related("checked_by").first()


def mark_seen(check: OrderCheck | None) -> str:
    """What of a mark somebody has seen who looks at it: another text once that changes."""
    if check is None:
        return ""
    return short_name_of([check.checked_at.isoformat(), check.note, str(check.open)])


def order_lines(job: Job, schedule: Schedule) -> list[OrderLine]:
    """The job's hardware in the schedule's order; behind it what was checked and fell away."""
    rows = OrderCheck.objects.filter(job=job).select_related("checked_by")
    checks = {check.item: check for check in rows.order_by("item")}
    now, facts = fingerprint(schedule) if checks else "", order_facts(schedule)
    lines = [
        _line(need, facts[need.item], checks.pop(need.item, None), now)
        for need in schedule.hardware
    ]
    gone = (Need(item, 0, (), "no longer needed", {}, 0) for item in checks)
    return [*lines, *(_line(need, NOTHING_NEEDED, checks[need.item], now) for need in gone)]


def _line(need: Need, facts: LineFacts, check: OrderCheck | None, now: str) -> OrderLine:
    known = OrderLine(
        need.item, need.need, need.why, need.fronts, need.per_front, facts,
        group_of(name_of_need(need)),
        need.spares, need.unit, need.kind,
    )  # fmt: skip
    if check is None:
        return known
    return replace(
        known,
        checked_by=check.by,
        checked_at=check.checked_at,
        note=check.note,
        was=check.need,
        open=check.open,
        against=line_facts_from(check.against) if check.against else None,
        kitchen_changed=check.fingerprint != now,
        seen=mark_seen(check),
    )

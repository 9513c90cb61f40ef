"""How long a job waits for what it orders: by its own number, by who sells it, or as usual.

All that is ordered is there when cutting begins, so that what takes longest counts. What nobody
says the days of takes the shop's usual ones (common practice, no source).
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date
from typing import Literal, TypeAlias

from fronts.rules.working_days import WorkingDays

LeadBy: TypeAlias = Literal["job", "supplier", "shop", "nothing"]


@dataclass(frozen=True, slots=True)
class Awaited:
    """A thing that a job waits for, by its buying name; from whom, in how many working days.

    `sent_on` is the day on which it was sent for, None where it still is to be.
    """

    name: str
    supplier: str = ""
    days: int | None = None
    sent_on: date | None = None

    @property
    def words(self) -> str:
        """`hinge H-1 from Northfield`."""
        return f"{self.name} from {self.supplier}" if self.supplier else self.name


@dataclass(frozen=True, slots=True)
class Delivery:
    """How many working days what is still to be sent for takes, and who says so.

    `longest` is the thing that takes them. Of what was sent for and has not come, `last` comes
    last, on the day `due`, as `due_by` says. Either thing has the days that are taken for it.
    """

    days: int
    by: LeadBy = "shop"
    longest: Awaited | None = None
    last: Awaited | None = None
    due: date | None = None
    due_by: LeadBy = "nothing"

    @property
    def words(self) -> str:
        """`delivery`, and of what, where a supplier says how long that takes."""
        told = self.longest is not None and self.by == "supplier"
        return f"delivery ({self.longest.words})" if self.longest and told else "delivery"


def delivery(
    own: int | None, usual: int, awaited: Iterable[Awaited] | None, calendar: WorkingDays
) -> Delivery:
    """Of a job that says its `own` days or not; `awaited` is None before its order is approved."""
    if awaited is None:
        return Delivery(usual) if own is None else Delivery(own, "job")
    held = [_taken(each, own, usual) for each in awaited]
    said = _to_send([each for each in held if each[0].sent_on is None], own)
    coming = [
        (calendar.moved(each.sent_on, days), each.words, each, by)
        for each, days, by in held
        if each.sent_on is not None
    ]
    if not coming:
        return said
    due, _, last, by = max(coming, key=lambda each: each[:2])
    return replace(said, last=last, due=due, due_by=by)


_Taken: TypeAlias = tuple[Awaited, int, LeadBy]


def _taken(each: Awaited, own: int | None, usual: int) -> _Taken:
    """The thing with the days that are taken for it; who says them."""
    if own is not None:
        return replace(each, days=own), own, "job"
    if each.days is None:
        return replace(each, days=usual), usual, "shop"
    return each, each.days, "supplier"


def _to_send(held: list[_Taken], own: int | None) -> Delivery:
    """By what is still to be sent for; of things that take as long, what a supplier says."""
    if own is not None:
        return Delivery(own, "job")
    if not held:
        return Delivery(0, "nothing")
    longest, days, by = max(held, key=lambda each: (each[1], each[2] == "supplier", each[0].words))
    return Delivery(days, by, longest)

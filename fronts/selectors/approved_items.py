"""The items of jobs' orders, as all that was approved of them comes to; their buying names."""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from fronts.models import ApprovedLine, OrderApproval
from fronts.rules.buying import NOTHING
from fronts.rules.buying_names import name_of_need
from fronts.rules.order_facts import LineFacts, line_facts_from
from fronts.selectors.schedules import schedule_of
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class ItemOrdered:
    """An item of the order: as it was approved last, and by which decision; the amounts of it.

    `ordered` is what is to be sent for in all, of which so many were `sent`, and so many `came`.
    So many are `to_come`: what one supplier sent too much of, another still owes. `stocked` is
    what was laid by from stock instead, less what was given back to it. `bought_as` is its buying
    name; "" where it was approved before that was kept.
    """

    item: str
    facts: LineFacts
    decided: OrderApproval
    ordered: int
    sent: int = 0
    came: int = 0
    to_come: int = 0
    stocked: Fraction = NOTHING
    bought_as: str = ""

    @property
    def most_to_send(self) -> Fraction:
        """How many may be sent for in all: what came and was given back to stock once more."""
        return self.ordered - min(self.stocked, NOTHING)

    @property
    def unsent(self) -> int:
        """How many nobody sent for yet, whatever is laid by from stock."""
        return max(0, self.ordered - self.sent)

    @property
    def to_send(self) -> int:
        """How many are still to be sent for."""
        return max(0, ceil(self.ordered - self.sent - self.stocked))


def approved_items(jobs: Iterable[int]) -> defaultdict[int, dict[str, ItemOrdered]]:
    """What was approved of the orders of jobs, item by item; of sending and stock it says nothing.

    Jobs are said by their keys.
    """
    rows = ApprovedLine.objects.filter(approval__job__in=jobs)
    rows = rows.select_related("approval__approved_by").order_by("approval_id", "pk")
    found: defaultdict[int, dict[str, ItemOrdered]] = defaultdict(dict)
    for row in rows:
        items = found[row.approval.job_id]
        before = items.get(row.item)
        items[row.item] = ItemOrdered(
            row.item, line_facts_from(row.facts), row.approval,
            row.amount + (before.ordered if before else 0),
            bought_as=row.bought_as or (before.bought_as if before else ""),
        )  # fmt: skip
    return found


def buying_names_of(job: Job) -> dict[str, str]:
    """The buying names of the items of a job's order, as they were approved or else are now."""
    return names_of(job, approved_items([job.pk])[job.pk])


def names_of(job: Job, items: Mapping[str, ItemOrdered]) -> dict[str, str]:
    """The same of these items."""
    found = {name: item.bought_as for name, item in items.items()}
    if all(found.values()):
        return found
    needed = {need.item: name_of_need(need) for need in schedule_of(job).hardware}
    return {item: name or needed.get(item, item) for item, name in found.items()}

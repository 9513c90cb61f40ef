"""How far a job's order is: what was approved of it, sent to whom, and what came."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from django.db.models import F, Max, OuterRef, QuerySet, Subquery, Sum
from django.db.models.functions import Coalesce

from fronts.models import (
    ApprovedLine,
    OrderApproval,
    OrderArrival,
    OrderSending,
    SentLine,
    Supplier,
)
from fronts.models.order_approvals import ORDER
from fronts.rules.order_changes import LineChange, line_changes
from fronts.rules.order_facts import (
    NOTHING_NEEDED,
    LineFacts,
    order_facts,
    short_name_of,
)
from fronts.rules.results import Schedule
from fronts.rules.shelf import amount_in
from fronts.selectors.approved_items import ItemOrdered, approved_items, names_of
from fronts.selectors.shelf import from_stock
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class LineSent:
    """A line that was sent, and what came of it, the earliest first."""

    row: SentLine
    arrivals: tuple[OrderArrival, ...]

    @property
    def came(self) -> int:
        return sum(each.amount for each in self.arrivals)

    @property
    def missing(self) -> int:
        """How many are still to come."""
        return max(0, self.row.amount - self.came)

    @property
    def how(self) -> str:
        """`is-there`, or `is-short` where only a part came; "" where nothing did yet."""
        if not self.missing:
            return "is-there"
        return "is-short" if self.came else ""


@dataclass(frozen=True, slots=True)
class Sent:
    """An order that went to a supplier, with its lines."""

    row: OrderSending
    lines: tuple[LineSent, ...]

    @property
    def missing(self) -> int:
        """How many of all its lines are still to come."""
        return sum(line.missing for line in self.lines)

    @property
    def has_come(self) -> bool:
        """Whether anything of it came."""
        return any(line.arrivals for line in self.lines)

    @property
    def arrivals(self) -> "Sequence[OrderArrival]":
        """All that came, what was written down first at the top."""
        came = [each for line in self.lines for each in line.arrivals]
        return sorted(came, key=lambda each: each.pk)

    @property
    def seen(self) -> str:
        """What somebody has seen of it who looks at it now."""
        row = self.row
        said = [str(row.pk), row.supplier, row.reference, row.sent_on.isoformat()]
        lines = (f"{line.row.pk} {line.row.amount}" for line in self.lines)
        came = (f"{each.pk} {each.amount}" for each in self.arrivals)
        return short_name_of([*said, *lines, *came])


@dataclass(frozen=True, slots=True)
class Difference:
    """An item that the kitchen needs otherwise now than it was approved; what changed."""

    item: str
    then: LineFacts
    now: LineFacts
    changes: tuple[LineChange, ...]
    ordered: int

    @property
    def more(self) -> int:
        """How many would have to be ordered beside what is; below zero, how many are over."""
        return self.now.amount - self.ordered


@dataclass(frozen=True, slots=True)
class OrderProgress:
    """All decisions on the order, the earliest first; its items by name; what was sent."""

    approvals: tuple[OrderApproval, ...]
    items: dict[str, ItemOrdered]
    sent: tuple[Sent, ...]

    @property
    def approval(self) -> OrderApproval | None:
        """The list as a whole, approved."""
        return next((each for each in self.approvals if each.kind == ORDER), None)

    @property
    def to_send(self) -> list[ItemOrdered]:
        """The items of which something is still to be sent for."""
        return [item for item in self.items.values() if item.to_send]

    @property
    def seen(self) -> str:
        """What somebody has seen of it who looks at what is to be decided and sent."""
        decided = (f"{each.pk} {each.approved_at.isoformat()}" for each in self.approvals)
        sent = (
            f"{line.row.pk} {line.row.item} {line.row.amount}"
            for each in self.sent
            for line in each.lines
        )
        stocked = (f"{each.item} {each.stocked}" for each in self.items.values() if each.stocked)
        return short_name_of([*decided, "sent", *sent, *stocked])

    def differences(self, schedule: Schedule) -> list[Difference]:
        """What the kitchen needs otherwise than it was approved; nothing before it was."""
        if self.approval is None:
            return []
        facts = order_facts(schedule)
        return [
            found
            for item in dict.fromkeys([*facts, *self.items])
            if (found := self._difference(item, facts.get(item, NOTHING_NEEDED))).changes
        ]

    def _difference(self, item: str, now: LineFacts) -> Difference:
        held = self.items.get(item)
        then = held.facts if held else NOTHING_NEEDED
        return Difference(item, then, now, line_changes(then, now), held.ordered if held else 0)


def order_progress(job: Job) -> OrderProgress:
    """Everything that was decided, sent and received of the job's order."""
    approvals = OrderApproval.objects.filter(job=job).select_related("approved_by")
    held = tuple(approvals.order_by("pk"))
    sent = tuple(_sent(job)) if held else ()
    return OrderProgress(held, _items(job, sent) if held else {}, sent)


def still_to_send(jobs: Iterable[int]) -> dict[int, bool]:
    """Whether anything is still to be sent for: of those jobs for which stock was moved alone."""
    return {key: bool(items) for key, items in _to_send_beside(from_stock(jobs)).items()}


def names_to_send(jobs: Iterable[int]) -> dict[int, list[str]]:
    """The buying names of what of each of these jobs' orders is still to be sent for.

    Where none was kept it is the item's own.
    """
    keys = list(jobs)
    stock = from_stock(keys)
    beside = _to_send_beside(stock)
    found = {key: [each.bought_as or each.item for each in items] for key, items in beside.items()}
    lines = ApprovedLine.objects.filter(approval__job__in=[key for key in keys if key not in stock])
    rows = unsent(lines).annotate(name=Max("bought_as"))
    for key, item, name in rows.values_list("approval__job", "item", "name"):
        found.setdefault(key, []).append(name or item)
    return found


def unsent(lines: QuerySet[ApprovedLine]) -> QuerySet[Any, Any]:
    """The items of these lines of which more was ordered than sent for, whatever stock does."""
    sent = SentLine.objects.filter(sending__job=OuterRef("approval__job"), item=OuterRef("item"))
    amount = sent.order_by().values("item").annotate(sum=Sum("amount")).values("sum")
    summed: QuerySet[Any, Any] = lines.order_by().values("approval__job", "item")
    summed = summed.annotate(ordered=Sum("amount"), sent=Coalesce(Subquery(amount), 0))
    return summed.filter(ordered__gt=F("sent"))


def _to_send_beside(stock: Mapping[int, Mapping[str, int]]) -> dict[int, list[ItemOrdered]]:
    """What of jobs' orders is still to be sent for beside what was laid by for them."""
    if not stock:
        return {}
    items = approved_items(stock)
    lines = SentLine.objects.filter(sending__job__in=stock).order_by()
    for key, item, amount in lines.values_list("sending__job", "item").annotate(Sum("amount")):
        if item in items[key]:
            items[key][item] = replace(items[key][item], sent=amount)
    return {
        key: [each for each in _with_stock(job, items[key], stock[key]).values() if each.to_send]
        for key, job in Job.with_deleted.in_bulk(stock).items()
    }


def suppliers_of(job: Job) -> list[str]:
    """Whom the shop may send an order to: its suppliers, and names that it sent to before."""
    listed = Supplier.objects.filter(shop=job.shop_id).values_list("name", flat=True)
    sent = OrderSending.objects.filter(job__shop=job.shop_id).values_list("supplier", flat=True)
    names = {name.casefold(): name for name in (*sent.distinct(), *listed)}
    return [names[folded] for folded in sorted(names)]


def _items(job: Job, sent: Sequence[Sent]) -> dict[str, ItemOrdered]:
    items = approved_items([job.pk])[job.pk]
    for each in sent:
        for line in each.lines:
            item = items.get(line.row.item)
            if item is not None:
                items[line.row.item] = replace(
                    item, sent=item.sent + line.row.amount, came=item.came + line.came,
                    to_come=item.to_come + line.missing,
                )  # fmt: skip
    return _with_stock(job, items, from_stock([job.pk]).get(job.pk, {}) if items else {})


def _with_stock(
    job: Job, items: dict[str, ItemOrdered], held: Mapping[str, int]
) -> dict[str, ItemOrdered]:
    """The items, with what was laid by for them from stock, by its buying names."""
    if not held:
        return items
    names = names_of(job, items)
    return {
        name: replace(item, stocked=amount_in(held.get(names[name], 0), item.facts.unit))
        for name, item in items.items()
    }


def _sent(job: Job) -> Iterator[Sent]:
    rows = OrderSending.objects.filter(job=job).select_related("sent_by")
    lines: dict[int, list[SentLine]] = defaultdict(list)
    for line in SentLine.objects.filter(sending__job=job).order_by("pk"):
        lines[line.sending_id].append(line)
    arrivals: dict[int, list[OrderArrival]] = defaultdict(list)
    came = OrderArrival.objects.filter(line__sending__job=job).select_related("line", "received_by")
    for each in came.order_by("pk"):
        arrivals[each.line_id].append(each)
    for row in rows.order_by("sent_on", "sent_at", "pk"):
        yield Sent(row, tuple(LineSent(one, tuple(arrivals[one.pk])) for one in lines[row.pk]))

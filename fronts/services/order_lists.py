"""Going through the hardware list: marks, and what the list held when it was begun."""

from collections.abc import Iterable
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.models import OrderCheck, OrderList
from fronts.rules.fingerprint import fingerprint
from fronts.rules.hardware import needs_by_item
from fronts.rules.results import Schedule
from fronts.selectors.order_lists import items_known
from fronts.services.orders import order_check, order_uncheck
from fronts.services.saving import enter, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def order_line_check(
    *,
    job: Job,
    schedule: Schedule,
    item: str,
    seen: int,
    by: Person,
    at: datetime,
    note: str = "",
) -> OrderCheck:
    """Mark an item as checked with the need that the person saw, if it is still so."""
    needs = needs_by_item(schedule)
    if item not in needs:
        raise ValidationError(f"{item} is no longer needed: the kitchen has changed.")
    if needs[item] != seen:
        raise ValidationError(
            f"The kitchen has changed: it was {seen} × {item} when you looked, "
            f"now it is {needs[item]}. Look again, then check it."
        )
    items_stand(job=job, items=needs if items_known(job) is None else [item])
    return order_check(
        job=job, item=item, need=seen, fingerprint=fingerprint(schedule), by=by, at=at, note=note
    )


@recorded
def order_line_uncheck(*, job: Job, item: str, by: Person, at: datetime) -> None:
    """Take a mark back; without any mark left, the list begins anew."""
    order_uncheck(job=job, item=item, by=by, at=at)
    if not OrderCheck.objects.filter(job=job).exists():
        deleted(OrderList.objects.filter(job=job))


def items_stand(*, job: Job, items: Iterable[str]) -> None:
    """Let these items be known on the list: they are not new any more."""
    begun = OrderList.objects.filter(job=job).first() or OrderList(job=job)
    enter(begun, {"items": [*dict.fromkeys([*begun.items, *items])]})
    saved(begun)

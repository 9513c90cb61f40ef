"""Going through the hardware list: marks, and what the list held when it was begun."""

from collections.abc import Iterable, Mapping
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.models import OrderCheck, OrderList
from fronts.rules.fingerprint import fingerprint
from fronts.rules.order_facts import LineFacts, order_facts
from fronts.rules.results import Schedule
from fronts.selectors.order_lists import items_known
from fronts.services.orders import order_check, order_line_drop, order_note, order_uncheck
from fronts.services.saving import enter, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def order_line_check(
    *,
    job: Job,
    schedule: Schedule,
    item: str,
    seen: int,
    looked_at: str,
    by: Person,
    at: datetime,
    note: str | None = None,
) -> OrderCheck:
    """Mark an item as checked as the person saw it, if it is still so.

    `seen` is the need, `looked_at` the short name of all that the line depends on.
    """
    facts = order_facts(schedule)
    _refuse_changed(item, facts, seen, looked_at)
    _items_looked_at(job, facts, [item])
    return order_check(
        job=job, item=item, facts=facts[item], fingerprint=fingerprint(schedule), by=by, at=at,
        note=note,
    )  # fmt: skip


@recorded
def order_lines_check(
    *, job: Job, schedule: Schedule, looked_at: Mapping[str, str], by: Person, at: datetime
) -> int:
    """Mark several items as checked, each as the person saw it; all of them, or none.

    `looked_at` has the short name of all that each line depends on, by its item.
    """
    if not looked_at:
        raise ValidationError("All of these lines are checked already.")
    facts = order_facts(schedule)
    for item, name in looked_at.items():
        _refuse_changed(item, facts, None, name)
    _items_looked_at(job, facts, looked_at)
    name = fingerprint(schedule)
    for item in looked_at:
        order_check(job=job, item=item, facts=facts[item], fingerprint=name, by=by, at=at)
    lines = "1 line" if len(looked_at) == 1 else f"{len(looked_at)} lines"
    job_told(job=job, text=f"Checked {lines}: {', '.join(looked_at)}", by=by, at=at)
    return len(looked_at)


@recorded
def order_line_note(
    *, job: Job, schedule: Schedule, item: str, note: str, by: Person, at: datetime
) -> None:
    """Write a note on a line of the list, or take one off it."""
    facts = order_facts(schedule)
    if item not in facts and not OrderCheck.objects.filter(job=job, item=item).exists():
        raise ValidationError(_gone(item))
    order_note(job=job, item=item, note=note, by=by, at=at)
    if not _begins_anew(job):
        _items_looked_at(job, facts, [])


@recorded
def order_line_uncheck(
    *, job: Job, item: str, by: Person, at: datetime, drop: bool = False
) -> None:
    """Take a mark back, or `drop` the line; without any mark left, the list begins anew."""
    if drop:
        order_line_drop(job=job, item=item, by=by, at=at)
    else:
        order_uncheck(job=job, item=item, by=by, at=at)
    _begins_anew(job)


def items_stand(*, job: Job, items: Iterable[str]) -> None:
    """Let these items be known on the list: they are not new any more."""
    begun = OrderList.objects.filter(job=job).first() or OrderList(job=job)
    enter(begun, {"items": [*dict.fromkeys([*begun.items, *items])]})
    saved(begun)


def _begins_anew(job: Job) -> bool:
    """Without any mark left nothing is known of the list."""
    if OrderCheck.objects.filter(job=job).exists():
        return False
    deleted(OrderList.objects.filter(job=job))
    return True


def _items_looked_at(job: Job, facts: Iterable[str], items: Iterable[str]) -> None:
    """Where the list is begun by that, nothing that is on it is new."""
    items_stand(job=job, items=facts if items_known(job) is None else items)


def _refuse_changed(
    item: str, facts: Mapping[str, LineFacts], seen: int | None, looked_at: str
) -> None:
    if item not in facts:
        raise ValidationError(_gone(item))
    if seen is not None and facts[item].need != seen:
        raise ValidationError(
            f"The kitchen has changed: it was {seen} × {item} when you looked, "
            f"now it is {facts[item].need}. Look again, then check it."
        )
    if facts[item].short_name != looked_at:
        raise ValidationError(
            f"The kitchen has changed: {item} is for other fronts, or picked by other figures, "
            "than when you looked. Look again, then check it."
        )


def _gone(item: str) -> str:
    return f"{item} is no longer needed: the kitchen has changed."

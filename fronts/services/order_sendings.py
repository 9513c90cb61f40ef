"""Sending parts of the approved order to suppliers."""

from collections.abc import Mapping
from datetime import date, datetime

from django.core.exceptions import ValidationError

from fronts.models import OrderSending, SentLine
from fronts.rules.limits import MOST_SENDINGS
from fronts.selectors.order_progress import OrderProgress, Sent, order_progress
from fronts.services.saving import checked, enter, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, made, recorded


@recorded
def order_send(
    *,
    job: Job,
    supplier: str,
    reference: str,
    sent_on: date,
    amounts: Mapping[str, int],
    by: Person,
    at: datetime,
) -> OrderSending:
    """Write down that so many of these items went to a supplier; not more than was approved."""
    progress = order_progress(job)
    if not amounts:
        raise ValidationError("Tick the lines that went to this supplier.")
    if len(progress.sent) >= MOST_SENDINGS:
        raise ValidationError(f"An order is sent {MOST_SENDINGS} times at most.")
    _refuse_too_many(progress, amounts)
    sending = OrderSending(
        job=job, supplier=supplier, reference=reference, sent_on=sent_on, sent_by=by, sent_at=at
    )
    checked(sending)
    saved(sending)
    rows = [
        SentLine(
            sending=sending, item=item, amount=amount, unit=progress.items[item].facts.unit
        )
        for item, amount in amounts.items()
    ]  # fmt: skip
    for row in rows:
        checked(row)
    made(SentLine, rows)
    lines = "1 line" if len(rows) == 1 else f"{len(rows)} lines"
    job_told(job=job, text=f"Sent {lines} to {supplier}", by=by, at=at)
    return sending


@recorded
def sending_change(
    *, sending: OrderSending, supplier: str, reference: str, sent_on: date, by: Person, at: datetime
) -> OrderSending:
    """Say otherwise where an order went, when, or under which reference."""
    enter(sending, {"supplier": supplier, "reference": reference, "sent_on": sent_on})
    checked(sending)
    saved(sending)
    job_told(job=sending.job, text=f"Changed the order sent to {supplier}", by=by, at=at)
    return sending


@recorded
def sending_take_back(*, job: Job, sent: Sent, by: Person, at: datetime) -> None:
    """It was not sent after all; not once any of it came."""
    if sent.has_come:
        raise ValidationError("Some of it came: take that back first.")
    deleted([sent.row])
    text = f"Took back that an order went to {sent.row.supplier}"
    job_told(job=job, text=text, by=by, at=at)


def _refuse_too_many(progress: OrderProgress, amounts: Mapping[str, int]) -> None:
    left = {item.item: item.to_send for item in progress.to_send}
    for item, amount in amounts.items():
        if amount > left.get(item, 0):
            raise ValidationError(f"Of {item} only {left.get(item, 0)} are left to send.")

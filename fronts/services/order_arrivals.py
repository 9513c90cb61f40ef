"""What came of an order that was sent."""

from collections.abc import Mapping
from datetime import date, datetime

from django.core.exceptions import ValidationError

from fronts.models import OrderArrival
from fronts.selectors.order_progress import Sent
from fronts.services.saving import AskFirst, checked, job_told
from fronts.services.shelf import arrivals_stocked, arrivals_unstocked
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, made, recorded


@recorded
def lines_receive(
    *,
    job: Job,
    sent: Sent,
    amounts: Mapping[int, int],
    came_on: date,
    note: str,
    confirmed: bool,
    by: Person,
    at: datetime,
) -> int:
    """Write down what came, by the keys of the lines; more than was sent for is asked about.

    It is in stock then, laid by for the job as far as it was sent for.
    """
    lines = {line.row.pk: line for line in sent.lines}
    came = {key: amount for key, amount in amounts.items() if amount and key in lines}
    if not came:
        raise ValidationError("Enter how many came.")
    over = [
        f"{lines[key].came + amount} of {lines[key].row.amount} × {lines[key].row.item}"
        for key, amount in came.items()
        if lines[key].came + amount > lines[key].row.amount
    ]
    if over and not confirmed:
        raise AskFirst(f"More came than was ordered: {'; '.join(over)}. Is it so?", ())
    rows = [
        OrderArrival(
            line=lines[key].row, amount=amount, came_on=came_on, note=note,
            received_by=by, received_at=at,
        )
        for key, amount in came.items()
    ]  # fmt: skip
    for row in rows:
        checked(row)
    made(OrderArrival, rows)
    arrivals_stocked(job, rows, lines)
    said = ", ".join(f"{amount} × {lines[key].row.item}" for key, amount in came.items())
    job_told(job=job, text=f"Came from {sent.row.supplier}: {said}", by=by, at=at)
    return len(rows)


@recorded
def last_arrival_take_back(*, job: Job, sent: Sent, by: Person, at: datetime) -> None:
    """Take back what was written down last of what came; nothing happens where nothing came.

    Refused where it is used, or laid by otherwise, by now.
    """
    if not sent.has_come:
        return
    last = sent.arrivals[-1].received_at
    rows = [each for each in sent.arrivals if each.received_at == last]
    arrivals_unstocked(rows)
    deleted(rows)
    said = ", ".join(f"{row.amount} × {row.line.item}" for row in rows)
    text = f"Took back that {said} came from {sent.row.supplier}"
    job_told(job=job, text=text, by=by, at=at)

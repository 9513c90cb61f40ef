"""Checking bought fronts off as they come."""

from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.facts.rows import columns_of
from fronts.models import FrontReceipt
from fronts.rules.receipts import ReceiptFacts
from fronts.rules.results import Schedule
from fronts.selectors.kitchens import front_keys_of
from fronts.selectors.receipts import ReceivedLine, received
from fronts.services.saving import checked, enter, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def fronts_receive(
    *,
    job: Job,
    schedule: Schedule,
    line: str,
    count: int,
    by: Person,
    at: datetime,
    note: str = "",
) -> int:
    """Check off so many of a line's fronts that are still to come; how many came of it by now.

    `line` is the short name of what the person saw: a line that says anything else by now is
    another one.
    """
    asked = _line_of(job, schedule, line)
    if not asked.missing:
        raise ValidationError({"came": "All of this line came already."})
    if not 1 <= count <= len(asked.missing):
        raise ValidationError({"came": f"Of this line {len(asked.missing)} are still to come."})
    keys, front = front_keys_of(job), asked.line.front
    held = {row.front_id: row for row in FrontReceipt.objects.filter(job=job)}
    for label in asked.missing[:count]:
        key = keys[label]
        row = held.get(key) or FrontReceipt(job=job, front_id=key)
        facts = ReceiptFacts(label, front.as_kept, note)
        mark = {"fingerprint": line, "checked_by": by, "checked_by_name": "", "checked_at": at}
        enter(row, {**columns_of(facts), **mark})
        checked(row)
        saved(row)
    came = asked.came + count
    labels = ", ".join(asked.missing[:count])
    text = f"Checked off {count} bought {_fronts(count)}: {labels}"
    job_told(job=job, text=text, by=by, at=at)
    return came


@recorded
def receipt_take_back(*, job: Job, schedule: Schedule, line: str, by: Person, at: datetime) -> None:
    """Take back the check of what came last of a line; nothing happens where nothing came."""
    deliveries = _line_of(job, schedule, line).deliveries
    if deliveries:
        rows = deliveries[-1].labels
        keys = front_keys_of(job)
        deleted(FrontReceipt.objects.filter(job=job, front__in=[keys[label] for label in rows]))
        text = f"Took back that {', '.join(rows)} came"
        job_told(job=job, text=text, by=by, at=at)


@recorded
def receipt_drop(*, job: Job, receipt: FrontReceipt, by: Person, at: datetime) -> None:
    """Take a front off the list that came and is not bought any more."""
    label = receipt.label
    deleted(FrontReceipt.objects.filter(job=job, pk=receipt.pk))
    job_told(job=job, text=f"Took {label} off the list of bought fronts", by=by, at=at)


def _line_of(job: Job, schedule: Schedule, line: str) -> ReceivedLine:
    asked = received(job, schedule).line(line)
    if asked is None:
        raise ValidationError(
            "The kitchen has changed: the list has no such line any more. Look again, then check "
            "off what came."
        )
    return asked


def _fronts(count: int) -> str:
    return "front" if count == 1 else "fronts"

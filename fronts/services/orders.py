"""Going through the hardware list line by line."""

from datetime import datetime

from fronts.models import OrderCheck
from fronts.services.saving import checked, enter, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def order_check(
    *,
    job: Job,
    item: str,
    need: int,
    fingerprint: str,
    by: Person,
    at: datetime,
    note: str = "",
) -> OrderCheck:
    """Mark a line as checked, with the need as it is now; checking again replaces the mark."""
    line = OrderCheck.objects.filter(job=job, item=item).first() or OrderCheck(job=job, item=item)
    enter(line, {
        "need": need, "fingerprint": fingerprint, "note": note, "checked_by": by, "checked_at": at,
    })  # fmt: skip
    checked(line)
    saved(line)
    job_told(job=job, text=f"Checked {need} × {item}", by=by, at=at)
    return line


@recorded
def order_uncheck(*, job: Job, item: str, by: Person, at: datetime) -> None:
    """Take back the mark of a line; nothing happens where there is none."""
    if deleted(OrderCheck.objects.filter(job=job, item=item)):
        job_told(job=job, text=f"Unchecked {item}", by=by, at=at)

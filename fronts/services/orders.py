"""Going through the hardware list line by line."""

from datetime import datetime

from django.db import transaction

from fronts.models import OrderCheck
from fronts.services.saving import checked
from shopjobs.models import Job, Person
from shopjobs.services.diary import diary_write


@transaction.atomic
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
    line.need, line.fingerprint, line.note = need, fingerprint, note
    line.checked_by, line.checked_at = by, at
    checked(line)
    line.save()
    diary_write(shop=job.shop, job=job, text=f"Checked {need} × {item}", at=at, person=by)
    return line


@transaction.atomic
def order_uncheck(*, job: Job, item: str, by: Person, at: datetime) -> None:
    """Take back the mark of a line; nothing happens where there is none."""
    if OrderCheck.objects.filter(job=job, item=item).delete()[0]:
        diary_write(shop=job.shop, job=job, text=f"Unchecked {item}", at=at, person=by)

"""Going through the hardware list line by line."""

from datetime import datetime
from typing import Any

from fronts.models import OrderCheck
from fronts.rules.order_facts import LineFacts
from fronts.services.saving import checked, enter, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def order_check(
    *,
    job: Job,
    item: str,
    facts: LineFacts,
    fingerprint: str,
    by: Person,
    at: datetime,
    note: str | None = None,
) -> OrderCheck:
    """Mark a line as checked, against all that it is now; checking again replaces the mark.

    Without a `note` the one that is there stays.
    """
    line = _line(job, item)
    enter(line, {
        "need": facts.need, "against": facts.as_json, "fingerprint": fingerprint, "open": False,
        "note": line.note if note is None else note,
        "checked_by": by, "checked_by_name": "", "checked_at": at,
    })  # fmt: skip
    checked(line)
    saved(line)
    job_told(job=job, text=f"Checked {facts.need} × {item}", by=by, at=at)
    return line


@recorded
def order_note(*, job: Job, item: str, note: str, by: Person, at: datetime) -> None:
    """Write a note on a line, whether it is checked or not; a check stays who made it.

    Without a check and a note nothing is left of the line's mark.
    """
    line = _line(job, item)
    is_open = line._state.adding or line.open
    if is_open and not note:
        deleted(OrderCheck.objects.filter(job=job, item=item))
    else:
        enter(line, {"note": note, **(_left_open(by, at) if is_open else {})})
        checked(line)
        saved(line)
    job_told(job=job, text=f"Noted on {item}: {note}" if note else f"No note on {item}", by=by,
             at=at)  # fmt: skip


@recorded
def order_uncheck(*, job: Job, item: str, by: Person, at: datetime) -> None:
    """Take back the mark of a line; a note on it stays. Nothing happens where there is no mark."""
    line = OrderCheck.objects.filter(job=job, item=item, open=False).first()
    if line is None:
        return
    if line.note:
        enter(line, _left_open(by, at))
        saved(line)
    else:
        deleted([line])
    job_told(job=job, text=f"Unchecked {item}", by=by, at=at)


@recorded
def order_line_drop(*, job: Job, item: str, by: Person, at: datetime) -> None:
    """Take a line off the list that is no longer needed, with its note."""
    if deleted(OrderCheck.objects.filter(job=job, item=item)):
        job_told(job=job, text=f"Took {item} off the list", by=by, at=at)


def _left_open(by: Person, at: datetime) -> dict[str, Any]:
    """What a mark says that is a note alone."""
    return {"open": True, "checked_by": by, "checked_by_name": "", "checked_at": at}


def _line(job: Job, item: str) -> OrderCheck:
    return OrderCheck.objects.filter(job=job, item=item).first() or OrderCheck(job=job, item=item)

"""Snags: written down, changed, settled, opened again, taken away."""

from collections.abc import Sequence
from datetime import date, datetime

from django.core.exceptions import ValidationError

from fronts.facts.rows import columns_of
from fronts.models import Cabinet, Front, Snag
from fronts.rules.limits import MOST_SNAGS
from fronts.rules.snags import SnagFacts
from fronts.services.photos import snag_photos_add
from fronts.services.saving import checked, enter, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def snag_raise(
    *,
    job: Job,
    facts: SnagFacts,
    by: Person,
    at: datetime,
    cabinet: Cabinet | None = None,
    front: Front | None = None,
    who: Person | None = None,
    images: Sequence[str] = (),
    entered: datetime | None = None,
) -> Snag:
    """Write a snag down, with its photos, whose files were put; `who` is to settle it.

    `entered` is when it was written and they were taken, where it waited to be sent.

    One on a front is on its `cabinet` too. What it is on may have gone by then: the snag is
    kept all the same, and says what that was called.
    """
    if Snag.objects.filter(job=job).count() >= MOST_SNAGS:
        raise ValidationError(f"A job has {MOST_SNAGS} snags at most.")
    snag = Snag(
        job=job, cabinet=cabinet, front=front, assigned_to=who, raised_by=by,
        raised_at=entered or at, changed_at=entered or at, **columns_of(facts),
    )  # fmt: skip
    checked(snag)
    saved(snag)
    snag_photos_add(snag=snag, images=images, by=by, at=at, entered=entered)
    _told(snag, f"Wrote down a snag on {snag.on}: {snag.words}", by, at)
    return snag


@recorded
def snag_change(
    *, snag: Snag, words: str, due: date | None, who: Person | None, by: Person, at: datetime
) -> Snag:
    """Say otherwise what is wrong, by when it must be settled, and by whom.

    Whom a file named who is not in the shop stays named as long as nobody else is chosen.
    """
    name = "" if who else snag.assigned_to_name
    enter(snag, {
        "words": words, "due": due, "assigned_to": who, "assigned_to_name": name, "changed_at": at,
    })  # fmt: skip
    checked(snag)
    saved(snag)
    _told(snag, f"Changed the snag on {snag.on}: {snag.words}", by, at)
    return snag


@recorded
def snag_settle(
    *, snag: Snag, note: str, by: Person, at: datetime, entered: datetime | None = None
) -> Snag:
    """Mark a snag done, and say what was done; said again as it is, nothing changes.

    `entered` is when that was said, where it waited to be sent.
    """
    if snag.done_at is not None and snag.done_note == note:
        return snag
    enter(snag, {
        "done_at": entered or at, "done_by": by, "done_by_name": "", "done_note": note,
        "changed_at": at,
    })  # fmt: skip
    checked(snag)
    saved(snag)
    what = f"{snag.words} – {note}" if note else snag.words
    _told(snag, f"Settled the snag on {snag.on}: {what}", by, at)
    return snag


@recorded
def snag_open_again(*, snag: Snag, by: Person, at: datetime) -> Snag:
    """A snag that was done is not; history keeps who said what was done."""
    if snag.done_at is None:
        return snag
    enter(snag, {
        "done_at": None, "done_by": None, "done_by_name": "", "done_note": "", "changed_at": at,
    })  # fmt: skip
    saved(snag)
    _told(snag, f"Opened the snag on {snag.on} again: {snag.words}", by, at)
    return snag


@recorded
def snag_delete(*, snag: Snag, by: Person, at: datetime) -> None:
    """Take a snag away with its photos, whose files stay while the step can be taken back."""
    deleted([snag])
    _told(snag, f"Deleted the snag on {snag.on}: {snag.words}", by, at)


def _told(snag: Snag, text: str, by: Person, at: datetime) -> None:
    job_told(job=snag.job, text=text, by=by, at=at, about=snag.cabinet)

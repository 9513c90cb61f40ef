"""Writing the diary."""

from datetime import datetime

from shopjobs.models import DiaryEntry, Job, Person, Shop

LONGEST = 500


def diary_write(
    *, shop: Shop, text: str, at: datetime, person: Person | None = None, job: Job | None = None
) -> DiaryEntry:
    """Add a line to the shop's diary, cut to what a line holds."""
    line = text if len(text) <= LONGEST else text[: LONGEST - 1] + "…"
    return DiaryEntry.objects.create(shop=shop, job=job, person=person, at=at, text=line)

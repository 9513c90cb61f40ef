"""Lines of history for what changes no fact: a password, a plan begun."""

from datetime import datetime

from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.services.recording import shortened


def note(
    *, shop: Shop, text: str, at: datetime, person: Person | None = None, job: Job | None = None
) -> Revision:
    """Write down what was done."""
    return Revision.objects.create(shop=shop, job=job, person=person, at=at, text=shortened(text))

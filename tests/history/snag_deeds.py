"""Things that people do to a job's snags."""

import random

from fronts import models
from fronts.rules.snags import SnagFacts
from fronts.services.snags import (
    snag_change,
    snag_delete,
    snag_open_again,
    snag_raise,
    snag_settle,
)
from shopjobs.models import Job, Person
from tests.factories import NOW


def snag_of_job(job: Job, by: Person, chance: random.Random) -> None:
    """A snag is written down, said otherwise, settled, opened again or taken away."""
    snags = list(models.Snag.objects.filter(job=job).select_related("job__shop"))
    if not snags or chance.random() < 0.4:
        front = chance.choice(list(models.Front.objects.filter(opening__cabinet__job=job)))
        facts = SnagFacts("front", f"scratch {chance.randrange(99)}", str(front.opening))
        cabinet = front.opening.cabinet
        snag_raise(job=job, facts=facts, front=front, cabinet=cabinet, by=by, at=NOW)
        return
    snag, deed = chance.choice(snags), chance.choice(["say", "settle", "open", "delete"])
    if deed == "say":
        words = f"dent {chance.randrange(99)}"
        snag_change(snag=snag, words=words, due=NOW.date(), who=by, by=by, at=NOW)
    elif deed == "settle":
        snag_settle(snag=snag, note=f"planed {chance.randrange(99)}", by=by, at=NOW)
    elif deed == "open":
        snag_open_again(snag=snag, by=by, at=NOW)
    else:
        snag_delete(snag=snag, by=by, at=NOW)

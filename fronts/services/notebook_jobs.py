"""A new job from a notebook: the shop's ways, and what the lines say."""

from datetime import datetime

from fronts.notebook import read_more
from fronts.rules.limits import LONGEST_NOTEBOOK
from fronts.services.notebook_lines import lines_enter
from fronts.services.saved_faces import faces_of
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Shop
from shopjobs.services.jobs import job_create
from shopjobs.services.recording import recorded
from shopjobs.services.refused import Refused


@recorded
def notebook_enter(
    *,
    shop: Shop,
    number: str,
    text: str,
    most: int,
    at: datetime,
    by: Person | None = None,
) -> Job:
    """Make a job of this number with all that the lines add; `NotebookRefused` with every fault.

    Bare numbers are in the shop's unit. `Refused` where the number is taken, the text is longer
    than a notebook may be, or there are more than `most` cabinets.
    """
    if len(text) > LONGEST_NOTEBOOK:
        words = f"A notebook has at most {LONGEST_NOTEBOOK:,} characters; make it several jobs."
        raise Refused(words, field="file")
    job = job_create(shop=shop, number=number, at=at, by=by)
    added = read_more(text, kitchen_of(job), "", faces_of(shop))
    if len(added.cabinets) > most:
        words = f"This notebook has {len(added.cabinets)} cabinets; {most} are taken in at once."
        raise Refused(words, field="file")
    lines_enter(job=job, added=added, at=at, by=by)
    return job

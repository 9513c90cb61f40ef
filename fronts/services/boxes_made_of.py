"""How a shop makes its drawer boxes, or one job otherwise."""

from datetime import datetime

from fronts.facts.rows import columns_of
from fronts.models import BoxesMadeOf
from fronts.rules.box_facts import BoxesMadeOf as Facts
from fronts.services.owned import list_faults, own_row
from fronts.services.saving import checked, enter, job_changed, saved, ways_changed
from fronts.services.what_goes import settled_in
from shopjobs.models import Job, Person, Shop
from shopjobs.services.recording import deleted, recorded


@recorded
def boxes_made_of_set(
    *, owner: Shop | Job, boxes: Facts, at: datetime, by: Person | None = None
) -> BoxesMadeOf:
    """Set all that is said of how boxes are made."""
    row = own_row(BoxesMadeOf, owner)
    enter(row, columns_of(boxes))
    checked(row, list_faults(boxes))
    saved(row)
    ways_changed(owner=owner, what="way of making boxes", by=by, at=at)
    return row


@recorded
def boxes_made_of_clear(*, job: Job, at: datetime, by: Person | None = None) -> None:
    """Let the shop's way of making boxes hold for this job again."""
    before = settled_in(job)
    if deleted(BoxesMadeOf.objects.filter(job=job)):
        went = ["this job's own way of making boxes", *before.lost(job)]
        text = "Took the shop's way of making boxes for this job again"
        job_changed(job=job, text=text, by=by, at=at, went=went)

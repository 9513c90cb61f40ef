"""A door on hand goes to another job."""

from datetime import datetime

from fronts.models import DoorOnHand
from fronts.rules.free_label import free_label
from fronts.rules.limits import MOST_DOORS
from fronts.selectors.unused_doors import fronts_by_door
from fronts.services.ordering import last_position
from fronts.services.saving import checked, enter, saved, shop_changed
from shopjobs.models import Job, Person
from shopjobs.services.locks import shop_lock
from shopjobs.services.recording import recorded
from shopjobs.services.refused import Refused


@recorded
def door_move(
    *, row: DoorOnHand, seen_in: int, to: Job, by: Person | None, at: datetime
) -> DoorOnHand:
    """Give a door that no front is made of to another job; where its label is taken, a free one.

    `seen_in` is the job, by its key, that had it when it was looked at.
    """
    shop_lock(to.shop_id)
    jobs = Job.objects.filter(pk__in={row.job_id, seen_in, to.pk}).order_by("pk")
    held = {job.pk: job for job in jobs.select_for_update(of=("self",), no_key=True)}
    door = DoorOnHand.objects.select_related("job__shop").filter(pk=row.pk).first()
    if door is None:
        raise Refused("This door is gone: somebody deleted it meanwhile.")
    before = door.job
    if before.pk != seen_in:
        raise Refused(f"Somebody moved it meanwhile: it is {door.label} of job {before.number}.")
    if to.pk not in held or to.pk == before.pk:
        raise Refused("Choose another job.", field="to")
    front = fronts_by_door(before).get(door.label)
    if front:
        raise Refused(f"{door.label} is front {front} of job {before.number} by now.")
    others = DoorOnHand.objects.filter(job=to)
    if others.count() >= MOST_DOORS:
        raise Refused(f"A job has at most {MOST_DOORS} doors on hand.", field="to")
    label, was = free_label(door.label, set(others.values_list("label", flat=True))), door.label
    enter(door, {"job": to, "label": label, "position": last_position(others)})
    checked(door)
    saved(door)
    called = f" as {label}" if label != was else ""
    text = f"Moved door {was} from {before.number} to {to.number}{called}"
    shop_changed(shop=before.shop, text=text, by=by, at=at)
    return door

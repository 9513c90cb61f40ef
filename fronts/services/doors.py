"""Doors on hand: entered, changed, deleted."""

from datetime import datetime

from django.db import transaction

from fronts.facts.rows import by_column, columns_of
from fronts.models import DoorOnHand, Front, HingeBore
from fronts.rules.kitchen import DoorOnHand as DoorFacts
from fronts.rules.limits import MOST_BORES
from fronts.rules.validity import door_faults
from fronts.services.ordering import last_position
from fronts.services.rows import bore_rows, door_row
from fronts.services.saving import AskFirst, checked, enter, job_changed, saved_under_its_label
from shopjobs.models import Job, Person


class DoorInUse(AskFirst):
    """Fronts are made from this door; they would be left to the rules."""


@transaction.atomic
def door_create(
    *, job: Job, facts: DoorFacts, at: datetime, by: Person | None = None
) -> DoorOnHand:
    """Enter a door on hand, last in the job's order."""
    door = door_row(job, facts, last_position(DoorOnHand.objects.filter(job=job)))
    _save(door, facts)
    job_changed(job=job, text=f"Entered door {door.label}", by=by, at=at)
    return door


@transaction.atomic
def door_change(
    *, door: DoorOnHand, facts: DoorFacts, at: datetime, by: Person | None = None
) -> DoorOnHand:
    """Change what is known of a door."""
    enter(door, columns_of(facts))
    _save(door, facts)
    job_changed(job=door.job, text=f"Changed door {door.label}", by=by, at=at)
    return door


@transaction.atomic
def door_delete(
    *, door: DoorOnHand, at: datetime, confirmed: bool = False, by: Person | None = None
) -> None:
    """Delete a door; where fronts are made from it, only once that is confirmed."""
    used = Front.objects.filter(door=door).select_related("opening__cabinet")
    names = [str(front.opening) for front in used]
    if names and not confirmed:
        raise DoorInUse(f"Door {door.label} closes {', '.join(names)}.", names)
    used.update(door=None)
    job, label = door.job, door.label
    door.delete()
    job_changed(job=job, text=f"Deleted door {label}", by=by, at=at)


def _save(door: DoorOnHand, facts: DoorFacts) -> None:
    rows, faults = list(bore_rows(door, facts)), by_column(DoorFacts, door_faults(facts))
    if len(rows) > MOST_BORES:
        faults["hinge_bores"] = f"enter at most {MOST_BORES} bores"
    checked(door, faults)
    for row in rows:
        checked(row)
    saved_under_its_label(door, taken=f"there is already a door {door.label} in this job")
    HingeBore.objects.filter(door=door).delete()
    HingeBore.objects.bulk_create(rows)

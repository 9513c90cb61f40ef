"""Doors on hand: several entered at once; what else their deletion touches."""

from collections.abc import Sequence
from datetime import datetime
from functools import partial

from fronts.models import DoorOnHand, Front
from fronts.rules.kitchen import DoorOnHand as Facts
from fronts.services.saving import enter, job_changed, saved
from fronts.services.things import thing_create, thing_delete
from shopjobs.models import Job, Person
from shopjobs.services.recording import recorded


@recorded
def doors_enter(
    *, job: Job, doors: Sequence[Facts], at: datetime, by: Person | None = None
) -> None:
    """Enter several doors, in their order: one step back."""
    for door in doors:
        thing_create(job=job, facts=door, at=at, by=by)
    if len(doors) > 1:
        job_changed(job=job, text=f"Entered {len(doors)} doors on hand", by=by, at=at)


@recorded
def door_delete(*, row: DoorOnHand, at: datetime, by: Person | None = None) -> None:
    """Delete a door; fronts that are made from it are left to the rules."""
    thing_delete(row=row, at=at, by=by, let_go=partial(_left_to_the_rules, row))


def _left_to_the_rules(door: DoorOnHand) -> list[str]:
    fronts = Front.objects.filter(door=door).select_related("opening__cabinet")
    in_order = list(fronts.order_by("opening__cabinet__position", "opening__position", "position"))
    for front in in_order:
        enter(front, {"door": None})
        saved(front)
    names = list(dict.fromkeys(str(front.opening) for front in in_order))
    gets = "gets a new front" if len(in_order) == 1 else "get new fronts"
    return [f"{', '.join(names)} {gets}"] if names else []

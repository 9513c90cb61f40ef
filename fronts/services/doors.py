"""Doors on hand: entered, changed, deleted."""

from collections.abc import Sequence
from datetime import datetime
from typing import Unpack

from django.db import transaction

from fronts.jobfile.doors import MOST_BORES
from fronts.models import DoorOnHand, HingeBore, Opening
from fronts.rules.kitchen import Point
from fronts.services.ordering import last_position
from fronts.services.saving import AskFirst, checked, enter, job_changed, kept
from fronts.services.values import DoorValues
from shopjobs.models import Job, Person


class DoorInUse(AskFirst):
    """Openings name this door; they would be left to the rules."""


@transaction.atomic
def door_create(
    *,
    job: Job,
    at: datetime,
    hinge_bores: Sequence[Point] = (),
    by: Person | None = None,
    **values: Unpack[DoorValues],
) -> DoorOnHand:
    """Enter a door on hand, last in the job's order."""
    door = DoorOnHand(job=job, position=last_position(DoorOnHand.objects.filter(job=job)))
    enter(door, values)
    _keep(door, hinge_bores)
    job_changed(job=job, text=f"Entered door {door.label}", by=by, at=at)
    return door


@transaction.atomic
def door_change(
    *,
    door: DoorOnHand,
    at: datetime,
    hinge_bores: Sequence[Point] | None = None,
    by: Person | None = None,
    **values: Unpack[DoorValues],
) -> DoorOnHand:
    """Change what is known of a door; None leaves its bores as they are."""
    enter(door, values)
    if hinge_bores is None:
        hinge_bores = [Point(bore.x, bore.y) for bore in _bores(door)]
    _keep(door, hinge_bores)
    job_changed(job=door.job, text=f"Changed door {door.label}", by=by, at=at)
    return door


@transaction.atomic
def door_delete(
    *, door: DoorOnHand, at: datetime, confirmed: bool = False, by: Person | None = None
) -> None:
    """Delete a door; where openings name it, only once that is confirmed."""
    used = Opening.objects.filter(front_door=door).select_related("cabinet")
    names = [str(opening) for opening in used]
    if names and not confirmed:
        raise DoorInUse(f"Door {door.label} closes {', '.join(names)}.", names)
    used.update(front_door=None)
    job, label = door.job, door.label
    door.delete()
    job_changed(job=job, text=f"Deleted door {label}", by=by, at=at)


def _keep(door: DoorOnHand, bores: Sequence[Point]) -> None:
    rows = [
        HingeBore(door=door, position=position, x=bore.x, y=bore.y)
        for position, bore in enumerate(bores)
    ]
    checked(door, _faults(door, bores))
    for row in rows:
        checked(row)
    kept(door, taken=f"there is already a door {door.label} in this job")
    HingeBore.objects.filter(door=door).delete()
    HingeBore.objects.bulk_create(rows)


def _faults(door: DoorOnHand, bores: Sequence[Point]) -> dict[str, str]:
    """What is in the door must lie on it, and its frame must leave a panel."""
    faults: dict[str, str] = {}
    width, height = door.width or 0, door.height or 0
    if door.knob_x is not None and door.knob_x > width:
        faults["knob_x"] = "this place is outside the door"
    if door.knob_y is not None and door.knob_y > height:
        faults["knob_y"] = "this place is outside the door"
    if any(not (0 <= bore.x <= width and 0 <= bore.y <= height) for bore in bores):
        faults["hinge_bores"] = "a bore lies outside the door"
    if len(bores) > MOST_BORES:
        faults["hinge_bores"] = f"enter at most {MOST_BORES} bores"
    if door.stile and 2 * door.stile >= width:
        faults["stile"] = "enter less than half the door's width"
    if door.rail and 2 * door.rail >= height:
        faults["rail"] = "enter less than half the door's height"
    return faults


def _bores(door: DoorOnHand) -> list[HingeBore]:
    return list(HingeBore.objects.filter(door=door).order_by("position", "pk"))

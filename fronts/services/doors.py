"""Doors on hand: what else their deletion touches."""

from datetime import datetime

from fronts.models import DoorOnHand, Front
from fronts.services.saving import AskFirst, enter, saved
from fronts.services.things import thing_delete
from shopjobs.models import Person
from shopjobs.services.recording import recorded


class DoorInUse(AskFirst):
    """Fronts are made from this door; they would be left to the rules."""


@recorded
def door_delete(
    *, door: DoorOnHand, at: datetime, confirmed: bool = False, by: Person | None = None
) -> None:
    """Delete a door; where fronts are made from it, only once that is confirmed."""
    used = Front.objects.filter(door=door).select_related("opening__cabinet")
    names = [str(front.opening) for front in used]
    if names and not confirmed:
        raise DoorInUse(f"Door {door.label} closes {', '.join(names)}.", names)
    for front in used:
        enter(front, {"door": None})
        saved(front)
    thing_delete(row=door, at=at, by=by)

"""Doors on hand: what else their deletion touches."""

from datetime import datetime
from functools import partial

from fronts.models import DoorOnHand, Front
from fronts.services.saving import enter, saved
from fronts.services.things import thing_delete
from shopjobs.models import Person
from shopjobs.services.recording import recorded


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

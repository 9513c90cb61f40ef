"""Openings: entered, changed, put in order, deleted."""

from datetime import datetime
from typing import Unpack

from django.core.exceptions import ValidationError
from django.db import transaction

from fronts.jobfile.cabinets import MOST_OPENINGS
from fronts.models import Box, Cabinet, Opening
from fronts.models.openings import BOXED
from fronts.rules.lengths import Mm
from fronts.services.label_clashes import label_taken_twice, past_cabinet
from fronts.services.ordering import last_position, placed
from fronts.services.saving import AskFirst, changed, checked, enter, job_changed, kept
from fronts.services.values import OpeningValues
from shopjobs.models import Job, Person


class BoxesInTheWay(AskFirst):
    """The opening has drawer boxes, which would go."""


@transaction.atomic
def opening_create(
    *, cabinet: Cabinet, at: datetime, by: Person | None = None, **values: Unpack[OpeningValues]
) -> Opening:
    """Enter an opening, last in its cabinet's order."""
    rows = Opening.objects.filter(cabinet=cabinet)
    if rows.count() >= MOST_OPENINGS:
        raise ValidationError(f"cabinet {cabinet.label} has {MOST_OPENINGS} openings, the most")
    opening = Opening(cabinet=cabinet, position=last_position(rows))
    enter(opening, values)
    _keep(opening)
    job_changed(job=cabinet.job, text=f"Entered opening {opening}", by=by, at=at)
    return opening


@transaction.atomic
def opening_change(
    *,
    opening: Opening,
    at: datetime,
    confirmed: bool = False,
    by: Person | None = None,
    **values: Unpack[OpeningValues],
) -> Opening:
    """Change what is known of an opening.

    Boxes that its fronts would no longer have go with it, only once that is confirmed.
    """
    enter(opening, values)
    _keep(opening)
    if changed(opening) & {"closed_by", "count"}:
        _let_boxes_go(opening, confirmed=confirmed)
    job_changed(job=_job(opening), text=f"Changed opening {opening}", by=by, at=at)
    return opening


@transaction.atomic
def opening_move(*, opening: Opening, to: int, at: datetime, by: Person | None = None) -> Opening:
    """Put the opening at place `to` of its cabinet's order, counted from 0."""
    rows = list(Opening.objects.filter(cabinet=opening.cabinet).order_by("position", "pk"))
    Opening.objects.bulk_update(placed(rows, opening, to), ["position"])
    opening.refresh_from_db(fields=["position"])
    job_changed(job=_job(opening), text=f"Moved opening {opening}", by=by, at=at)
    return opening


@transaction.atomic
def opening_delete(
    *, opening: Opening, at: datetime, confirmed: bool = False, by: Person | None = None
) -> None:
    """Delete an opening; with boxes behind it, only once that is confirmed."""
    boxes = [str(box) for box in Box.objects.filter(opening=opening)]
    if boxes and not confirmed:
        raise BoxesInTheWay(f"Opening {opening} goes with its boxes.", boxes)
    job, name = _job(opening), str(opening)
    opening.delete()
    job_changed(job=job, text=f"Deleted opening {name}", by=by, at=at)


def _let_boxes_go(opening: Opening, *, confirmed: bool) -> None:
    left = opening.count if opening.closed_by in BOXED else 0
    boxes = Box.objects.filter(opening=opening, index__gte=left)
    names = [str(box) for box in boxes]
    if names and not confirmed:
        raise BoxesInTheWay(f"What closes {opening} now has no place for its boxes.", names)
    if names:
        boxes.delete()


def _keep(opening: Opening) -> None:
    _settle(opening)
    checked(opening, _door_faults(opening))
    faults = past_cabinet(opening, opening.cabinet, _job(opening).unit)
    if faults:
        raise ValidationError(faults)
    kept(opening, taken=f"cabinet {opening.cabinet.label} already has an opening {opening.label}")
    if not changed(opening) & {"label", "closed_by", "count"}:
        return
    name = label_taken_twice(_job(opening))
    if name is not None:
        raise ValidationError({"label": f"two fronts would be called {name}; give another label"})


def _settle(opening: Opening) -> None:
    """Drop what a former way of closing left behind, and hang a door somewhere."""
    if opening.closed_by == "door":
        opening.hinged = opening.hinged or "left"
    else:
        opening.hinged = ""
    if opening.closed_by != "drawers":
        opening.count, opening.heights = 1, ()
    opening.shift_x = opening.shift_x or Mm(0)
    opening.shift_y = opening.shift_y or Mm(0)


def _door_faults(opening: Opening) -> dict[str, str]:
    door = opening.front_door
    if door is None:
        return {}
    if door.job_id != opening.cabinet.job_id:
        return {"front_door": "this door is not on hand for this job"}
    if opening.closed_by in ("pair", "drawers"):
        return {"front_door": "a named door serves a single front; have doors chosen instead"}
    return {}


def _job(opening: Opening) -> Job:
    return opening.cabinet.job

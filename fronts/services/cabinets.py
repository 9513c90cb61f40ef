"""Cabinets: entered, changed, put in order, copied, deleted."""

from datetime import datetime
from typing import Unpack

from django.core.exceptions import ValidationError
from django.db import transaction

from fronts.models import Box, Cabinet, Opening
from fronts.rules.lengths import Mm
from fronts.services.label_clashes import label_taken_twice, past_cabinet
from fronts.services.ordering import last_position, placed
from fronts.services.saving import AskFirst, changed, checked, enter, job_changed, kept
from fronts.services.values import CabinetValues
from shopjobs.models import Job, Person


class CabinetNotEmpty(AskFirst):
    """The cabinet has openings, which would go with it."""


@transaction.atomic
def cabinet_create(
    *, job: Job, at: datetime, by: Person | None = None, **values: Unpack[CabinetValues]
) -> Cabinet:
    """Enter a cabinet, last in the job's order."""
    cabinet = Cabinet(job=job, position=last_position(Cabinet.objects.filter(job=job)))
    enter(cabinet, values)
    _keep(cabinet)
    job_changed(job=job, text=f"Entered cabinet {cabinet.label}", by=by, at=at)
    return cabinet


@transaction.atomic
def cabinet_change(
    *, cabinet: Cabinet, at: datetime, by: Person | None = None, **values: Unpack[CabinetValues]
) -> Cabinet:
    """Change what is known of a cabinet; its openings must still lie within it."""
    enter(cabinet, values)
    _keep(cabinet)
    job_changed(job=cabinet.job, text=f"Changed cabinet {cabinet.label}", by=by, at=at)
    return cabinet


@transaction.atomic
def cabinet_move(*, cabinet: Cabinet, to: int, at: datetime, by: Person | None = None) -> Cabinet:
    """Put the cabinet at place `to` of the job's order, counted from 0."""
    rows = list(Cabinet.objects.filter(job=cabinet.job).order_by("position", "pk"))
    Cabinet.objects.bulk_update(placed(rows, cabinet, to), ["position"])
    cabinet.refresh_from_db(fields=["position"])
    job_changed(job=cabinet.job, text=f"Moved cabinet {cabinet.label}", by=by, at=at)
    return cabinet


@transaction.atomic
def cabinet_copy(
    *, cabinet: Cabinet, label: str, x: Mm, at: datetime, by: Person | None = None
) -> Cabinet:
    """Copy a cabinet with its openings and boxes to another place on its wall.

    A door on hand that the original names stays with the original: there is only one of it.
    """
    rows = Opening.objects.filter(cabinet=cabinet).order_by("position", "pk")
    openings = list(rows.prefetch_related("boxes__shelf_pins"))
    copy = Cabinet.objects.get(pk=cabinet.pk)
    copy.pk, copy.label, copy.x = None, label, x
    copy.position = last_position(Cabinet.objects.filter(job=cabinet.job))
    copy._state.adding = True
    _keep(copy)
    for opening in openings:
        _copy_opening(opening, copy)
    _refuse_shared_names(copy)
    text = f"Copied cabinet {cabinet.label} as {copy.label}"
    job_changed(job=cabinet.job, text=text, by=by, at=at)
    return copy


@transaction.atomic
def cabinet_delete(
    *, cabinet: Cabinet, at: datetime, confirmed: bool = False, by: Person | None = None
) -> None:
    """Delete a cabinet; with openings in it, only once that is confirmed."""
    openings = [str(each) for each in Opening.objects.filter(cabinet=cabinet)]
    if openings and not confirmed:
        raise CabinetNotEmpty(f"Cabinet {cabinet.label} goes with all its openings.", openings)
    job, label = cabinet.job, cabinet.label
    cabinet.delete()
    job_changed(job=job, text=f"Deleted cabinet {label}", by=by, at=at)


def _keep(cabinet: Cabinet) -> None:
    checked(cabinet)
    new = changed(cabinet)
    if new & {"width", "height"}:
        _refuse_openings_outside(cabinet)
    kept(cabinet, taken=f"there is already a cabinet {cabinet.label} in this job")
    if "label" in new:
        _refuse_shared_names(cabinet)


def _refuse_openings_outside(cabinet: Cabinet) -> None:
    faults: dict[str, str] = {}
    openings = Opening.objects.filter(cabinet_id=cabinet.pk)
    for opening in openings.only("cabinet_id", "label", "x", "y", "width", "height"):
        for name, fault in past_cabinet(opening, cabinet, cabinet.job.unit).items():
            faults[name] = f"opening {opening.label}: {fault}"
    if faults:
        raise ValidationError(faults)


def _refuse_shared_names(cabinet: Cabinet) -> None:
    name = label_taken_twice(cabinet.job)
    if name is not None:
        raise ValidationError({"label": f"two fronts would be called {name}; give another label"})


def _copy_opening(opening: Opening, to: Cabinet) -> None:
    boxes = list(opening.boxes.all())
    opening.pk, opening.cabinet, opening.front_door = None, to, None
    opening._state.adding = True
    opening.save()
    for box in boxes:
        _copy_box(box, opening)


def _copy_box(box: Box, to: Opening) -> None:
    rows = list(box.shelf_pins.all())
    box.pk, box.opening = None, to
    box._state.adding = True
    box.save()
    for row in rows:
        row.pk, row.box = None, box
        row._state.adding = True
        row.save()

"""Drawer boxes behind an opening, and their shelf pins."""

from collections.abc import Sequence
from datetime import datetime
from typing import Unpack

from django.core.exceptions import ValidationError
from django.db import transaction

from fronts.jobfile.boxes import MOST_PINS, MOST_ROWS
from fronts.models import Box, Opening, ShelfPins
from fronts.rules.kitchen import ShelfPins as PinRow
from fronts.rules.lengths import Mm
from fronts.services.saving import checked, enter, job_changed, saved
from fronts.services.values import BoxValues
from shopjobs.models import Person


@transaction.atomic
def box_enter(
    *,
    box: Box,
    pins: Sequence[PinRow],
    at: datetime,
    by: Person | None = None,
    **values: Unpack[BoxValues],
) -> Box:
    """Enter or change a box, new or kept, together with its rows of shelf-pin holes."""
    _set(box, values, by, at)
    _set_pins(box, pins, by, at)
    return box


@transaction.atomic
def box_set(
    *,
    opening: Opening,
    index: int = 0,
    at: datetime,
    by: Person | None = None,
    **values: Unpack[BoxValues],
) -> Box:
    """Enter or change the box behind front `index` of the opening, from the top, from 0."""
    box = Box.objects.filter(opening=opening, index=index).first()
    box = box or Box(opening=opening, index=index)
    box.opening = opening
    return _set(box, values, by, at)


@transaction.atomic
def box_remove(*, opening: Opening, index: int = 0, at: datetime, by: Person | None = None) -> None:
    """Take away the box behind front `index`; nothing happens where there is none."""
    box = Box.objects.filter(opening=opening, index=index).first()
    if box is None:
        return
    name = _name(box)
    box.delete()
    job_changed(job=opening.cabinet.job, text=f"Removed {name}", by=by, at=at)


@transaction.atomic
def shelf_pins_set(
    *, box: Box, rows: Sequence[PinRow], at: datetime, by: Person | None = None
) -> list[ShelfPins]:
    """Replace the box's rows of shelf-pin holes; a fault names its row, counted from 1."""
    return _set_pins(box, rows, by, at)


def pins_row(box: Box, position: int, row: PinRow) -> ShelfPins:
    """A row of holes, not yet kept."""
    return ShelfPins(
        box=box,
        position=position,
        x=row.x,
        y=row.y,
        pitch=row.pitch,
        count=row.count,
        diameter=row.diameter,
    )


def _set(box: Box, values: BoxValues, by: Person | None, at: datetime) -> Box:
    enter(box, values)
    checked(box)
    saved(box)
    job_changed(job=box.opening.cabinet.job, text=f"Entered {_name(box)}", by=by, at=at)
    return box


def _set_pins(box: Box, rows: Sequence[PinRow], by: Person | None, at: datetime) -> list[ShelfPins]:
    if len(rows) > MOST_ROWS:
        raise ValidationError(f"enter at most {MOST_ROWS} rows of holes")
    before = list(ShelfPins.objects.filter(box=box).order_by("position", "pk"))
    pins = [pins_row(box, position, row) for position, row in enumerate(rows)]
    for number, row in enumerate(pins, start=1):
        _check(row, number)
    if [_said(row) for row in before] != [_said(row) for row in pins]:
        ShelfPins.objects.filter(box=box).delete()
        before = ShelfPins.objects.bulk_create(pins)
    job = box.opening.cabinet.job
    job_changed(job=job, text=f"Entered the shelf pins of {_name(box)}", by=by, at=at)
    return before


def _said(row: ShelfPins) -> tuple[Mm | int, ...]:
    return row.position, row.x, row.y, row.pitch, row.count, row.diameter


def _check(row: ShelfPins, number: int) -> None:
    wrong = {} if row.count <= MOST_PINS else {"count": f"enter at most {MOST_PINS} holes"}
    try:
        checked(row, wrong)
    except ValidationError as error:
        told = [
            f"row {number}, {name}: {message}"
            for name, messages in error.message_dict.items()
            for message in messages
        ]
        raise ValidationError(told) from error


def _name(box: Box) -> str:
    return f"box {box.index + 1} of {box.opening}"

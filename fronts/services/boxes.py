"""Drawer boxes behind a front, with their shelf pins."""

from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.facts.rows import columns_of
from fronts.models import Box, Front, ShelfPins
from fronts.rules.kitchen import Box as BoxFacts
from fronts.rules.limits import MOST_PIN_ROWS
from fronts.services.rows import called, row_for, rows_replaced
from fronts.services.saving import checked, checked_at, enter, job_changed, saved
from fronts.services.what_goes import settled_in
from shopjobs.models import Person
from shopjobs.services.recording import deleted, recorded


@recorded
def box_enter(*, front: Front, facts: BoxFacts, at: datetime, by: Person | None = None) -> Box:
    """Enter or change the box that a front stands on, with its rows of shelf-pin holes."""
    if not front.opening.closing.on_box:
        raise ValidationError("a box stands behind a drawer or a pull-out front only")
    box = box_save(front, front.box if hasattr(front, "box") else None, facts)
    cabinet, text = front.opening.cabinet, f"Entered {called(box)}"
    job_changed(job=cabinet.job, text=text, by=by, at=at, about=cabinet)
    return box


@recorded
def box_remove(*, front: Front, at: datetime, by: Person | None = None) -> None:
    """Take away the front's box; nothing happens where there is none."""
    box = Box.objects.filter(front=front).first()
    if box is None:
        return
    box.front = front
    cabinet, name = front.opening.cabinet, called(box)
    before = settled_in(cabinet.job)
    went = ["its shelf-pin holes"] if box.shelf_pins.exists() else []
    deleted([box])
    went += before.lost(cabinet.job)
    job_changed(job=cabinet.job, text=f"Removed {name}", by=by, at=at, about=cabinet, went=went)


def box_save(front: Front, box: Box | None, facts: BoxFacts) -> Box:
    """Save the box's row, new or there already, and those of its pins."""
    if box is None:
        box = row_for(Box, front, facts)
    else:
        box.front = front
        enter(box, columns_of(facts))
    checked(box)
    saved(box)
    _save_pins(box, facts)
    return box


def _save_pins(box: Box, facts: BoxFacts) -> None:
    """Replace the rows of holes where they differ; a fault names its row, counted from 1."""
    if len(facts.shelf_pins) > MOST_PIN_ROWS:
        raise ValidationError(f"enter at most {MOST_PIN_ROWS} rows of holes")
    rows = [row_for(ShelfPins, box, pins, place) for place, pins in enumerate(facts.shelf_pins)]
    for number, row in enumerate(rows, start=1):
        checked_at(row, f"row {number}")
    before = sorted(box.shelf_pins.all(), key=lambda pin: pin.position)
    rows_replaced(ShelfPins, before, rows)
